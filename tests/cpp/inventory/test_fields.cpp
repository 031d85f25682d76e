// Single fields: the guide's conventions, what cannot be, and every field spoilt in turn.

#include "catch.hpp"
#include "made_up.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

using namespace scupper;
using made_up::doubt_about;
using made_up::read_one;
using scupper::inventory::Doubt;
using scupper::inventory::Inventory;

namespace {

double length_of(const std::string& text) {
    return read_one({{"STRUCTURE_LEN_MT_049", text}}).structures.at(0).dimensions.length.si();
}

std::string doubt_on(const std::string& column, const std::string& text) {
    return doubt_about(read_one({{column, text}}), column);
}

} // namespace

TEST_CASE("Numbers read to the nearest double in every form they are written in") {
    CHECK(length_of("58.5") == 58.5);
    CHECK(length_of(" 58.5 ") == 58.5);
    CHECK(length_of("0.3") == 0.3);
    CHECK(length_of("1271.6") == 1271.6);
    CHECK(length_of("12345.678901") == 12345.678901);
    CHECK(length_of("0058.50") == 58.5);
    CHECK(length_of("58.") == 58.0);
    CHECK(length_of("5.85E+01") == 58.5);
    CHECK(read_one({{"ADT_029", "1200.0"}}).structures.at(0).codes.daily_traffic == 1200);
}

TEST_CASE("What is no number is a doubt and not recorded") {
    for (const char* text : {"abc", "1,5.2", "5 8", "0x10", "nan", "inf", "1e999", "--1", "58.5m",
                             ".", "1.2.3", "+5"}) {
        INFO(text);
        if (std::string(text).find(',') == std::string::npos) {
            CHECK(doubt_on("STRUCTURE_LEN_MT_049", text) == "not a number");
            CHECK(std::isnan(length_of(text)));
        }
    }
    CHECK(doubt_on("ADT_029", "12.5") == "not a number");
}

TEST_CASE("What cannot be is a doubt and not recorded") {
    const std::array<std::array<std::string, 2>, 12> impossible{{{"STRUCTURE_LEN_MT_049", "0"},
                                                                 {"STRUCTURE_LEN_MT_049", "-8"},
                                                                 {"STRUCTURE_LEN_MT_049", "99999"},
                                                                 {"MAIN_UNIT_SPANS_045", "0"},
                                                                 {"MAIN_UNIT_SPANS_045", "-8"},
                                                                 {"MAIN_UNIT_SPANS_045", "998"},
                                                                 {"APPR_WIDTH_MT_032", "2300"},
                                                                 {"APPR_WIDTH_MT_032", "0"},
                                                                 {"DECK_WIDTH_MT_052", "-1"},
                                                                 {"DECK_WIDTH_MT_052", "1200"},
                                                                 {"ADT_029", "-1"},
                                                                 {"STRUCTURE_TYPE_043B", "23"}}};
    for (const auto& [column, text] : impossible) {
        const Inventory inventory = read_one({{column, text}});
        INFO(column << " " << text);
        REQUIRE_FALSE(doubt_about(inventory, column).empty());
        CHECK_FALSE(inventory.doubts.front().kept);
        CHECK(inventory.doubts.front().found == text);
        CHECK(inventory.doubts.front().structure == "0042");
        CHECK(where(inventory, inventory.doubts.front()) == "made_up.txt:2 " + column);
    }
}

TEST_CASE("A sound record raises no doubt") {
    CHECK(read_one({}).doubts.empty());
}

TEST_CASE("Width 0 is ordinary for a culvert under fill, doubtful for anything else") {
    const made_up::Fields under_fill{
        {"STRUCTURE_TYPE_043B", "19"}, {"DECK_WIDTH_MT_052", "0"}, {"ROADWAY_WIDTH_MT_051", "0"}};
    const Inventory culvert = read_one(under_fill);
    CHECK(culvert.doubts.empty());
    CHECK(culvert.structures.at(0).dimensions.deck_width.si() == 0.0);
    const Inventory bridge = read_one({{"DECK_WIDTH_MT_052", "0"}});
    CHECK_FALSE(doubt_about(bridge, "DECK_WIDTH_MT_052").empty());
    CHECK(bridge.structures.at(0).dimensions.deck_width.si() == 0.0);
}

TEST_CASE("Values that contradict each other are kept, with a doubt") {
    const Inventory narrow = read_one({{"DECK_WIDTH_MT_052", "5"}});
    CHECK(doubt_about(narrow, "DECK_WIDTH_MT_052") == "narrower than the roadway");
    CHECK(narrow.structures.at(0).dimensions.deck_width.si() == 5.0);
    CHECK(doubt_on("MAX_SPAN_LEN_MT_048", "70") == "longer than the structure");
    CHECK(doubt_on("MAX_SPAN_LEN_MT_048", "10") ==
          "so short that all spans do not make up the length");
    CHECK(doubt_on("MAIN_UNIT_SPANS_045", "60") == "spans of less than 1 m on average");
    CHECK(doubt_on("ADT_029", "0") == "0, where the guide asks for an estimate");
}

TEST_CASE("A varying skew is not an angle") {
    const Inventory inventory = read_one({{"DEGREES_SKEW_034", "99"}});
    CHECK(doubt_about(inventory, "DEGREES_SKEW_034") == "99: the skew varies over the structure");
    CHECK(std::isnan(inventory.structures.at(0).dimensions.skew.si()));
    CHECK(doubt_on("DEGREES_SKEW_034", "95") == "outside 0 to 89 degrees");
}

namespace {

/// The columns of a sample that are read.
std::vector<std::string> columns_read(const std::string& text) {
    const auto all = scupper::inventory::known_columns();
    const std::set<std::string> known(all.begin(), all.end());
    std::vector<std::string> here;
    for (const std::string& name : made_up::fields(made_up::lines(text).front())) {
        if (known.contains(name)) {
            here.push_back(name);
        }
    }
    return here;
}

bool is_text(const std::string& column) {
    static const std::set<std::string> texts{"FEATURES_DESC_006A",     "FACILITY_CARRIED_007",
                                             "LOCATION_009",           "HIGHWAY_DISTRICT_002",
                                             "STRUCTURE_NUMBER_008",   "ROUTE_NUMBER_005D",
                                             "OTHR_STATE_STRUC_NO_099"};
    return texts.contains(column);
}

bool may_be_blank(const std::string& column) {
    static const std::set<std::string> items{"LAT_016",
                                             "LONG_017",
                                             "YEAR_RECONSTRUCTED_106",
                                             "PERCENT_ADT_TRUCK_109",
                                             "DECK_AREA",
                                             "RAILINGS_036A",
                                             "HORR_CLR_MT_047",
                                             "LAT_UND_REF_055A",
                                             "LAT_UND_MT_055B",
                                             "LEFT_LAT_UND_MT_056",
                                             "OPERATING_RATING_064",
                                             "INVENTORY_RATING_066",
                                             "OTHER_STATE_CODE_098A",
                                             "OTHER_STATE_PCNT_098B",
                                             "TEMP_STRUCTURE_103",
                                             "PIER_PROTECTION_111",
                                             "BRIDGE_LEN_IND_112",
                                             "SCOUR_CRITICAL_113",
                                             "FUTURE_ADT_114",
                                             "YEAR_OF_FUTURE_ADT_115",
                                             "MIN_NAV_CLR_MT_116"};
    return items.contains(column) || (is_text(column) && column != "STRUCTURE_NUMBER_008");
}

/// A sample in which the same column of every row is spoilt alike.
std::string spoilt(const std::string& text, const std::string& column, const std::string& value) {
    const auto rows = made_up::lines(text);
    const auto names = made_up::fields(rows.front());
    const auto at = std::find(names.begin(), names.end(), column) - names.begin();
    std::string out = rows.front() + "\n";
    for (std::size_t i = 1; i < rows.size(); ++i) {
        auto fields = made_up::fields(rows[i]);
        fields.at(static_cast<std::size_t>(at)) = value;
        out += made_up::joined(fields) + "\n";
    }
    return out;
}

/// The lines about which something is told for that column, or that are rejected.
std::set<std::uint64_t> told_lines(const Inventory& inventory, const std::string& column) {
    std::set<std::uint64_t> told;
    for (const Doubt& doubt : inventory.doubts) {
        if (doubt.column == column) {
            told.insert(doubt.line);
        }
    }
    for (const auto& rejected : inventory.rejected) {
        told.insert(rejected.line);
    }
    return told;
}

} // namespace

TEST_CASE("Every field of every sample record spoilt in turn is told, never lost") {
    const std::array<std::string, 6> values{"",   "-5", "1e12", "9999999999999", "\xC3\xA9\xFF?",
                                            "x y"};
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        const std::string text = made_up::sample(name);
        const std::size_t rows = made_up::lines(text).size() - 1;
        for (const std::string& column : columns_read(text)) {
            for (const std::string& value : values) {
                const Inventory inventory = made_up::read(spoilt(text, column, value));
                INFO(name << " " << column << " '" << value << "'");
                CHECK(made_up::adds_up(inventory));
                CHECK(inventory.rows == rows);
                if (column == "STRUCTURE_NUMBER_008" && !value.empty()) {
                    CHECK(inventory.rejected.size() == rows - 1); // all the same structure now
                } else if (!is_text(column) && !(value.empty() && may_be_blank(column))) {
                    CHECK(told_lines(inventory, column).size() == rows);
                }
            }
        }
    }
}

// Source: tests/reference/inventory/format.csv, from FHWA-PD-96-001 (1995), record format.
TEST_CASE("Every column that is read is one of the record format, or the area newer files add") {
    std::ifstream in(std::string(SCUPPER_TESTS_DIR) + "/reference/inventory/format.csv");
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    for (const std::string& name : scupper::inventory::known_columns()) {
        INFO(name);
        CHECK((name == "DECK_AREA" || text.find("," + name + ",") != std::string::npos));
    }
    CHECK(scupper::inventory::known_columns().size() == 87);
}

// Source: tests/reference/inventory/format.csv; header rows of the published files of 2013 and 2019.
TEST_CASE("Every column of the record format and of published headers is read, or a reason says "
          "why not") {
    const auto names_of = [](const std::string& text) {
        std::set<std::string> names;
        for (const std::string& line : made_up::lines(text)) {
            names.insert(line.substr(0, line.find(',')));
        }
        return names;
    };
    const std::vector<std::string> columns = scupper::inventory::known_columns();
    const std::set<std::string> known(columns.begin(), columns.end());
    std::ifstream reasons(std::string(SCUPPER_TESTS_DIR) + "/reference/inventory/not_read.csv");
    const std::set<std::string> not_read = names_of({std::istreambuf_iterator<char>(reasons), {}});
    std::set<std::string> published;
    std::ifstream format(std::string(SCUPPER_TESTS_DIR) + "/reference/inventory/format.csv");
    for (const std::string& line : made_up::lines({std::istreambuf_iterator<char>(format), {}})) {
        published.insert(made_up::fields(line).at(1));
    }
    for (const char* const file : {"dc_2019_part.txt", "al_2013_part.csv"}) {
        for (const std::string& name :
             made_up::fields(made_up::lines(made_up::sample(file)).at(0))) {
            published.insert(name);
        }
    }
    published.erase("column_name");
    CHECK(published.size() == 138);
    for (const std::string& name : published) {
        INFO(name);
        CHECK(known.contains(name) != not_read.contains(name));
    }
}
