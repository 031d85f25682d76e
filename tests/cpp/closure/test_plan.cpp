// Whole closures: worked lengths and counts, order, and what must hold for every kind.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"

#include <limits>
#include <string>
#include <vector>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace test_plan {

namespace {

Site freeway(Kind kind = Kind::freeway_lane) {
    Site site;
    site.speed = 65.0_mph;
    site.kind = kind;
    site.road = RoadClass::freeway;
    site.work_length = 1000.0_ft;
    return site;
}

Site rural(Kind kind, Speed<> speed = 55.0_mph) {
    Site site;
    site.speed = speed;
    site.kind = kind;
    site.shoulder_width = 6.0_ft;
    site.work_length = 400.0_ft;
    return site;
}

std::vector<Site> one_of_each_kind() {
    std::vector<Site> sites;
    for (std::size_t i = 0; i < closure_kind_names.size(); ++i) {
        sites.push_back(rural(static_cast<Kind>(i)));
    }
    return sites;
}

std::string names(const std::vector<Element>& elements) {
    std::string text;
    for (const Element& e : elements) {
        text += (text.empty() ? "" : " ") + std::string(e.name);
    }
    return text;
}

// The devices up to the end of the work space; the worked count ends there.
double devices_before_termination(const Plan& p) {
    return number(p.devices - p.elements.back().devices);
}

double worked(const Row& row) {
    if (row.starts("worked: freeway")) {
        return plan(freeway()).length.in(1.0_ft);
    }
    if (row.starts("worked: devices")) {
        return devices_before_termination(plan(rural(Kind::rural_lane)));
    }
    return advance_warning_length(sign_spacing(RoadClass::rural, Edition::manual_2023)).in(1.0_ft);
}

} // namespace

TEST_CASE("worked closures come out as by hand from the tables") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/layout")) {
        if (!row.starts("first sign placement")) {
            tally.add(row, worked(row));
        }
    }
    CHECK(tally.summary() == "agrees 3");
}

TEST_CASE("the nearest rural sign lies within the manual's 8 to 12 ft for each mph") {
    for (const Row& row : reference::rows("closure/layout")) {
        if (row.starts("first sign placement")) {
            const bool least = row.text("id") == "ttc-158-least";
            const double speed = least ? 60.0 : 45.0; // mph, where the 500 ft come nearest
            const double ratio =
                sign_spacing(RoadClass::rural, Edition::manual_2023).a.in(1.0_ft) / speed;
            CHECK((least ? ratio >= row.expected() : ratio <= row.expected()));
        }
    }
}

TEST_CASE("a driver meets the stretches in the manual's order") {
    CHECK(names(plan(freeway()).elements) ==
          "advance_warning_c advance_warning_b advance_warning_a merging_taper buffer work_space "
          "downstream_taper");
    CHECK(names(plan(freeway(Kind::two_freeway_lanes)).elements) ==
          "advance_warning_c advance_warning_b advance_warning_a merging_taper "
          "tangent_between_tapers merging_taper buffer work_space downstream_taper");
    CHECK(names(plan(rural(Kind::one_lane_two_way)).elements) ==
          "advance_warning_c advance_warning_b advance_warning_a one_lane_two_way_taper buffer "
          "work_space downstream_taper");
    CHECK(names(plan(rural(Kind::shoulder)).elements) ==
          "advance_warning_c advance_warning_b advance_warning_a shoulder_taper buffer work_space");
    CHECK(plan(rural(Kind::none)).elements.empty());
}

TEST_CASE("a paved shoulder of 8 ft is closed before the merging taper") {
    Site site = freeway();
    site.shoulder_width = 8.0_ft;
    const Plan wide = plan(site);
    CHECK(wide.elements[3].name == "shoulder_taper");
    CHECK(wide.elements[3].length.in(1.0_ft) == Approx(8.0 * 65.0 / 3.0));
    CHECK(wide.elements[4].name == "merging_taper");
    site.shoulder_width = 7.9_ft;
    CHECK(plan(site).elements[3].name == "merging_taper");
}

TEST_CASE("stretches follow each other without a gap and add up to the plan") {
    for (const Site& site : one_of_each_kind()) {
        const Plan p = plan(site);
        Length<> end;
        Count<> devices;
        for (const Element& e : p.elements) {
            CHECK(e.start.si() == Approx(end.si()));
            CHECK(e.devices >= 0.0_each);
            end += e.length;
            devices += e.devices;
        }
        CHECK(p.length.si() == Approx(end.si()));
        CHECK(p.devices == devices);
    }
}

TEST_CASE("removal runs against the traffic and takes the first sign last") {
    const Plan p = plan(freeway());
    CHECK(names(removal_order(p)) ==
          "downstream_taper work_space buffer merging_taper advance_warning_a advance_warning_b "
          "advance_warning_c");
    CHECK(removal_order(p).back().start == 0.0_ft);
}

TEST_CASE("signs stand on both sides of a divided road and before both ends of one lane") {
    CHECK(plan(rural(Kind::rural_lane)).advance_signs == 3);
    Site divided = rural(Kind::rural_lane);
    divided.divided = true;
    CHECK(plan(divided).advance_signs == 6);
    CHECK(plan(freeway()).advance_signs == 6);
    const Plan flagged = plan(rural(Kind::one_lane_two_way));
    CHECK(flagged.advance_signs == 6);
    CHECK(flagged.opposite_approach.in(1.0_ft) == Approx(1500.0));
    CHECK(flagged.flaggers == 2);
    CHECK(plan(freeway()).opposite_approach == 0.0_ft);
}

TEST_CASE("boards and shadow vehicles go with the lanes closed") {
    const Plan two = plan(freeway(Kind::two_freeway_lanes));
    CHECK(two.arrow_boards == 2);
    CHECK(two.shadow_vehicles == 2);
    Site three = freeway(Kind::two_freeway_lanes);
    three.lanes_closed = 3;
    CHECK(plan(three).arrow_boards == 3);
    // One more taper of 12 x 65 ft and the tangent of twice that before it.
    CHECK((plan(three).length - two.length).in(1.0_ft) == Approx(3.0 * 12.0 * 65.0));
}

TEST_CASE("faster traffic, a wider lane or a longer job never make a closure shorter") {
    for (const Site& site : one_of_each_kind()) {
        for (double mph = 20.0; mph < 75.0; mph += 1.0) {
            Site here = site;
            here.speed = mph * 1.0_mph;
            const Length<> length = plan(here).length;
            Site faster = here;
            faster.speed = (mph + 1.0) * 1.0_mph;
            CHECK(plan(faster).length >= length);
            Site wider = here;
            wider.lane_width = 14.0_ft;
            wider.shoulder_width = 10.0_ft;
            CHECK(plan(wider).length >= length);
            Site longer = here;
            longer.work_length = 2.0 * here.work_length;
            CHECK(plan(longer).length >= length);
            CHECK(plan(longer).devices >= plan(here).devices);
        }
    }
}

TEST_CASE("work off the road has a sign each way, or none where it is far enough") {
    Site site = rural(Kind::off_road);
    const Plan near = plan(site);
    CHECK(names(near.elements) == "advance_warning_a work_space");
    CHECK(near.advance_signs == 2);
    CHECK(number(near.devices) == 0.0);
    site.set_back = 15.0_ft;
    const Plan far = plan(site);
    CHECK(names(far.elements) == "work_space");
    CHECK(far.advance_signs == 0);
    // Omitted more than 2 ft behind the curb: California 2026, 6B.04.
    CHECK_FALSE(advance_warning_may_be_omitted(2.0_ft, true));
    CHECK(advance_warning_may_be_omitted(2.1_ft, true));
    CHECK_FALSE(advance_warning_may_be_omitted(2.1_ft, false));
    CHECK(refusal([] { advance_warning_may_be_omitted(-1.0 * 1.0_ft, false); }).id() ==
          "closure.set_back");
}

TEST_CASE("every plan says that it is a starting point, and what it leaves open") {
    for (const Site& site : one_of_each_kind()) {
        CHECK(plan(site).cautions.front() == plan_caution);
    }
    const Plan between = plan(rural(Kind::rural_lane, 42.0_mph));
    REQUIRE(between.cautions.size() == 2);
    CHECK(between.cautions[1].find("between 40 and 45 mph") != std::string_view::npos);
    CHECK(plan(rural(Kind::one_lane_two_way, 42.0_mph)).cautions.size() == 1);
    CHECK(plan(rural(Kind::full_closure)).cautions.size() == 2);
}

TEST_CASE("sites that cannot be are refused by field") {
    const auto refused = [](auto change, const char* id) {
        Site site = rural(Kind::rural_lane);
        change(site);
        CHECK(refusal([&] { plan(site); }).id() == id);
    };
    refused([](Site& s) { s.speed = 0.0_mph; }, "closure.speed");
    refused([](Site& s) { s.lane_width = 0.0_ft; }, "closure.lane_width");
    refused([](Site& s) { s.shoulder_width = -1.0 * 1.0_ft; }, "closure.shoulder_width");
    refused([](Site& s) { s.work_length = Length<>(std::numeric_limits<double>::infinity()); },
            "closure.work_length");
    refused([](Site& s) { s.lanes_closed = -1; }, "closure.lanes_closed");
    refused([](Site& s) { s.downgrade = 5.0; }, "closure.downgrade");
    refused(
        [](Site& s) {
            s.kind = Kind::one_lane_two_way;
            s.lanes_closed = 2;
        },
        "closure.lanes_closed");
    refused(
        [](Site& s) {
            s.kind = Kind::shoulder;
            s.shoulder_width = 0.0_ft;
        },
        "closure.shoulder_width");
}

} // namespace test_plan
