// The order of the dimensions, given quantities, and the same numbers traced.

#include "records.hpp"
#include "scupper/traced.hpp"

using namespace records;

TEST_CASE("dimensions stand in the order of the input schema") {
    std::array<double, dimension_count> flat{};
    for (std::size_t i = 0; i < dimension_count; ++i) {
        flat[i] = static_cast<double>(i + 1);
    }
    const Dimensions<double> d = dimensions_from<double>(flat);
    const auto place = [](std::size_t index) { return static_cast<double>(index + 1); };
    CHECK(d.deck_length.si() == place(dimension("deck.length")));
    CHECK(d.skew.si() == place(dimension("deck.skew")));
    CHECK(d.median_width.si() == place(dimension("deck.median_width")));
    CHECK(d.pocket_share == place(dimension("deck.pocket_share")));
    CHECK(d.longest_span.si() == place(dimension("span.longest")));
    CHECK(d.joint_count.si() == place(dimension("joint.count")));
    CHECK(d.drains_per_length.si() == place(dimension("drain.per_length")));
    CHECK(d.box_share == place(dimension("drain.box_share")));
    CHECK(d.downspout_length.si() == place(dimension("drain.downspout_length")));
    CHECK(d.frozen_share == place(dimension("drain.frozen_share")));
    CHECK(d.parapet_share == place(dimension("parapet.share")));
    CHECK(d.girder_spacing.si() == place(dimension("girder.spacing")));
    CHECK(d.floor_factor == place(dimension("girder.floor_factor")));
    CHECK(d.diaphragm_depth.si() == place(dimension("diaphragm.depth")));
    CHECK(d.girder_end_length.si() == place(dimension("girder.end_length")));
    CHECK(d.cap_depth.si() == place(dimension("cap.depth")));
    CHECK(d.seat_width.si() == place(dimension("seat.width")));
    CHECK(d.wall_share == place(dimension("pier.wall_share")));
    CHECK(d.wall_thickness.si() == place(dimension("pier.wall_thickness")));
    CHECK(d.footing_exposed_share == place(dimension("footing.exposed_share")));
    CHECK(d.back_wall_height.si() == place(dimension("abutment.back_wall_height")));
    CHECK(d.wing_length.si() == place(dimension("abutment.wing_length")));
    CHECK(d.column_height.si() == place(dimension("column.height")));
    CHECK(d.pedestals_per_bearing == place(dimension("pedestal.per_bearing")));
    CHECK(d.slope_run == place(dimension("slope.run")));
}

TEST_CASE("double and traced agree to the bit, and every column is named") {
    for (const Structure& s : {yardstick(), creek(), river(), pinal_creek()}) {
        const Inferred i = infer(s);
        std::array<double, dimension_count> flat{};
        std::array<Traced, dimension_count> leaves;
        Recording recording;
        for (std::size_t k = 0; k < dimension_count; ++k) {
            flat[k] = i.dimensions[k].guess.mean();
            Label label;
            label.name = std::string(input_table[k].label);
            leaves[k] = Traced(flat[k], &recording, recording.leaf(flat[k], label));
        }
        const auto plain = take_off(i.shape, dimensions_from<double>(flat));
        const auto traced = take_off(i.shape, dimensions_from<Traced>(leaves));
        for (Slot k = 0; k < slot_table.size(); ++k) {
            INFO(slot_table[k].key);
            CHECK(traced[k].value() == plain[k]);
        }
        const Traced& area = traced[slot("girder_area")];
        const Label* label = recording.label(area.step_in(recording));
        REQUIRE(label != nullptr);
        CHECK(label->name == "girder surface, whole");
        CHECK(label->key == "takeoff[girder_area].quantity");
    }
}

TEST_CASE("a counted quantity reaches what rests on it") {
    const Inferred i = infer(yardstick());
    const Dimensions<double> d = likely(i);
    const Quantities<double> before = take_off(i.shape, d);
    Given<double> given;
    given.set(slot("girder_count"), 10.0);
    given.set(slot("joint_count"), 2.0);
    given.set(slot("drain_count"), 8.0);
    given.set(slot("cap_count"), 4.0);
    const Quantities<double> after = take_off(i.shape, d, given);
    CHECK(after[slot("bearing_count")] == 2.0 * before[slot("bearing_count")]);
    CHECK(after[slot("pedestal_count")] == 2.0 * before[slot("pedestal_count")]);
    CHECK(after[slot("girder_area")] == Approx(2.0 * before[slot("girder_area")]));
    CHECK(after[slot("girder_end_area")] ==
          Approx(2.0 * before[slot("girder_end_area")] * 2.0 / 6.0));
    CHECK(after[slot("joint_length")] == Approx(before[slot("joint_length")] / 2.0));
    CHECK(after[slot("cap_area")] == Approx(2.0 * before[slot("cap_area")]));
    CHECK(after[slot("column_count")] == 2.0 * before[slot("column_count")]);
    CHECK(after[slot("drain_clogged_count")] == Approx(1.6));
    const auto growth = [&](const char* part) {
        return after[find_slot(part)] - before[find_slot(part)];
    };
    CHECK(after[slot("wash_area_total")] - before[slot("wash_area_total")] ==
          Approx(growth("girder_area") + growth("cap_area") + growth("column_area") +
                 growth("wall_pier_area") + growth("footing_area")));
    CHECK(after[slot("cap_top_area")] == Approx(2.0 * before[slot("cap_top_area")]));
    CHECK(after[slot("girder_end_count")] == 20.0);
}

TEST_CASE("no drains stay no drains; drains counted by state add up") {
    const Inferred i = infer(yardstick());
    const Dimensions<double> d = likely(i);
    Given<double> none;
    none.set(slot("drain_count"), 0.0);
    const Quantities<double> q = take_off(i.shape, d, none);
    CHECK(q[slot("drain_count")] == 0.0);
    CHECK(q[slot("drain_free_count")] == 0.0);
    CHECK(q[slot("drain_frozen_count")] == 0.0);
    CHECK(q[slot("drain_box_count")] == 0.0);
    CHECK(q[slot("downspout_length")] == 0.0);
    Given<double> by_state;
    by_state.set(slot("drain_free_count"), 3.0);
    by_state.set(slot("drain_clogged_count"), 1.0);
    by_state.set(slot("drain_frozen_count"), 0.0);
    CHECK(take_off(i.shape, d, by_state)[slot("drain_count")] == 4.0);
}
