#pragma once
// An explanation with the units it is shown in.

#include "scupper/estimate.hpp"
#include "scupper/traced.hpp"

namespace scupper::python {

/// A derivation in the units of a job, and how many levels of it a reader sees at first.
struct ShownDerivation {
    Derivation derivation;
    estimate::Show show;
    std::size_t depth = every_level;
};

} // namespace scupper::python
