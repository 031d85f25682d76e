#pragma once
// Hours: operations on site, outings, shifts.

#include "scupper/work/calendar.hpp"
#include "scupper/work/daylight.hpp"
#include "scupper/work/great_circle.hpp"
#include "scupper/work/operation_time.hpp"
#include "scupper/work/outing.hpp"
#include "scupper/work/overtime.hpp"
#include "scupper/work/passes.hpp"
#include "scupper/work/phases.hpp"
#include "scupper/work/shift_layout.hpp"
