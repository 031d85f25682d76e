#pragma once
// The recording number type: formulas that explain themselves.

#include "scupper/traced/choose.hpp"
#include "scupper/traced/derivation.hpp"
#include "scupper/traced/named.hpp"
#include "scupper/traced/recording.hpp"
#include "scupper/traced/sheet.hpp"
#include "scupper/traced/traced.hpp"
