// A traced number does not turn into a plain one by accident: that would cut the explanation.
#include "scupper/traced.hpp"

double plain(const scupper::Traced& a) {
#ifdef SCUPPER_COMPILE_FAIL
    const double value = a;
    return value;
#endif
    return a.value();
}
