#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <cmath>
#include <string>

using namespace scupper;

namespace test_structure {

namespace {

/// Every field has a value of its own.
Structure filled() {
    Structure s;
    s.state = "99";
    s.id = "TC-1 \"x\"";
    s.number = " TC-1";
    s.carries = "Stra\xc3\x9f"
                "e";
    s.crosses = "CREEK";
    s.location = "1 MI N";
    s.district = "02";
    s.route = "00007";
    s.border_state = "98";
    s.border_number = "B-1";
    s.owner_code = "S01";
    s.abutment_type = "A01";
    s.pier_type = "P02";
    s.irregular_deck_area = 1.0 / 7.0;
    s.operating_rating = 55.2;
    s.inventory_rating = 1.0 / 9.0;
    s.line = 7;
    s.latitude = 45.1;
    s.longitude = -93.2;
    s.recorded_deck_area = 0.1 + 0.2;
    double length = 1.0 / 3.0;
    RecordedDimensions& d = s.dimensions;
    for (Length<>* x : {&d.length, &d.longest_span, &d.deck_width, &d.roadway_width,
                        &d.approach_width, &d.left_walk_width, &d.right_walk_width,
                        &d.clearance_over, &d.clearance_under, &d.navigation_clearance, &d.detour,
                        &d.navigation_width, &d.lift_clearance, &d.route_clearance, &d.route_width,
                        &d.right_clearance_under, &d.left_clearance_under, &d.height}) {
        *x = Length<>(length);
        length += 1.0;
    }
    d.skew = Angle<>(0.3);
    RecordedCodes& c = s.codes;
    c.material = Material::prestressed;
    c.design = Design::channel_beam;
    c.approach_material = Material::other;
    c.approach_design = Design::slab;
    c.below = Below::railroad;
    int code = 1;
    for (int* x : {&c.main_spans,
                   &c.approach_spans,
                   &c.lanes_on,
                   &c.lanes_under,
                   &c.daily_traffic,
                   &c.traffic_year,
                   &c.truck_percent,
                   &c.year_built,
                   &c.year_reconstructed,
                   &c.service_on,
                   &c.service_under,
                   &c.functional_class,
                   &c.traffic_direction,
                   &c.median,
                   &c.flared,
                   &c.owner,
                   &c.maintained_by,
                   &c.county,
                   &c.navigation,
                   &c.inspection_year,
                   &c.inspection_month,
                   &c.route_prefix,
                   &c.service_level,
                   &c.route_direction,
                   &c.toll,
                   &c.pier_protection,
                   &c.border_percent,
                   &c.future_traffic,
                   &c.future_traffic_year,
                   &c.inspection_interval,
                   &c.beam_lines,
                   &c.approach_beam_lines,
                   &c.pier_units,
                   &c.abutment_units}) {
        *x = code++;
    }
    char letter = 'A';
    for (char* x : {&c.posting,
                    &c.posting_evaluation,
                    &c.deck_type,
                    &c.surface_type,
                    &c.deck_condition,
                    &c.superstructure_condition,
                    &c.substructure_condition,
                    &c.culvert_condition,
                    &c.parallel,
                    &c.on_national_system,
                    &c.channel_condition,
                    &c.scour,
                    &c.railing,
                    &c.lateral_reference,
                    &c.temporary,
                    &c.national_length,
                    &c.design_load,
                    &c.operating_method,
                    &c.inventory_method,
                    &c.beam_layout,
                    &c.approach_beam_layout,
                    &c.railing_condition,
                    &c.bearing_condition,
                    &c.joint_condition}) {
        *x = letter++;
    }
    s.given = {{"quantity[drain_count].given", certain(4.0, Basis::measured)},
               {"deck.length", between(10.0, 11.1, 12.0, Basis::element)}};
    return s;
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_structure(text, "record");
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

} // namespace

TEST_CASE("a record written and read back is the same record, to the bit") {
    const Structure s = filled();
    const std::string once = json::write_structure(s);
    const Structure again = json::read_structure(once, "again");
    CHECK(json::write_structure(again) == once);
    CHECK(again.carries == s.carries);
    CHECK(again.owner_code == s.owner_code);
    CHECK(again.dimensions.height.si() == s.dimensions.height.si());
    CHECK(again.codes.joint_condition == s.codes.joint_condition);
    CHECK(again.inventory_rating == s.inventory_rating);
    CHECK(again.number == s.number);
    CHECK(again.line == s.line);
    CHECK(again.recorded_deck_area == s.recorded_deck_area);
    CHECK(again.dimensions.length.si() == s.dimensions.length.si());
    CHECK(again.dimensions.detour.si() == s.dimensions.detour.si());
    CHECK(again.dimensions.skew.si() == s.dimensions.skew.si());
    CHECK(again.codes.material == Material::prestressed);
    CHECK(again.codes.approach_material == Material::other);
    CHECK(again.codes.below == Below::railroad);
    CHECK(again.codes.main_spans == 1);
    CHECK(again.codes.inspection_month == 21);
    CHECK(again.codes.on_national_system == 'J');
    REQUIRE(again.given.size() == 2);
    CHECK(again.given[0].key == "deck.length");
    CHECK(again.given[0].value.guess.likely == 11.1);
    CHECK(again.given[0].value.basis == Basis::element);
}

TEST_CASE("what is not recorded is null, and null or nothing is not recorded") {
    const std::string text = json::write_structure(Structure{});
    CHECK(text.find("\"deck_width\": null") != std::string::npos);
    CHECK(text.find("\"posting\": null") != std::string::npos);
    for (const Structure& s :
         {json::read_structure(text, "record"), json::read_structure("{}", "record")}) {
        CHECK(std::isnan(s.dimensions.deck_width.si()));
        CHECK(std::isnan(s.latitude));
        CHECK(s.codes.lanes_on == no_code);
        CHECK(s.codes.posting == ' ');
        CHECK(s.codes.design == Design::unknown);
        CHECK(s.codes.below == Below::unknown);
    }
}

TEST_CASE("every material and design has a word of its own") {
    for (int code = 0; code <= 22; ++code) {
        Structure s;
        s.codes.design = static_cast<Design>(code);
        s.codes.material = code <= 9 ? static_cast<Material>(code) : Material::unknown;
        const Structure again = json::read_structure(json::write_structure(s), "again");
        CHECK(again.codes.design == s.codes.design);
        CHECK(again.codes.material == s.codes.material);
    }
}

TEST_CASE("a record that cannot be used is refused, naming the field") {
    CHECK(refused<FileError>("{").id() == "json.text");
    CHECK(refused<UnknownNameError>(R"({"lenght": "3 m"})").allowed() == "\"length\"?");
    CHECK(refused<UnitError>(R"({"length": "3 s"})").path() == "record.length");
    CHECK(refused<UnitError>(R"({"length": 3})").id() == "unit.missing");
    CHECK(refused<InputError>(R"({"design": "tent"})").path() == "record.design");
    CHECK(refused<InputError>(R"({"lanes_on": 1.5})").path() == "record.lanes_on");
    CHECK(refused<InputError>(R"({"lanes_on": 99999999999})").path() == "record.lanes_on");
    CHECK(refused<InputError>(R"({"lanes_on": -2})").path() == "record.lanes_on");
    CHECK(refused<InputError>(R"({"line": -1})").path() == "record.line");
    CHECK(refused<InputError>(R"({"posting": "AB"})").path() == "record.posting");
    CHECK(refused<InputError>("[]").id() == "json.type");
}

TEST_CASE("text that is no UTF-8 is refused") {
    Structure s;
    s.carries = "\xff";
    CHECK_THROWS_AS(json::write_structure(s), InputError);
}

} // namespace test_structure
