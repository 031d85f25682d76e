#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/work/overtime.hpp"

#include <vector>

using namespace scupper;

namespace {

Time<> hours(double h) {
    return Time<>(3600.0 * h);
}

std::vector<double> in_hours(const std::vector<Time<>>& times) {
    std::vector<double> values;
    for (const Time<>& t : times) {
        values.push_back(t.si() / 3600.0);
    }
    return values;
}

std::vector<double> overtime(const std::vector<double>& paid, double day, double week) {
    std::vector<Time<>> shifts;
    for (const double h : paid) {
        shifts.push_back(hours(h));
    }
    return in_hours(work::overtime_of_week(shifts, {.day = hours(day), .week = hours(week)}));
}

} // namespace

TEST_CASE("beyond 40 hours a week is overtime") {
    CHECK(overtime({10, 10, 10, 10}, 24, 40) == std::vector<double>{0, 0, 0, 0});
    CHECK(overtime({10, 10, 10, 10, 10}, 24, 40) == std::vector<double>{0, 0, 0, 0, 10});
    CHECK(overtime({9, 9, 9, 9, 9}, 24, 40) == std::vector<double>{0, 0, 0, 0, 5});
    CHECK(overtime({}, 24, 40).empty());
}

TEST_CASE("an hour beyond the day's limit is not counted for the week again") {
    CHECK(overtime({10, 10, 10, 10, 10}, 8, 40) == std::vector<double>{2, 2, 2, 2, 2});
    CHECK(overtime({10, 10, 10, 10, 10, 10}, 8, 40) == std::vector<double>{2, 2, 2, 2, 2, 10});
}

TEST_CASE("without limits nothing is overtime, a limit of nothing is refused") {
    CHECK(in_hours(work::overtime_of_week(std::vector{hours(20), hours(20)}, {})) ==
          std::vector<double>{0, 0});
    CHECK_THROWS_AS(overtime({10}, 0, 40), InputError);
    CHECK_THROWS_AS(overtime({10}, 8, -1), InputError);
}

TEST_CASE("shifts called off pay their show-up hours") {
    CHECK(work::expected_show_up(20.0, 0.1, hours(4.0)) == hours(8.0));
    CHECK(work::expected_show_up(20.0, 0.0, hours(4.0)) == hours(0.0));
}
