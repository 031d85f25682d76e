#pragma once
// What draws and logs tell: how sure a price is, which inputs matter, what a visit would narrow.

#include "scupper/simulate/figure_draws.hpp"
#include "scupper/simulate/indices.hpp"
#include "scupper/simulate/job_log.hpp"
#include "scupper/simulate/learning.hpp"
#include "scupper/simulate/measurable.hpp"
#include "scupper/simulate/sensitivity.hpp"
#include "scupper/simulate/shrinkage.hpp"
#include "scupper/simulate/simulation.hpp"
#include "scupper/simulate/survey_list.hpp"
#include "scupper/simulate/swings.hpp"
#include "scupper/simulate/total_draws.hpp"
#include "scupper/simulate/totals.hpp"
