// What each rule does where an item is recorded, zero, missing or impossible.

#include "records.hpp"

using namespace records;

namespace {

Uncertain at(const Inferred& i, std::size_t index) {
    return i.dimensions[index];
}

std::string rule_of(const Uncertain& value) {
    return value.origin->source.substr(0, value.origin->source.find(':'));
}

} // namespace

TEST_CASE("culverts, tunnels, buried structures and empty records are recognised") {
    Structure s = yardstick();
    s.codes.design = Design::culvert;
    CHECK(infer(s).verdict == Verdict::culvert);
    s.codes.design = Design::tunnel;
    CHECK(infer(s).verdict == Verdict::tunnel);
    s = yardstick();
    s.dimensions.deck_width = Length<>(0.0);
    s.dimensions.roadway_width = Length<>(0.0);
    CHECK(infer(s).verdict == Verdict::buried);
    CHECK(infer(Structure{}).verdict == Verdict::no_dimensions);
    CHECK(infer(yardstick()).verdict == Verdict::bridge);
    for (const Verdict v : {Verdict::culvert, Verdict::tunnel, Verdict::buried}) {
        CHECK(verdict_reason(v).size() > 10);
    }
}

TEST_CASE("a structure that is not washed keeps its deck area and nothing else") {
    Structure s = yardstick();
    s.codes.design = Design::culvert;
    s.dimensions.deck_width = Length<>(0.0);
    s.dimensions.approach_width = Length<>(8.0);
    const Inferred i = infer(s);
    CHECK_FALSE(i.shape.washable);
    const Quantities<double> q = take_off(i.shape, likely(i));
    for (Slot k = 0; k < slot_table.size(); ++k) {
        CHECK(q[k] == (k == slot("deck_total_area") ? Approx(61.0 * 8.0) : Approx(0.0)));
        CHECK_FALSE(i.untold[k]);
    }
}

TEST_CASE("a culvert without any width: its deck area cannot be told") {
    Structure s = yardstick();
    s.codes.design = Design::culvert;
    s.dimensions = {};
    s.dimensions.length = Length<>(10.0);
    const Inferred i = infer(s);
    CHECK(i.untold[slot("deck_total_area")]);
    CHECK(basis_of(i, slot("deck_total_area")) == Basis::assumed);
}

TEST_CASE("deck width: item 52, else item 32, else from the roadway") {
    Structure s = yardstick();
    CHECK(at(infer(s), dimension("deck.width")).basis == Basis::recorded);
    s.dimensions.approach_width = Length<>(10.0);
    s.dimensions.deck_width = Length<>(0.0);
    CHECK(rule_of(at(infer(s), dimension("deck.width"))) == "deck.width.approach");
    CHECK(at(infer(s), dimension("deck.width")).guess.likely == 10.0);
    s.dimensions.deck_width = Length<>(not_recorded);
    CHECK(rule_of(at(infer(s), dimension("deck.width"))) == "deck.width.from_roadway");
    CHECK(at(infer(s), dimension("deck.width")).guess.low > 9.75);
    s.dimensions.roadway_width = Length<>(not_recorded);
    CHECK(rule_of(at(infer(s), dimension("deck.width"))) == "deck.width.approach");
    s.dimensions.approach_width = Length<>(9999.0); // kilometres occur in the files
    CHECK(infer(s).verdict == Verdict::no_dimensions);
}

TEST_CASE("a recorded value is itself, to the bit") {
    const Inferred i = infer(yardstick());
    for (const auto& [index, value] :
         {std::pair{dimension("deck.length"), 61.0}, std::pair{dimension("deck.width"), 11.0},
          std::pair{dimension("deck.roadway_width"), 9.75},
          std::pair{dimension("span.longest"), 20.3}}) {
        const Uncertain u = at(i, index);
        CHECK(u.guess.low == value);
        CHECK(u.guess.likely == value);
        CHECK(u.guess.high == value);
        CHECK(u.guess.mean() == value);
        CHECK(u.shared_share == 0.0);
    }
}

TEST_CASE("roadway: recorded, at most the deck; else a share of it") {
    Structure s = yardstick();
    s.dimensions.roadway_width = Length<>(12.0);
    CHECK(at(infer(s), dimension("deck.roadway_width")).guess.likely == 11.0);
    s.dimensions.roadway_width = Length<>(0.0);
    const Uncertain u = at(infer(s), dimension("deck.roadway_width"));
    CHECK(u.basis == Basis::inferred);
    CHECK(u.guess.high < 11.0);
}

TEST_CASE("walks: wide enough, and beside the roadway") {
    Structure s = yardstick();
    s.dimensions.left_walk_width = Length<>(0.5); // a curb
    s.dimensions.right_walk_width = Length<>(0.7);
    const Inferred i = infer(s);
    CHECK(at(i, dimension("deck.walk_width")).guess.likely == Approx(0.7));
    CHECK(i.shape.walks == 1);
    CHECK(i.untold[slot("gutter_pocket_length")]);
    s.dimensions.left_walk_width = Length<>(2.0); // no room for both
    CHECK(at(infer(s), dimension("deck.walk_width")).guess.likely == Approx(1.25));
    s.codes.design = Design::truss_through; // walks outside the trusses
    CHECK(at(infer(s), dimension("deck.walk_width")).guess.likely == Approx(2.7));
}

TEST_CASE("skew: recorded up to 75 degrees, else assumed with a range") {
    Structure s = yardstick();
    s.dimensions.skew = Angle<>(not_recorded);
    CHECK(rule_of(at(infer(s), dimension("deck.skew"))) == "deck.skew.assumed");
    s.dimensions.skew = Angle<>(89.0 * factor::degree);
    CHECK(rule_of(at(infer(s), dimension("deck.skew"))) == "deck.skew.assumed");
}

TEST_CASE("spans that cannot be are counted anew from the length") {
    Structure s = yardstick();
    for (const int spans : {-8, 0, 998, 2147483647}) {
        s.codes.main_spans = spans;
        s.codes.approach_spans = spans;
        CHECK(infer(s).shape.spans == 3);
    }
    s.dimensions.longest_span = Length<>(0.0);
    const Inferred i = infer(s);
    CHECK(i.shape.spans == 1);
    CHECK(at(i, dimension("span.longest")).guess.high == 61.0);
}

TEST_CASE("joints: none where integral abutments are possible") {
    Structure s = yardstick();
    CHECK(at(infer(s), dimension("joint.count")).guess.low == 2.0);
    s.codes.year_built = 1995;
    CHECK(at(infer(s), dimension("joint.count")).guess.low == 0.0);
    CHECK(at(infer(s), dimension("bearing.per_line")).guess.low == 4.0);
    s.codes.design = Design::frame;
    s.codes.material = Material::concrete;
    CHECK(at(infer(s), dimension("joint.count")).guess.likely == 0.0);
}

TEST_CASE("a long viaduct with one truss is a viaduct") {
    Structure s = yardstick();
    s.dimensions.length = Length<>(600.0);
    s.dimensions.longest_span = Length<>(60.0);
    s.codes.design = Design::truss_through;
    s.codes.main_spans = 1;
    s.codes.approach_spans = 27;
    s.codes.approach_material = Material::steel;
    s.codes.approach_design = Design::multi_beam;
    CHECK(infer(s).shape.outline == Outline::steel_beam);
    CHECK(infer(s).dimensions[dimension("girder.depth")].guess.high < 20.0 * 0.07);
    s.codes.main_spans = 9;
    s.codes.approach_spans = 3;
    CHECK(infer(s).shape.outline == Outline::truss);
}

TEST_CASE("absent is zero, what cannot be told says so") {
    const Inferred one_span = infer(creek());
    CHECK_FALSE(one_span.untold[slot("cap_area")]);
    CHECK_FALSE(one_span.untold[slot("column_count")]);
    CHECK_FALSE(one_span.untold[slot("gutter_pocket_length")]);
    CHECK(one_span.untold[slot("drain_count")]);
    CHECK(one_span.untold[slot("pedestal_count")]);
    CHECK(one_span.untold[slot("berm_area")]);
    const Inferred over_road = infer(yardstick());
    CHECK_FALSE(over_road.untold[slot("berm_area")]);
    CHECK_FALSE(over_road.untold[slot("slope_protection_area")]);
    CHECK(over_road.untold[slot("column_count")]);
    CHECK_FALSE(over_road.untold[slot("wash_area_total")]);
    CHECK(basis_of(over_road, slot("wash_area_total")) == Basis::assumed);
    CHECK(basis_of(over_road, slot("deck_top_area")) == Basis::recorded);
    CHECK(basis_of(over_road, slot("cap_count")) == Basis::inferred);
    const Inferred flat = infer(pinal_creek());
    CHECK_FALSE(flat.untold[slot("soffit_overhang_area")]);
    CHECK_FALSE(flat.untold[slot("pedestal_count")]);
}

TEST_CASE("a clearance counts only where a road or railway is below") {
    Structure s = yardstick();
    s.codes.below = Below::neither;
    CHECK_FALSE(infer(s).shape.clearance_known);
    s.dimensions.navigation_clearance = Length<>(20.0);
    CHECK(rule_of(at(infer(s), dimension("column.height"))) == "column.height.navigation");
}

TEST_CASE("older decks have more drains than newer ones") {
    Structure s = yardstick();
    const double older = at(infer(s), dimension("drain.per_length")).guess.likely;
    s.codes.year_reconstructed = 1999;
    const double newer = at(infer(s), dimension("drain.per_length")).guess.likely;
    CHECK(newer < older);
    s.codes.deck_type = '3';
    CHECK(at(infer(s), dimension("drain.per_length")).guess.likely == 0.0);
}

TEST_CASE("an open grating has no gutters that hold dirt, and parapets as any deck") {
    const Structure closed = yardstick();
    Structure open = closed;
    open.codes.deck_type = '3';
    const auto before = likely_quantities(closed);
    const auto after = likely_quantities(open);
    CHECK(after[slot("gutter_length")] == 0.0);
    CHECK(after[slot("parapet_length")] == before[slot("parapet_length")]);
    CHECK(after[slot("deck_top_area")] == before[slot("deck_top_area")]);
}

TEST_CASE("a raised median lies beside the roadway; any other is part of it") {
    Structure s = yardstick();
    s.dimensions.deck_width = Length<>(14.0);
    for (const int median : {no_code, 0, 1, 2}) {
        s.codes.median = median;
        CHECK(at(infer(s), dimension("deck.median_width")).guess.high == 0.0);
    }
    s.codes.median = 3;
    const ThreePoint width = at(infer(s), dimension("deck.median_width")).guess;
    CHECK(width.likely == Approx(14.0 - 9.75 - 0.9));
    CHECK(width.high < 14.0 - 9.75);
    const Quantities<double> q = likely_quantities(s);
    CHECK(q[slot("median_area")] == Approx(61.0 * width.likely));
    // Four gutters, and a parapet face along each of them.
    CHECK(q[slot("parapet_length")] == Approx(0.5 * q[slot("gutter_length")]));
    CHECK(q[slot("gutter_length")] == Approx(4.0 * 61.0));
}

TEST_CASE("piers: walls where the record makes them probable, columns over a road") {
    constexpr std::size_t share = dimension("pier.wall_share");
    CHECK(rule_of(at(infer(pinal_creek()), share)) == "pier.wall_share.probable");
    Structure s = yardstick();
    CHECK(rule_of(at(infer(s), share)) == "pier.wall_share.seldom");
    s.codes.below = Below::neither;
    s.codes.service_under = 5;
    CHECK(rule_of(at(infer(s), share)) == "pier.wall_share.possible");
    s.codes.year_built = 1935;
    s.codes.year_reconstructed = 1990; // new decks do not renew piers
    CHECK(rule_of(at(infer(s), share)) == "pier.wall_share.probable");
    s.codes.material = Material::timber;
    CHECK(at(infer(s), share).guess.high == 0.0);
    CHECK_FALSE(infer(s).untold[slot("wall_pier_area")]);
    s.codes.material = Material::masonry;
    s.codes.design = Design::arch_deck;
    const Quantities<double> vault = likely_quantities(s);
    CHECK(vault[slot("wall_pier_area")] > 0.0);
    CHECK(vault[slot("cap_area")] + vault[slot("column_area")] + vault[slot("seat_area")] == 0.0);
}

TEST_CASE("what cannot be told of the added quantities is marked") {
    const Inferred over_road = infer(yardstick());
    CHECK(over_road.untold[slot("drain_box_count")]);
    CHECK(over_road.untold[slot("downspout_length")]);
    CHECK(over_road.untold[slot("footing_area")]);
    CHECK_FALSE(over_road.untold[slot("wall_pier_area")]);
    CHECK(infer(river()).untold[slot("wall_pier_area")]);
    CHECK_FALSE(infer(creek()).untold[slot("footing_area")]);
    CHECK_FALSE(infer(creek()).untold[slot("seat_area")]);
}

TEST_CASE("girders: long timber is laminated, depths end where members do") {
    const auto surface = [](const Structure& s) {
        const Quantities<double> q = likely_quantities(s);
        return q[slot("girder_area")] / q[slot("deck_total_area")];
    };
    const Structure sawn =
        record({8.0, 5.0, 4.5, 8.0, 1}, Material::timber, Design::multi_beam, 1960);
    const Structure laminated =
        record({40.0, 5.0, 4.5, 40.0, 1}, Material::timber, Design::multi_beam, 1960);
    CHECK(at(infer(sawn), dimension("girder.depth")).guess.high == 0.5);
    CHECK(rule_of(at(infer(laminated), dimension("girder.spacing"))) == "girder.spacing.glulam");
    CHECK(at(infer(laminated), dimension("girder.depth")).guess.likely == 1.8);
    CHECK(surface(laminated) < 5.0);
    // The surface of a truss grows with the size of its members, not with its depth.
    const auto truss = [&](double span) {
        return record({span, 6.0, 5.0, span, 1}, Material::steel, Design::truss_through, 1950);
    };
    CHECK(surface(truss(160.0)) < 2.0 * surface(truss(40.0)));
    CHECK(at(infer(river()), dimension("girder.floor_factor")).guess.high == 0.0);
}
