#pragma once
// What a structure holds of each component: rules that infer its dimensions, formulas that turn
// dimensions into quantities.

#include "scupper/takeoff/dimensions.hpp"
#include "scupper/takeoff/drainage.hpp"
#include "scupper/takeoff/geometry.hpp"
#include "scupper/takeoff/infer.hpp"
#include "scupper/takeoff/quantities.hpp"
#include "scupper/takeoff/rules.hpp"
#include "scupper/takeoff/section.hpp"
#include "scupper/takeoff/shape.hpp"
#include "scupper/takeoff/site.hpp"
