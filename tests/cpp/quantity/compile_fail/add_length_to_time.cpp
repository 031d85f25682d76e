// Refused: a length plus a time.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const auto length = 3.0_m + 1.0_m;
#ifdef SCUPPER_COMPILE_FAIL
    const auto wrong = length + 2.0_s;
#endif
    return length.si() > 0.0 ? 0 : 1;
}
