// Refused: a bare number as a length.
#include "scupper/quantity.hpp"

using namespace scupper;
using namespace scupper::literals;

int main() {
    Length<double> bore = 1.5_in;
#ifdef SCUPPER_COMPILE_FAIL
    bore = 0.0381;
#endif
    return bore.si() > 0.0 ? 0 : 1;
}
