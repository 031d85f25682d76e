#pragma once
// Temporary traffic control around a cleaning crew.

#include "scupper/closure/kind.hpp"
