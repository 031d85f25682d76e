#pragma once
// Temporary traffic control around a cleaning crew.

#include "scupper/closure/buffer.hpp"
#include "scupper/closure/capacity.hpp"
#include "scupper/closure/devices.hpp"
#include "scupper/closure/flagging.hpp"
#include "scupper/closure/hours.hpp"
#include "scupper/closure/kind.hpp"
#include "scupper/closure/names.hpp"
#include "scupper/closure/placing.hpp"
#include "scupper/closure/plan.hpp"
#include "scupper/closure/queue.hpp"
#include "scupper/closure/road_user.hpp"
#include "scupper/closure/signs.hpp"
#include "scupper/closure/taper.hpp"
#include "scupper/closure/windows.hpp"
#include "scupper/closure/work_zone.hpp"
