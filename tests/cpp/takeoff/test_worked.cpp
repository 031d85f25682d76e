// Three worked examples, computed by hand, with every dimension given.

#include "records.hpp"

using namespace records;
using namespace scupper::literals;
using reference::Row;

namespace {

/// What the example leaves out is not there.
double stated(const Row& row, const char* input) {
    return row.has(input) ? row[input] : 0.0;
}

Dimensions<double> dimensions_of(const Row& row) {
    Dimensions<double> d;
    d.deck_length = row["length_ft"] * 1.0_ft;
    d.deck_width = row["width_ft"] * 1.0_ft;
    d.roadway_width = row["roadway_ft"] * 1.0_ft;
    d.joint_count = Count<>(row["joints"]);
    d.girder_spacing = 8.0_ft;
    // A girth measured as one figure: a face of that width and no depth.
    d.flange_width = row["girth_ft"] * 1.0_ft;
    d.girder_end_length = row["end_ft"] * 1.0_ft;
    d.bearings_per_line = Count<>(row["bearings_per_line"]);
    d.diaphragm_spacing = 20.0_ft;
    d.column_spacing = 15.0_ft;
    d.abutment_height = row["stem_ft"] * 1.0_ft;
    d.back_wall_height = row["back_wall_ft"] * 1.0_ft;
    d.seat_width = row["seat_ft"] * 1.0_ft;
    d.cap_width = stated(row, "cap_width_ft") * 1.0_ft;
    d.cap_depth = stated(row, "cap_depth_ft") * 1.0_ft;
    d.skew = stated(row, "skew_deg") * 1.0_deg;
    d.parapet_share = stated(row, "parapet_share");
    if (row.has("rail_ft")) {
        d.rail_share = row["rail_ft"] / (2.0 * row["length_ft"]);
    }
    return d;
}

Shape shape_of(const Row& row) {
    Shape s;
    s.spans = static_cast<int>(row["spans"]);
    s.units = static_cast<int>(row["units"]);
    s.piers = s.spans - 1;
    s.has_caps = s.piers > 0;
    s.flange_faces = 1;
    return s;
}

Given<double> given_of(const Row& row) {
    Given<double> given;
    given.set(slot("girder_count"), row["girders"]);
    if (row.has("caps")) {
        given.set(slot("cap_count"), row["caps"]);
    }
    if (row.has("drains")) {
        given.set(slot("drain_count"), row["drains"]);
    } else {
        given.set(slot("drain_free_count"), row["drain_free"]);
        given.set(slot("drain_clogged_count"), row["drain_clogged"]);
        given.set(slot("drain_frozen_count"), row["drain_frozen"]);
    }
    return given;
}

} // namespace

TEST_CASE("worked examples A, B and C: every quantity as computed by hand") {
    for (const Row& row : rows("worked")) {
        INFO(row.text("id"));
        const Quantities<double> q = take_off(shape_of(row), dimensions_of(row), given_of(row));
        const Slot found = find_slot(row.text("quantity"));
        REQUIRE(found < slot_table.size());
        CHECK(q[found] / to_unit(row.text("unit")) == Approx(row.expected()).epsilon(1e-12));
    }
}
