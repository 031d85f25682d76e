// Deterministic queues against worked examples, and what must hold for any.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

#include <cmath>
#include <random>
#include <vector>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_queue {

namespace {

Period period(double minutes, double arrivals, double capacity) {
    return {minutes * 1.0_min, Count<>(arrivals) / 1.0_min, Count<>(capacity) / 1.0_min};
}

/// A lane incident: arrivals fall after five minutes, nobody passes until the 12th, then 25 a
/// minute until the 27th, then 80.
Queue incident(const Row& row) {
    const double second = row["t1"];
    const double start = row["svc_start"];
    const std::vector<Period> periods{
        period(second, row["arr1_vpm"], 0.0), period(start - second, row["arr2_vpm"], 0.0),
        period(row["svc_end"] - start, row["arr2_vpm"], row["svc_vpm"]),
        period(60.0, row["arr2_vpm"], 80.0)};
    return queue(periods);
}

Queue resurfacing(const Row& row) {
    return queue(std::vector{period(row["minutes"], row["arr"], row["reduced_cap"]),
                             period(60.0, row["arr"], row["full_cap"])});
}

double vehicle_minutes(const VehicleTime<>& delay) {
    return delay.si() / factor::minute;
}

double figure(const Row& row) {
    if (row.is("worked: max queue")) {
        return incident(row).longest.si();
    }
    if (row.is("worked: queue length")) {
        return queue_length(Count<>(row["veh"]), row["ft_per_veh"] * 1.0_ft / 1.0_each, 1.0)
            .in(1.0_ft);
    }
    if (row.is("worked: vehicles served to clearance")) {
        // As printed: cleared after 62.27 min.
        return queue(std::vector{period(5.0, 66.7, 0.0), period(57.27, 50.0, 0.0)}).arrived.si();
    }
    if (row.is("worked: resurfacing queue, dissipation")) {
        const double rest = row["max_queue"]; // 80 come and 120 pass each minute
        const Queue q = queue(std::vector{period(1.0, rest, 0.0), period(60.0, 80.0, 120.0)});
        return q.cleared.value().in(1.0_min) - 1.0;
    }
    const Queue q = resurfacing(row);
    return row.text("unit") == "veh" ? q.longest.si() : vehicle_minutes(q.delay);
}

bool is_posted_wrong(const Row& row) {
    return row.text("id") == "delay-posted-wrong";
}

} // namespace

TEST_CASE("queues agree with the worked examples") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/queue")) {
        if (!is_posted_wrong(row)) {
            tally.add(row, figure(row));
        }
    }
    CHECK(tally.summary() == "agrees 6");
}

TEST_CASE("a posted delay that is not the area between the lines is not reproduced") {
    for (const Row& row : reference::rows("closure/queue")) {
        if (is_posted_wrong(row)) {
            const double ours = vehicle_minutes(resurfacing(row).delay);
            CHECK(ours == Approx(0.5 * 600.0 * 45.0)); // triangle: 600 vehicles, 30 + 15 min
            CHECK(std::abs(ours - row.expected()) > 0.5 * row.expected());
        }
    }
}

TEST_CASE("the longest delay is that of whom the queue holds longest, by hand") {
    // The resurfacing queue: who comes at 30 min waits for 600 vehicles served 120 a minute: 5 min;
    // but who comes earlier waits behind 60 a minute: at t, (20 t) / 60 until 30 min is reached.
    const Queue q = queue(std::vector{period(30.0, 80.0, 60.0), period(60.0, 80.0, 120.0)});
    // Vehicle number 1,800 passes at 30 min and came at 22.5 min.
    CHECK(q.longest_delay.in(1.0_min) == Approx(7.5));
    CHECK(q.longest_at.in(1.0_min) == Approx(30.0));
    CHECK(q.cleared.value().in(1.0_min) == Approx(45.0));
    CHECK(q.delayed.si() == Approx(45.0 * 80.0));
    // Nobody passes for ten minutes: the first waits ten.
    const Queue shut = queue(std::vector{period(10.0, 5.0, 0.0), period(60.0, 5.0, 10.0)});
    CHECK(shut.longest_delay.in(1.0_min) == Approx(10.0));
    CHECK(shut.delay.si() / factor::minute == Approx(0.5 * 50.0 * 20.0));
}

TEST_CASE("without queue nobody waits") {
    const Queue q = queue(std::vector{period(60.0, 20.0, 30.0), period(60.0, 30.0, 30.0)});
    CHECK(q.longest.si() == 0.0);
    CHECK(q.delay.si() == 0.0);
    CHECK(q.longest_delay.si() == 0.0);
    CHECK_FALSE(q.cleared.has_value());
    CHECK(queue({}).arrived.si() == 0.0);
}

TEST_CASE("a queue left at the end is said to be left") {
    const Queue q = queue(std::vector{period(30.0, 80.0, 60.0)});
    CHECK(q.left.si() == Approx(600.0));
    CHECK_FALSE(q.cleared.has_value());
    CHECK(q.longest_delay.in(1.0_min) == Approx(7.5)); // the vehicle that passes at the end
}

TEST_CASE("any queue: delay is the sum of the steps, and the finer the steps nothing changes") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> flow(0.0, 40.0);
    for (int trial = 0; trial < 200; ++trial) {
        std::vector<Period> coarse;
        std::vector<Period> fine;
        for (int i = 0; i < 12; ++i) {
            const Period p = period(60.0, flow(random), flow(random));
            coarse.push_back(p);
            fine.insert(fine.end(), 3, {p.length / 3.0, p.demand, p.capacity});
        }
        const Queue a = queue(coarse);
        const Queue b = queue(fine);
        double sum = 0.0;
        for (const QueueStep& step : a.steps) {
            CHECK(step.waiting.si() >= 0.0);
            sum += step.delay.si();
        }
        CHECK(a.delay.si() == Approx(sum));
        CHECK(a.delay.si() == Approx(b.delay.si()).margin(1e-6));
        CHECK(a.longest.si() == Approx(b.longest.si()).margin(1e-9));
        CHECK(a.longest_delay.si() == Approx(b.longest_delay.si()).margin(1e-6));
        CHECK(a.delay.si() <= a.longest_delay.si() * a.arrived.si() * (1.0 + 1e-9));
    }
}

TEST_CASE("more demand or less capacity never means less delay") {
    for (double demand = 10.0; demand < 60.0; demand += 5.0) {
        const auto delay = [&](double arrivals, double capacity) {
            return queue(std::vector{period(60.0, arrivals, capacity), period(60.0, 10.0, 60.0)})
                .delay.si();
        };
        CHECK(delay(demand + 5.0, 30.0) >= delay(demand, 30.0));
        CHECK(delay(demand, 25.0) >= delay(demand, 30.0));
    }
}

TEST_CASE("periods that cannot be are refused") {
    CHECK(refusal([] { queue(std::vector{period(0.0, 1.0, 1.0)}); }).id() == "closure.period");
    CHECK(refusal([] { queue(std::vector{period(1.0, -1.0, 1.0)}); }).id() == "closure.demand");
    CHECK(refusal([] { queue(std::vector{period(1.0, 1.0, std::nan(""))}); }).id() ==
          "closure.capacity");
    CHECK(refusal([] { queue_length(Count<>(1.0), 25.0_ft / 1.0_each, 0.0); }).id() ==
          "closure.lanes");
}

} // namespace test_queue
