#pragma once
// Quantities as text: reading "100 psi", "7/8 in", "USD 85/h", and writing them again.

#include "scupper/unit/display.hpp"
#include "scupper/unit/format.hpp"
#include "scupper/unit/parse.hpp"
#include "scupper/unit/table.hpp"
#include "scupper/unit/unit.hpp"
