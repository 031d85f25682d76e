// Hours in which a road may be closed.

#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;

namespace test_windows {

namespace {

constexpr TrafficFlow<> an_hour{1.0 / factor::hour};

/// A road of two lanes one way, 20,000 vehicles a day, one lane closed.
TrafficDay busy(double daily = 20000.0) {
    TrafficDay day;
    for (std::size_t hour = 0; hour < hours_a_day; ++hour) {
        day.demand.at(hour) =
            hourly_demand(Count<>(daily), hourly_shares(HourPattern::urban).at(hour), 1.0);
    }
    day.open = 3800.0 * an_hour;
    day.closed = 1400.0 * an_hour;
    return day;
}

QueueLimits vehicles(double waiting) {
    QueueLimits limits = no_limits();
    limits.waiting = Count<>(waiting);
    return limits;
}

} // namespace

TEST_CASE("without any queue allowed the permitted hours are those that fit") {
    // Urban shares x 20,000: 1,400 is 7 %; above it 7 (7.8), 16 (7.9) and 17 o'clock (8.5).
    const auto permitted = permitted_hours(busy(), vehicles(0.0));
    CHECK(permitted.at(7) == 0);
    CHECK(permitted.at(16) == 0);
    CHECK(permitted.at(17) == 0);
    CHECK(permitted.at(8) == 8);   // until 16 o'clock
    CHECK(permitted.at(18) == 13); // until 7 o'clock of the next day
    CHECK(longest_window(permitted, hours_by_day).first == 8);
    CHECK(longest_window(permitted, hours_by_day).hours == 8);
    CHECK(longest_window(permitted, hours_by_night).first == 18);
    CHECK(longest_window(permitted, hours_by_night).hours == 12);
    CHECK(longest_window(permitted, any_hour).hours == 13);
}

TEST_CASE("a looser limit never permits fewer hours, and traffic never more") {
    std::size_t before = 0;
    for (const double waiting : {0.0, 50.0, 100.0, 200.0, 500.0, 1000.0}) {
        const auto permitted = permitted_hours(busy(), vehicles(waiting));
        std::size_t all = 0;
        for (std::size_t hour = 0; hour < hours_a_day; ++hour) {
            all += permitted.at(hour);
            CHECK(permitted_hours(busy(30000.0), vehicles(waiting)).at(hour) <= permitted.at(hour));
        }
        CHECK(all >= before);
        before = all;
    }
}

TEST_CASE("the permitted hours keep the limits, one more does not") {
    QueueLimits limits = vehicles(150.0);
    limits.delay = 5.0_min;
    const TrafficDay day = busy(24000.0);
    const auto permitted = permitted_hours(day, limits);
    for (std::size_t hour = 0; hour < hours_a_day; ++hour) {
        const std::size_t hours = permitted.at(hour);
        const Queue kept = closure_queue(day, hour, static_cast<double>(hours) * 1.0_h);
        CHECK(kept.longest <= limits.waiting);
        CHECK(kept.longest_delay <= limits.delay);
        if (hours < hours_a_day) {
            const Queue broken = closure_queue(day, hour, static_cast<double>(hours + 1) * 1.0_h);
            CHECK((broken.longest > limits.waiting || broken.longest_delay > limits.delay));
        }
    }
}

TEST_CASE("a quiet road may be closed all day, and nothing said limits nothing") {
    CHECK(permitted_hours(busy(1000.0), vehicles(0.0)).at(7) == 24);
    CHECK(permitted_hours(busy(), no_limits()).at(7) == 24);
    CHECK(longest_window(permitted_hours(busy(1000.0), vehicles(0.0)), any_hour).hours == 24);
}

TEST_CASE("a closure may end within an hour; its periods fill the day") {
    const TrafficDay day = busy();
    const auto periods = closure_periods(day, 23, 2.5_h);
    CHECK(periods.size() == 25);
    Time<> sum;
    for (const Period& p : periods) {
        sum += p.length;
    }
    CHECK(sum.in(1.0_h) == Approx(24.0));
    CHECK(periods.at(0).demand == day.demand.at(23));
    CHECK(periods.at(2).length.in(1.0_h) == Approx(0.5));
    CHECK(periods.at(2).capacity == day.closed);
    CHECK(periods.at(3).capacity == day.open);
}

TEST_CASE("times and limits that cannot be are refused") {
    CHECK(refusal([] { closure_periods(busy(), 24, 1.0_h); }).id() == "closure.first");
    CHECK(refusal([] { closure_queue(busy(), 0, 25.0_h); }).id() == "closure.closed");
    CHECK(refusal([] { permitted_hours(busy(), vehicles(-1.0)); }).id() == "closure.queue_limit");
}

} // namespace test_windows
