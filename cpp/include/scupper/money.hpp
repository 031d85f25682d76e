#pragma once
// Exact decimal money: prices, extensions and totals to the cent, without binary fractions.

#include "scupper/money/apportion.hpp"
#include "scupper/money/currency.hpp"
#include "scupper/money/decimal.hpp"
#include "scupper/money/money.hpp"
