// What the national specification of 2022 tells beyond the old record reaches the take-off.

#include "records.hpp"

#include <cmath>
#include <string>

using namespace records;

namespace {

constexpr double foot = factor::foot;

std::string rule_of(const Inferred& inferred, std::size_t dimension) {
    const std::string& source = inferred.dimensions[dimension].origin->source;
    return source.substr(0, source.find(':'));
}

double guess(const Inferred& inferred, std::size_t dimension) {
    return inferred.dimensions[dimension].guess.likely;
}

/// One span of prestressed boxes, invented.
Structure boxes(char layout, int lines) {
    Structure s = record({62.0 * foot, 32.0 * foot, 30.0 * foot, 60.0 * foot, 1},
                         Material::prestressed, Design::box_multiple, 1976);
    s.codes.beam_layout = layout;
    s.codes.beam_lines = lines;
    return s;
}

} // namespace

TEST_CASE("beam lines: the girders are as many as recorded, evenly spaced, whatever is drawn") {
    Structure s = yardstick();
    s.codes.beam_lines = 6;
    const Inferred i = infer(s);
    CHECK(likely_quantities(s)[slot("girder_count")] == 6.0);
    CHECK(i.counted[slot("girder_count")] == 6.0);
    CHECK(basis_of(i, slot("girder_count")) == Basis::recorded);
    CHECK(rule_of(i, dimension("girder.spacing")) == "girder.spacing.counted");
    CHECK(guess(i, dimension("girder.spacing")) == Approx((11.0 - 2.0 * 0.9) / 5.0));
    s.codes.beam_lines = no_code;
    CHECK(std::isnan(infer(s).counted[slot("girder_count")]));
    CHECK(basis_of(infer(s), slot("girder_count")) != Basis::recorded);
}

TEST_CASE("beam lines of the approaches count where these make up most of the length") {
    Structure s =
        record({300.0, 11.0, 9.75, 60.0, 2}, Material::steel, Design::truss_through, 1950);
    s.codes.beam_lines = 2;
    s.codes.approach_spans = 9;
    s.codes.approach_material = Material::steel;
    s.codes.approach_design = Design::multi_beam;
    s.codes.approach_beam_lines = 7;
    CHECK(likely_quantities(s)[slot("girder_count")] == 7.0);
}

TEST_CASE("lines nobody can count are not recorded: slabs, no lines, more than any deck has") {
    Structure s = pinal_creek();
    s.codes.beam_lines = 4;
    CHECK(likely_quantities(s)[slot("girder_count")] == 0.0);
    s = yardstick();
    for (const int lines : {0, 5000}) {
        s.codes.beam_lines = lines;
        CHECK(std::isnan(infer(s).counted[slot("girder_count")]));
        CHECK(likely_quantities(s)[slot("girder_count")] == 5.0);
    }
}

// Geometry: of boxes side by side the soffits and the two fascias show, of boxes apart all sides.
TEST_CASE("boxes side by side show soffits and two fascias, boxes apart all their sides") {
    const double length = 62.0 * foot;
    for (const int lines : {7, 8, 10}) {
        const Structure s = boxes('A', lines);
        const Inferred i = infer(s);
        const Quantities<double> q = likely_quantities(s);
        const double depth = guess(i, dimension("girder.depth"));
        CHECK(i.shape.outline == Outline::adjacent_box);
        CHECK(q[slot("girder_count")] == lines);
        CHECK(q[slot("girder_area")] == Approx(length * (32.0 * foot + 2.0 * depth)));
    }
    const Structure s = boxes('S', 4);
    const Inferred i = infer(s);
    const Quantities<double> q = likely_quantities(s);
    CHECK(i.shape.outline == Outline::spread_box);
    CHECK(q[slot("girder_count")] == 4.0);
    const double depth = guess(i, dimension("girder.depth"));
    CHECK(q[slot("girder_area")] == Approx(length * 4.0 * (2.0 * depth + 4.0 * foot)));
    CHECK(q[slot("soffit_overhang_area")] > 0.0);
}

// Source: FHWA-PD-96-001 (1995), item 43B: 05 multiple, 06 single or spread.
TEST_CASE("item 43B = 06: precast spans are spread boxes, long or continuous ones a single box") {
    Structure s = boxes(' ', no_code);
    CHECK(infer(s).shape.outline == Outline::adjacent_box);
    s.codes.design = Design::box_single;
    CHECK(infer(s).shape.outline == Outline::spread_box);
    s.codes.beam_layout = '1';
    CHECK(infer(s).shape.outline == Outline::box_girder);
    s.codes.beam_layout = ' ';
    s.codes.material = Material::prestressed_continuous;
    CHECK(infer(s).shape.outline == Outline::box_girder);
    s.codes.material = Material::prestressed;
    s.dimensions.length = s.dimensions.longest_span = Length<>(60.0);
    CHECK(infer(s).shape.outline == Outline::box_girder);
}

TEST_CASE("units of the substructure: piers and abutments as recorded") {
    Structure s = yardstick();
    s.codes.pier_units = 3;
    s.codes.abutment_units = 1;
    const Inferred i = infer(s);
    const Quantities<double> q = likely_quantities(s);
    CHECK(q[slot("cap_count")] == 3.0);
    CHECK(basis_of(i, slot("cap_count")) == Basis::recorded);
    CHECK(q[slot("seat_area")] == Approx(0.5 * likely_quantities(yardstick())[slot("seat_area")]));
    s.codes.pier_units = 40; // more than three spans can stand on
    CHECK(likely_quantities(s)[slot("cap_count")] == 2.0);
    s.codes.pier_units = 0;
    CHECK(likely_quantities(s)[slot("column_area")] == 0.0);
}

TEST_CASE("rated N: no bearings, no joints, no railings; a rated joint is there") {
    Structure s = yardstick();
    s.codes.bearing_condition = s.codes.joint_condition = s.codes.railing_condition = 'N';
    const Quantities<double> q = likely_quantities(s);
    for (const Slot none : {slot("bearing_count"), slot("joint_count"), slot("joint_length"),
                            slot("rail_length"), slot("parapet_length")}) {
        CHECK(q[none] == 0.0);
    }
    CHECK(infer(s).dimensions[dimension("joint.count")].basis == Basis::recorded);
    s = creek();
    CHECK(infer(s).dimensions[dimension("joint.count")].guess.low == 0.0);
    s.codes.joint_condition = '4';
    CHECK(infer(s).dimensions[dimension("joint.count")].guess.low == 1.0);
}

TEST_CASE("the greatest height tells how high columns may be, where no clearance does") {
    Structure s = river();
    CHECK(rule_of(infer(s), dimension("column.height")) == "column.height.assumed");
    s.dimensions.height = Length<>(20.0);
    const Inferred i = infer(s);
    CHECK(rule_of(i, dimension("column.height")) == "column.height.height");
    CHECK(i.dimensions[dimension("column.height")].basis == Basis::inferred);
    const double above = guess(i, dimension("girder.depth")) + guess(i, dimension("cap.depth"));
    CHECK(i.dimensions[dimension("column.height")].guess.high == Approx(20.0 - above));
    CHECK_FALSE(i.untold[slot("berm_area")]);
    CHECK(infer_clearance(s).guess.high < 20.0);
    s.dimensions.height = Length<>(1.0); // less than the girders: no column is negative
    CHECK(infer(s).dimensions[dimension("column.height")].guess.low >= 0.0);
    s = yardstick();
    s.dimensions.height = Length<>(20.0);
    CHECK(rule_of(infer(s), dimension("column.height")) == "column.height.clearance");
}

TEST_CASE("an irregular deck has its recorded area; its edges stay as wide as they are") {
    Structure s = yardstick();
    s.irregular_deck_area = 800.0;
    const Quantities<double> q = likely_quantities(s);
    CHECK(q[slot("deck_total_area")] == Approx(800.0));
    CHECK(q[slot("deck_top_area")] == Approx(800.0 - 61.0 * (11.0 - 9.75)));
    CHECK(basis_of(infer(s), slot("deck_total_area")) == Basis::recorded);
    s.irregular_deck_area = 1e6; // some other deck's
    CHECK(likely_quantities(s)[slot("deck_total_area")] == Approx(61.0 * 11.0));
}
