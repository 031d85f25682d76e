// Items out of proportion, early payment, and what may not change a flag.
#include "bid/made_bids.hpp"
#include "scupper/bid/unbalanced.hpp"
#include "scupper/error.hpp"

#include <random>
#include <tuple>

using namespace made;

namespace {

using Flags = std::vector<std::tuple<std::size_t, std::size_t, int>>;

Flags flags_of(const PriceTable& table, const Amounts& reference) {
    Flags out;
    for (const UnbalancedItem& f : unbalanced_items(table, reference)) {
        out.emplace_back(f.bid, f.item, static_cast<int>(f.kind));
    }
    return out;
}

/// Ten items of one unit and so many bids; prices lean away from the estimate at random.
PriceTable random_bids(std::mt19937& random, std::size_t bids) {
    PriceTable table{form_of({}), {}, {}, {}};
    std::uniform_int_distribution<int> any(100, 9999);
    std::lognormal_distribution<double> lean(0.0, 0.6);
    for (int i = 0; i < 10; ++i) {
        table.form.items.push_back(
            item("I" + std::to_string(i), "EA", std::to_string(any(random))));
        table.estimate.push_back(Decimal(any(random), 2));
    }
    for (std::size_t bid = 0; bid < bids; ++bid) {
        table.bidders.push_back(std::to_string(bid));
        for (const auto& price : table.estimate) {
            table.prices.push_back(
                rounded_from_double(to_double(*price) * lean(random) + 0.01, 2, "price"));
        }
    }
    return table;
}

/// Two items of 1,000 each: mobilization paid first, washing paid last.
PriceTable mobilized(const std::string& first, const std::string& last) {
    const ItemList form = form_of({item("MOB", "LS", "1"), item("WASH", "LS", "1")});
    const BidSet set{form, {honest(form, "x", {first, last})}};
    return price_table(form, check_bids(set, Governs::unit_price), nullptr);
}

} // namespace

TEST_CASE("a bid dear throughout has no flag; one item of weight against the others has") {
    ItemList form = form_of(
        {item("A", "EA", "1"), item("B", "EA", "1"), item("C", "EA", "1"), item("T", "EA", "1")});
    const BidSet set{form,
                     {honest(form, "dear", {"160", "160", "160", "16"}),
                      honest(form, "odd", {"250", "40", "100", "0.01"})}};
    const PriceTable table = price_table(form, check_bids(set, Governs::unit_price), nullptr);
    const Amounts estimate{number("100"), number("100"), number("100"), number("10")};
    CHECK(flags_of(table, estimate) == Flags{{1, 0, 0}, {1, 1, 1}, {1, 3, 2}});
    CHECK(unbalanced_items(table, estimate)[0].relative == Approx(2.5 / (390.01 / 310.0)));
    CHECK_THROWS_AS(unbalanced_items(table, {}), InputError);
    CHECK_THROWS_AS(unbalanced_items(table, estimate, {.above = 0.9}), InputError);
}

TEST_CASE("a factor on every price changes no flag, no rank and no outlier") {
    std::mt19937 random(7);
    const PriceTable table = random_bids(random, 12);
    const Comparison before = compare(table);
    const Flags flags = flags_of(table, table.estimate);
    CHECK(flags.size() > 5);
    for (const char* factor : {"3", "0.7", "1000"}) {
        PriceTable scaled = table;
        for (auto* values : {&scaled.prices, &scaled.estimate}) {
            for (auto& value : *values) {
                value = *value * number(factor);
            }
        }
        const Comparison after = compare(scaled);
        CHECK(flags_of(scaled, scaled.estimate) == flags);
        CHECK(after.ranks == before.ranks);
        REQUIRE(after.outliers.size() == before.outliers.size());
        for (std::size_t i = 0; i < after.outliers.size(); ++i) {
            CHECK(after.outliers[i].score == Approx(before.outliers[i].score));
        }
    }
}

TEST_CASE("a dominated bidder changes no rank of the rest and no flag by the estimate") {
    std::mt19937 random(8);
    const PriceTable table = random_bids(random, 6);
    PriceTable more = table;
    more.bidders.push_back("dominated");
    for (std::size_t i = 0; i < table.items(); ++i) {
        Decimal highest;
        for (std::size_t bid = 0; bid < 6; ++bid) {
            highest = std::max(highest, *table.of(bid)[i]);
        }
        more.prices.push_back(highest + Decimal(1));
    }
    const auto before = compare(table).ranks;
    auto after = compare(more).ranks;
    CHECK(after.back() == 7);
    after.pop_back();
    CHECK(after == before);
    Flags rest;
    for (const auto& flag : flags_of(more, more.estimate)) {
        if (std::get<0>(flag) < 6) {
            rest.push_back(flag);
        }
    }
    CHECK(rest == flags_of(table, table.estimate));
}

TEST_CASE("early payment by hand, and none of a balanced bid") {
    // 1,500 after one month and 500 after the second, against 1,000 and 1,000, at 10 % a month.
    const Amounts reference{number("100"), number("100")};
    const PaymentSchedule schedule{2, {1.0, 0.0, 0.0, 1.0}, 0.10};
    const EarlyPayment e = early_payment(mobilized("1500", "500"), 0, reference, schedule);
    CHECK(e.gain == Approx(500.0 / 1.1 - 500.0 / 1.21));
    CHECK(e.gain_share == Approx(e.gain / 2000.0));
    CHECK(e.early);
    CHECK(e.paid == std::vector<double>{0.75, 1.0});
    CHECK(e.expected == std::vector<double>{0.5, 1.0});
    const EarlyPayment even = early_payment(mobilized("700", "700"), 0, reference, schedule);
    CHECK(std::abs(even.gain) < 1e-9);
    CHECK_FALSE(even.early);
    CHECK(early_payment(mobilized("500", "1500"), 0, reference, schedule).gain < 0.0);
    CHECK_THROWS_AS(
        early_payment(mobilized("1", "1"), 0, reference, {2, {1.0, 0.1, 0.0, 1.0}, 0.1}),
        InputError);
}
