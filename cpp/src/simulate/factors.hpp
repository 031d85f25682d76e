#pragma once
// Which inputs are exchanged together. Internal to the part.

#include "scupper/simulate/sensitivity.hpp"
#include "scupper/simulate/swings.hpp"

namespace scupper::simulate::detail {

/// The inputs that move the figure, put together as asked: the widest `top` by themselves, the
/// others as one. Rows have keys, label and nothing else; factors the places of the same inputs.
struct Factors {
    std::vector<FactorRow> rows;
    std::vector<Factor> places;
};

Factors factors_of(const Swings& swings, const estimate::Plan& plan,
                   const SensitivitySettings& settings);

} // namespace scupper::simulate::detail
