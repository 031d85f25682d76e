// Real records. What is expected was counted with another program (tests/data/inventory/README.md)
// or stands in the file itself.

#include "catch.hpp"
#include "made_up.hpp"

#include <cmath>
#include <cstddef>
#include <functional>
#include <map>
#include <string>

using namespace scupper;
using scupper::inventory::Doubt;
using scupper::inventory::Inventory;

namespace {

Inventory read_sample(const std::string& name) {
    return inventory::read_inventory(std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name);
}

using Count = std::function<std::size_t(const Inventory&)>;

Count structures(bool (*shows)(const Structure&)) {
    return [shows](const Inventory& inventory) {
        std::size_t n = 0;
        for (const Structure& s : inventory.structures) {
            n += shows(s) ? 1 : 0;
        }
        return n;
    };
}

Count doubts(const std::string& column, const std::string& in_reason) {
    return [column, in_reason](const Inventory& inventory) {
        std::size_t n = 0;
        for (const Doubt& d : inventory.doubts) {
            n += d.column == column && d.reason.find(in_reason) != std::string::npos ? 1 : 0;
        }
        return n;
    };
}

bool is_culvert(const Structure& s) {
    return s.codes.design == Design::culvert;
}

/// How this project finds what was counted.
const std::map<std::string, Count>& finders() {
    static const std::map<std::string, Count> all{
        {"records", structures([](const Structure&) { return true; })},
        {"culverts", structures(is_culvert)},
        {"culverts with a deck width", structures([](const Structure& s) {
             return is_culvert(s) && s.dimensions.deck_width.si() > 0.0;
         })},
        {"deck width 0",
         structures([](const Structure& s) { return s.dimensions.deck_width.si() == 0.0; })},
        {"deck narrower than roadway", doubts("DECK_WIDTH_MT_052", "than the roadway")},
        {"longest span 0", doubts("MAX_SPAN_LEN_MT_048", "outside")},
        {"spans short of the length", doubts("MAX_SPAN_LEN_MT_048", "make up the length")},
        {"skew 99", doubts("DEGREES_SKEW_034", "varies")},
        {"approach spans without type", doubts("APPR_KIND_044A", "there are spans")},
        {"type without approach spans", doubts("APPR_SPANS_046", "44 gives")},
        {"latitude seconds of 60 or more", doubts("LAT_016", "seconds of 60")},
        {"latitude degrees 00", doubts("LAT_016", "cannot be")},
        {"coordinate with a decimal point", doubts("LAT_016", "decimal point")},
        {"county blank", doubts("COUNTY_CODE_003", "blank")},
        {"item 67 an asterisk", doubts("STRUCTURAL_EVAL_067", "not a code")},
        {"traffic 0", doubts("ADT_029", "0, where")},
        {"54A N with a clearance", doubts("VERT_CLR_UND_054B", "says neither")},
        {"deck type N with a deck width", doubts("DECK_STRUCTURE_TYPE_107", "has a width")},
        {"structure number with leading blank",
         structures([](const Structure& s) { return s.number.front() == ' '; })},
        {"structure number with trailing blank",
         structures([](const Structure& s) { return s.number.back() == ' '; })},
        {"structure number with inner blank",
         structures([](const Structure& s) { return s.id.find(' ') != std::string::npos; })},
        {"navigation clearance without navigation", doubts("NAV_VERT_CLR_MT_039", "38 is not 1")},
        {"detour above 199 km", doubts("DETOUR_KILOS_019", "outside")},
        {"owner code the guide does not list", doubts("OWNER_022", "not a code")},
        {"traffic year 0", doubts("YEAR_ADT_030", "outside")},
        {"trucks blank with traffic above 100", doubts("PERCENT_ADT_TRUCK_109", "blank")},
        {"walks and roadway wider than the deck", doubts("DECK_WIDTH_MT_052", "walks together")},
    };
    return all;
}

/// Rows of counted.csv whose finding needs no doubt: read right, or nothing to say.
bool is_told_elsewhere(const std::string& what) {
    return what == "inspection date of three digits" || what == "HTML entity";
}

} // namespace

TEST_CASE("Every oddity counted by another program is found") {
    std::map<std::string, Inventory> read;
    std::size_t compared = 0;
    for (const std::string& line : made_up::lines(made_up::sample("counted.csv"))) {
        const auto row = made_up::fields(line);
        if (row.at(0) == "file" || is_told_elsewhere(row.at(1))) {
            continue;
        }
        if (!read.contains(row.at(0))) {
            read.emplace(row.at(0), read_sample(row.at(0)));
        }
        INFO(row.at(0) << ": " << row.at(1));
        CHECK(finders().at(row.at(1))(read.at(row.at(0))) == std::stoul(row.at(2)));
        ++compared;
    }
    CHECK(compared == 3 * finders().size());
}

TEST_CASE("Every sample row is a structure of its own") {
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        const Inventory inventory = read_sample(name);
        INFO(name);
        CHECK(made_up::adds_up(inventory));
        CHECK(inventory.rejected.empty());
        CHECK(inventory.routes_under == 0);
        for (const Structure& s : inventory.structures) {
            CHECK(inventory.find(structure_key(s)) == &s);
        }
    }
}

// Source: 23 CFR 490.411: item 49 times item 52, or item 32 where item 52 is 0; compared with the
// column DECK_AREA of the file, which prints two decimals.
TEST_CASE("Length times width is the deck area the file records") {
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt"}) {
        for (const Structure& s : read_sample(name).structures) {
            INFO(structure_key(s));
            const double deck = s.dimensions.deck_width.si();
            const double width = deck == 0.0 ? s.dimensions.approach_width.si() : deck;
            const double area = s.dimensions.length.si() * width;
            CHECK(std::abs(area - s.recorded_deck_area) <= 0.005 + 1e-9);
        }
    }
}

// The values below stand in the file, first row of the sample of the older header.
TEST_CASE("A record of the older header reads as printed") {
    const Inventory inventory = read_sample("al_2013_part.csv");
    CHECK(inventory.absent_columns == std::vector<std::string>{"DECK_AREA"});
    const Structure* s = inventory.find("00000000000S702");
    REQUIRE(s != nullptr);
    CHECK(s->state == "01");
    CHECK(s->line == 2);
    CHECK(s->crosses == "PERDIDO CREEK");
    CHECK(s->carries == "IRR BIA RTE 4007");
    CHECK(s->location == "11.4KM NW OF ATMORE  AL");
    CHECK(s->district == "09");
    CHECK(s->latitude == Approx(31 + 6 / 60.0 + 11.02 / 3600.0));
    CHECK(s->longitude == Approx(-(87 + 34 / 60.0 + 13.52 / 3600.0)));
    CHECK(s->dimensions.length.si() == 15.0);
    CHECK(s->dimensions.longest_span.si() == 14.7);
    CHECK(s->dimensions.deck_width.si() == 9.7);
    CHECK(s->dimensions.skew.si() == Approx(0.5235987755982988)); // 30 degrees
    CHECK(s->dimensions.detour.si() == 3000.0);
    CHECK(std::isnan(s->dimensions.clearance_over.si())); // 99.99: none
    CHECK(std::isnan(s->dimensions.clearance_under.si()));
    CHECK(std::isnan(s->recorded_deck_area));
    CHECK(s->codes.material == Material::prestressed);
    CHECK(s->codes.design == Design::box_multiple);
    CHECK(s->codes.approach_design == Design::unknown);
    CHECK(s->codes.below == Below::neither);
    CHECK(s->codes.daily_traffic == 50);
    CHECK(s->codes.owner == 62);
    CHECK(s->codes.county == 53);
    CHECK(s->codes.year_reconstructed == no_code);
    CHECK(s->codes.truck_percent == 1);
    CHECK(s->codes.inspection_month == 2); // "212"
    CHECK(s->codes.inspection_year == 2012);
    CHECK(s->codes.posting == 'P');
    CHECK(s->codes.deck_condition == '7');
    CHECK(s->codes.culvert_condition == 'N');
}

TEST_CASE("No text of the samples keeps an entity, a quote around it or padding") {
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        for (const Structure& s : read_sample(name).structures) {
            for (const std::string& text : {s.carries, s.crosses, s.location}) {
                INFO(structure_key(s) << ": " << text);
                CHECK(text.find("&amp;") == std::string::npos);
                CHECK(text.find("&#") == std::string::npos);
                REQUIRE_FALSE(text.empty());
                CHECK(text.front() != ' ');
                CHECK(text.back() != ' ');
            }
        }
    }
}

TEST_CASE("Line ends, a byte order mark and a missing last line end change nothing") {
    const std::string original = made_up::sample("dc_2019_part.txt");
    std::string unix_ends = "\xEF\xBB\xBF";
    for (const std::string& line : made_up::lines(original)) {
        unix_ends += (unix_ends.size() > 3 ? "\n" : "") + line;
    }
    const Inventory one = made_up::read(original);
    const Inventory other = made_up::read(unix_ends);
    REQUIRE(one.structures.size() == other.structures.size());
    for (std::size_t i = 0; i < one.structures.size(); ++i) {
        CHECK(one.structures[i].number == other.structures[i].number);
        CHECK(one.structures[i].location == other.structures[i].location);
        CHECK(one.structures[i].recorded_deck_area == other.structures[i].recorded_deck_area);
    }
    CHECK(one.doubts.size() == other.doubts.size());
}
