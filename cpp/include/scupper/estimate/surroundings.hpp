#pragma once
// What lies below and around one bridge and costs money: in the price, or named as not priced.

#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// Something around a bridge, and what the job makes of it.
struct SurroundingFound {
    Surrounding surrounding; ///< [-] what it is, with the amounts that have been seen
    bool priced = false;     ///< [-] a charge, people or equipment of its name is in the price
    double amount;           ///< [currency] its cost lines; NaN where it is not priced
};

/// What lies below and around a bridge and costs money: each is in the price or named as not priced.
///
/// @param estimate [-] an estimate
/// @return [-, n] those whose condition holds, in the order of the job
/// Range: any estimate. The record tells water, railway and road below; the rest a person must say.
/// Errors: none.
/// Source: each names its own
/// Verified by: tests/cpp/estimate/test_surroundings.cpp
std::vector<SurroundingFound> surroundings(const Estimate& estimate);

/// The surroundings that apply and are not priced, as sentences.
///
/// @param estimate [-] an estimate
/// @return [text, n] "not priced: railway flagger (usually 900 USD to 2,000 USD a shift; common
/// practice)"
/// Range: any estimate.
/// Errors: none.
/// Source: each names its own
/// Verified by: tests/cpp/estimate/test_surroundings.cpp
std::vector<std::string> unpriced_surroundings(const Estimate& estimate);

} // namespace scupper::estimate
