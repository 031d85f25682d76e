#pragma once
// How sure a price is: draws of every uncertain input, for each structure and the programme.

#include "scupper/estimate.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::simulate {

/// Figures that a simulation follows, and what a caller calls them.
struct SimulatedFigure {
    std::string_view name; ///< [text] "cost"
    std::string_view key;  ///< [text] "cost.total"
};

inline constexpr std::array<SimulatedFigure, 5> simulated_figures{{
    {"cost", "cost.total"},
    {"hours", "hours.labour"},
    {"water", "water.volume"},
    {"debris", "debris.volume"},
    {"closure", "hours.closed"},
}};

inline constexpr std::size_t figure_count = simulated_figures.size(); ///< [-] columns of a draw

/// Probabilities a structure's quantiles are kept at [-].
inline constexpr std::array<double, 9> kept_levels{0.05, 0.1,  0.25, 0.5, 0.75,
                                                   0.8,  0.85, 0.9,  0.95};

inline constexpr std::array<std::string_view, 4> sampling_names{
    "plain", "latin_hypercube", "sobol", "sobol_single"}; ///< [text] by Sampling

/// The kind of sampling that a word stands for.
///
/// @param word [text] one of sampling_names
/// @return [-] the kind
/// Range: any text.
/// Errors: UnknownNameError `simulate.sampling` naming the words there are.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
Sampling sampling_of(std::string_view word);

/// How a programme is simulated.
struct SimulationSettings {
    std::uint64_t seed = 1;                        ///< [-] same seed, same draws
    std::size_t draws = 10000;                     ///< [-] how many in all
    std::size_t replicates = 10;                   ///< [-] independent samples that make up the
                                                   ///< draws: what standard errors rest on
    Sampling sampling = Sampling::latin_hypercube; ///< [-] of each replicate
    /// Whether two runs draw alike [-].
    friend bool operator==(const SimulationSettings&, const SimulationSettings&) = default;
};

/// What the draws of one structure give of one figure.
struct StructureRange {
    double estimated = 0.0; ///< [SI unit of the figure] at the values that are priced
    double mean = 0.0;      ///< [SI unit of the figure] over the draws
    double sd = 0.0;        ///< [SI unit of the figure] over the draws
    std::array<double, kept_levels.size()> quantiles{}; ///< [SI unit of the figure] by kept level
};

/// A structure that was simulated.
struct SimulatedStructure {
    std::size_t index = 0;                             ///< [-] position among the structures
    std::array<StructureRange, figure_count> ranges{}; ///< [SI] by place in simulated_figures
};

/// The result of a run over a list or over a part of one. Parts put together are the whole, bit for
/// bit: quantiles belong to structures, totals of a draw are sums in fixed point.
struct Simulation {
    std::shared_ptr<const estimate::Plan> plan;    ///< [-] the job it was made under
    SimulationSettings settings{};                 ///< [-] as it was run
    std::size_t structures = 0;                    ///< [-] length of the list
    std::vector<SimulatedStructure> simulated{};   ///< [-, n] in the order of the structures
    std::vector<estimate::Unpriced> unpriced{};    ///< [-, n] without a price at all
    std::vector<estimate::Unpriced> left_out{};    ///< [-, n] without one in some draw: in no total
    std::vector<estimate::FixedTotal> estimated{}; ///< [SI, figures] totals as estimated
    std::vector<estimate::FixedTotal> totals{};    ///< [SI, draws x figures] totals of every draw
};

/// Prices every structure in every draw.
///
/// The draws of an input follow from seed, structure, input and number of the draw. What structures
/// share of an input is drawn once a draw; the rest is each one's own. An input without spread
/// keeps its value, so that without any spread every draw is the estimate, to the bit.
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param settings [-] seed, draws, replicates, kind of sampling
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all; may be empty
/// @return [-] ranges by structure, totals by draw; the same bits for any number of threads
/// Range: any list. Memory grows with structures and with draws, not with their product.
/// By Sobol' points what structures share is drawn from one scrambled sequence, a dimension an input
/// by its place in the job; inputs beyond `sobol_dimensions` and what is each structure's own are
/// drawn by strata. Of one structure alone (`sobol_single`) its own parts are drawn from the same
/// sequence too. Inputs that vary together keep their strata: the order of their draws is changed.
/// Errors: InputError `simulate.draws` where draws are no whole multiple of replicates or none, or
/// replicates of Sobol' points are no power of two; `simulate.sampling` where several structures are
/// drawn as if alone; Interrupted `estimate.stopped` where progress says so; those of `resolve`.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
Simulation simulate(std::span<const Structure> structures,
                    std::shared_ptr<const estimate::Plan> plan, const SimulationSettings& settings,
                    unsigned threads = 0, const estimate::RunProgress& progress = {});

/// With how many draws a run begins that is to stop once it knows enough.
///
/// Formula: at least 4 replicates, of as many draws each as `most` has
/// @param most [-] the run as it would be without a limit
/// @return [-] the same with the replicates of the first round
/// Range: any settings that `simulate` takes.
/// Errors: InputError `simulate.draws` where draws are no whole multiple of replicates or none.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
SimulationSettings first_round(const SimulationSettings& most);

/// With how many draws a run goes on whose mean total cost is not known well enough.
///
/// Formula: r' = ceil(r (e / limit)^2), at least r + 1, at most those of `most`; e as of
/// `simulate_until`
/// @param found [-] the run over the whole list so far
/// @param most [-] the run as it would be without a limit
/// @param relative_error [-] limit, > 0
/// @return [-] settings of the next round; those of `found` where it is known well enough or has all
/// the draws there may be
/// Range: rounds of one run. Replicates that both rounds have are the same to the bit.
/// Errors: InputError `simulate.relative_error` where the limit is not above 0.
/// Source: errors of a mean fall with the root of the number of replicates
/// Verified by: tests/cpp/simulate/test_simulation.cpp
SimulationSettings next_round(const Simulation& found, const SimulationSettings& most,
                              double relative_error);

/// Draws replicate after replicate until the mean total cost is known well enough.
///
/// Formula: stops once s / (m sqrt(r)) <= limit, with m the mean of the total, s the standard
/// deviation of the means of r replicates, r at least 4
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param settings [-] as of `simulate`; draws and replicates are the most
/// @param relative_error [-] limit, > 0
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told structures done and all of each round; may be empty
/// @return [-] as `simulate` with the number of replicates that sufficed: the same bits
/// Range: as `simulate`. Each round draws anew what the one before it drew.
/// Errors: InputError `simulate.relative_error` where the limit is not above 0; those of `simulate`.
/// Source: own convention over independent replicates
/// Verified by: tests/cpp/simulate/test_simulation.cpp
Simulation simulate_until(std::span<const Structure> structures,
                          std::shared_ptr<const estimate::Plan> plan,
                          const SimulationSettings& settings, double relative_error,
                          unsigned threads = 0, const estimate::RunProgress& progress = {});

/// Puts the result of the next part of a list behind those before it.
///
/// @param whole [-] the parts before; empty to begin with
/// @param part [-] the next part; its positions follow on those before
/// Range: parts that were run under the same job and settings; the bits are those of one run.
/// Errors: InputError `simulate.merge` where settings differ.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
void append(Simulation& whole, const Simulation& part);

/// The most replicates of at most ten that divide a number of draws.
///
/// @param draws [-] how many in all
/// @return [-] 10 where it divides them, else the next smaller number that does, at least 1
/// Range: at least one draw.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/simulate/test_simulation.cpp
std::size_t replicates_for(std::size_t draws);

} // namespace scupper::simulate
