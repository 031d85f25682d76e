// Days of work: after the notices, on open days, in air that is warm enough.

#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/work.hpp"

#include <algorithm>

using namespace scupper;
using namespace scupper::work;
using namespace scupper::literals;
using std::chrono::April;
using std::chrono::August;
using std::chrono::days;
using std::chrono::December;
using std::chrono::February;
using std::chrono::January;
using std::chrono::March;
using std::chrono::November;

namespace {

Date day(const char* text) {
    return parse_date(text, "test");
}

DayUse use(const Calendar& calendar, const char* on, const AirByDay& air = {}) {
    return use_of_day(calendar, day("2027-01-01"), day(on), air).use;
}

} // namespace

TEST_CASE("days are read and written as ISO 8601 has them") {
    CHECK(date_text(day("2027-03-01")) == "2027-03-01");
    CHECK(date_text(day("2028-02-29") + days(1)) == "2028-03-01");
    for (const char* wrong : {"2027-02-29", "2027-3-01", "01.03.2027", "2027-03-01 ", "",
                              "2027-13-01", "2027-+3-01", "-027-03-01"}) {
        INFO(wrong);
        CHECK_THROWS_AS(day(wrong), InputError);
    }
    CHECK(parse_month_day("02-29", "test") == February / 29);
    CHECK_THROWS_AS(parse_month_day("02-30", "test"), InputError);
    CHECK_THROWS_AS(parse_month_day("4-1", "test"), InputError);
}

TEST_CASE(
    "air below 40 degF, or falling near it, is no working day (worked example A, variant c)") {
    const Calendar calendar;
    const char* monday = "2027-04-05";
    const auto in = [&](Temperature<> lowest, bool falling) {
        return use(calendar, monday, {{day(monday), {lowest, falling}}});
    };
    CHECK(use(calendar, monday) == DayUse::work);
    CHECK(in(39.9_degF, false) == DayUse::too_cold);
    CHECK(in(40.0_degF, false) == DayUse::work);
    CHECK(in(44.0_degF, true) == DayUse::falling_air);
    CHECK(in(46.0_degF, true) == DayUse::work);
    Calendar strict;
    strict.least_falling_air = 200.0_degF; // never while it falls
    CHECK(use(strict, monday, {{day(monday), {60.0_degF, true}}}) == DayUse::falling_air);
}

TEST_CASE("weekends, holidays and closed seasons are lost, and each says so") {
    Calendar calendar;
    calendar.holidays = {day("2027-05-31")};
    calendar.closed = {{"nesting", April / 1, August / 31, {}, "test"},
                       {"winter", November / 15, March / 1, {}, "test"}};
    CHECK(use(calendar, "2027-03-06") == DayUse::weekday); // a Saturday
    CHECK(use(calendar, "2027-03-08") == DayUse::work);
    CHECK(use(calendar, "2027-04-01") == DayUse::closed_season);
    CHECK(use(calendar, "2027-08-31") == DayUse::closed_season);
    CHECK(use(calendar, "2027-09-01") == DayUse::work);
    CHECK(use(calendar, "2027-03-01") == DayUse::closed_season);
    CHECK(use(calendar, "2027-12-31") == DayUse::closed_season);
    CHECK(use_of_day(calendar, day("2027-01-01"), day("2027-06-01"), {}).season == "nesting");
    calendar.closed.clear();
    CHECK(use(calendar, "2027-05-31") == DayUse::holiday);
    CHECK(use_of_day(calendar, day("2027-06-02"), day("2027-06-01"), {}).use ==
          DayUse::before_notice);
}

TEST_CASE("shifts fall on days of work, and every lost day is listed") {
    Calendar calendar;
    const Date friday = day("2027-03-05");
    const auto planned = plan_days(calendar, friday, 3, {{day("2027-03-08"), {30.0_degF, false}}});
    REQUIRE(planned.size() == 6); // Fri work, Sat, Sun, Mon cold, Tue work, Wed work
    CHECK(planned[0].use == DayUse::work);
    CHECK(planned[3].use == DayUse::too_cold);
    CHECK(planned.back().date == day("2027-03-10"));
    CHECK(plan_days(calendar, friday, 0).empty());
    for (int shifts = 1; shifts < 40; ++shifts) {
        const auto days_of = plan_days(calendar, friday, shifts);
        CHECK(days_of.back().use == DayUse::work);
        CHECK(std::count_if(days_of.begin(), days_of.end(),
                            [](const PlannedDay& d) { return d.use == DayUse::work; }) == shifts);
    }
    calendar.closed = {{"always", January / 1, December / 31, {}, "test"}};
    CHECK_THROWS_AS(plan_days(calendar, friday, 1), InputError);
}

TEST_CASE("a day whose daylight is shorter than the work is no day of work") {
    Calendar calendar;
    calendar.weekdays = 0b1111111;
    const Light light{Angle<>(0.7), Time<>(11.0 * factor::hour)}; // 40 degrees north
    const auto use_in_light = [&](const char* on) {
        return use_of_day(calendar, day("2027-01-01"), day(on), {}, light).use;
    };
    CHECK(use_in_light("2027-01-15") == DayUse::too_dark); // some 9 h 40 min of sun
    CHECK(use_in_light("2027-06-15") == DayUse::work);     // some 15 h
    const std::vector<PlannedDay> planned = plan_days(calendar, day("2027-01-15"), 1, {}, light);
    CHECK(planned.size() > 1);
    CHECK(planned.back().use == DayUse::work);
    CHECK(day_length(light.latitude, planned.back().date) >= light.needed);
}
