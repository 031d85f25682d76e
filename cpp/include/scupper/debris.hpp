#pragma once
// Dirt: volumes, masses, windrows, pits, tanks, axles, loads.

#include "scupper/debris/axle_groups.hpp"
#include "scupper/debris/build_up.hpp"
#include "scupper/debris/loads.hpp"
#include "scupper/debris/pit.hpp"
#include "scupper/debris/swell.hpp"
#include "scupper/debris/tank.hpp"
#include "scupper/debris/windrow.hpp"
