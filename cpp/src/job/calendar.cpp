#include "scupper/job/calendar.hpp"

namespace scupper {

namespace {
using namespace literals;
}

Calendar::Calendar() : least_air(40.0_degF), least_falling_air(45.0_degF) {}

} // namespace scupper
