#pragma once
// What draws tell: how sure a price is, and what a visit that measures would narrow.

#include "scupper/simulate/job_log.hpp"
#include "scupper/simulate/learning.hpp"
#include "scupper/simulate/measurable.hpp"
#include "scupper/simulate/shrinkage.hpp"
#include "scupper/simulate/simulation.hpp"
#include "scupper/simulate/survey_list.hpp"
#include "scupper/simulate/swings.hpp"
#include "scupper/simulate/totals.hpp"
