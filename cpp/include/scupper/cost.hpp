#pragma once
// Money from hours and quantities.

#include "scupper/cost/contract_terms.hpp"
#include "scupper/cost/hire.hpp"
#include "scupper/cost/margins.hpp"
