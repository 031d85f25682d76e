#pragma once
// Scores of inputs that vary together. Internal to the part.

#include "scupper/simulate/simulation.hpp"

#include <cstdint>
#include <span>

namespace scupper::simulate::detail {

/// Puts scores of whole replicates on the strata of a Latin hypercube, one in each, in the order
/// they had: their rank correlations stay, and the even spread of each input is not given up for
/// them. Every replicate is taken by itself, so parts of a list agree with the whole.
/// Source: R. L. Iman, W. J. Conover, Communications in Statistics B 11 (1982) 311-334 (from
/// memory): correlation by the order of draws
void stratify(const SimulationSettings& settings, std::uint64_t stream, std::uint64_t input,
              std::span<double> scores);

/// Adds weighted scores that belong to uniforms.
void add_scores(double weight, std::span<const double> uniforms, std::span<double> scores);

} // namespace scupper::simulate::detail
