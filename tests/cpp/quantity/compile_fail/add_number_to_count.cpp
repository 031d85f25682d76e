// Refused: a count plus a plain number.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const auto drains = 8.0_each + 1.0_each;
#ifdef SCUPPER_COMPILE_FAIL
    const auto wrong = drains + 1.0;
#endif
    return drains.si() > 0.0 ? 0 : 1;
}
