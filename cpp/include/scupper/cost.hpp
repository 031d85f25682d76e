#pragma once
// Money from hours and quantities.

#include "scupper/cost/built_up.hpp"
#include "scupper/cost/contract.hpp"
#include "scupper/cost/hire.hpp"
#include "scupper/cost/interest.hpp"
#include "scupper/cost/margins.hpp"
#include "scupper/cost/materials.hpp"
#include "scupper/cost/operating.hpp"
#include "scupper/cost/ownership.hpp"
#include "scupper/cost/wage.hpp"
