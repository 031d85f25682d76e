// Refused: the square root of a length.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const auto side = sqrt(4.0_m2);
#ifdef SCUPPER_COMPILE_FAIL
    const auto wrong = sqrt(side);
#endif
    return side.si() > 0.0 ? 0 : 1;
}
