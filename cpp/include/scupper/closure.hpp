#pragma once
// Temporary traffic control around a cleaning crew.

#include "scupper/closure/buffer.hpp"
#include "scupper/closure/capacity.hpp"
#include "scupper/closure/devices.hpp"
#include "scupper/closure/kind.hpp"
#include "scupper/closure/names.hpp"
#include "scupper/closure/plan.hpp"
#include "scupper/closure/signs.hpp"
#include "scupper/closure/taper.hpp"
