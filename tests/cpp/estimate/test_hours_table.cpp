// Paid and elapsed hours by crew add up exactly.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "estimate/worked.hpp"

using namespace scupper;
using namespace made_up;
using estimate::HoursRow;

namespace {

/// The parts add up to the paid hours, and these with the unpaid meal to the elapsed ones.
void check_adds_up(const HoursRow& r) {
    INFO(r.crew);
    const Time<> parts = r.productive + r.breaks + r.waiting + r.travel + r.briefing + r.closure +
                         r.meal + r.standby;
    CHECK(parts.si() == Approx(r.paid.si()));
    CHECK((r.paid + r.unpaid_meal).si() == Approx(r.elapsed.si()));
    for (const Time<>& part :
         {r.productive, r.breaks, r.waiting, r.travel, r.briefing, r.closure, r.meal, r.standby}) {
        CHECK(part.si() >= -1e-6);
    }
    CHECK(r.overtime <= r.paid);
}

} // namespace

TEST_CASE("hours of one crew add up, however shifts are shared") {
    for (const Sharing sharing : {Sharing::own_shifts, Sharing::pro_rata, Sharing::count_a_shift,
                                  Sharing::one_closure, Sharing::by_the_hour}) {
        Job job = json::demo_job();
        job.sharing = sharing;
        const auto e = estimate::estimate(overpass(), estimate::make_plan(job));
        const auto rows = estimate::hours_table(e);
        REQUIRE(rows.size() == 1);
        CHECK(rows.front().crew == "everyone");
        check_adds_up(rows.front());
        CHECK(rows.front().paid.si() == e.figure("hours.paid"));
        CHECK(rows.front().overtime.si() == e.figure("hours.overtime"));
        CHECK(rows.front().productive.si() >= e.figure("hours.productive"));
    }
}

TEST_CASE("hours of every party and stage add up (worked examples)") {
    for (const char* name : {"creek", "overpass", "river"}) {
        INFO(name);
        const auto e = worked::priced(name, worked::job_of(name));
        const auto rows = estimate::hours_table(e);
        double labour = 0.0;
        for (const HoursRow& row : rows) {
            check_adds_up(row);
            labour += row.people * row.paid.si();
        }
        CHECK(labour <= e.figure("hours.labour") * (1.0 + 1e-12)); // dump runs are paid besides
        CHECK(labour > 0.0);
    }
}

TEST_CASE("a meal that is not paid costs nothing and still takes time") {
    Job job = json::demo_job();
    job.sharing = Sharing::own_shifts;
    const auto paid = estimate::estimate(overpass(), estimate::make_plan(job));
    job = json::with_input(job, "shift.unpaid_meal_share", "1");
    const auto unpaid = estimate::estimate(overpass(), estimate::make_plan(job));
    const HoursRow before = estimate::hours_table(paid).front();
    const HoursRow after = estimate::hours_table(unpaid).front();
    check_adds_up(after);
    CHECK(after.unpaid_meal == before.meal);
    CHECK(after.elapsed.si() == Approx(before.elapsed.si()));
    CHECK(unpaid.figure("hours.paid") == Approx((before.paid - before.meal).si()));
    CHECK(unpaid.figure("cost.labour") < paid.figure("cost.labour"));
    CHECK(unpaid.figure("hours.closed") == Approx(paid.figure("hours.closed")));
    double lines = 0.0;
    for (const estimate::PricedLine& line : estimate::cost_lines(unpaid)) {
        lines += line.amount;
    }
    CHECK(lines == Approx(unpaid.figure("cost.total")));
}
