// Element records joined to structures: what is used, what is not believed, what matches nothing.
#include "catch.hpp"
#include "scupper/inventory.hpp"

#include <cmath>
#include <optional>
#include <string>

using namespace scupper;
using namespace scupper::inventory;

namespace {

constexpr double foot = 0.3048;

/// An invented bridge of three spans, 60 m by 12 m, five steel girders.
Inventory one_bridge() {
    Inventory inventory;
    Structure& s = inventory.structures.emplace_back();
    s.state = "99";
    s.id = "B1";
    s.dimensions.length = Length<>(60.0);
    s.dimensions.deck_width = Length<>(12.0);
    s.dimensions.skew = Angle<>(0.0);
    s.codes.main_spans = 3;
    s.codes.approach_spans = 0;
    inventory.reindex();
    return inventory;
}

ElementRecord record(int element, double total, int parent = 0, const char* id = "B1") {
    ElementRecord r;
    r.line = 3;
    r.state = "99";
    r.structure = id;
    r.element = element;
    r.parent = parent;
    r.total = total;
    r.states[0] = total;
    return r;
}

std::optional<double> given(const Inventory& inventory, const std::string& key) {
    for (const GivenValue& g : inventory.structures[0].given) {
        if (g.key == key) {
            CHECK(g.value.basis == Basis::element);
            CHECK(g.value.origin != nullptr);
            return g.value.guess.likely;
        }
    }
    return std::nullopt;
}

ElementRecords of(std::vector<ElementRecord> records) {
    return {"elements.xml", std::move(records), {}, {}};
}

} // namespace

TEST_CASE("element quantities take the place of inferred ones, in SI") {
    Inventory inventory = one_bridge();
    const double feet = 60.0 / foot;
    const auto join = join_elements(
        inventory, of({record(300, 80.0), record(301, 78.0), record(311, 20.0), record(313, 10.0),
                       record(205, 8.0), record(107, 5.0 * feet), record(515, 9000.0, 107),
                       record(331, 2.0 * feet), record(330, 2.0 * feet), record(12, 7750.0),
                       record(234, 160.0)}));
    CHECK(join.matched == 11);
    CHECK(join.structures == 1);
    CHECK(join.used == 10); // caps have a length, and no quantity that takes it
    CHECK(join.doubts.empty());
    CHECK(*given(inventory, "joint_length") == Approx(158.0 * foot));
    CHECK(*given(inventory, "bearing_count") == 30.0);
    CHECK(*given(inventory, "column_count") == 8.0);
    CHECK(*given(inventory, "girder_count") == 5.0);
    CHECK(*given(inventory, "girder_area") == Approx(9000.0 * foot * foot));
    CHECK(*given(inventory, "parapet_length") == Approx(120.0));
    CHECK(*given(inventory, "rail_length") == Approx(120.0));
}

TEST_CASE("what the structure's own size makes impossible is reported and not used") {
    const auto refused = [](const ElementRecord& r, const char* key) {
        Inventory inventory = one_bridge();
        const auto join = join_elements(inventory, of({r}));
        REQUIRE(join.doubts.size() == 1);
        CHECK(!join.doubts[0].reason.empty());
        CHECK(inventory.doubts.size() == 1);
        CHECK(where(inventory, inventory.doubts[0]).find("elements.xml:3") == 0);
        CHECK(!given(inventory, key));
    };
    refused(record(300, 7750.0), "joint_length");  // an area where a length is due
    refused(record(310, 2000.0), "bearing_count"); // a length where a number is due
    refused(record(107, 300.0), "girder_count");   // one and a half lines
    refused(record(331, 7750.0), "parapet_length");
    refused(record(205, 900.0), "column_count");
    refused(record(12, 400.0), "deck_total_area");
}

TEST_CASE("a coating that is really a length is not taken for girder surface") {
    Inventory inventory = one_bridge();
    const double feet = 60.0 / foot;
    const auto join =
        join_elements(inventory, of({record(107, 5.0 * feet), record(515, 2.0 * feet, 107),
                                     record(330, 2.0 * feet), record(515, 2.0 * feet, 330)}));
    CHECK(join.doubts.size() == 2);
    CHECK(!given(inventory, "girder_area"));
    CHECK(*given(inventory, "rail_length") == Approx(120.0));
}

TEST_CASE("records of no structure are listed, and every record is one or the other") {
    Inventory inventory = one_bridge();
    const auto elements =
        of({record(300, 80.0), record(300, 80.0, 0, "B2"), record(12, 100.0, 0, "")});
    const auto join = join_elements(inventory, elements);
    CHECK(join.unmatched.size() == 2);
    CHECK(join.matched + join.unmatched.size() == elements.records.size());
    CHECK(join.unmatched[0].structure == "B2");
}

TEST_CASE("the published pair of Arizona joins, its rail's coating is doubted") {
    const std::string folder = std::string(SCUPPER_TESTS_DIR) + "/data/inventory/";
    Inventory inventory = read_inventory(folder + "AZ_one_2019.txt");
    const auto join = join_elements(inventory, read_elements(folder + "nbe_2023_AZ_one.xml"));
    CHECK(join.matched == 7);
    CHECK(join.unmatched.empty());
    CHECK(*given(inventory, "rail_length") == Approx(212.0 * foot));
    CHECK(*given(inventory, "parapet_length") == Approx(212.0 * foot));
    REQUIRE(join.doubts.size() == 1);
    CHECK(join.doubts[0].column == "coating of the rail");
}
