// The chance that the low bid on paper is not low at the end.
#include "bid/made_bids.hpp"
#include "scupper/bid/crossover.hpp"
#include "scupper/bid/reversal.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <cmath>

using namespace made;

namespace {

/// One certain item and one from 50 to 200, likely 100; the two bids tie at 120 of it.
PriceTable two_bids() {
    ItemList form = form_of({item("SURE", "LS", "1"), item("MAYBE", "SY", "100")});
    form.items[1].low = number("50");
    form.items[1].high = number("200");
    const BidSet set{form, {honest(form, "x", {"1000", "20"}), honest(form, "y", {"1600", "15"})}};
    return price_table(form, check_bids(set, Governs::unit_price), nullptr);
}

} // namespace

TEST_CASE("the chance is the share of the quantity's distribution beyond the crossover") {
    const PriceTable table = two_bids();
    REQUIRE(to_text(crossovers(table, 0).at(0).quantity) == "5/6"); // of the lump sum
    const auto tie = crossovers(table, 0).at(1);
    REQUIRE(to_text(tie.quantity) == "120");
    const double beyond = 1.0 - ThreePoint{50.0, 100.0, 200.0}.cdf(120.0);
    const Reversal r = reversal(table, draw_quantities(table.form, 40000, 1));
    CHECK(r.low == 0);
    CHECK(r.error == Approx(std::sqrt(beyond * (1 - beyond) / 40000.0)).epsilon(0.05));
    CHECK(std::abs(r.chance - beyond) < 4.0 * r.error);
    CHECK(r.lowest[0] + r.lowest[1] == Approx(1.0));
    CHECK(r.lowest[1] == Approx(r.chance));
    CHECK(r.regret > 0.0);
}

TEST_CASE("given draws are used as they are; a tie leaves the low bid low") {
    const PriceTable table = two_bids();
    const QuantityDraws draws{2, {1, 100, 1, 120, 1, 130, 1, 200}};
    const Reversal r = reversal(table, draws);
    CHECK(r.chance == 0.5);
    CHECK(r.lowest == std::vector<double>{0.5, 0.5});
    CHECK(r.regret == Approx((50.0 + 400.0) / 4.0));
    CHECK(r.mean_total[0] == Approx(1000.0 + 20.0 * 137.5));
}

TEST_CASE("draws stay in their range, repeat with the seed, and move together where they share") {
    ItemList form = form_of({item("A", "SY", "100"), item("B", "SY", "100")});
    for (PayItem& i : form.items) {
        i.low = number("50");
        i.high = number("200");
    }
    const auto draws = draw_quantities(form, 2000, 3);
    CHECK(draws.values == draw_quantities(form, 2000, 3).values);
    CHECK(draws.values != draw_quantities(form, 2000, 4).values);
    for (const double x : draws.values) {
        CHECK_FALSE((x < 50.0 || x > 200.0));
    }
    const auto together = draw_quantities(form, 200, 3, 1.0);
    for (std::size_t n = 0; n < 200; ++n) {
        CHECK(together.values[2 * n] == together.values[2 * n + 1]);
    }
}

TEST_CASE("draws that do not fit, and bids that lack a price") {
    PriceTable table = two_bids();
    CHECK_THROWS_AS(draw_quantities(table.form, 0, 1), InputError);
    CHECK_THROWS_AS(draw_quantities(table.form, 10, 1, 1.5), InputError);
    CHECK_THROWS_AS(reversal(table, {3, {1, 2, 3}}), InputError);
    CHECK_THROWS_AS(reversal(table, {2, {1, std::nan("")}}), InputError);
    table.prices[3].reset();
    const Reversal r = reversal(table, {2, {1, 500}});
    CHECK(r.chance == 0.0);
    CHECK(std::isnan(r.mean_total[1]));
    table.prices[0].reset();
    CHECK_THROWS_AS(reversal(table, {2, {1, 500}}), InputError);
}
