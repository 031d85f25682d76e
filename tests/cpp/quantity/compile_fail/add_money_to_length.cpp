// Refused: money plus a length.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    const Amount<double> price(85.0);
#ifdef SCUPPER_COMPILE_FAIL
    const auto wrong = price + 3.0_ft;
#endif
    return price.si() > 0.0 ? 0 : 1;
}
