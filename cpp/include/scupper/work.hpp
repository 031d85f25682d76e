#pragma once
// Hours: operations on site, outings, shifts.

#include "scupper/work/calendar.hpp"
#include "scupper/work/operation_time.hpp"
#include "scupper/work/outing.hpp"
#include "scupper/work/passes.hpp"
