#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>
#include <string>

using namespace scupper;
using scupper::inventory::Inventory;

namespace test_structures {

namespace {

std::string list_of(const std::string& structures) {
    return R"({"scupper_structures": 1, "structures": [)" + structures + "]}";
}

Inventory read(const std::string& structures) {
    return json::read_structures(list_of(structures), "list");
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_structures(text, "list");
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

} // namespace

TEST_CASE("a list of measured structures is an inventory") {
    const Inventory inventory = read(R"(
        {"id": "M-1", "state": "99", "length": "120 ft", "deck_width": "30 ft",
         "design": "slab", "material": "concrete", "main_spans": 2,
         "given": {"drains": 4, "column.height": ["10 ft", "12 ft", "15 ft"]}},
        {"id": "M-2", "length": "20 m"})");
    REQUIRE(inventory.structures.size() == 2);
    CHECK(inventory.rows == 2);
    CHECK(inventory.doubts.empty());
    const Structure* s = inventory.find("99:M-1");
    REQUIRE(s != nullptr);
    CHECK(s->dimensions.length.si() == Approx(36.576));
    CHECK(s->number == "M-1");
    CHECK(s->line == 1);
    REQUIRE(s->given.size() == 2);
    CHECK(inventory.find("M-2")->line == 2);
}

TEST_CASE("what is measured beats what would be inferred") {
    const Inventory inventory = read(R"(
        {"id": "A", "length": "36 m", "deck_width": "10 m", "roadway_width": "9 m",
         "design": "slab", "material": "concrete", "main_spans": 2, "approach_spans": 0,
         "longest_span": "18 m"},
        {"id": "B", "length": "36 m", "deck_width": "10 m", "roadway_width": "9 m",
         "design": "slab", "material": "concrete", "main_spans": 2, "approach_spans": 0,
         "longest_span": "18 m", "given": {"drain_count": 7}})");
    const auto table = estimate::take_off_table(inventory.structures, 1);
    const Slot drains = find_slot("drain_count");
    CHECK(std::isnan(table.value[drains * 2])); // nobody counted them
    CHECK(table.value[drains * 2 + 1] == 7.0);
    CHECK(table.basis[drains * 2 + 1] == Basis::measured);
}

TEST_CASE("a list written and read back is the same list, to the bit") {
    const Inventory once = inventory::read_inventory(std::string(SCUPPER_TESTS_DIR) +
                                                     "/data/inventory/ak_2019_part.txt");
    const std::string text = json::write_structures(once.structures);
    const Inventory again = json::read_structures(text, "again");
    CHECK(again.structures.size() == once.structures.size());
    CHECK(json::write_structures(again.structures) == text);
}

TEST_CASE("what cannot be in a list is a doubt and not recorded") {
    const Inventory inventory = read(R"(
        {"id": "A", "length": "-5 m", "deck_width": "8 m", "roadway_width": "9 m",
         "skew": "95 deg", "main_spans": 0, "posting": "X", "functional_class": 3, "latitude": 91})");
    REQUIRE(inventory.structures.size() == 1);
    const Structure& s = inventory.structures[0];
    CHECK(std::isnan(s.dimensions.length.si()));
    CHECK(std::isnan(s.dimensions.skew.si()));
    CHECK(std::isnan(s.latitude));
    CHECK(s.codes.main_spans == no_code);
    CHECK(s.codes.posting == ' ');
    CHECK(s.codes.functional_class == no_code);
    CHECK(s.dimensions.deck_width.si() == 8.0);
    CHECK(inventory.doubts.size() == 7);
    for (const auto& doubt : inventory.doubts) {
        INFO(doubt.column << ": " << doubt.reason);
        CHECK_FALSE(doubt.column.empty());
        CHECK(doubt.structure == "A");
        CHECK(doubt.kept == (doubt.column == "deck_width"));
    }
}

TEST_CASE("a second structure of a number is rejected, of another state it is not") {
    const Inventory inventory = read(
        R"({"id": "A", "state": "01"}, {"id": "A", "state": "02"}, {"id": "A", "state": "01"})");
    CHECK(inventory.structures.size() == 2);
    REQUIRE(inventory.rejected.size() == 1);
    CHECK(inventory.rejected[0].line == 3);
    CHECK(inventory.rejected[0].reason == "second record of the same structure");
    CHECK(inventory.rows == 3);
}

TEST_CASE("a list that cannot be used is refused, naming the place") {
    CHECK(refused<FileError>("{").id() == "json.text");
    CHECK(refused<InputError>("{}").id() == "json.version");
    CHECK(refused<InputError>(R"({"scupper_structures": 1})").path() == "list.structures");
    CHECK(refused<InputError>(list_of("{}")).path() == "list.structures[0].id");
    CHECK(refused<InputError>(list_of(R"({"id": "A", "state": "AL"})")).id() == "structures.state");
    CHECK(refused<InputError>(list_of(R"({"id": "A", "given": {"drains": -1}})")).id() ==
          "structures.bounds");
    CHECK(refused<UnknownNameError>(list_of(R"({"id": "A", "lenght": "3 m"})")).allowed() ==
          "\"length\"?");
    CHECK(refused<UnitError>(list_of(R"({"id": "A", "length": 3})")).id() == "unit.missing");
    CHECK(refused<InputError>(list_of("7")).id() == "json.type");
}

TEST_CASE("the form of a structure is read once its number is filled in") {
    auto form = nlohmann::json::parse(json::structures_form());
    CHECK_THROWS_AS(json::read_structures(form.dump(), "form"), InputError);
    form["structures"][0]["id"] = "M-1";
    form["structures"][0]["deck_width"] = "32 ft";
    form["structures"][0]["given"]["drain_count"] = 3;
    const Inventory inventory = json::read_structures(form.dump(), "form");
    REQUIRE(inventory.structures.size() == 1);
    CHECK(inventory.doubts.empty());
    CHECK(inventory.structures[0].given.size() == 1);
}

TEST_CASE("the schema of a list names every key of a record") {
    const auto schema = nlohmann::json::parse(json::structures_schema());
    const auto& properties = schema["properties"]["structures"]["items"]["properties"];
    const auto record = nlohmann::json::parse(json::write_structure(Structure{}));
    for (const auto& [key, value] : record.items()) {
        INFO(key);
        CHECK(properties.contains(key));
    }
    CHECK(properties.size() == record.size());
}

} // namespace test_structures
