#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/schema.hpp"

#include <fstream>
#include <set>
#include <sstream>
#include <string>

using namespace scupper;

namespace {
std::string pinned() {
    std::ifstream file(std::string(SCUPPER_TESTS_DIR) + "/reference/schema/keys.txt");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

Layout sample_layout() {
    return Layout(Schema::inputs,
                  {{"operation", {{"joint_flushing", dim::length, {}}, {"drain_free", dim::count, {}}}},
                   {"hose", {{"0", {}, {}}, {"1", {}, {}}, {"2", {}, {}}}}});
}
} // namespace

TEST_CASE("the names others rely on are those that are pinned") {
    const std::string expected = pinned();
    REQUIRE(!expected.empty());
    CHECK(key_listing() == expected);
}

TEST_CASE("no table names a field twice and every group of a field exists") {
    std::set<std::string> seen;
    for (const InputField& f : input_table) {
        const std::string key = std::string(f.group) + "." + std::string(f.field);
        INFO(key);
        CHECK(seen.insert(key).second);
        CHECK(find_field(input_table, input_groups, key).group < input_groups.size());
        CHECK(f.least <= f.greatest);
    }
    for (const FigureField& f : figure_table) {
        const std::string key = std::string(f.group) + "." + std::string(f.field);
        INFO(key);
        CHECK(find_field(figure_table, figure_groups, key).group < figure_groups.size());
    }
}

TEST_CASE("a key finds its place, at run time and when compiling") {
    const Layout layout = sample_layout();
    CHECK(layout.find("deck.length") == 0u);
    const auto bore = layout.find("hose[2].bore");
    REQUIRE(bore);
    CHECK(*bore == layout.place(input_place("hose.bore"), 2));
    const auto time = layout.find("operation[drain_free].time_per_unit");
    REQUIRE(time);
    CHECK(*time == layout.place(input_place("operation.time_per_unit"), 1));
    CHECK(layout.fields()[*time].dimension == dim::time / dim::count);
    CHECK(layout.fields()[*time].label == "drain free, time per unit");
    CHECK(layout.row_names("hose") == std::vector<std::string>{"0", "1", "2"});
}

TEST_CASE("where a group has one row its name may be left out") {
    const Layout one(Schema::inputs, {{"nozzle", {{"hand_line", {}, {}}}}});
    CHECK(one.find("nozzle.bore") == one.find("nozzle[hand_line].bore"));
    REQUIRE(one.find("nozzle.bore"));
    const Layout two(Schema::inputs, {{"nozzle", {{"hand_line", {}, {}}, {"wand", {}, {}}}}});
    CHECK_FALSE(two.find("nozzle.bore"));
}

TEST_CASE("an unknown key is refused with the nearest known one") {
    const Layout layout = sample_layout();
    try {
        layout.at("deck.lenght", "job.inputs");
        FAIL("should have been refused");
    } catch (const UnknownNameError& e) {
        CHECK(e.id() == "schema.key");
        CHECK(e.path() == "job.inputs");
        CHECK(e.allowed() == "\"deck.length\"?");
    }
    CHECK_THROWS_AS(Layout(Schema::inputs, {{"deck", {{"0", {}, {}}}}}), UnknownNameError);
}

TEST_CASE("the take-off columns stand first, in the published order") {
    CHECK(column_count() == 24);
    CHECK(slot_table[slot("deck_top_area")].column);
    CHECK_FALSE(slot_table[slot("visit_count")].column);
    CHECK(find_slot("no such thing") == slot_table.size());
}
