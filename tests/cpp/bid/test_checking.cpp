// Arithmetic of bids, with a published case of a misplaced point.
#include "bid/made_bids.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

#include <algorithm>

using namespace made;

namespace {

bool has(const CheckedBid& bid, FindingKind kind, const std::string& item) {
    return std::any_of(bid.findings.begin(), bid.findings.end(), [&](const Finding& f) {
        return f.kind == kind && f.item == item && f.text.size() > 10;
    });
}

/// Two items, 500 ft and a lump sum.
ItemList two_items() {
    return form_of({item("PIPE", "LF", "500"), item("MOB", "LS", "1")});
}

} // namespace

TEST_CASE("a misplaced point: the unit price governs and the low bid is no longer low") {
    // Row bids-009: $210.00 a foot on the sheet, extended at $2.10; other figures made up.
    BidSet set{two_items(), {}};
    set.bids.push_back(honest(set.form, "first", {"2.10", "90000"}));
    set.bids.push_back(honest(set.form, "second", {"3.00", "95000"}));
    set.bids[0].lines[0].unit_price = number("210.00");

    const auto by_price = check_bids(set, Governs::unit_price);
    CHECK(by_price[0].as_read == number("91050"));
    CHECK(by_price[0].corrected == number("195000"));
    CHECK(by_price[1].corrected == number("96500"));
    CHECK(by_price[0].irregular());
    CHECK_FALSE(by_price[1].irregular());
    const auto finding = std::find_if(by_price[0].findings.begin(), by_price[0].findings.end(),
                                      [](const Finding& f) { return f.item == "PIPE"; });
    REQUIRE(finding != by_price[0].findings.end());
    CHECK(finding->kind == FindingKind::extension_differs);
    CHECK(finding->text.find("factor of 100") != std::string::npos);

    const auto by_extension = check_bids(set, Governs::extension);
    CHECK(by_extension[0].corrected == number("91050"));
    CHECK(by_extension[0].lines[0].price == number("2.1"));

    set.bids[0].lines[0].words = "two dollars and ten cents";
    set.bids[0].lines[0].price_in_words = number("2.10");
    const auto by_words = check_bids(set, Governs::words);
    CHECK(by_words[0].corrected == number("91050"));
    CHECK(has(by_words[0], FindingKind::words_differ, "PIPE"));
}

TEST_CASE(
    "what is missing, nothing, a credit, a penny, double or strange is said and not dropped") {
    const ItemList form = form_of({item("A", "EA", "3"), item("B", "EA", "3"), item("C", "EA", "3"),
                                   item("D", "EA", "3"), item("E", "EA", "3")});
    BidSet set{form, {honest(form, "odd", {"0", "-2.50", "0.01", "7", "9"})}};
    Bid& bid = set.bids[0];
    bid.lines[3].quantity = number("4");
    bid.lines.push_back(bid.lines[3]);
    bid.lines.push_back({"Z"});
    bid.lines[4].unit_price.reset();
    const CheckedBid one = check_bids(set, Governs::unit_price)[0];
    CHECK(has(one, FindingKind::zero_price, "A"));
    CHECK(has(one, FindingKind::negative_price, "B"));
    CHECK(has(one, FindingKind::penny_price, "C"));
    CHECK(has(one, FindingKind::quantity_differs, "D"));
    CHECK(has(one, FindingKind::duplicate, "D"));
    CHECK(has(one, FindingKind::unknown_item, "Z"));
    CHECK(has(one, FindingKind::missing_price, "E"));
    CHECK(one.lines[4].price == number("9"));
    CHECK(one.corrected == number("40.53"));

    bid.lines[4].extension.reset();
    const CheckedBid none = check_bids(set, Governs::unit_price)[0];
    CHECK_FALSE(none.corrected);
    CHECK(none.as_read == bid.total);
    bid.lines.erase(bid.lines.begin() + 4);
    CHECK(has(check_bids(set, Governs::unit_price)[0], FindingKind::missing_line, "E"));
}

TEST_CASE("a total that does not add, and one that is not there") {
    BidSet set{two_items(), {honest(two_items(), "one", {"2", "1000"})}};
    set.bids[0].total = number("2090");
    const CheckedBid off = check_bids(set, Governs::unit_price)[0];
    CHECK(has(off, FindingKind::total_differs, ""));
    CHECK(off.as_read == number("2090"));
    CHECK(off.corrected == number("2000"));
    set.bids[0].total.reset();
    const CheckedBid none = check_bids(set, Governs::unit_price)[0];
    CHECK(none.as_read == number("2000"));
    CHECK_FALSE(none.irregular());
}

TEST_CASE("an extension that governs comes back to the cent from the price that it tells") {
    ItemList form = form_of({item("A", "SY", "14733.7"), item("B", "TON", "0.37")});
    BidSet set{form, {honest(form, "one", {"3", "3"})}};
    set.bids[0].lines[0].extension = number("100000.01");
    set.bids[0].lines[1].extension = number("77.77");
    CHECK(check_bids(set, Governs::extension)[0].corrected == number("100077.78"));
}

TEST_CASE("totals of a published tabulation, and a form that names an item twice") {
    // bids-038 to bids-041: 33 items of three bids and the estimate.
    ItemList form = form_of({});
    const auto rows = reference::rows("bid/bidtab_sample");
    for (const auto& row : rows) {
        form.items.push_back(item("R" + row.text("source_row"), "EA", row.text("quantity")));
    }
    for (const auto& row : reference::rows("bid/bids")) {
        if (row.text("check").starts_with("sum_")) {
            const std::string who = row.text("check").substr(4);
            const bool estimate = who == "estimate";
            std::vector<std::string> prices;
            BidSet set{form, {{who, {}}}};
            for (const auto& r : rows) {
                BidLine line;
                line.code = "R" + r.text("source_row");
                line.unit_price =
                    number(r.text(estimate ? "estimate_unit" : "bidder_" + who + "_unit"));
                line.extension = number(r.text(who + "_ext"));
                set.bids[0].lines.push_back(line);
            }
            const CheckedBid bid = check_bids(set, Governs::unit_price)[0];
            CHECK(to_double(bid.corrected.value()) == row.expected());
            CHECK(bid.as_read == bid.corrected);
        }
    }
    form.items.push_back(form.items.front());
    CHECK_THROWS_AS(check_bids({form, {}}, Governs::unit_price), InputError);
}
