#include "library_values.hpp"

#include <algorithm>

namespace scupper::detail {

namespace {

bool same(const Setting& a, const Setting& b) {
    const ThreePoint& x = a.value.guess;
    const ThreePoint& y = b.value.guess;
    return a.key == b.key && x.low == y.low && x.likely == y.likely && x.high == y.high &&
           a.origin && b.origin && a.origin->source == b.origin->source;
}

} // namespace

void fill_value(Job& job, const Setting& value) {
    const bool own = std::any_of(job.settings.begin(), job.settings.end(),
                                 [&](const Setting& s) { return s.key == value.key; });
    if (!own) {
        job.settings.push_back(value);
    }
}

void clear_value(Job& job, const Setting& value) {
    std::erase_if(job.settings, [&](const Setting& s) { return same(s, value); });
}

} // namespace scupper::detail
