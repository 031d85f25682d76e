#pragma once
// Many structures under one job: priced rows, unpriced rows with reasons, totals.

#include "scupper/estimate/estimate.hpp"

#include <cstddef>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// Told how many of all structures are done; false stops the run.
using RunProgress = std::function<bool(std::size_t done, std::size_t all)>;

/// A structure that has no price, and why.
struct Unpriced {
    std::size_t index;  ///< [-] position among the structures
    std::string id;     ///< structure number
    std::string state;  ///< two-digit FIPS state code
    std::string reason; ///< in words; the same words for the same reason
};

/// A whole list priced. Every structure is in exactly one of `priced` and `unpriced`.
struct Programme {
    std::shared_ptr<const Plan> plan;    ///< [-] the job it was priced under
    std::vector<std::string> keys;       ///< figure of each column
    std::vector<std::size_t> priced;     ///< [-, n] positions among the structures
    std::vector<closure::Kind> closures; ///< [-, n] how the road is closed, by priced row
    std::vector<double> table;           ///< [SI unit of each figure, n x keys] row by row
    std::vector<double> totals;     ///< [SI unit of each figure] sums; NaN where a sum is no sense
    std::vector<Unpriced> unpriced; ///< [-, n] in the order of the structures
};

/// The figures a programme has columns of: all without rows, then the take-off quantities [text].
std::vector<std::string> programme_keys();

/// Prices a list of structures on several threads.
///
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @return [-] the programme; the same bits for any number of threads and order of work
/// Range: any list.
/// Errors: Interrupted `estimate.stopped` where progress says so; those of `resolve`.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_programme.cpp
Programme estimate_all(std::span<const Structure> structures, std::shared_ptr<const Plan> plan,
                       unsigned threads = 0, const RunProgress& progress = {});

/// Puts the results of the parts of a list together, in their order.
///
/// @param parts [-, n] programmes of parts that follow on one another, under one job
/// @return [-] the programme of the whole list: the bits of one run
/// Range: at least one part.
/// Errors: InputError `estimate.merge` without a part, or where parts have other columns.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_programme.cpp
Programme joined(std::span<const Programme* const> parts);

/// A guess that moves the total of a programme.
struct ProgrammeGuess {
    std::string key;        ///< input of the schema
    std::string label;      ///< [text] what people call it
    std::size_t structures; ///< [-] at how many it moves the price
    double at_low;          ///< [currency] total with it at its low at all of them
    double at_high;         ///< [currency] total with it at its high at all of them
    double worth;           ///< [currency] by how much that moves the total
};

/// Every guess of a programme by what it moves the total, the dearest first: one input alone, from
/// its low to its high at all structures at once.
///
/// Formula: worth = |sum over structures of total at high - sum of total at low|
/// @param programme [-] a programme
/// @param structures [-, n] the records it was priced from, in the same order
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far the run is; may be empty
/// @return [currency, n] the guesses; totals are NaN where a limit leaves a structure without a price
/// Range: any programme. The same bits for any number of threads.
/// Errors: Interrupted `estimate.stopped` where progress says so.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_programme_guesses.cpp
std::vector<ProgrammeGuess> programme_guesses(const Programme& programme,
                                              std::span<const Structure> structures,
                                              unsigned threads = 0,
                                              const RunProgress& progress = {});

} // namespace scupper::estimate
