#pragma once
// On which days a crew may work: weekdays, holidays, closed seasons, the air.

#include "scupper/quantity.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace scupper {

/// A day of the calendar.
using Date = std::chrono::sys_days;

/// A stretch of every year in which the work rests: a nesting or spawning season, winter.
struct ClosedSeason {
    std::string name;              ///< [text] "nesting"
    std::chrono::month_day first;  ///< first day of it
    std::chrono::month_day last;   ///< last day of it; before `first` where it spans the new year
    std::vector<std::string> when; ///< condition_names or closure_kind_names; any may hold
    std::string source;            ///< [text] permit, regulation, or "common practice"
};

/// The days on which a crew may work.
struct Calendar {
    std::optional<Date> asked;        ///< the day on which every notice is given
    unsigned weekdays = 0b0111110;    ///< bit 0 Sunday to bit 6 Saturday: days of work
    std::vector<Date> holidays;       ///< [-, n] no work
    std::vector<ClosedSeason> closed; ///< [-, n] no work, every year
    bool daylight = false;            ///< [-] all work on site is done by daylight
    Temperature<> least_air;          ///< [K] no work where the air is colder in the shift
    Temperature<> least_falling_air;  ///< [K] no work where it is colder and falling

    Calendar();
};

} // namespace scupper
