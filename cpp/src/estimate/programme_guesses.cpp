#include "scupper/estimate/moved_total.hpp"
#include "scupper/estimate/programme.hpp"
#include "scupper/estimate/run.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <mutex>

namespace scupper::estimate {

namespace {

/// One guess, summed over the structures it moves.
struct Guess {
    std::string label;
    MovedTotal moved;
};

using ByKey = std::map<std::string, Guess>;

void add_structure(const Structure& structure, const Programme& programme, ByKey& guesses) {
    const Estimate e = estimate(structure, programme.plan);
    const double total = e.figure("cost.total");
    for (const Assumption& a : assumptions(e)) {
        Guess& guess = guesses[a.key];
        guess.label = a.label;
        guess.moved.add(a.total_at_low - total, a.total_at_high - total);
    }
}

double total_of(const Programme& programme) {
    const auto found = std::find(programme.keys.begin(), programme.keys.end(), "cost.total");
    return programme.totals[static_cast<std::size_t>(found - programme.keys.begin())];
}

ProgrammeGuess guess_of(const std::string& key, const Guess& guess, double total) {
    const double low = guess.moved.low(total);
    const double high = guess.moved.high(total);
    return {key, guess.label, guess.moved.structures, low, high, std::abs(high - low)};
}

bool dearer(const ProgrammeGuess& a, const ProgrammeGuess& b) {
    return moves_more(a.worth, b.worth);
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
        for (const auto& [key, guess] : part) {
            guesses[key].label = guess.label;
            guesses[key].moved.add(guess.moved);
        }
    };
    run_blocks(programme.priced.size(), threads, block, progress);
    const double total = total_of(programme);
    std::vector<ProgrammeGuess> list;
    for (const auto& [key, guess] : guesses) {
        list.push_back(guess_of(key, guess, total));
    }
    std::stable_sort(list.begin(), list.end(), dearer);
    return list;
}

} // namespace scupper::estimate
