#include "catch.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"

#include <cstddef>

using namespace scupper;
using namespace scupper::closure;

TEST_CASE("every word of the schema names its closure or road class") {
    for (std::size_t i = 0; i < closure_kind_names.size(); ++i) {
        CHECK(static_cast<std::size_t>(kind_by_name(closure_kind_names[i])) == i);
    }
    for (std::size_t i = 0; i < road_class_names.size(); ++i) {
        CHECK(static_cast<std::size_t>(road_class_by_name(road_class_names[i])) == i);
    }
}

TEST_CASE("lines of the printed tables are road classes, however they are set") {
    CHECK(road_class_by_name("Urban (low speed)") == RoadClass::urban_low_speed);
    CHECK(road_class_by_name("Expressway / Freeway") == RoadClass::freeway);
    CHECK(road_class_by_name("Urban 25 mph or less") == RoadClass::urban_25_or_less);
    CHECK(road_class_by_name("urban over 25 to 40 mph") == RoadClass::urban_over_25_to_40);
    CHECK(road_class_by_name("URBAN 50 MPH OR MORE") == RoadClass::urban_50_or_more);
}

TEST_CASE("tapers and editions have names") {
    CHECK(taper_kind_by_name("merging") == TaperKind::merging);
    CHECK(taper_kind_by_name("One-lane, two-way") == TaperKind::one_lane_two_way);
    CHECK(taper_kind_by_name("downstream") == TaperKind::downstream);
    CHECK(edition_by_name("2009") == Edition::manual_2009);
    CHECK(edition_by_name("2023") == Edition::manual_2023);
    CHECK(edition_by_name("manual_2009") == Edition::manual_2009);
}

TEST_CASE("an unknown word is refused with the one probably meant") {
    CHECK_THROWS_AS(kind_by_name("closed"), UnknownNameError);
    CHECK(refusal([] { taper_kind_by_name("mergin"); }).allowed() == "merging");
    CHECK(refusal([] { edition_by_name("1988"); }).id() == "closure.edition");
    const InputError e = refusal([] { road_class_by_name(""); });
    CHECK(e.allowed().rfind("urban_low_speed, ", 0) == 0);
}
