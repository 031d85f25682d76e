#include "scupper/rates/shared_share.hpp"

namespace scupper {

double usual_shared_share(std::string_view key) {
    const std::string_view group = key.substr(0, key.find_first_of("[."));
    const std::string_view field = key.substr(key.rfind('.') + 1);
    double share = 0.0;
    for (const SharedShare& row : shared_shares) {
        if (row.group == group && row.field == field) {
            return row.share;
        }
        share = row.group == group && row.field.empty() ? row.share : share;
    }
    return share;
}

} // namespace scupper
