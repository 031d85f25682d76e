// Order and places of what stands on the road.

#include "catch.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;

namespace {

Site site_of(Kind kind) {
    Site site;
    site.speed = 55.0_mph;
    site.kind = kind;
    site.shoulder_width = 6.0_ft;
    site.work_length = 400.0_ft;
    return site;
}

std::string names(const std::vector<Placing>& order) {
    std::string text;
    for (const Placing& p : order) {
        text += (text.empty() ? "" : " ") + std::string(p.what);
    }
    return text;
}

double count(const std::vector<Placed>& places, std::string_view what) {
    return static_cast<double>(std::count_if(places.begin(), places.end(),
                                             [&](const Placed& p) { return p.what == what; }));
}

} // namespace

TEST_CASE("the first sign goes up first, the board is lit before the taper") {
    const Plan p = plan(site_of(Kind::rural_lane));
    CHECK(names(placing_order(p)) ==
          "advance_sign_c advance_sign_b advance_sign_a shadow_vehicle arrow_board merging_taper "
          "buffer work_space downstream_taper");
    CHECK(names(taking_order(p)).ends_with("advance_sign_a advance_sign_b advance_sign_c"));
    const Plan flagged = plan(site_of(Kind::one_lane_two_way));
    CHECK(names(placing_order(flagged)) ==
          "advance_sign_c advance_sign_b advance_sign_a advance_sign_c advance_sign_b "
          "advance_sign_a flagger one_lane_two_way_taper buffer work_space downstream_taper");
}

TEST_CASE("the list holds every sign, device, board, vehicle and flagger of the plan, and so does "
          "the picture") {
    for (std::size_t i = 0; i < closure_kind_names.size(); ++i) {
        for (const bool divided : {false, true}) {
            Site site = site_of(static_cast<Kind>(i));
            site.divided = divided;
            const Plan p = plan(site);
            INFO(closure_kind_names[i]);
            double signs = 0.0;
            double devices = 0.0;
            for (const Placing& step : placing_order(p)) {
                signs += step.what.starts_with("advance_sign") ? number(step.pieces) : 0.0;
                devices += step.length > 0.0_ft ? number(step.pieces) : 0.0;
            }
            CHECK(signs == p.advance_signs);
            CHECK(devices == number(p.devices));
            const std::vector<Placed> all = places(p);
            CHECK(count(all, "sign") == p.advance_signs);
            CHECK(count(all, "device") == number(p.devices));
            CHECK(count(all, "arrow_board") == p.arrow_boards);
            CHECK(count(all, "shadow_vehicle") == p.shadow_vehicles);
            CHECK(count(all, "flagger") == p.flaggers);
        }
    }
}

TEST_CASE("devices run from the edge to the lane line and back") {
    const Plan p = plan(site_of(Kind::rural_lane));
    const std::vector<Placed> all = places(p);
    Length<> left;
    for (const Placed& place : all) {
        if (place.what == "device") {
            left = max_of(left, place.offset);
            CHECK(place.station >= 1500.0_ft * (1.0 - 1e-12));
            CHECK(place.station <= p.length * (1.0 + 1e-12));
        }
    }
    CHECK(left.in(1.0_ft) == Approx(12.0));
    CHECK(all.back().offset.in(1.0_ft) == Approx(0.0).margin(1e-9));
}

TEST_CASE("a shadow vehicle keeps its roll-ahead room before the work space (from memory)") {
    const Plan p = plan(site_of(Kind::rural_lane));
    for (const Placed& place : places(p)) {
        if (place.what == "shadow_vehicle") {
            const Element& work = p.elements.at(p.elements.size() - 2);
            CHECK((work.start - place.station).in(1.0_ft) == Approx(100.0));
        }
    }
    CHECK(roll_ahead(45.0_mph) == 75.0_ft);
    CHECK(roll_ahead(65.0_mph) == 150.0_ft);
    CHECK_THROWS_AS(roll_ahead(0.0_mph), InputError);
}

TEST_CASE("a picture shows the closed lanes and one more at least") {
    CHECK(lanes_shown(plan(site_of(Kind::two_freeway_lanes))) == 3);
    Site four = site_of(Kind::rural_lane);
    four.lanes = 4;
    CHECK(lanes_shown(plan(four)) == 4);
}
