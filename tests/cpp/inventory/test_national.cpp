// Records of the national specification of 2022 (JSON): what they say beyond the old record, and what
// cannot be used of them. All structures are invented.

#include "catch.hpp"
#include "made_up.hpp"
#include "scupper/inventory.hpp"
#include "scupper/quantity/factors.hpp"

#include <algorithm>
#include <string>

using namespace scupper;
using inventory::Inventory;
using inventory::read_inventory_text;

namespace test_national {

namespace {

constexpr double foot = factor::foot;

const std::string& sample() {
    static const std::string text = made_up::sample("national_2022_invented.json");
    return text;
}

Inventory read(const std::string& text) {
    return read_inventory_text(text, "national.json");
}

/// A record with some items more, which come last and so win.
std::string record(const std::string& more = {}) {
    return R"({"BID01": "42", "BL01": 99, "BG02": 100, "BG03": 50, "BG05": 30, "BG06": 28,
        "BW01": 1990, "SpanSets": [{"BSP01": "M01", "BSP02": 2, "BSP03": 4, "BSP04": "S02",
        "BSP05": "1", "BSP06": "G02"}])" +
           (more.empty() ? "" : ", " + more) + "}";
}

std::string doubt(const Inventory& inventory, const std::string& column) {
    return made_up::doubt_about(inventory, column);
}

} // namespace

TEST_CASE("national JSON: items that the old record lacks, feet to metres exactly") {
    const Inventory inv = read(sample());
    REQUIRE(inv.structures.size() == 6);
    CHECK(inv.rejected.empty());
    const Structure& s = *inv.find("INV-0001");
    CHECK(s.state == "99");
    CHECK(s.dimensions.length.si() == 200.0 * foot);
    CHECK(s.dimensions.deck_width.si() == 36.0 * foot);
    CHECK(s.dimensions.height.si() == 24.0 * foot);
    CHECK(s.codes.beam_lines == 5);
    CHECK(s.codes.pier_units == 2);
    CHECK(s.codes.abutment_units == 2);
    CHECK(s.codes.main_spans == 3);
    CHECK(s.codes.approach_spans == 0);
    CHECK(s.codes.material == Material::steel);
    CHECK(s.codes.design == Design::multi_beam);
    CHECK(s.codes.joint_condition == '4');
    CHECK(s.codes.deck_type == '1');
    CHECK(s.codes.owner == 1);
    CHECK(s.owner_code == "S01");
    CHECK(s.longitude == -93.25);
    CHECK(s.line == 1);
    CHECK(s.codes.inspection_year == 2024);
    CHECK(s.codes.inspection_month == 6);
    CHECK(s.codes.inspection_interval == 24);
}

TEST_CASE("national JSON: features carried and below") {
    const Inventory inv = read(sample());
    const Structure& road = *inv.find("INV-0001");
    CHECK(road.carries == "INVENTED ROUTE 7");
    CHECK(road.crosses == "INVENTED ROUTE 12");
    CHECK(road.codes.lanes_on == 2);
    CHECK(road.codes.lanes_under == 4);
    CHECK(road.codes.daily_traffic == 4200);
    CHECK(road.codes.truck_percent == 9);
    CHECK(road.codes.functional_class == 7);
    CHECK(road.codes.below == Below::highway);
    CHECK(road.codes.service_on == 1);
    CHECK(road.codes.service_under == 1);
    CHECK(road.dimensions.clearance_under.si() == 16.5 * foot);
    CHECK(road.dimensions.detour.si() == Approx(6.0 * 1609.344));
    const Structure& viaduct = *inv.find("INV-0005");
    CHECK(viaduct.codes.service_under == 8); // road, railway and water
    CHECK(viaduct.codes.navigation == 1);
    CHECK(viaduct.codes.below == Below::highway); // the lower of the two clearances
    CHECK(viaduct.dimensions.clearance_under.si() == 15.0 * foot);
    CHECK(viaduct.codes.functional_class == 14); // a principal arterial in a town
    const Structure& creek = *inv.find("INV-0002");
    CHECK(creek.codes.service_under == 5);
    CHECK(creek.codes.navigation == 0);
    CHECK(creek.codes.below == Below::neither);
    CHECK(inv.find("INV-0004")->codes.service_under == 9); // relief for water
}

TEST_CASE("national JSON: several span sets and substructure sets of one structure") {
    const Inventory inv = read(sample());
    const Structure& s = *inv.find("INV-0005");
    CHECK(s.codes.main_spans == 3);
    CHECK(s.codes.approach_spans == 4);
    CHECK(s.codes.material == Material::steel_continuous);
    CHECK(s.codes.approach_material == Material::prestressed);
    CHECK(s.codes.beam_lines == 5); // four and the one of the widening
    CHECK(s.codes.approach_beam_lines == 6);
    CHECK(s.codes.pier_units == 6); // widenings of piers stand beside them
    CHECK(s.pier_type == "P02");
    CHECK(std::isnan(s.dimensions.skew.si()));
    CHECK(doubt(inv, "BG11").find("99") == 0);
    CHECK(s.irregular_deck_area == Approx(44000.0 * foot * foot));
    CHECK(inv.find("INV-0004")->codes.design == Design::culvert);
    CHECK(inv.find("INV-0004")->codes.main_spans == 2);
}

TEST_CASE("national JSON: sets of one kind that differ are told") {
    const auto inv = read(record(R"("SpanSets": [
        {"BSP01": "M01", "BSP02": 2, "BSP03": 4, "BSP04": "S02", "BSP05": "1", "BSP06": "G02"},
        {"BSP01": "M02", "BSP02": 5, "BSP03": 6, "BSP04": "C03", "BSP05": "1", "BSP06": "G02"}])"));
    REQUIRE(inv.structures.size() == 1);
    CHECK(inv.structures[0].codes.main_spans == 7);
    CHECK(inv.structures[0].codes.beam_lines == 6);
    CHECK(inv.structures[0].codes.material == Material::prestressed);
    CHECK(doubt(inv, "SpanSets[1].BSP01").find("differ") != std::string::npos);
}

TEST_CASE("national JSON: the latest status closes a bridge") {
    const Inventory inv = read(sample());
    CHECK(inv.find("INV-0006")->codes.posting == 'K');
    CHECK(inv.find("INV-0001")->codes.posting == ' ');
}

TEST_CASE("national JSON: element records within the record join it") {
    const Inventory inv = read(sample());
    const auto& given = inv.find("INV-0001")->given;
    const auto find = [&](const char* key) {
        return std::find_if(given.begin(), given.end(),
                            [key](const GivenValue& g) { return g.key == key; });
    };
    REQUIRE(find("joint_length") != given.end());
    CHECK(find("joint_length")->value.guess.likely == Approx(128.0 * foot));
    CHECK(find("joint_length")->value.basis == Basis::element);
    CHECK(find("girder_count")->value.guess.likely == 5.0);
    CHECK(inv.files == std::vector<std::string>{"national.json"});
}

TEST_CASE("national JSON: lists, wrapped lists, objects one after the other read alike") {
    const std::string one = record();
    const std::string two = record(R"("BID01": "43")");
    const std::string both = one + "," + two;
    for (const std::string& text :
         {"[" + both + "]", R"({"source": "x", "Bridges": [)" + both + "]}", one + "\n" + two,
          "\xEF\xBB\xBF \n[" + both + "]\n", R"({"a": {"b": [1]}, "Bridges": [)" + both + "]}"}) {
        INFO(text);
        const Inventory inv = read(text);
        CHECK(inv.structures.size() == 2);
        CHECK(inv.rows == 2);
        CHECK(inv.rejected.empty());
    }
    CHECK(read("[]").rows == 0);
}

TEST_CASE("national JSON: pieces, and blocks cut anywhere, are the whole") {
    const Inventory whole = read(sample());
    for (const std::size_t step : {1U, 7U, 1000U}) {
        inventory::BlockReader reader("national.json", 4);
        std::vector<std::string> ids;
        std::uint64_t rows = 0;
        const auto take = [&] {
            const Inventory piece = reader.take();
            rows += piece.rows;
            for (const Structure& s : piece.structures) {
                ids.push_back(s.id);
            }
        };
        for (std::size_t at = 0; at < sample().size();) {
            at += reader.feed(std::string_view(sample()).substr(at, step));
            if (reader.full()) {
                take();
            }
        }
        reader.finish();
        take();
        CHECK(rows == whole.rows);
        REQUIRE(ids.size() == whole.structures.size());
        CHECK(ids.back() == whole.structures.back().id);
    }
}

TEST_CASE("national JSON: what is no record is rejected and counted") {
    const auto inv =
        read("[" + record() + ", 5, \"text\", null, [1, 2], {\"BID01\": }, {}, " +
             R"({"BL01": 99}, {"BID01": "44", "BL01": "x"}, {"BID01": true, "BL01": 9},)" +
             record() + ", " + record(R"("BW01": 1991)") + "]");
    CHECK(inv.structures.size() == 1);
    CHECK(inv.rows == inv.structures.size() + inv.rejected.size());
    REQUIRE(inv.rejected.size() == 11);
    CHECK(inv.rejected[0].line == 2);
    CHECK(inv.rejected[0].reason == "no record: a value that is no object");
    CHECK(inv.rejected[4].reason.find("not valid JSON") == 0);
    CHECK(inv.rejected[6].reason == "the structure number is blank");
    CHECK(inv.rejected[7].reason == "the state code is not a state's number");
    CHECK(inv.rejected[9].reason == "the same record again");
    CHECK(inv.rejected[10].reason == "second record of the same structure");
}

TEST_CASE("national JSON: a file that was cut off says so") {
    const std::string list = "[" + record() + "," + record(R"("BID01": "43")");
    const auto open = read(list);
    CHECK(open.structures.size() == 2);
    CHECK(open.rejected.at(0).reason == "the list of records is not closed: some may be missing");
    const auto within = read(list.substr(0, list.size() - 3));
    CHECK(within.structures.size() == 1);
    CHECK(within.rejected.at(0).reason == "the last record is cut off");
    CHECK(within.rejected.at(0).line == 2);
}

TEST_CASE("national JSON: a value that cannot be is a doubt with record and item") {
    struct Case {
        const char* items;
        const char* column;
        const char* reason;
    };
    for (const Case& c : std::initializer_list<Case>{
             {R"("BG02": true)", "BG02", "not a number"},
             {R"("BG02": [1])", "BG02", "not a number"},
             {R"("BG02": "long")", "BG02", "not a number"},
             {R"("BG02": null)", "BG02", "blank, where the guide asks for a value"},
             {R"("BG02": -5)", "BG02", "outside 0.1 to 40000 m"},
             {R"("BG02": 1e300)", "BG02", "outside 0.1 to 40000 m"},
             {R"("BG13": -1)", "BG13", "outside 0 to 1300 ft"},
             {R"("BL06": 93.5)", "BL06", "east of Greenwich: west is negative here"},
             {R"("BL06": 393.5)", "BL06", "outside -180 to 180 degrees"},
             {R"("BC01": "G")", "BC01", "not a code of the guide"},
             {R"("BC01": {})", "BC01", "not a text"},
             {R"("BW01": 19)", "BW01", "outside the years 1600 to 2099"},
             {R"("SpanSets": {})", "SpanSets", "not a list of sets"},
             {R"("SpanSets": [3])", "SpanSets[0]", "not a set of items"},
             {R"("SubstructureSets": [{"BSB01": "P01", "BSB02": 90}])", "SubstructureSets",
              "more piers than the spans can stand on"},
             {R"("Features": [{"BF01": "H01", "BF02": "?"}])", "Features[0].BF02",
              "not a code of the guide"},
             {R"("Elements": [{"BE01": "12", "BE03": -4}])", "Elements[0].BE03", "no quantity"},
             {R"("Inspections": [{"BIE01": "2", "BIE02": 20249901}])", "Inspections[0].BIE02",
              "not a date YYYYMMDD"}}) {
        INFO(c.items);
        const auto inv = read(record(c.items));
        REQUIRE(inv.structures.size() == 1);
        CHECK(doubt(inv, c.column) == c.reason);
        CHECK(inv.doubts[0].line == 1);
        CHECK(inv.doubts[0].structure == "42");
    }
}

TEST_CASE("national JSON: unknown items are passed over, numbers may be texts, Latin-1 is read") {
    const auto inv = read(record("\"BG02\": \"105.5\", \"BX99\": {\"deep\": [1, {\"x\": 2}]}, "
                                 "\"BID02\": \"CA\xD1"
                                 "ON\""));
    REQUIRE(inv.structures.size() == 1);
    CHECK(inv.doubts.empty());
    CHECK(inv.structures[0].dimensions.length.si() == 105.5 * foot);
    CHECK(inv.structures[0].location == "CA\xC3\x91ON");
}

} // namespace test_national
