#pragma once
// An explanation with the units it is shown in.

#include "scupper/estimate.hpp"
#include "scupper/traced.hpp"

namespace scupper::python {

/// A derivation in the units of a job.
struct ShownDerivation {
    Derivation derivation;
    estimate::Show show;
};

} // namespace scupper::python
