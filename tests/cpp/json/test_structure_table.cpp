#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>

using namespace scupper;
using scupper::inventory::Inventory;

namespace test_structure_table {

namespace {

Inventory read(const std::string& text) {
    return json::read_structure_csv(text, "table.csv");
}

template <class E>
E refused(const std::string& text) {
    try {
        read(text);
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

/// The one doubt of a table with one structure.
std::string doubt_on(const std::string& header, const std::string& cell) {
    const Inventory inventory = read("structure_id," + header + "\nA," + cell + "\n");
    REQUIRE(inventory.structures.size() == 1);
    return inventory.doubts.empty() ? "" : inventory.doubts.at(0).reason;
}

} // namespace

TEST_CASE("a table of measured structures is an inventory, in the units of its headers") {
    const Inventory inventory =
        read("structure_id,state,length_m,deck_width [ft],roadway_width,material,main_spans,"
             "drain_count,column.height [ft]\r\n"
             "M-1,9,36.5,30,28 ft 6 in,steel continuous,3,4,12.5\r\n"
             "\r\n"
             "\"M-2, old\",99,,,,,,,\n");
    REQUIRE(inventory.structures.size() == 2);
    CHECK(inventory.doubts.empty());
    const Structure& s = inventory.structures[0];
    CHECK(s.state == "09");
    CHECK(s.line == 2);
    CHECK(s.dimensions.length.si() == 36.5);
    CHECK(s.dimensions.deck_width.si() == Approx(9.144));
    CHECK(s.dimensions.roadway_width.si() == Approx(28.5 * 0.3048));
    CHECK(s.codes.material == Material::steel_continuous);
    CHECK(s.codes.main_spans == 3);
    REQUIRE(s.given.size() == 2);
    CHECK(s.given[0].key == "quantity[drain_count].given");
    CHECK(s.given[0].value.basis == Basis::measured);
    CHECK(s.given[1].value.guess.likely == Approx(3.81));
    CHECK(inventory.structures[1].id == "M-2, old");
    CHECK(inventory.structures[1].line == 4);
    CHECK(std::isnan(inventory.structures[1].dimensions.length.si()));
    CHECK(inventory.structures[1].given.empty());
}

TEST_CASE("cells that cannot be used are doubts, never values") {
    CHECK(doubt_on("length_m", "36.5").empty());
    CHECK_FALSE(doubt_on("length_m", "-1").empty());
    CHECK_FALSE(doubt_on("length_m", "1e12").empty());
    CHECK_FALSE(doubt_on("length_m", "long").empty());
    CHECK_FALSE(doubt_on("length_m", "3 s").empty());
    CHECK_FALSE(doubt_on("length", "36.5").empty()); // no unit anywhere
    CHECK_FALSE(doubt_on("material", "cheese").empty());
    CHECK_FALSE(doubt_on("main_spans", "2.5").empty());
    CHECK_FALSE(doubt_on("main_spans", "-2").empty());
    CHECK_FALSE(doubt_on("main_spans", "99999999999").empty());
    CHECK_FALSE(doubt_on("deck_condition", "77").empty());
    CHECK_FALSE(doubt_on("deck_condition", "x").empty());
    CHECK_FALSE(doubt_on("drain_count", "1.5").empty());
    CHECK_FALSE(doubt_on("drain_count", "-4").empty());
    CHECK(doubt_on("main_spans", "2.0").empty());
}

TEST_CASE("rows that are no structures are rejected with line and reason") {
    const Inventory inventory = read("state,structure_id,length_m\n"
                                     "99,,3\n"
                                     "99,A\n"
                                     "99,B,3,4\n"
                                     "AL,C,3\n"
                                     "99,D,3\n"
                                     "99,D,4\n");
    REQUIRE(inventory.rejected.size() == 5);
    CHECK(inventory.structures.size() == 1);
    CHECK(inventory.rows == 6);
    CHECK(inventory.rejected[0].reason == "the structure number is blank");
    CHECK(inventory.rejected[1].reason == "fewer cells than the header");
    CHECK(inventory.rejected[2].reason == "more cells than the header");
    CHECK(inventory.rejected[3].reason == "the state code is not a state's number");
    CHECK(inventory.rejected[4].reason == "second record of the same structure");
    CHECK(inventory.rejected[4].line == 7);
}

TEST_CASE("headers that cannot be used are refused") {
    CHECK(refused<FileError>("").id() == "structures.header");
    CHECK(refused<FileError>("length_m\n3\n").id() == "structures.header");
    CHECK(refused<FileError>("structure_id,length_m,length [ft]\n").id() == "structures.header");
    CHECK(refused<UnknownNameError>("structure_id,lenght_m\n").id() == "schema.key");
    CHECK(refused<UnitError>("structure_id,length_furlong_or_so\n").path().find("length") !=
          std::string::npos);
    CHECK(refused<UnitError>("structure_id,length [s]\n").id() == "unit.dimension");
    CHECK(refused<FileError>("structure_id\n\"A\n").id() == "structures.csv");
}

TEST_CASE("quotes, line ends within cells and a mark are read as RFC 4180 has them") {
    const Inventory inventory = read("\xEF\xBB\xBF\"structure_id\",crosses\r\n"
                                     "A,\"MILL \"\"OLD\"\" CREEK,\nNORTH\"\r\n"
                                     "B, SOUTH \r\n");
    REQUIRE(inventory.structures.size() == 2);
    CHECK(inventory.structures[0].crosses == "MILL \"OLD\" CREEK,\nNORTH");
    CHECK(inventory.structures[1].line == 4);
    CHECK(inventory.structures[1].crosses == "SOUTH");
}

TEST_CASE("the headers to fill in are headers that are read") {
    for (const UnitSystem units : {UnitSystem::si, UnitSystem::us, UnitSystem::metric}) {
        std::string header;
        std::string row;
        for (const std::string& one : json::structure_headers(units)) {
            header += (header.empty() ? "" : ",") + one;
            row += one == "structure_id" ? "A" : ",";
        }
        const Inventory inventory = read(header + "\n" + row + "\n");
        CHECK(inventory.structures.size() == 1);
        CHECK(inventory.doubts.empty());
    }
}

TEST_CASE("whichever form a file has, its first bytes tell") {
    const auto folder = std::filesystem::temp_directory_path();
    const auto written = [&](const std::string& text) {
        const auto path = folder / "scupper_test_any_inventory";
        std::ofstream(path, std::ios::binary) << text;
        const Inventory inventory = json::read_any_inventory(path);
        std::filesystem::remove(path);
        return inventory.structures.size();
    };
    CHECK(written("structure_id,length_m\nA,3\nB,4\n") == 2);
    CHECK(written("\xEF\xBB\xBF {\"scupper_structures\": 1, \"structures\": [{\"id\": \"A\"}]}") ==
          1);
    for (const char* name : {"dc_2019_part.txt", "dc_2019_part_fixed.txt"}) {
        const std::string path = std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name;
        CHECK(json::read_any_inventory(path).structures.size() == 40);
    }
    CHECK_THROWS_AS(json::read_any_inventory(folder / "no_such_file"), FileError);
}

} // namespace test_structure_table
