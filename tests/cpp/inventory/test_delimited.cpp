// Headers, rows and files that are not as they should be.

#include "catch.hpp"
#include "made_up.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cstdint>
#include <string>

using namespace scupper;
using made_up::adds_up;
using made_up::file;
using made_up::read;
using made_up::row;
using scupper::inventory::Inventory;

namespace {

template <class Call>
std::string error_of(Call&& call) {
    try {
        call();
    } catch (const FileError& error) {
        return error.id() + " | " + error.what();
    }
    return "no error";
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string without_column(const std::string& name) {
    std::string text = made_up::header();
    text.replace(text.find(name), name.size(), "UNKNOWN");
    return text + "\n" + row() + "\n";
}

} // namespace

TEST_CASE("A header without necessary columns is refused by name") {
    const std::string error = error_of([] { read(without_column("STRUCTURE_LEN_MT_049")); });
    CHECK(contains(error, "inventory.columns"));
    CHECK(contains(error, "STRUCTURE_LEN_MT_049"));
    CHECK(contains(error, "made_up.txt:1"));
    CHECK_FALSE(contains(error, "DECK_WIDTH_MT_052"));
}

TEST_CASE("A header without a column the model can do without is said") {
    const Inventory inventory = read(without_column("ADT_029"));
    CHECK(inventory.structures.size() == 1);
    const auto& absent = inventory.absent_columns;
    CHECK(std::count(absent.begin(), absent.end(), "ADT_029") == 1);
    CHECK(made_up::doubt_about(inventory, "ADT_029").empty());
}

TEST_CASE("What is no delimited inventory is refused") {
    CHECK(contains(error_of([] { read(""); }), "inventory.header | made_up.txt: an empty file"));
    CHECK(contains(error_of([] { read("one line of prose\n"); }), "inventory.header"));
    CHECK(contains(error_of([] { read("\xFF\xFES\0T\0"); }), "UTF-16"));
    CHECK(contains(error_of([] { read(std::string(5000, ',')); }), "inventory.header"));
    CHECK(contains(error_of([] { read("ADT_029," + made_up::header() + "\n"); }),
                   "column ADT_029 twice"));
    CHECK(contains(error_of([] { inventory::read_inventory("no/such/file.txt"); }),
                   "inventory.open | no/such/file.txt"));
    CHECK(contains(error_of([] { inventory::read_inventory("."); }), "inventory.open"));
}

TEST_CASE("Columns are found by name, in any order and letter case") {
    std::string head;
    std::string record;
    auto columns = made_up::sound();
    std::reverse(columns.begin(), columns.end());
    for (auto& [name, value] : columns) {
        std::transform(name.begin(), name.end(), name.begin(),
                       [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        head += " " + name + " ,";
        record += value + ",";
    }
    const Inventory inventory = read(head + "extra\n" + record + "7\n");
    REQUIRE(inventory.structures.size() == 1);
    CHECK(inventory.structures[0].id == "0042");
    CHECK(inventory.structures[0].dimensions.length.si() == 58.5);
    CHECK(inventory.structures[0].crosses == "MILL CREEK");
}

TEST_CASE("Rows with too few or too many fields are listed with line and reason") {
    const Inventory inventory =
        read(file({row(), row({{"STRUCTURE_NUMBER_008", "2"}}) + ",1", "01,0043,1"}));
    REQUIRE(inventory.rejected.size() == 2);
    CHECK(inventory.structures.size() == 1);
    CHECK(inventory.rejected[0].line == 3);
    CHECK(inventory.rejected[0].reason == "more fields than the header");
    CHECK(inventory.rejected[0].found == "19 fields, 18 in the header");
    CHECK(inventory.rejected[1].reason == "fewer fields than the header");
    CHECK(inventory.rejected[1].structure == "0043");
    CHECK(where(inventory, inventory.rejected[1]) == "made_up.txt:4");
    CHECK(adds_up(inventory));
}

TEST_CASE("A line too long for a record is listed as such") {
    const Inventory inventory = read(file({row(), std::string(20000, '\''), row()}));
    REQUIRE(inventory.rejected.size() == 2);
    CHECK(inventory.rejected[0].reason == "the line is too long for a record");
    CHECK(inventory.rejected[0].found == "20000 bytes");
    CHECK(contains(error_of([] { read(std::string(20000, 'A')); }), "inventory.header"));
}

TEST_CASE("A file cut off in its last line says so") {
    const std::string whole = file({row(), row({{"STRUCTURE_NUMBER_008", "43"}})});
    const Inventory inventory = read(whole.substr(0, whole.size() - 20));
    REQUIRE(inventory.rejected.size() == 1);
    CHECK(inventory.rejected[0].reason == "the last line is cut off");
    CHECK(inventory.rejected[0].structure == "43");
    CHECK(read(whole.substr(0, whole.size() - 1)).structures.size() == 2);
}

TEST_CASE("Cut off anywhere, a file is read as far as it goes and every row is told") {
    const std::string whole = file({row(), row({{"STRUCTURE_NUMBER_008", "43"}})});
    for (std::size_t size = made_up::header().size() + 1; size <= whole.size(); ++size) {
        const Inventory inventory = read(whole.substr(0, size));
        CHECK(adds_up(inventory));
        CHECK(inventory.rows <= 2);
    }
}

TEST_CASE("Routes under a structure are counted apart") {
    const Inventory inventory =
        read(file({row(), row({{"RECORD_TYPE_005A", "2"}}), row({{"RECORD_TYPE_005A", "C"}}),
                   row({{"RECORD_TYPE_005A", "9"}}), row({{"RECORD_TYPE_005A", ""}})}));
    CHECK(inventory.structures.size() == 1);
    CHECK(inventory.routes_under == 2);
    REQUIRE(inventory.rejected.size() == 2);
    CHECK(inventory.rejected[0].reason == "the record type is not 1, 2 or A to Z");
    CHECK(adds_up(inventory));
}

TEST_CASE("A second record of a structure is listed, a copy as such") {
    const Inventory inventory =
        read(file({row(), row(), row({{"ADT_029", "7"}}), row({{"STATE_CODE_001", "02"}})}));
    CHECK(inventory.structures.size() == 2);
    REQUIRE(inventory.rejected.size() == 2);
    CHECK(inventory.rejected[0].reason == "the same record again");
    CHECK(inventory.rejected[0].found == "first on line 2");
    CHECK(inventory.rejected[1].reason == "second record of the same structure");
    CHECK(adds_up(inventory));
}

TEST_CASE("Blank lines are no records") {
    const Inventory inventory = read(made_up::header() + "\r\n\r\n" + row() + "\r\n   \r\n\x1a");
    CHECK(inventory.rows == 1);
    CHECK(inventory.blank_lines == 3);
    CHECK(inventory.structures[0].line == 3);
}

TEST_CASE("State codes are two digits, however they were written") {
    const auto state = [](const std::string& code) {
        const Inventory inventory = made_up::read_one({{"STATE_CODE_001", code}});
        return inventory.structures.empty() ? "rejected" : inventory.structures[0].state;
    };
    CHECK(state("01") == "01");
    CHECK(state("1") == "01");   // leading zero dropped
    CHECK(state("014") == "01"); // with the region digit of the fixed-width form
    CHECK(state("") == "rejected");
    CHECK(state("00") == "rejected");
    CHECK(state("AL") == "rejected");
    CHECK(state("-1") == "rejected");
    CHECK(state("0114") == "rejected");
}

TEST_CASE("A blank structure number is rejected, padding is kept apart from the number") {
    CHECK(made_up::read_one({{"STRUCTURE_NUMBER_008", "   "}}).rejected.at(0).reason ==
          "the structure number is blank");
    const Inventory inventory = made_up::read_one({{"STRUCTURE_NUMBER_008", "  17 B  "}});
    CHECK(inventory.structures.at(0).number == "  17 B  ");
    CHECK(inventory.structures.at(0).id == "17 B");
}

TEST_CASE("Reading tells how far it is and stops when asked") {
    std::vector<std::string> rows(20000, row());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i] = row({{"STRUCTURE_NUMBER_008", std::to_string(i)}});
    }
    const std::string text = file(rows);
    std::uint64_t told = 0;
    int calls = 0;
    inventory::read_inventory_text(text, "x", [&](std::uint64_t done, std::uint64_t total) {
        CHECK(done >= told);
        CHECK(total == text.size());
        told = done;
        ++calls;
        return true;
    });
    CHECK(told == text.size());
    CHECK(calls >= 2);
    const auto stop = [](std::uint64_t, std::uint64_t) { return false; };
    CHECK_THROWS_AS(inventory::read_inventory_text(text, "x", stop), Interrupted);
}
