#include "catch.hpp"
#include "scupper/bid.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace scupper;
using Form = bid::Sheet;

namespace {

const Currency usd = parse_currency("USD", "test");

std::string amount(const std::string& text) {
    const bid::ReadAmount read = bid::read_amount(text, usd);
    return (read.value ? to_text(*read.value) : "none") + (read.why.empty() ? "" : " ?");
}

std::vector<std::string> split(const std::string& line) {
    std::vector<std::string> cells;
    std::stringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');) {
        cells.push_back(cell);
    }
    return cells;
}

/// A form as an owner gets it back; invented.
Form form() {
    return {"ash.csv",
            "",
            {{"Tamarack County (invented)", "", "", "", "", ""},
             {"Bidder:", "Ash Ltd (invented)", "", "", "", ""},
             {},
             {"Item No.", "Description", "Unit", "Est. Qty", "Unit Price ($)", "Extension"},
             {"Deck", "", "", "", "", ""},
             {"1", "Deck washing", "S.F.", "12,500", "$0.21", "$2,625.00"},
             {"2", "Drains", "", "40", " 85.5 ", "3,420.00"},
             {"", "Subtotal deck", "", "", "", "6,045.00"},
             {"Alternate A", "", "", "", "", ""},
             {"3", "Credit", "LS", "1", "(250.00)", "-250"},
             {"4", "Hauling", "TON", "12", "n/a", ""},
             {"", "TOTAL BID", "", "", "", "$5,795.00"},
             {"Prices hold for 60 days.", "", "", "", "", ""}}};
}

std::string fault(const Form& sheet, const bid::FormMapping& mapping = {}) {
    try {
        bid::read_sheet(sheet, mapping);
    } catch (const InputError& e) {
        return e.id();
    }
    return "read";
}

} // namespace

TEST_CASE("an amount is read as people write it, exact") {
    CHECK(amount("$1,234.50") == "1234.50");
    CHECK(amount("USD 2.1") == "2.1");
    CHECK(amount("\xC2\xA0 85.5 ") == "85.5");
    CHECK(amount("-$5.00") == "-5.00");
    CHECK(amount("$ -5.00") == "-5.00");
    CHECK(amount("(5.00)") == "-5.00 ?");
    CHECK(amount("$(5.00)") == "-5.00 ?");
    CHECK(amount("5.00-") == "-5.00 ?");
    CHECK(amount("$2.10/SF") == "2.10 ?");
    CHECK(amount(".75") == "0.75");
    CHECK(amount("0.30000000000000004") == "0.300000 ?");
    CHECK(amount("1e-05") == "0.000010 ?");
    CHECK(amount("") == "none");
    for (const char* text :
         {"1.234,50", "1,23", "=B2*C2", "2.1O", "n/a", "#VALUE!", "12 34", "$", "()", "-"}) {
        CHECK(amount(text) == "none ?");
    }
}

TEST_CASE("an amount is read in words") {
    const auto in_words = [](const char* words) {
        const auto read = bid::amount_in_words(words);
        return read ? to_text(*read) : "none";
    };
    CHECK(in_words("Two hundred ten dollars and no cents") == "210.00");
    CHECK(in_words("Two dollars and ten cents") == "2.10");
    CHECK(in_words("Fifty-five cents") == "0.55");
    CHECK(in_words("One million two hundred thousand five dollars") == "1200005.00");
    CHECK(in_words("Two dollars and 10/100") == "2.10");
    CHECK(in_words("zwei Dollar") == "none");
    CHECK(in_words("") == "none");
    CHECK(in_words("ten dollars and fifty") == "none");
}

TEST_CASE("a form of one bidder is read whole") {
    const bid::SheetRead read = bid::read_sheet(form(), {});
    CHECK(read.header_row == 4);
    REQUIRE(read.bids.size() == 1);
    const bid::Bid& bid = read.bids[0];
    CHECK(bid.bidder == "Ash Ltd (invented)");
    REQUIRE(bid.lines.size() == 4);
    CHECK(*bid.lines[0].unit_price == parse_decimal("0.21", ""));
    CHECK(*bid.lines[0].extension == parse_decimal("2625", ""));
    CHECK(bid.lines[0].place.line == 6);
    CHECK(*bid.lines[2].unit_price == parse_decimal("-250", ""));
    CHECK_FALSE(bid.lines[3].unit_price);
    CHECK(*bid.total == parse_decimal("5795", ""));
    CHECK(bid.notes == std::vector<std::string>{"Prices hold for 60 days."});
    CHECK(read.items[0].unit == "SF");
    CHECK(read.items[0].group == "Deck");
    CHECK(read.items[2].kind == bid::ItemKind::alternate);
    CHECK(read.total_row == 12);

    std::vector<std::string> doubts;
    for (const bid::Doubt& d : read.doubts) {
        doubts.push_back(std::to_string(d.place.line) + d.column + " " + d.why);
    }
    CHECK(doubts == std::vector<std::string>{"7C no unit", "10E brackets, taken for a negative",
                                             "11E not a number"});
    // Every row that is not blank is an item or listed.
    CHECK(read.items.size() + read.others.size() + 1 == form().rows.size() - 1);
}

TEST_CASE("a published tabulation is read by what its headings say") {
    // Open bid data of airport work, names dropped: 33 items, three bids and an estimate.
    std::ifstream file(std::string(SCUPPER_TESTS_DIR) + "/reference/bid/bidtab_sample.csv");
    Form sheet{"bidtab_sample.csv", "", {}};
    for (std::string line; std::getline(file, line);) {
        sheet.rows.push_back(split(line));
    }
    REQUIRE(sheet.rows.size() == 34);
    const bid::SheetRead read = bid::read_sheet(sheet, {});
    std::vector<bid::Doubt> doubts;
    const bid::BidSet set = bid::joined(std::vector{read}, {}, doubts);
    REQUIRE(set.bids.size() == 3);
    REQUIRE(set.engineer);
    CHECK(set.form.items.size() == 33);
    for (const bid::Bid& bid : set.bids) {
        for (const bid::BidLine& line : bid.lines) { // as printed, every line multiplies
            CHECK(*line.unit_price * *line.quantity == *line.extension);
        }
    }
}

TEST_CASE("names of bidders stand in merged cells above a tabulation") {
    Form sheet{
        "tab.xlsx",
        "Tab",
        {{"Tabulation of bids (invented)"},
         {"", "", "", "", "Ash", "", "Birch", ""},
         {"Item", "Description", "Unit", "Qty", "Unit Price", "Amount", "Unit Price", "Amount"},
         {"1", "Deck", "SF", "100", "2.00", "200.00", "3.00", "300.00"},
         {"Total", "", "", "", "", "200.00", "", "300.00"}}};
    const bid::SheetRead read = bid::read_sheet(sheet, {});
    REQUIRE(read.bids.size() == 2);
    CHECK(read.bids[0].bidder == "Ash");
    CHECK(read.bids[1].bidder == "Birch");
    CHECK(*read.bids[1].total == parse_decimal("300", ""));
    CHECK(read.doubts.empty());
    sheet.rows[1] = {};
    const bid::SheetRead nameless = bid::read_sheet(sheet, {});
    REQUIRE(nameless.bids.size() == 2);
    CHECK(nameless.bids[1].bidder == "bidder 2");
    CHECK_FALSE(nameless.doubts.empty());
}

TEST_CASE("headings that stand over two rows are read downwards") {
    const Form sheet{"oak.csv",
                     "",
                     {{"Bidder: Oak (invented)"},
                      {"Item", "Item", "", "Estimated", "Unit", "Extended", "Price in"},
                      {"No.", "Description", "Unit", "Quantity", "Price", "Price", "Words"},
                      {"1", "Deck", "SF", "100", "2.00", "200.00", "two dollars"},
                      {"Item", "Item", "", "Estimated", "Unit", "Extended", "Price in"},
                      {"No.", "Description", "Unit", "Quantity", "Price", "Price", "Words"},
                      {"2", "Drains", "EA", "4", "50.00", "200.00", "fifty dollars"},
                      {"Total", "", "", "", "", "400.00"}}};
    const bid::SheetRead read = bid::read_sheet(sheet, {});
    CHECK(read.header_row == 2);
    CHECK(read.header_rows == 2);
    CHECK(read.doubts.empty());
    std::vector<std::string> columns;
    for (const bid::ReadColumn& c : read.columns) {
        columns.push_back(c.heading + ": " +
                          std::string(bid::role_names[static_cast<std::size_t>(c.role)]));
    }
    CHECK(columns == std::vector<std::string>{"Item No.: code", "Item Description: description",
                                              "Unit: unit", "Estimated Quantity: quantity",
                                              "Unit Price: unit_price", "Extended Price: extension",
                                              "Price in Words: words"});
    REQUIRE(read.items.size() == 2); // headings of a next page are none
    CHECK(*read.bids.at(0).lines[1].price_in_words == Decimal(50));
    CHECK(*read.bids.at(0).total == Decimal(400));
}

TEST_CASE("several bidders stand side by side under merged names, headings over three rows") {
    // A merged cell holds its text in the first of its cells, across and down.
    Form sheet{"tab.xlsx",
               "Tab",
               {{"Tabulation of bids (invented)"},
                {"Item", "Work", "Unit", "Qty", "Ash", "", "Birch Ltd", "", "Engineer's estimate"},
                {"", "", "", "", "Unit", "Total", "Unit", "Total", "Unit", "Total"},
                {"", "", "", "", "Price", "Price", "Price", "Price", "Price", "Price"},
                {"1", "Deck", "SF", "100", "2", "200", "3", "300", "2.5", "250"},
                {"2", "Drains", "EA", "4", "50", "200", "25", "100", "30", "120"},
                {"Total", "", "", "", "", "400", "", "400", "", "370"}}};
    const auto whole = [&](const Form& form, std::size_t doubts) {
        const bid::SheetRead read = bid::read_sheet(form, {});
        CHECK(read.doubts.size() == doubts);
        std::vector<bid::Doubt> found;
        const bid::BidSet set = bid::joined(std::vector{read}, {}, found);
        REQUIRE(set.bids.size() == 2);
        REQUIRE(set.engineer);
        CHECK(set.bids[0].bidder == "Ash");
        CHECK(set.bids[1].bidder == "Birch Ltd");
        CHECK(*set.bids[1].lines[1].unit_price == Decimal(25));
        CHECK(*set.bids[1].lines[1].extension == Decimal(100));
        CHECK(*set.bids[0].total == Decimal(400));
        CHECK(*set.engineer->total == Decimal(370));
        CHECK(set.form.items[1].unit == "EA");
    };
    whole(sheet, 0);
    Form parted = sheet; // "Price" over "Unit" and "Total"
    parted.rows[2] = {"", "", "", "", "Price", "", "Price", "", "Price", ""};
    parted.rows[3] = {"", "", "", "", "Unit", "Total", "Unit", "Total", "Unit", "Total"};
    whole(parted, 0);
    Form shortened = sheet; // one row of "Unit" and "Total" beneath the names
    shortened.rows.erase(shortened.rows.begin() + 3);
    whole(shortened, 0);
    Form centred = sheet; // each name over the last of its columns
    centred.rows[1] = {"Item", "Work", "Unit",      "Qty", "",
                       "Ash",  "",     "Birch Ltd", "",    "Engineer's estimate"};
    whole(centred, 3);
    Form odd = sheet;
    odd.rows[3][3] = "(plan)";
    odd.rows[1].push_back("");
    odd.rows[1].push_back("Remarks");
    const bid::SheetRead doubtful = bid::read_sheet(odd, {});
    REQUIRE(doubtful.doubts.size() == 2);
    CHECK(doubtful.doubts[0].why == "a heading that is not known");
    CHECK(doubtful.doubts[1].why == "\"(plan)\" is no part of a heading that is known");
    CHECK(doubtful.doubts[1].taken == "quantity");
    sheet.rows[1] = {"Item", "Work", "Unit", "Qty"};
    CHECK(bid::read_sheet(sheet, {}).bids.at(2).bidder == "bidder 3");
}

TEST_CASE("names of bidders may stand beneath merged headings; no figure is passed over unsaid") {
    const Form sheet{"tab.csv",
                     "",
                     {{"Item", "Work", "Unit", "Qty", "Unit price", "", "Extension", ""},
                      {"", "", "", "", "Ash", "Birch", "Ash", "Birch"},
                      {"1", "Deck", "SF", "100", "2", "3", "200", "300"}}};
    const bid::SheetRead read = bid::read_sheet(sheet, {});
    REQUIRE(read.bids.size() == 2);
    CHECK(read.bids[1].bidder == "Birch");
    CHECK(*read.bids[1].lines[0].extension == Decimal(300));
    CHECK(read.doubts.empty());
    Form unread = sheet;
    unread.rows[0].push_back("");
    unread.rows[2].push_back("7");
    CHECK(bid::read_sheet(unread, {}).doubts.at(0).why == "a figure beneath no heading");
    Form figures = sheet; // the same price in figures and in words
    figures.rows[1] = {"", "", "", "", "in figures", "in words", "", ""};
    figures.rows[0][7] = "Amount";
    figures.rows[2][5] = "two dollars";
    const bid::SheetRead words = bid::read_sheet(figures, {});
    CHECK(*words.bids.at(0).lines[0].price_in_words == Decimal(2));
}

TEST_CASE("the total of a bid is the last one that is not of alternates") {
    Form sheet = form();
    sheet.rows.insert(sheet.rows.begin() + 8, {"", "Base bid total", "", "", "", "6,045.00"});
    sheet.rows[12] = {"", "Total of alternates", "", "", "", "-250.00"};
    const bid::SheetRead read = bid::read_sheet(sheet, {});
    CHECK(*read.bids.at(0).total == parse_decimal("6045", ""));
    CHECK(read.total_row == 9);
    CHECK(read.doubts.back().taken == "the first");
}

TEST_CASE("a mapping says what no heading tells") {
    const Form sheet{"x.csv", "", {{"a", "b", "c"}, {"1", "10", "2.5"}, {"Summe", "", "25"}}};
    CHECK(fault(sheet) == "bid.header");
    const auto mapping = json::read_form_mapping(
        R"({"scupper_form": 1, "header_row": 1, "bidder": "Ash", "total_words": ["Summe"],
            "columns": {"code": "A", "quantity": "b", "unit_price": "C"}})",
        "map.json");
    const bid::SheetRead read = bid::read_sheet(sheet, mapping);
    CHECK(read.items.size() == 1);
    CHECK(read.bids.at(0).bidder == "Ash");
    CHECK(*read.bids.at(0).total == Decimal(25));
    auto wrong = mapping;
    wrong.columns.back().second = "price";
    CHECK(fault(sheet, wrong) == "bid.column");
    wrong.header_row = 9;
    CHECK(fault(sheet, wrong) == "bid.header");
    CHECK(fault({"x.csv", "", {{"Item", "Qty", "Price"}}}) == "bid.no_item");
    CHECK(bid::column_letters(0) == "A");
    CHECK(bid::column_letters(25) == "Z");
    CHECK(bid::column_letters(26) == "AA");
    CHECK(bid::column_letters(702) == "AAA");
}

TEST_CASE("two bids of one name are refused, other quantities are a doubt") {
    const bid::SheetRead read = bid::read_sheet(form(), {});
    std::vector<bid::Doubt> doubts;
    CHECK_THROWS_AS(bid::joined(std::vector{read, read}, {}, doubts), InputError);
    Form other = form();
    other.rows[1][1] = "Birch (invented)";
    other.rows[5][3] = "12,600";
    doubts.clear();
    const auto set = bid::joined(std::vector{read, bid::read_sheet(other, {})}, {}, doubts);
    CHECK(set.bids.size() == 2);
    CHECK(set.form.items.size() == 4);
    REQUIRE(doubts.size() == 1);
    CHECK(doubts[0].why == "another quantity than on the first form");
    CHECK(*set.bids[1].lines[0].quantity == Decimal(12600));
}
