#pragma once
// Water from the pump to the tip: properties, nozzles, friction, pumps, the operating point of a
// line, and flows in a hose lay that branches; what a jet brings to a surface, and what air carries
// through a vacuum hose.
//
// Every formula takes any number type and is instantiated for the project's own. With `double` a
// value that cannot be right (a bore of zero) raises InputError; not-a-number passes through as
// not-a-number, so that an unused arm of a choice never stops a calculation.

#include "scupper/hydraulics/coil.hpp"
#include "scupper/hydraulics/conveying.hpp"
#include "scupper/hydraulics/friction.hpp"
#include "scupper/hydraulics/jet.hpp"
#include "scupper/hydraulics/lay.hpp"
#include "scupper/hydraulics/lay_inverse.hpp"
#include "scupper/hydraulics/lay_solution.hpp"
#include "scupper/hydraulics/lay_warning.hpp"
#include "scupper/hydraulics/line.hpp"
#include "scupper/hydraulics/nozzle.hpp"
#include "scupper/hydraulics/nozzle_bar.hpp"
#include "scupper/hydraulics/pump.hpp"
#include "scupper/hydraulics/pump_curve.hpp"
#include "scupper/hydraulics/suction.hpp"
#include "scupper/hydraulics/trade_friction.hpp"
#include "scupper/hydraulics/vacuum.hpp"
#include "scupper/hydraulics/water.hpp"
