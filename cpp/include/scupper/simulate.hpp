#pragma once
// What draws tell beside ranges: what a visit that measures would narrow.

#include "scupper/simulate/measurable.hpp"
#include "scupper/simulate/survey_list.hpp"
