#pragma once
// Dimension-checked quantities, stored in SI.

#include "scupper/quantity/dimension.hpp"
#include "scupper/quantity/factors.hpp"
#include "scupper/quantity/kinds.hpp"
#include "scupper/quantity/literals.hpp"
#include "scupper/quantity/quantity.hpp"
