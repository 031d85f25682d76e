#pragma once
// Where the paid hours of every crew go, and how long the day is for it.

#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// The hours of one person of a crew. productive + breaks + waiting + travel + briefing + closure +
/// meal + standby = paid; paid + unpaid_meal = elapsed; overtime is part of paid.
struct HoursRow {
    std::string crew;    ///< [text] name of a party or stage; "everyone" where there is one for all
    double people = 0.0; ///< [each] who are paid these hours
    double shifts = 0.0; ///< [-] crew-shifts
    Time<> productive;   ///< [s] work itself
    Time<> breaks;       ///< [s] short breaks and delays, inside the productive factor
    Time<> waiting;      ///< [s] for water and for the dump, on the clock
    Time<> travel;       ///< [s] there and back
    Time<> briefing;     ///< [s] briefing and pack-up
    Time<> closure;      ///< [s] set-up, change of sides and removal
    Time<> meal;         ///< [s] the paid part of it
    Time<> standby;      ///< [s] paid, on site, without work: for the window or another party
    Time<> paid;         ///< [s] all of these
    Time<> overtime;     ///< [s] of `paid`
    Time<> unpaid_meal;  ///< [s] the part of the meal that is not paid
    Time<> elapsed;      ///< [s] paid hours and unpaid meals
    Time<> show_up;      ///< [s] expected pay for shifts lost to weather, beside `paid`
};

/// The hours of every crew: of each party, and of a stage or everyone where people belong to it.
///
/// @param estimate [-] an estimate
/// @return [s, n] in the order of the stages, everyone first
/// Range: any estimate; people on a dump run after the shift are paid beside it and not in it.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/estimate/test_hours_table.cpp
std::vector<HoursRow> hours_table(const Estimate& estimate);

} // namespace scupper::estimate
