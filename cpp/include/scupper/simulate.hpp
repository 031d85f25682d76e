#pragma once
// What draws tell: how sure a price is, which inputs matter, and what a visit that measures would narrow.

#include "scupper/simulate/indices.hpp"
#include "scupper/simulate/measurable.hpp"
#include "scupper/simulate/sensitivity.hpp"
#include "scupper/simulate/simulation.hpp"
#include "scupper/simulate/survey_list.hpp"
#include "scupper/simulate/swings.hpp"
#include "scupper/simulate/totals.hpp"
