// Ranks, spreads, medians and outliers of bids.
#include "bid/made_bids.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

using namespace made;

namespace {

Amounts amounts(const std::vector<std::string>& values) {
    Amounts out;
    for (const std::string& value : values) {
        out.push_back(value.empty() ? std::nullopt : std::optional(number(value)));
    }
    return out;
}

PriceTable one_item(const std::vector<std::string>& prices) {
    PriceTable table{form_of({item("A", "EA", "2")}), {}, amounts(prices), {}};
    for (std::size_t i = 0; i < prices.size(); ++i) {
        table.bidders.push_back("bidder " + std::to_string(i));
    }
    return table;
}

std::optional<Decimal> decimal_of(const reference::Row& row, const char* name) {
    return rounded_from_double(row[name], 2, name);
}

} // namespace

TEST_CASE("published spreads and ratios") {
    std::size_t met = 0;
    for (const auto& row : reference::rows("bid/bids")) {
        const std::string& check = row.text("check");
        const double percent = check == "item_ratio"     ? 0.0
                               : row.text("unit") == "%" ? row.expected()
                                                         : 0.0;
        if (check == "over_estimate") {
            const auto over = ratio(decimal_of(row, "bid"), decimal_of(row, "estimate"));
            CHECK(100.0 * (over.value() - 1.0) == Approx(percent).epsilon(1e-10));
            ++met;
        } else if (check == "left_on_the_table" || check == "high_over_low") {
            const bool left = check.starts_with("left");
            const Spread s = spread_of(
                Amounts{decimal_of(row, "low"), decimal_of(row, left ? "second" : "high")});
            CHECK(100.0 * (left ? s.left_share : s.high_ratio).value() - (left ? 0.0 : 100.0) ==
                  Approx(percent).epsilon(1e-10));
            ++met;
        }
    }
    CHECK(met == 5);
}

TEST_CASE("printed totals of a contract rank and spread") {
    // bids-025 to bids-028, contract 61F07, in the order of the bidders.
    Amounts totals;
    for (const auto& row : reference::rows("bid/bids")) {
        if (row.text("check") == "ranked_total" &&
            row.text("inputs_json").find("61F07") != std::string::npos) {
            totals.push_back(number(row.text("expected")));
        }
    }
    REQUIRE(totals.size() == 4);
    CHECK(ranks(totals) == std::vector<std::size_t>{1, 4, 3, 2});
    const Spread s = spread_of(totals);
    CHECK(s.left == number("60920.66"));
    CHECK(s.high == number("2725730.44"));
}

TEST_CASE("equal totals share a rank, an unknown one has none") {
    CHECK(ranks(amounts({"5", "", "4.0", "4", "9"})) == std::vector<std::size_t>{3, 0, 1, 1, 4});
    CHECK(spread_of(amounts({"4", "4.00"})).left == number("0"));
    CHECK_FALSE(spread_of(amounts({"4"})).left);
    CHECK(spread_of(amounts({""})).number == 0);
    CHECK_FALSE(ratio(number("1"), number("0")));
}

TEST_CASE("medians are exact, and a price far out is found by them") {
    const Comparison c = compare(one_item({"1.00", "1.1", "1.05", "0.95", "1.0", "9.999"}));
    CHECK(c.items[0].median == number("1.025"));
    CHECK(c.items[0].deviation == number("0.05"));
    REQUIRE(c.outliers.size() == 1);
    CHECK(c.outliers[0].bid == 5);
    CHECK(c.outliers[0].score == Approx(0.6745 * (9.999 - 1.025) / 0.05));
    CHECK(c.totals[5] == number("20.00"));
    // Four bids are too few; prices that mostly agree have no deviation to be measured by.
    CHECK(compare(one_item({"1.00", "1.1", "1.05", "9.999"})).outliers.empty());
    CHECK(compare(one_item({"1", "1", "1", "1", "9"})).outliers.empty());
    CHECK_THROWS_AS(compare(one_item({"1"}), {0.0, 5}), InputError);
}

TEST_CASE("totals of a published tabulation from its prices, and its widest item") {
    const auto rows = reference::rows("bid/bidtab_sample");
    PriceTable table{form_of({}), {"A", "B", "C"}, Amounts(3 * rows.size()), {}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        table.form.items.push_back(
            item("R" + rows[i].text("source_row"), "EA", rows[i].text("quantity")));
        table.estimate.push_back(number(rows[i].text("estimate_unit")));
        for (std::size_t bid = 0; bid < 3; ++bid) {
            const std::string column = "bidder_" + table.bidders[bid] + "_unit";
            table.prices[bid * rows.size() + i] = number(rows[i].text(column));
        }
    }
    const Comparison c = compare(table);
    CHECK(c.totals == amounts({"5141600", "4619650", "4984866"}));
    CHECK(c.ranks == std::vector<std::size_t>{3, 1, 2});
    CHECK(c.estimate == number("6694495"));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].text("source_row") == "29") { // bids-043
            CHECK(ratio(table.estimate[i], c.items[i].low).value() == Approx(3.83333333333));
        }
    }
}
