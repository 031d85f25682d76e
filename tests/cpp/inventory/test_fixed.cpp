// The fixed form: no header, every column at its place, decimals implied.

#include "catch.hpp"
#include "made_up.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace scupper;
using scupper::inventory::Inventory;

namespace test_fixed {

namespace {

/// One column of the record format.
struct Place {
    std::string name;
    std::size_t first, last;
    std::size_t decimals;
    bool measured; // a number with a unit, not a code
};

// Source: tests/reference/inventory/format.csv, from FHWA-PD-96-001 (1995), record format.
const std::vector<Place>& record_format() {
    static const std::vector<Place> places = [] {
        std::ifstream in(std::string(SCUPPER_TESTS_DIR) + "/reference/inventory/format.csv");
        const std::string text{std::istreambuf_iterator<char>(in), {}};
        std::vector<Place> all;
        for (const std::string& line : made_up::lines(text)) {
            const auto cell = made_up::fields(line);
            if (cell.at(0) != "item" && !cell.at(0).empty()) {
                const bool packed = cell.at(5).find("packed") != std::string::npos;
                all.push_back({cell.at(1), std::stoul(cell.at(2)), std::stoul(cell.at(3)),
                               packed ? 0 : std::stoul(cell.at(4)), cell.at(5) != "code"});
            }
        }
        return all;
    }();
    return places;
}

/// Digits with their point taken out and `decimals` of them after it.
std::string without_point(std::string text, std::size_t decimals) {
    const std::size_t point = std::min(text.find('.'), text.size());
    const std::size_t given = text.size() - std::min(point + 1, text.size());
    text.erase(point, 1);
    return text + std::string(decimals - std::min(decimals, given), '0');
}

bool is_text(const std::string& column) {
    static const std::set<std::string> texts{"STRUCTURE_NUMBER_008", "ROUTE_NUMBER_005D",
                                             "HIGHWAY_DISTRICT_002", "FEATURES_DESC_006A",
                                             "FACILITY_CARRIED_007", "LOCATION_009",
                                             "LRS_INV_ROUTE_013A",   "OTHR_STATE_STRUC_NO_099"};
    return texts.contains(column);
}

/// A field of the delimited form as the fixed form has it.
std::string in_place(const Place& place, std::string text) {
    const std::size_t width = place.last - place.first + 1;
    const bool quoted = text.size() > 1 && text.front() == '\'' && text.back() == '\'';
    text = quoted ? text.substr(1, text.size() - 2) : text;
    if (!is_text(place.name)) {
        const std::size_t end = text.find_last_not_of(' ') + 1;
        text = text.substr(std::min(text.find_first_not_of(' '), end), end);
        if (place.name == "STATE_CODE_001") {
            return text + "0";
        }
        if (!text.empty() && text.find_first_not_of("0123456789.") == std::string::npos) {
            text = without_point(text, place.decimals);
            text.insert(0, width - std::min(width, text.size()), '0');
        }
    }
    return text.substr(0, width) + std::string(width - std::min(width, text.size()), ' ');
}

using Row = std::map<std::string, std::string>;

std::string fixed_record(const Row& row) {
    std::string record(432, ' ');
    for (const Place& place : record_format()) {
        if (row.contains(place.name)) {
            const std::string text = in_place(place, row.at(place.name));
            record.replace(place.first - 1, text.size(), text);
        }
    }
    return record;
}

/// The records of a sample of the delimited form by column name; those with a decimal point in a
/// packed coordinate, for which the fixed form has no room, are left out.
std::vector<Row> rows_of(const std::string& name) {
    const auto lines = made_up::lines(made_up::sample(name));
    const auto names = made_up::fields(lines.front());
    std::vector<Row> rows;
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const auto cells = made_up::fields(lines[i]);
        Row row;
        for (std::size_t k = 0; k < names.size(); ++k) {
            row[names[k]] = cells.at(k);
        }
        if (row.at("LAT_016").find('.') == std::string::npos) {
            rows.push_back(row);
        }
    }
    return rows;
}

/// Everything a record says but for what the fixed form has no place for.
std::string told(Structure s) {
    s.line = 0;
    s.recorded_deck_area = not_recorded;
    return json::write_structure(s);
}

std::map<std::string, std::string> told_by_number(const Inventory& inventory) {
    std::map<std::string, std::string> all;
    for (const Structure& s : inventory.structures) {
        all[s.id] = told(s);
    }
    return all;
}

std::multiset<std::string> doubts_of(const Inventory& inventory,
                                     const std::map<std::string, std::string>& among) {
    std::multiset<std::string> all;
    for (const auto& doubt : inventory.doubts) {
        if (among.contains(doubt.structure)) {
            all.insert(doubt.structure + " " + doubt.column + ": " + doubt.reason);
        }
    }
    return all;
}

Row sound_row() {
    Row row;
    for (const auto& [name, value] : made_up::sound()) {
        row[name] = value;
    }
    return row;
}

Inventory read_record(const std::string& record) {
    return made_up::read(record + "\r\n");
}

} // namespace

TEST_CASE("The derived fixed form of real records reads to the bit as their delimited form") {
    const Inventory fixed = made_up::read(made_up::sample("dc_2019_part_fixed.txt"));
    const Inventory delimited = made_up::read(made_up::sample("dc_2019_part.txt"));
    CHECK(fixed.rejected.empty());
    REQUIRE(fixed.structures.size() == delimited.structures.size());
    const auto expected = told_by_number(delimited);
    CHECK(told_by_number(fixed) == expected);
    CHECK(doubts_of(fixed, expected) == doubts_of(delimited, expected));
    CHECK(fixed.absent_columns == std::vector<std::string>{"DECK_AREA"});
}

TEST_CASE("Every sample put into the places of the record format reads to the bit alike") {
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        std::string text;
        const auto rows = rows_of(name);
        for (const Row& row : rows) {
            text += fixed_record(row) + "\n";
        }
        const auto read = told_by_number(made_up::read(text));
        const auto all = told_by_number(made_up::read(made_up::sample(name)));
        INFO(name);
        CHECK(read.size() == rows.size());
        for (const auto& [id, record] : read) {
            INFO(id);
            CHECK(record == all.at(id));
        }
    }
}

TEST_CASE("Decimals are implied, the region digit of the state goes") {
    const Inventory inventory = read_record(fixed_record(sound_row()));
    REQUIRE(inventory.structures.size() == 1);
    const Structure& s = inventory.structures[0];
    CHECK(s.state == "01");
    CHECK(s.line == 1);
    CHECK(s.dimensions.length.si() == 58.5);
    CHECK(s.dimensions.deck_width.si() == 9.7);
    CHECK(s.crosses == "MILL CREEK");
    std::string pointed = fixed_record(sound_row());
    pointed.replace(222, 6, "  58.5"); // columns 223 to 228 by the record format
    CHECK(read_record(pointed).structures.at(0).dimensions.length.si() == 58.5);
    pointed.replace(222, 6, "-00585");
    CHECK(std::isnan(read_record(pointed).structures.at(0).dimensions.length.si()));
}

TEST_CASE("Records of 445 characters, a mark, bare line ends and a missing last end read alike") {
    const std::string record = fixed_record(sound_row());
    const std::string once = told(read_record(record).structures.at(0));
    for (const std::string& text : {record + std::string(13, '0') + "\n", "\xEF\xBB\xBF" + record,
                                    record + "\n\n\x1a", record.substr(0, 400) + "\n"}) {
        const Inventory inventory = made_up::read(text);
        REQUIRE(inventory.structures.size() == 1);
        CHECK(told(inventory.structures[0]) == once);
    }
}

TEST_CASE("Latin-1 bytes and characters of several bytes stand in the same places") {
    const std::string plain = fixed_record(sound_row());
    std::string latin = plain;
    latin.replace(37, 3, "CA\xD1"); // features intersected
    std::string utf8 = plain;
    utf8.replace(37, 3, "CA\xC3\x91");
    for (const std::string& record : {latin, utf8}) {
        const Inventory inventory = made_up::read(plain + "\n" + record + "\n" + plain + "\n");
        CHECK(inventory.rows == 3);
        CHECK(inventory.rejected.size() == 2); // the same structure again
        const Structure& s = read_record(record).structures.at(0);
        CHECK(s.crosses == "CA\xC3\x91L CREEK");
        CHECK(s.location == "2 KM N OF X");
        CHECK(s.dimensions.length.si() == 58.5);
    }
}

TEST_CASE("A fixed record cut off anywhere is told, a surplus too") {
    const std::string record = fixed_record(sound_row());
    for (std::size_t size = 1; size < record.size(); ++size) {
        Row other = sound_row();
        other["STRUCTURE_NUMBER_008"] = "43";
        const Inventory inventory =
            made_up::read(fixed_record(other) + "\n" + record.substr(0, size));
        INFO(size);
        CHECK(made_up::adds_up(inventory));
        CHECK(inventory.structures.size() == 1);
        REQUIRE(inventory.rejected.size() == 1);
        CHECK(inventory.rejected[0].reason == "the last line is cut off");
    }
    const std::string good = record + "\n";
    CHECK(made_up::read(good + record.substr(0, 300) + "\n").rejected.at(0).reason ==
          "shorter than a record");
    CHECK(made_up::read(good + record + std::string(20, '0') + "\n").rejected.at(0).reason ==
          "longer than a record");
}

TEST_CASE("Routes under a structure are told apart in the fixed form too") {
    Row under = sound_row();
    under["RECORD_TYPE_005A"] = "2";
    const Inventory inventory =
        made_up::read(fixed_record(sound_row()) + "\n" + fixed_record(under) + "\n");
    CHECK(inventory.structures.size() == 1);
    CHECK(inventory.routes_under == 1);
}

TEST_CASE("Every place of a fixed record spoilt in turn is told, never lost") {
    const std::string sample = made_up::lines(made_up::sample("dc_2019_part_fixed.txt")).front();
    const Inventory sound = read_record(sample);
    for (const Place& place : record_format()) {
        const std::size_t width = place.last - place.first + 1;
        for (const char spoiling : {' ', '-', '9', '?', '\xE9'}) {
            std::string record = sample;
            record.replace(place.first - 1, width, std::string(width, spoiling));
            const Inventory inventory = made_up::read(sample + "\n" + record + "\n");
            INFO(place.name << " '" << spoiling << "'");
            CHECK(inventory.rows == 2);
            CHECK(made_up::adds_up(inventory));
        }
    }
    CHECK(sound.structures.size() == 1);
}

} // namespace test_fixed
