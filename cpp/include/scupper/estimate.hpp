#pragma once
// Job and structures in, priced and explained estimates out.

#include "scupper/estimate/compare.hpp"
#include "scupper/estimate/draws.hpp"
#include "scupper/estimate/estimate.hpp"
#include "scupper/estimate/figures.hpp"
#include "scupper/estimate/fixed_total.hpp"
#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/plan.hpp"
#include "scupper/estimate/price.hpp"
#include "scupper/estimate/programme.hpp"
#include "scupper/estimate/resolve.hpp"
#include "scupper/estimate/run.hpp"
#include "scupper/estimate/schedule.hpp"
#include "scupper/estimate/show.hpp"
#include "scupper/estimate/site_closure.hpp"
#include "scupper/estimate/take_off_table.hpp"
#include "scupper/estimate/workbook.hpp"
