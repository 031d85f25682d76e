#pragma once
// Which days become days of work: after the notices, on open days, in air that is warm enough.

#include "scupper/job/calendar.hpp"
#include "scupper/quantity.hpp"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::work {

/// The air over the working hours of a day, as measured or forecast.
struct Air {
    Temperature<> lowest; ///< [K] lowest temperature
    bool falling = false; ///< [-] whether it falls through the shift
};

/// What becomes of a day.
enum class DayUse {
    work,
    before_notice,
    weekday,
    holiday,
    closed_season,
    too_cold,
    falling_air,
    too_dark
};

/// The words of `DayUse`, in its order.
inline constexpr std::array<std::string_view, 8> day_use_names{
    "work",          "before_notice", "weekday",     "holiday",
    "closed_season", "too_cold",      "falling_air", "too_dark"};

/// The air of days, where it is known.
using AirByDay = std::map<Date, Air>;

/// How much daylight the work of a day needs, and where.
struct Light {
    Angle<> latitude; ///< [rad] of the structure, north positive
    Time<> needed;    ///< [s] from the first to the last minute on site
};

/// A day and what becomes of it.
struct PlannedDay {
    Date date;                 ///< the day
    DayUse use = DayUse::work; ///< a shift, or why there is none
    std::string season;        ///< [text] name of the closed season; empty elsewhere
    std::optional<Air> air;    ///< [K] where it is known
};

/// What becomes of one day: a shift, or the first reason against it.
///
/// @param calendar [-] weekdays, holidays, seasons that apply, least temperatures
/// @param earliest [-] the first day that all notices allow
/// @param day [-] the day in question
/// @param air [K] of known days; a day without is taken to be warm enough
/// @param light [rad, s] what daylight the work needs; nothing where it may be done in the dark
/// @return [-] the day with its use
/// Range: any day. Cold or falling air stops the work because water freezes on road and steel:
/// below 40 degF, or below 45 degF and falling, unless the calendar says otherwise.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/work/test_calendar.cpp
PlannedDay use_of_day(const Calendar& calendar, Date earliest, Date day, const AirByDay& air,
                      const std::optional<Light>& light = {});

/// The days from the earliest one until the shifts are done, with every day that was lost.
///
/// @param calendar [-] as for `use_of_day`
/// @param earliest [-] the first day that all notices allow
/// @param shifts [each] one a day of work, >= 0
/// @param air [K] of known days
/// @param light [rad, s] as for `use_of_day`
/// @return [-, n] every day in turn; the last one is a day of work
/// Range: up to three years ahead.
/// Errors: InputError `calendar.closed` where three years do not hold the shifts.
/// Source: common practice
/// Verified by: tests/cpp/work/test_calendar.cpp
std::vector<PlannedDay> plan_days(const Calendar& calendar, Date earliest, int shifts,
                                  const AirByDay& air = {}, const std::optional<Light>& light = {});

/// A day as people and documents write it.
///
/// @param day [-] the day
/// @return [text] "2027-03-01"
/// Range: years 0 to 9999.
/// Errors: none.
/// Source: ISO 8601
/// Verified by: tests/cpp/work/test_calendar.cpp
std::string date_text(Date day);

/// The day that a text says.
///
/// @param text [text] "2027-03-01"
/// @param path [text] the input it stands in, for the error
/// @return [-] the day
/// Range: years 0 to 9999.
/// Errors: InputError `calendar.date` for anything else, 30 February included.
/// Source: ISO 8601
/// Verified by: tests/cpp/work/test_calendar.cpp
Date parse_date(std::string_view text, std::string_view path);

/// The day of every year that a text says.
///
/// @param text [text] "04-01", month and day
/// @param path [text] the input it stands in, for the error
/// @return [-] month and day
/// Range: days that some year has.
/// Errors: InputError `calendar.date` for anything else.
/// Source: ISO 8601, without the year
/// Verified by: tests/cpp/work/test_calendar.cpp
std::chrono::month_day parse_month_day(std::string_view text, std::string_view path);

} // namespace scupper::work
