// Quantities at which the low bidder stops being low, against brute force.
#include "bid/made_bids.hpp"
#include "scupper/bid/crossover.hpp"
#include "scupper/error.hpp"

#include <random>

using namespace made;

namespace {

PriceTable table_of(ItemList form, const std::vector<std::vector<std::string>>& prices) {
    BidSet set{std::move(form), {}};
    for (const auto& row : prices) {
        set.bids.push_back(honest(set.form, "bidder " + std::to_string(set.bids.size()), row));
    }
    return price_table(set.form, check_bids(set, Governs::unit_price), nullptr);
}

std::string cents(std::int64_t n) {
    return to_text(Decimal(n, 2));
}

std::vector<Decimal> quantities_of(const PriceTable& table) {
    std::vector<Decimal> out;
    for (const PayItem& item : table.form.items) {
        out.push_back(item.quantity);
    }
    return out;
}

/// A contract with random whole quantities, ranges and prices in cents.
PriceTable random_contract(std::mt19937& random) {
    const auto any = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    std::vector<PayItem> items;
    for (int i = 0; i < 5; ++i) {
        const int quantity = any(1, 400);
        items.push_back(item("I" + std::to_string(i), "EA", std::to_string(quantity)));
        items.back().low = Decimal(quantity - any(0, quantity));
        items.back().high = Decimal(quantity + any(1, 300));
    }
    std::vector<std::vector<std::string>> prices(4);
    for (auto& row : prices) {
        for (int i = 0; i < 5; ++i) {
            row.push_back(cents(any(0, 99999)));
        }
    }
    return table_of(form_of(items), prices);
}

} // namespace

TEST_CASE("a tie by hand: where it is, in which direction, within the range or not") {
    // 100 A + 10 B: 1,000 + 500 against 1,200 + 400; A dearer with the second: 100 + 100/2 below.
    ItemList form = form_of({item("A", "SY", "100"), item("B", "EA", "10")});
    form.items[1].low = number("5");
    form.items[1].high = number("20");
    const PriceTable table = table_of(form, {{"10", "50"}, {"12", "40"}});
    REQUIRE(low_bid(table) == 0);
    const auto ties = crossovers(table, 0);
    REQUIRE(ties.size() == 2);
    CHECK(to_text(ties[0].quantity) == "50");
    CHECK_FALSE(ties[0].upward);
    CHECK_FALSE(ties[0].in_range);
    CHECK(to_text(ties[1].quantity) == "20");
    CHECK(ties[1].upward);
    CHECK(ties[1].in_range);
    CHECK(joint_changes(table, 0)[0].share == Approx(1.0));
    CHECK(to_text(Fraction{7, 3}) == "7/3");
    CHECK(to_text(Fraction{-9, 8}) == "-1.125");
}

TEST_CASE("every crossover against totals just before and beyond it") {
    std::mt19937 random(20);
    std::size_t seen = 0;
    std::size_t reached = 0;
    for (int run = 0; run < 60; ++run) {
        const PriceTable table = random_contract(random);
        const std::size_t low = low_bid(table).value();
        for (const Crossover& c : crossovers(table, low)) {
            const Decimal step(1, 6);
            const Decimal near = rounded_from_double(c.quantity.value(), 6, "tie");
            std::vector<Decimal> q = quantities_of(table);
            const auto lead = [&](const Decimal& quantity) {
                q[c.item] = quantity;
                const Amounts totals = totals_at(table, q);
                return *totals[c.other] - *totals[low];
            };
            const Decimal before = lead(c.upward ? near - step : near + step);
            const Decimal beyond = lead(c.upward ? near + step : near - step);
            CHECK(before > Decimal());
            CHECK(beyond < Decimal());
            const PayItem& item = table.form.items[c.item];
            CHECK(c.in_range == (lead(c.upward ? item.high : item.low) <= Decimal()));
            ++seen;
            reached += c.in_range ? 1 : 0;
        }
    }
    CHECK(seen > 300);
    CHECK(reached > 20);
}

TEST_CASE("no crossover is forgotten: quantities far out agree with the list") {
    std::mt19937 random(21);
    for (int run = 0; run < 20; ++run) {
        const PriceTable table = random_contract(random);
        const std::size_t low = low_bid(table).value();
        const auto list = crossovers(table, low);
        for (std::size_t i = 0; i < table.items(); ++i) {
            for (std::size_t other = 0; other < table.bidders.size(); ++other) {
                bool flips = false;
                for (const char* far : {"0", "1000000000"}) {
                    std::vector<Decimal> q = quantities_of(table);
                    q[i] = number(far);
                    const Amounts totals = totals_at(table, q);
                    flips = flips || (*totals[other] < *totals[low]);
                }
                const auto listed =
                    std::count_if(list.begin(), list.end(), [&](const Crossover& c) {
                        return c.item == i && c.other == other && c.quantity.top > 0;
                    });
                CHECK((listed > 0) == flips);
            }
        }
    }
}

TEST_CASE("joint changes: no corner of the ranges is worse, and the share leads to the tie") {
    std::mt19937 random(22);
    for (int run = 0; run < 30; ++run) {
        const PriceTable table = random_contract(random);
        const std::size_t low = low_bid(table).value();
        for (const JointChange& joint : joint_changes(table, low)) {
            Decimal least = joint.gap;
            for (unsigned corner = 0; corner < 32; ++corner) {
                std::vector<Decimal> q;
                for (std::size_t i = 0; i < 5; ++i) {
                    const PayItem& item = table.form.items[i];
                    q.push_back((corner >> i & 1U) == 1U ? item.high : item.low);
                }
                const Amounts totals = totals_at(table, q);
                least = std::min(least, *totals[joint.other] - *totals[low]);
            }
            CHECK(least == joint.least_gap);
            CHECK(joint.share.has_value() == (joint.least_gap <= Decimal()));
        }
    }
}

TEST_CASE("a range that does not enclose its quantity, and prices that are missing") {
    ItemList form = form_of({item("A", "EA", "10"), item("B", "EA", "1")});
    form.items[0].high = number("9");
    PriceTable table = table_of(form, {{"1", "1"}, {"2", "2"}});
    CHECK_THROWS_AS(crossovers(table, 0), InputError);
    table.form.items[0].high = number("10");
    table.prices[2].reset();
    CHECK(crossovers(table, 0).empty());
    CHECK_THROWS_AS(crossovers(table, 1), InputError);
    CHECK(low_bid(table) == 0);
    CHECK_THROWS_AS(totals_at(table, {}), InputError);
}
