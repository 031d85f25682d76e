// Refused: a pressure compared with a length.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const auto pressure = 100.0_psi;
#ifdef SCUPPER_COMPILE_FAIL
    const bool wrong = pressure < 3.0_m;
#endif
    return pressure < 1.0_psi ? 1 : 0;
}
