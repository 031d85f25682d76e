// The federal bridge formula, and what a truck may weigh by its axles.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/debris.hpp"

using namespace scupper;
using namespace scupper::literals;
using debris::AxleGroup;
using debris::LegalGross;
using reference::Row;

namespace {

std::vector<Length<>> feet(std::initializer_list<double> spacings) {
    std::vector<Length<>> out;
    for (const double s : spacings) {
        out.push_back(s * 1.0_ft);
    }
    return out;
}

double pounds(std::initializer_list<double> spacings) {
    return debris::legal_gross(feet(spacings)).mass.in(1.0_lb);
}

} // namespace

TEST_CASE("the weight tables of two states follow from the federal formula") {
    reference::Tally tally;
    for (const Row& row : reference::rows("debris/bridge_formula")) {
        const Length<> span = row["span_ft"] * 1.0_ft;
        const int axles = static_cast<int>(row["axles"]);
        const double value = (row.is("bridge_formula") ? debris::bridge_formula(span, axles)
                                                       : debris::axle_group_limit(span, axles))
                                 .in(1.0_lb);
        // The formula before rounding, in steps of 500 lb.
        const double steps = row["span_ft"] * axles / (axles - 1.0) + 12.0 * axles + 36.0;
        const bool tie = reference::near(steps - std::floor(steps), 0.5, 1e-9);
        // The tables print whole steps of 500 lb: a figure is met exactly or not at all.
        Row exact = row;
        exact.cells["printed_precision"] = "1";
        tally.add(exact, value,
                  {{"tie rounded up", tie && reference::near(row.expected() - value, 500.0, 1e-9)},
                   {"two tandems", axles == 4 && row.expected() == 68000.0 &&
                                       row["span_ft"] >= 36.0 && row["span_ft"] <= 39.0}});
    }
    CHECK(tally.summary() == "agrees 178, tie rounded up 21, two tandems 3");
}

TEST_CASE("single axles, tandems and what is a group by the formula") {
    CHECK(debris::axle_group_limit(Length<>(), 1).in(1.0_lb) == Approx(20000.0));
    CHECK(debris::axle_group_limit(40.0_in, 2).in(1.0_lb) == Approx(20000.0));
    CHECK(debris::axle_group_limit(41.0_in, 2).in(1.0_lb) == Approx(34000.0));
    CHECK(debris::axle_group_limit(96.0_in, 3).in(1.0_lb) == Approx(34000.0));
    CHECK(debris::axle_group_limit(97.0_in, 3).in(1.0_lb) == Approx(42000.0));
    CHECK(debris::axle_group_limit(97.0_in, 2).in(1.0_lb) == Approx(38000.0));
    CHECK(debris::axle_group_limit(60.0_ft, 5).in(1.0_lb) == Approx(80000.0));
    // 2.4384 m are 96 in, whatever the unit.
    CHECK(debris::axle_group_limit(Length<>(2.4384), 2).in(1.0_lb) == Approx(34000.0));
}

TEST_CASE("trucks by their axles") {
    // Two axles: 20,000 lb each once they are 10 ft apart.
    CHECK(pounds({14.0}) == Approx(40000.0));
    // A single axle in front of a tandem, 20 ft over all: the formula gives 51,000 lb.
    CHECK(pounds({15.7, 4.3}) == Approx(51000.0));
    // The tractor and semitrailer the 80,000 lb were meant for: 51 ft over all.
    CHECK(pounds({12.0, 4.0, 31.0, 4.0}) == Approx(80000.0));
    // One axle alone.
    CHECK(pounds({}) == Approx(20000.0));
}

TEST_CASE("two tandems 36 ft apart carry 34,000 lb each, closer ones what the formula says") {
    CHECK(pounds({4.0, 28.0, 4.0}) == Approx(68000.0));
    CHECK(pounds({4.0, 27.9, 4.0}) == Approx(66000.0));
    // Axles too close for a tandem have no such exception.
    CHECK(pounds({3.0, 30.0, 3.0}) == Approx(40000.0));
}

TEST_CASE("the groups that limit a truck add up to what it may weigh") {
    const LegalGross truck = debris::legal_gross(feet({15.0, 4.5, 10.0, 4.5}));
    double sum = 0.0;
    for (const AxleGroup& group : truck.limits) {
        CHECK(group.first <= group.last);
        sum += group.limit.in(1.0_lb);
    }
    CHECK(truck.limits.front().first == 1);
    CHECK(truck.limits.back().last == 5);
    CHECK(sum == Approx(truck.mass.in(1.0_lb)));
}

TEST_CASE("longer trucks and more axles never may weigh less, mirrored ones the same") {
    double before = 0.0;
    for (double length = 1.0; length < 40.0; length += 0.5) {
        const double now = pounds({length, 4.5});
        INFO(length);
        CHECK(now >= before);
        CHECK(now <= 54000.0 + 1e-6); // a single axle and a tandem
        CHECK(now == Approx(pounds({4.5, length})));
        CHECK(pounds({length, 4.5, 4.5}) >= now - 1e-6);
        before = now;
    }
}

TEST_CASE("axles that cannot be are refused") {
    CHECK(refusal([] { debris::bridge_formula(10.0_ft, 1); }).id() == "debris.axles");
    CHECK(refusal([] { debris::bridge_formula(Length<>(), 2); }).id() == "debris.span");
    CHECK(refusal([] { debris::axle_group_limit(1.0_ft, 1); }).id() == "debris.span");
    CHECK(refusal([] { debris::axle_group_limit(Length<>(std::nan("")), 2); }).id() ==
          "debris.span");
    CHECK(refusal([] { debris::legal_gross({Length<>(-1.0)}); }).id() == "debris.spacing");
    CHECK(refusal([] { debris::legal_gross(std::vector<Length<>>(20, 4.0_ft)); }).id() ==
          "debris.axles");
}
