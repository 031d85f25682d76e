#include "catch.hpp"
#include "scupper/random.hpp"
#include "scupper/work.hpp"

using namespace scupper;
using namespace scupper::literals;

namespace {

work::Shift<double> ten_hours() {
    return {.length = 10_h, .travel = 1_h, .briefing = 0.5_h, .meal = 0.5_h, .overtime = 0_h, .window = 24_h, .closure = 0_h};
}

double parts_of(const work::OutingHours<double>& o, const Time<>& on_site) {
    return (on_site + o.travel + o.briefing + o.meal + o.idle).si();
}

} // namespace

TEST_CASE("a ten-hour shift leaves eight for work") {
    CHECK(work::available_time(ten_hours()).in(1.0_h) == Approx(8.0));
}

TEST_CASE("pro rata pays the share of a shift, whole shifts pay it all") {
    const auto shared =
        work::price_outing<double>(4_h, ten_hours(), work::ShiftSharing::pro_rata, 1_each);
    CHECK(shared.shifts == Approx(0.5));
    CHECK(shared.paid.in(1.0_h) == Approx(5.0));
    CHECK(shared.idle.in(1.0_h) == Approx(0.0).margin(1e-12));
    const auto own =
        work::price_outing<double>(4_h, ten_hours(), work::ShiftSharing::whole, 1_each);
    CHECK(own.shifts == 1.0);
    CHECK(own.idle.in(1.0_h) == Approx(4.0));
    const auto nine =
        work::price_outing<double>(9_h, ten_hours(), work::ShiftSharing::whole, 1_each);
    CHECK(nine.shifts == 2.0);
}

TEST_CASE("by the hour, a worked day of two like bridges") {
    // Worked by hand, inputs common practice: 3.650 h on site each, 1.5 h travel and 0.5 h briefing
    // a day: the day takes 9.299 h, 4.650 h of it for each bridge.
    const work::Shift<double> day{
        .length = 10_h, .travel = 1.5_h, .briefing = 0.5_h, .meal = 0_h, .overtime = 0_h, .window = 24_h, .closure = 0_h};
    const auto each =
        work::price_outing<double>(3.6497_h, day, work::ShiftSharing::hourly, 2_each);
    CHECK(each.paid.in(1.0_h) == Approx(4.6497).epsilon(1e-6));
    CHECK(each.shifts == Approx(0.5));
    CHECK(each.idle.in(1.0_h) == Approx(0.0).margin(1e-12));
}

TEST_CASE("a small overrun is overtime, a larger one another shift") {
    work::Shift<double> shift = ten_hours();
    shift.overtime = 1_h;
    const auto small = work::price_outing<double>(8.5_h, shift, work::ShiftSharing::whole, 1_each);
    CHECK(small.shifts == 1.0);
    CHECK(small.overtime.in(1_h) == Approx(0.5));
    CHECK(small.paid.in(1_h) == Approx(10.5));
    CHECK(small.idle.in(1_h) == Approx(0.0).margin(1e-12));
    const auto large = work::price_outing<double>(9.5_h, shift, work::ShiftSharing::whole, 1_each);
    CHECK(large.shifts == 2.0);
    CHECK(large.overtime.si() == 0.0);
    const auto shared =
        work::price_outing<double>(8.5_h, shift, work::ShiftSharing::pro_rata, 1_each);
    CHECK(shared.overtime.si() == 0.0);
}

TEST_CASE("two structures in a shift pay half of it each, unless one needs more") {
    const auto half =
        work::price_outing<double>(3_h, ten_hours(), work::ShiftSharing::counted, 2_each);
    CHECK(half.shifts == Approx(0.5));
    CHECK(half.idle.in(1.0_h) == Approx(1.0));
    const auto more =
        work::price_outing<double>(6_h, ten_hours(), work::ShiftSharing::counted, 2_each);
    CHECK(more.shifts == Approx(0.75));
}

TEST_CASE("paid hours are what they are made of, and more work never costs less") {
    const DrawKey key{3, hash_text("outing"), 0};
    for (std::uint64_t i = 0; i < 500; ++i) {
        const Time<> on_site = 40.0 * uniform(key, 2 * i) * 1_h;
        const Time<> more = on_site + 10.0 * uniform(key, 2 * i + 1) * 1_h;
        for (const auto sharing : {work::ShiftSharing::pro_rata, work::ShiftSharing::whole,
                                   work::ShiftSharing::counted, work::ShiftSharing::hourly}) {
            const auto o = work::price_outing<double>(on_site, ten_hours(), sharing, 2_each);
            CHECK(parts_of(o, on_site) == Approx(o.paid.si()).epsilon(1e-12));
            CHECK(o.idle.si() >= -1e-9);
            const auto p = work::price_outing<double>(more, ten_hours(), sharing, 2_each);
            CHECK(p.paid.si() >= o.paid.si());
        }
    }
}
