// Records as columns and back. What is expected is the record itself.
#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <string>

using namespace scupper;
using json::StructureColumn;

namespace test_structure_columns {

namespace {

inventory::Inventory sample(const std::string& name) {
    return json::read_any_inventory(std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name);
}

StructureColumn& column(std::vector<StructureColumn>& columns, const std::string& name) {
    return *std::find_if(columns.begin(), columns.end(),
                         [&](const StructureColumn& c) { return c.name == name; });
}

std::string refused(const std::vector<StructureColumn>& columns) {
    try {
        json::structures_of(columns);
    } catch (const InputError& e) {
        return e.path() + ": " + e.found();
    }
    return "accepted";
}

} // namespace

TEST_CASE("real records come back from columns to the bit") {
    for (const char* name : {"dc_2019_part.txt", "al_2013_part.csv", "ak_2019_part.txt",
                             "national_2022_invented.json"}) {
        auto inv = sample(name);
        REQUIRE(inv.structures.size() > 1);
        inv.structures[0].dimensions.skew = Angle<>(15.0 * 0.017453292519943295);
        inv.structures[1].given = {{"drain_count", certain(4.0, Basis::measured)},
                                   {"deck.length", between(10.0, 11.1, 12.0, Basis::element)}};
        const auto columns = json::structure_columns(inv.structures);
        const auto again = json::structures_of(columns);
        CHECK(json::write_structures(again) == json::write_structures(inv.structures));
        CHECK(again[1].given[0].key == "drain_count");
    }
}

TEST_CASE("no record gives columns of their kind without a value") {
    auto columns = json::structure_columns({});
    CHECK(std::holds_alternative<std::vector<double>>(column(columns, "length_m").values));
    CHECK(std::holds_alternative<std::vector<std::int64_t>>(column(columns, "line").values));
    CHECK(json::structures_of(columns).empty());
}

TEST_CASE("columns that hold no records are refused by name") {
    const auto inv = sample("dc_2019_part.txt");
    const auto good = json::structure_columns(inv.structures);
    auto bad = good;
    column(bad, "length_m").name = "length_miles";
    CHECK(refused(bad) == "columns: \"length_miles\"");
    bad = good;
    column(bad, "main_spans").values = std::vector<double>(inv.structures.size(), 2.0);
    CHECK(refused(bad) == "main_spans: values of another kind");
    bad = good;
    std::get<std::vector<double>>(column(bad, "length_m").values).pop_back();
    CHECK(refused(bad).starts_with("length_m: "));
    bad = good;
    std::get<std::vector<double>>(column(bad, "length_m").values)[0] = -5.0;
    CHECK(refused(bad).starts_with("row 1 "));
    bad = good;
    std::get<std::vector<std::int64_t>>(column(bad, "main_spans").values)[0] = -7;
    CHECK(refused(bad) == "main_spans: -7");
    bad = good;
    std::get<std::vector<std::string>>(column(bad, "material").values)[0] = "cheese";
    CHECK(refused(bad) == "material: cheese");
    bad = good;
    std::get<std::vector<std::string>>(column(bad, "structure_id").values)[0].clear();
    CHECK(refused(bad).starts_with("row 1.id"));
    bad = good;
    std::get<std::vector<std::string>>(column(bad, "given").values)[0] =
        R"([["deck.length", {"deck.length": "-5 m"}]])";
    CHECK(refused(bad) == "row 1.given.deck.length: -5.0");
    std::get<std::vector<std::string>>(column(bad, "given").values)[0] = R"({"deck.length": 5})";
    CHECK(refused(bad) == "given: 5");
    bad.push_back(good[0]);
    CHECK(refused(bad).ends_with("a second column"));
    CHECK(refused({}) == "structure_id: no column");
}

} // namespace test_structure_columns
