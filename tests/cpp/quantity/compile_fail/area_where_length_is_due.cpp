// Refused: an area as an argument where a length is due.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

double metres(Length<double> length) {
    return length.si();
}

int main() {
    const auto side = 2.0_m;
#ifdef SCUPPER_COMPILE_FAIL
    metres(side * side);
#endif
    return metres(side) > 0.0 ? 0 : 1;
}
