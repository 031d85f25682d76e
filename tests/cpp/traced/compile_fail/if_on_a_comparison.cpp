// A comparison of model numbers does not convert to bool: a decision goes through choose().
#include "scupper/traced.hpp"

scupper::Traced larger(const scupper::Traced& a, const scupper::Traced& b) {
#ifdef SCUPPER_COMPILE_FAIL
    if (a < b) {
        return b;
    }
#endif
    return choose(a < b, b, a);
}
