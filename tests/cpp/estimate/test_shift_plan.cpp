#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/estimate/shift_plan.hpp"

#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using work::Spent;

namespace {

estimate::Estimate priced(const Structure& s, Sharing sharing) {
    Job job = full_job();
    job.sharing = sharing;
    return estimate::estimate(s, estimate::make_plan(job));
}

double sum(const std::vector<Time<>>& times) {
    double all = 0.0;
    for (const Time<>& t : times) {
        all += t.si();
    }
    return all;
}

double spent(const work::ShiftLayout& layout, Spent what) {
    return work::spent_times(layout, "")[static_cast<std::size_t>(what)].si();
}

} // namespace

TEST_CASE("the shifts of a structure are the shifts it is priced with") {
    for (const Structure& s : {overpass(), creek_bridge()}) {
        INFO(s.id);
        const auto e = priced(s, Sharing::own_shifts);
        const auto stages = estimate::shift_plan(e);
        REQUIRE(stages.size() == 1);
        const work::ShiftLayout& layout = stages[0].layout;
        CHECK(static_cast<double>(layout.paid.size()) == e.figure("shift.count"));
        CHECK(sum(layout.paid) == Approx(e.figure("hours.paid")));
        CHECK(sum(layout.overtime) == Approx(e.figure("hours.overtime")).margin(0.1));
        const double on_site = spent(layout, Spent::set_up) + spent(layout, Spent::work) +
                               spent(layout, Spent::removal);
        CHECK(on_site == Approx(e.figure("hours.on_site")));
        CHECK(spent(layout, Spent::travel) == Approx(e.figure("operation[travel].time")));
        CHECK(spent(layout, Spent::meal) == Approx(e.figure("operation[meal].time")));
        CHECK(spent(layout, Spent::set_up) == Approx(e.figure("operation[closure_set_up].time")));
        const double all = on_site + e.figure("hours.paid") - e.figure("hours.on_site");
        CHECK(all == Approx(sum(layout.paid)));
    }
}

TEST_CASE("every operation stands in the shifts with its time on the clock") {
    const auto e = priced(overpass(), Sharing::own_shifts);
    const auto stages = estimate::shift_plan(e);
    std::map<std::string, double> times;
    for (const work::Segment& s : stages[0].layout.segments) {
        if (s.spent == Spent::work) {
            times[s.what] += (s.end - s.start).si();
        }
    }
    CHECK(times.size() > 5);
    for (const auto& [operation, time] : times) {
        INFO(operation);
        CHECK(time == Approx(e.figure("operation[" + operation + "].time")));
    }
}

TEST_CASE("where shifts are shared the idle rest is what others may use") {
    const auto e = estimate::estimate(creek_bridge(), demo_plan());
    const auto stages = estimate::shift_plan(e);
    CHECK(stages[0].layout.paid.size() == 1);
    CHECK(spent(stages[0].layout, Spent::idle) > 0.0);
    CHECK(e.figure("shift.count") < 1.0);
}
