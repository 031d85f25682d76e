// Refused: the sum of two absolute temperatures.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const auto warmer = 15.0_degC + 5.0_K;
#ifdef SCUPPER_COMPILE_FAIL
    const auto wrong = warmer + 15.0_degC;
#endif
    return warmer.kelvin() > 0.0 ? 0 : 1;
}
