#include "scupper/rates/surrounding.hpp"

#include <algorithm>

namespace scupper {

bool slows(const Pace& pace, const Operation& op) {
    return std::any_of(pace.work.begin(), pace.work.end(), [&](const std::string& word) {
        return word == op.name || word == op.component || (!op.crew.empty() && word == op.crew);
    });
}

} // namespace scupper
