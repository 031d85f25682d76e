// What somebody measured stands in the record's place, and what follows by rule follows from it.

#include "catch.hpp"
#include "records.hpp"

#include <set>
#include <string>
#include <utility>
#include <vector>

using namespace records;

namespace {

using Followers = std::set<std::pair<std::string, std::string>>;

/// Every dimension that follows from another, by tests/reference/takeoff/follows.csv.
Followers listed() {
    Followers pairs;
    for (const reference::Row& row : rows("follows")) {
        pairs.emplace(row.text("measured"), row.text("follows"));
    }
    return pairs;
}

/// Kinds of bridges whose rules differ; longer than 60 m, so that no length is near a threshold.
std::vector<Structure> kinds() {
    std::vector<Structure> list;
    for (const Design design : {Design::multi_beam, Design::box_multiple, Design::slab,
                                Design::truss_through, Design::tee_beam, Design::box_single}) {
        for (const Material material : {Material::steel, Material::prestressed}) {
            Structure s = record({100.0, 14.0, 11.0, 21.0, 5}, material, design, 1968);
            s.dimensions.left_walk_width = Length<>(1.2);
            s.codes.median = 3;
            list.push_back(s);
            s.dimensions.height = Length<>(9.0);
            list.push_back(s);
        }
    }
    return list;
}

std::string key_of(std::size_t index) {
    return std::string(input_table[index].group) + "." + std::string(input_table[index].field);
}

bool differ(const Uncertain& a, const Uncertain& b) {
    return a.guess.low != b.guess.low || a.guess.likely != b.guess.likely ||
           a.guess.high != b.guess.high;
}

void add_moved(const Structure& s, const Measured& measured, const std::string& by,
               std::size_t self, Followers& moved) {
    const Inferred before = infer(s);
    const Inferred after = infer(s, measured);
    for (std::size_t i = 0; i < dimension_count; ++i) {
        if (i != self && differ(before.dimensions[i], after.dimensions[i])) {
            moved.emplace(by, key_of(i));
        }
    }
}

} // namespace

TEST_CASE("a clearance measured reaches the columns as the same clearance in the record does") {
    for (const double clearance : {3.5, 5.0, 7.25}) {
        Structure recorded = yardstick();
        recorded.dimensions.clearance_under = Length<>(clearance);
        Measured measured;
        measured.clearance = clearance;
        const Inferred by_record = infer(recorded);
        const Inferred by_survey = infer(yardstick(), measured);
        for (std::size_t i = 0; i < dimension_count; ++i) {
            INFO(key_of(i));
            CHECK_FALSE(differ(by_record.dimensions[i], by_survey.dimensions[i]));
        }
        CHECK(by_survey.shape.clearance_known);
    }
}

TEST_CASE("a clearance measured over water tells what no record did") {
    Structure river = yardstick();
    river.codes.below = Below::neither;
    river.dimensions.clearance_under = Length<>(not_recorded);
    Measured measured;
    measured.clearance = 6.0;
    CHECK(infer(river).untold[slot("berm_area")]);
    CHECK_FALSE(infer(river, measured).untold[slot("berm_area")]);
    CHECK(infer(river, measured).dimensions[dimension("column.height")].guess.likely == 6.0);
}

TEST_CASE("a dimension measured is itself, whatever the record says") {
    for (const Structure& s : kinds()) {
        const Inferred before = infer(s);
        for (std::size_t i = 0; i < dimension_count; ++i) {
            Measured measured;
            measured.dimensions[i] = 1.01 * before.dimensions[i].guess.likely;
            INFO(key_of(i));
            CHECK(infer(s, measured).dimensions[i].guess.likely ==
                  std::min(measured.dimensions[i], input_table[i].greatest));
        }
    }
}

TEST_CASE("what follows from a measured dimension is what the list says, no less and no more") {
    Followers moved;
    for (const Structure& s : kinds()) {
        const Inferred before = infer(s);
        for (std::size_t i = 0; i < dimension_count; ++i) {
            Measured measured;
            measured.dimensions[i] = 1.01 * before.dimensions[i].guess.likely;
            add_moved(s, measured, key_of(i), i, moved);
        }
        Measured measured;
        measured.clearance = 4.0;
        add_moved(s, measured, "site.clearance", dimension_count, moved);
    }
    const Followers wanted = listed();
    for (const auto& [by, what] : moved) {
        INFO(what << " follows from " << by);
        CHECK(wanted.count({by, what}) == 1);
    }
    for (const auto& [by, what] : wanted) {
        INFO(what << " is to follow from " << by);
        CHECK(moved.count({by, what}) == 1);
    }
}

TEST_CASE("walks measured where the record has none are there") {
    Measured measured;
    measured.dimensions[dimension("deck.walk_width")] = 1.5;
    const Inferred with = infer(yardstick(), measured);
    CHECK(with.shape.walk_present);
    CHECK(with.dimensions[dimension("deck.walk_width")].guess.likely == 1.5);
    CHECK(with.dimensions[dimension("deck.pocket_share")].guess.high > 0.0);
    measured.dimensions[dimension("deck.walk_width")] = 0.0;
    Structure two = yardstick();
    two.dimensions.left_walk_width = two.dimensions.right_walk_width = Length<>(1.2);
    CHECK_FALSE(infer(two, measured).shape.walk_present);
}
