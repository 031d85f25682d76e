#include "scupper/estimate/fixed_total.hpp"
#include "scupper/estimate/programme.hpp"
#include "scupper/estimate/run.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <mutex>

namespace scupper::estimate {

namespace {

/// One guess, summed over the structures it moves.
struct Moved {
    std::string label;
    std::size_t structures = 0;
    FixedTotal by_low, by_high; ///< change of the total
    bool known = true;

    void add(const Assumption& a, double total) {
        label = a.label;
        ++structures;
        if (std::isfinite(a.total_at_low) && std::isfinite(a.total_at_high)) {
            by_low.add(a.total_at_low - total);
            by_high.add(a.total_at_high - total);
        } else {
            known = false;
        }
    }
    void add(const Moved& other) {
        label = other.label;
        structures += other.structures;
        by_low.add(other.by_low);
        by_high.add(other.by_high);
        known = known && other.known;
    }
};

using ByKey = std::map<std::string, Moved>;

void add_structure(const Structure& structure, const Programme& programme, ByKey& guesses) {
    const Estimate e = estimate(structure, programme.plan);
    const double total = e.figure("cost.total");
    for (const Assumption& a : assumptions(e)) {
        guesses[a.key].add(a, total);
    }
}

double total_of(const Programme& programme) {
    const auto found = std::find(programme.keys.begin(), programme.keys.end(), "cost.total");
    return programme.totals[static_cast<std::size_t>(found - programme.keys.begin())];
}

ProgrammeGuess guess_of(const std::string& key, const Moved& moved, double total) {
    const double unknown = std::numeric_limits<double>::quiet_NaN();
    const double low = moved.known ? total + moved.by_low.value() : unknown;
    const double high = moved.known ? total + moved.by_high.value() : unknown;
    return {key, moved.label, moved.structures, low, high, std::abs(high - low)};
}

/// What cannot be told stands in front: it may move anything.
bool dearer(const ProgrammeGuess& a, const ProgrammeGuess& b) {
    if (std::isnan(a.worth) || std::isnan(b.worth)) {
        return std::isnan(a.worth) && !std::isnan(b.worth);
    }
    return a.worth > b.worth;
}

} // namespace

std::vector<ProgrammeGuess> programme_guesses(const Programme& programme,
                                              std::span<const Structure> structures,
                                              unsigned threads, const RunProgress& progress) {
    ByKey guesses;
    std::mutex adding;
    const auto block = [&](std::size_t first, std::size_t last) {
        ByKey part;
        for (std::size_t i = first; i < last; ++i) {
            add_structure(structures[programme.priced[i]], programme, part);
        }
        const std::lock_guard lock(adding);
        for (const auto& [key, moved] : part) {
            guesses[key].add(moved);
        }
    };
    run_blocks(programme.priced.size(), threads, block, progress);
    const double total = total_of(programme);
    std::vector<ProgrammeGuess> list;
    for (const auto& [key, moved] : guesses) {
        list.push_back(guess_of(key, moved, total));
    }
    std::stable_sort(list.begin(), list.end(), dearer);
    return list;
}

} // namespace scupper::estimate
