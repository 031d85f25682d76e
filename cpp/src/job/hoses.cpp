#include "check_words.hpp"
#include "library_values.hpp"
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
        for (const Setting& value : values_of(hose, segment)) {
            visit(value);
        }
    }
}

} // namespace

bool is_hand_held(const WashMethod& method) {
    return method.name != "flusher" && !method.hose.empty();
}

void fill_hose_values(Job& job, const HoseLibrary& library) {
    for_each_value(job, library, [&](const Setting& value) { detail::fill_value(job, value); });
}

void clear_hose_values(Job& job, const HoseLibrary& library) {
    for_each_value(job, library, [&](const Setting& value) { detail::clear_value(job, value); });
}

} // namespace scupper
