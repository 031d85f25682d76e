#pragma once
// With the agency's own people, or by contract.

#include "scupper/delivery/break_even.hpp"
#include "scupper/delivery/case.hpp"
#include "scupper/delivery/chance.hpp"
#include "scupper/delivery/discount_rates.hpp"
#include "scupper/delivery/equipment.hpp"
#include "scupper/delivery/equipment_hours.hpp"
#include "scupper/delivery/split.hpp"
#include "scupper/delivery/ways.hpp"
