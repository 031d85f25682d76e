#pragma once
// Money from hours and quantities.

#include "scupper/cost/hire.hpp"
#include "scupper/cost/margins.hpp"
