#include "check_words.hpp"
#include "scupper/job/job.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace scupper {

namespace {

/// What the library knows of a segment, under the keys of a job.
std::array<Setting, 2> values_of(const HoseKind& hose, const std::string& segment) {
    std::array<Setting, 2> values{hose.bore, hose.roughness};
    values[0].key = "hose[" + segment + "].bore";
    values[1].key = "hose[" + segment + "].roughness";
    return values;
}

/// Runs over every value that the library has for a segment of the job.
template <class F>
void for_each_value(const Job& job, const HoseLibrary& library, F visit) {
    const std::vector<std::string> segments = hose_segments(job);
    const std::vector<std::string_view> known(segments.begin(), segments.end());
    for (const auto& [segment, kind] : job.hoses) {
        detail::require_word(known, segment, "job.hoses");
        const HoseKind& hose = hose_of(library, kind, "job.hoses." + segment);
        for (Setting& value : values_of(hose, segment)) {
            visit(value);
        }
    }
}

bool same(const Setting& a, const Setting& b) {
    const ThreePoint& x = a.value.guess;
    const ThreePoint& y = b.value.guess;
    return a.key == b.key && x.low == y.low && x.likely == y.likely && x.high == y.high &&
           a.origin && b.origin && a.origin->source == b.origin->source;
}

} // namespace

bool is_hand_held(const WashMethod& method) {
    return method.name != "flusher" && !method.hose.empty();
}

void fill_hose_values(Job& job, const HoseLibrary& library) {
    for_each_value(job, library, [&](Setting& value) {
        const bool own = std::any_of(job.settings.begin(), job.settings.end(),
                                     [&](const Setting& s) { return s.key == value.key; });
        if (!own) {
            job.settings.push_back(std::move(value));
        }
    });
}

void clear_hose_values(Job& job, const HoseLibrary& library) {
    for_each_value(job, library, [&](const Setting& value) {
        std::erase_if(job.settings, [&](const Setting& s) { return same(s, value); });
    });
}

} // namespace scupper
