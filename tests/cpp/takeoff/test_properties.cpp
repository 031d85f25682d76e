// Random records of every kind, with anything missing: nothing crashes, nothing is negative.

#include "records.hpp"

#include <cmath>

using namespace records;

namespace {

constexpr std::array<double, 6> odd{not_recorded, 0.0, -3.0, 1e9, 99.99, 0.01};

double maybe(Numbers& n, double low, double high) {
    return n.next() < 0.25 ? odd[static_cast<std::size_t>(n.below(6))] : n.between(low, high);
}

Material any_material(Numbers& n) {
    const int code = n.below(11);
    return code == 10 ? Material::unknown : static_cast<Material>(code);
}

Design any_design(Numbers& n) {
    const int code = n.below(24);
    return code == 23 ? Design::unknown : static_cast<Design>(code);
}

Structure any_record(Numbers& n) {
    Structure s;
    RecordedDimensions& d = s.dimensions;
    for (Length<>* length : {&d.length, &d.longest_span}) {
        *length = Length<>(maybe(n, 6.0, 600.0));
    }
    for (Length<>* width : {&d.deck_width, &d.roadway_width, &d.approach_width}) {
        *width = Length<>(maybe(n, 3.0, 40.0));
    }
    d.left_walk_width = Length<>(maybe(n, 0.0, 3.0));
    d.right_walk_width = Length<>(maybe(n, 0.0, 3.0));
    d.skew = Angle<>(maybe(n, 0.0, 1.4));
    d.clearance_under = Length<>(maybe(n, 3.0, 30.0));
    d.navigation_clearance = Length<>(maybe(n, 3.0, 30.0));
    s.codes.material = any_material(n);
    s.codes.design = any_design(n);
    s.codes.approach_material = any_material(n);
    s.codes.approach_design = any_design(n);
    s.codes.below = static_cast<Below>(n.below(4));
    s.codes.main_spans = n.below(12) - 1;
    s.codes.approach_spans = n.below(6) - 1;
    s.codes.year_built = n.below(3) == 0 ? no_code : 1880 + n.below(140);
    s.codes.median = n.below(5) - 1;
    s.codes.deck_type = "123456789N "[n.below(11)];
    return s;
}

/// A record all of whose items can be used, so that one of them may be changed.
Structure sound_record(Numbers& n) {
    Structure s = any_record(n);
    s.dimensions = {};
    s.dimensions.length = Length<>(n.between(40.0, 400.0));
    s.dimensions.longest_span = Length<>(n.between(10.0, 40.0));
    s.dimensions.deck_width = Length<>(n.between(6.0, 30.0));
    s.dimensions.roadway_width = s.dimensions.deck_width * 0.8;
    s.dimensions.skew = Angle<>(n.between(0.0, 1.0));
    s.codes.main_spans = 2 + n.below(3);
    s.codes.approach_spans = n.below(3);
    while (s.codes.design == Design::culvert || s.codes.design == Design::tunnel) {
        s.codes.design = any_design(n);
    }
    return s;
}

void check_dimensions(const Inferred& inferred) {
    for (std::size_t i = 0; i < dimension_count; ++i) {
        INFO(input_table[i].group << "." << input_table[i].field);
        const ThreePoint& p = inferred.dimensions[i].guess;
        const bool in_order = p.low <= p.likely && p.likely <= p.high;
        const bool in_bounds = p.low >= input_table[i].least && p.high <= input_table[i].greatest;
        REQUIRE(in_order);
        REQUIRE(in_bounds);
    }
}

void check_quantities(const Quantities<double>& q) {
    for (Slot k = 0; k < slot_table.size(); ++k) {
        INFO(slot_table[k].key << " " << q[k]);
        const bool fine = std::isfinite(q[k]) && q[k] >= 0.0;
        REQUIRE(fine);
    }
}

} // namespace

TEST_CASE("any record: dimensions in order and bounds, quantities finite and not negative") {
    Numbers n(7);
    int bridges = 0;
    for (int round = 0; round < 20000; ++round) {
        const Structure s = any_record(n);
        const Inferred inferred = infer(s);
        check_dimensions(inferred);
        for (const double at : {0.0, 0.5, 1.0}) {
            check_quantities(take_off(inferred.shape, pick(inferred, [at](const ThreePoint& p) {
                                          return p.low + at * (p.high - p.low);
                                      })));
        }
        bridges += inferred.verdict == Verdict::bridge ? 1 : 0;
        CHECK((inferred.verdict == Verdict::bridge) == inferred.shape.washable);
    }
    CHECK(bridges > 10000);
}

TEST_CASE("drains by state add up to the drains, whatever the shares") {
    Numbers n(11);
    for (int round = 0; round < 500; ++round) {
        const Inferred inferred = infer(sound_record(n));
        Dimensions<double> d = likely(inferred);
        d.clogged_share = n.next();
        d.frozen_share = n.next();
        const Quantities<double> q = take_off(inferred.shape, d);
        REQUIRE(q[slot("drain_free_count")] + q[slot("drain_clogged_count")] +
                    q[slot("drain_frozen_count")] ==
                Approx(q[slot("drain_count")]).margin(1e-12));
    }
}

TEST_CASE("quantities grow with the length and the width") {
    Numbers n(13);
    for (int round = 0; round < 500; ++round) {
        const Inferred inferred = infer(sound_record(n));
        const Dimensions<double> small = drawn(inferred, n);
        Dimensions<double> longer = small;
        longer.deck_length = small.deck_length * 1.3;
        Dimensions<double> wider = small;
        wider.deck_width = small.deck_width * 1.3;
        wider.roadway_width = small.roadway_width * 1.3;
        const Quantities<double> base = take_off(inferred.shape, small);
        const Quantities<double> by_length = take_off(inferred.shape, longer);
        const Quantities<double> by_width = take_off(inferred.shape, wider);
        for (Slot k = 0; k < slot_table.size(); ++k) {
            INFO(slot_table[k].key);
            REQUIRE(by_length[k] >= base[k]);
            REQUIRE(by_width[k] >= base[k]);
        }
    }
}

TEST_CASE("lengths times s: areas of the deck grow by s squared, counts of drains by s") {
    Numbers n(17);
    for (int round = 0; round < 100; ++round) {
        const Inferred inferred = infer(sound_record(n));
        const Dimensions<double> d = likely(inferred);
        Dimensions<double> twice = d;
        for (Length<double> Dimensions<double>::*length :
             {&Dimensions<double>::deck_length,        &Dimensions<double>::deck_width,
              &Dimensions<double>::roadway_width,      &Dimensions<double>::walk_width,
              &Dimensions<double>::overhang_width,     &Dimensions<double>::parapet_face_height,
              &Dimensions<double>::girder_spacing,     &Dimensions<double>::girder_depth,
              &Dimensions<double>::flange_width,       &Dimensions<double>::girder_end_length,
              &Dimensions<double>::cap_width,          &Dimensions<double>::cap_depth,
              &Dimensions<double>::column_spacing,     &Dimensions<double>::column_diameter,
              &Dimensions<double>::column_height,      &Dimensions<double>::abutment_height,
              &Dimensions<double>::berm_width,         &Dimensions<double>::slope_height,
              &Dimensions<double>::median_width,       &Dimensions<double>::downspout_length,
              &Dimensions<double>::diaphragm_spacing,  &Dimensions<double>::diaphragm_depth,
              &Dimensions<double>::seat_width,         &Dimensions<double>::wall_thickness,
              &Dimensions<double>::footing_projection, &Dimensions<double>::back_wall_height,
              &Dimensions<double>::wing_length}) {
            twice.*length = d.*length * 2.0;
        }
        const Quantities<double> q = take_off(inferred.shape, d);
        const Quantities<double> q2 = take_off(inferred.shape, twice);
        for (Slot k = 0; k < slot("downspout_length"); ++k) {
            INFO(slot_table[k].key);
            const Dimension dimension = slot_table[k].dimension;
            const double grows = dimension == dim::area                                     ? 4.0
                                 : dimension == dim::length                                 ? 2.0
                                 : k == slot("drain_count") || k == slot("drain_box_count") ? 2.0
                                                                                            : 1.0;
            REQUIRE(q2[k] == Approx(grows * q[k]));
        }
    }
}

TEST_CASE("what piers are not walls have columns") {
    Numbers n(31);
    for (int round = 0; round < 200; ++round) {
        const Inferred inferred = infer(sound_record(n));
        Dimensions<double> d = drawn(inferred, n);
        d.wall_share = 0.0;
        const Quantities<double> columns = take_off(inferred.shape, d);
        d.wall_share = 1.0;
        const Quantities<double> walls = take_off(inferred.shape, d);
        d.wall_share = 0.25;
        const Quantities<double> mixed = take_off(inferred.shape, d);
        REQUIRE(columns[slot("wall_pier_area")] == 0.0);
        REQUIRE(walls[slot("column_area")] == 0.0);
        REQUIRE(walls[slot("cap_area")] == Approx(walls[slot("cap_top_area")]));
        REQUIRE(mixed[slot("wall_pier_area")] == Approx(0.25 * walls[slot("wall_pier_area")]));
        REQUIRE(mixed[slot("column_area")] == Approx(0.75 * columns[slot("column_area")]));
        REQUIRE(mixed[slot("cap_count")] == columns[slot("cap_count")]);
    }
}

TEST_CASE("left and right walks may be exchanged") {
    Numbers n(19);
    for (int round = 0; round < 500; ++round) {
        Structure s = any_record(n);
        const Inferred one = infer(s);
        std::swap(s.dimensions.left_walk_width, s.dimensions.right_walk_width);
        const Inferred other = infer(s);
        const Quantities<double> q = take_off(one.shape, likely(one));
        REQUIRE(take_off(other.shape, likely(other)).by_slot == q.by_slot);
    }
}

TEST_CASE("the total is the fixed sum of its parts") {
    Numbers n(23);
    for (int round = 0; round < 500; ++round) {
        const Inferred inferred = infer(sound_record(n));
        const Quantities<double> q = take_off(inferred.shape, drawn(inferred, n));
        double sum = 0.0;
        for (const char* part :
             {"deck_top_area", "sidewalk_area", "median_area", "soffit_overhang_area",
              "parapet_area", "girder_area", "diaphragm_area", "cap_area", "column_area",
              "wall_pier_area", "footing_area", "seat_area", "abutment_area", "wing_wall_area",
              "berm_area", "slope_protection_area"}) {
            sum += q[find_slot(part)];
        }
        REQUIRE(q[slot("wash_area_total")] == Approx(sum).epsilon(1e-12));
        REQUIRE(q[slot("girder_end_area")] <= q[slot("girder_area")] * (1.0 + 1e-12));
        REQUIRE(q[slot("cap_top_area")] <= q[slot("cap_area")] * (1.0 + 1e-12));
        REQUIRE(q[slot("abutment_stem_area")] + q[slot("back_wall_area")] ==
                Approx(q[slot("abutment_area")]).epsilon(1e-12));
    }
}

TEST_CASE("a quantity moves only with the dimensions it is said to rest on") {
    Numbers n(29);
    for (int round = 0; round < 300; ++round) {
        const Inferred inferred = infer(sound_record(n));
        std::array<double, dimension_count> flat{};
        for (std::size_t i = 0; i < dimension_count; ++i) {
            flat[i] = inferred.dimensions[i].guess.mean();
        }
        const auto base = take_off(inferred.shape, dimensions_from<double>(flat));
        for (std::size_t i = 0; i < dimension_count; ++i) {
            std::array<double, dimension_count> moved = flat;
            moved[i] = 0.7 * flat[i] + 0.01;
            const auto q = take_off(inferred.shape, dimensions_from<double>(moved));
            for (Slot k = 0; k < slot_table.size(); ++k) {
                INFO(slot_table[k].key << " with " << input_table[i].group << "."
                                       << input_table[i].field);
                const bool explained = q[k] == base[k] || rests_on(k, i);
                REQUIRE(explained);
            }
        }
    }
}
