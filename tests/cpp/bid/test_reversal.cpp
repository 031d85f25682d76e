// The chance that the low bid on paper is not low at the end.
#include "bid/made_bids.hpp"
#include "estimate/structures.hpp"
#include "scupper/bid/crossover.hpp"
#include "scupper/bid/item_draws.hpp"
#include "scupper/bid/reversal.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"
#include "scupper/random.hpp"
#include "scupper/simulate/totals.hpp"

#include <algorithm>
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

std::vector<Structure> two_structures() {
    return {made_up::overpass(), made_up::creek_bridge()};
}

PayItems items_of(const std::vector<Structure>& records,
                  const std::shared_ptr<const estimate::Plan>& plan) {
    const auto list = json::read_item_list(json::shipped_item_list(), "pay_items.json");
    return pay_items(estimate::estimate_all(records, plan), records, list, {.draws = {.draws = 8}});
}

std::size_t place_of(const PayItems& items, const std::string& code) {
    for (std::size_t i = 0; i < items.items.size(); ++i) {
        if (items.items[i].item.code == code) {
            return i;
        }
    }
    throw std::logic_error(code);
}

/// Bid x at the engineer's prices; y saves something on every unit of an item, ties with x at some
/// quantity of it, and differs in nothing else but the lump sum.
PriceTable against(const PayItems& items, std::size_t item, const Decimal& saving,
                   const Decimal& tie) {
    const ItemList form = form_of(items);
    std::vector<std::string> x;
    for (const PricedItem& i : items.items) {
        x.push_back(to_text(i.unit_price));
    }
    std::vector<std::string> y = x;
    const std::size_t lump = place_of(items, "MOB");
    y[lump] = to_text(number(x[lump]) + saving * tie);
    y[item] = to_text(number(x[item]) - saving);
    const BidSet set{form, {honest(form, "x", x), honest(form, "y", y)}};
    return price_table(form, check_bids(set, Governs::unit_price), nullptr);
}

/// The same records with whatever is uncertain about them measured as it is priced.
std::vector<Structure> known(std::vector<Structure> records, const estimate::Plan& plan) {
    for (Structure& s : records) {
        estimate::Resolved resolved;
        estimate::resolve(s, plan, resolved);
        for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
            if (!std::isnan(resolved.uncertain[i].guess.likely) &&
                !is_certain(resolved.uncertain[i])) {
                s.given.push_back(
                    {plan.inputs.fields()[i].key, certain(resolved.values[i], Basis::measured)});
            }
        }
    }
    return records;
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

TEST_CASE("items are drawn with the draws of the simulation") {
    const auto records = two_structures();
    const PayItems items = items_of(records, made_up::demo_plan());
    const auto simulation =
        simulate::simulate(records, items.plan, {.seed = 5, .draws = 400, .replicates = 4});
    const QuantityDraws drawn = item_draws(items, records, simulation, 1);
    REQUIRE(drawn.draws() == 400);
    CHECK(drawn.values == item_draws(items, records, simulation, 3).values);
    const std::size_t drains = place_of(items, "DRAIN-OPEN");
    const std::size_t dirt = place_of(items, "DEBRIS-HAUL");
    const std::size_t lump = place_of(items, "MOB");
    const auto volumes = simulate::DrawnTotal(simulation, 3).draws();
    double tons = 0.0;
    double volume = 0.0;
    for (std::size_t d = 0; d < 400; ++d) {
        CHECK(drawn.values[d * drawn.items + lump] == 1.0);
        tons += drawn.values[d * drawn.items + dirt] > items.items[dirt].counted ? 1.0 : 0.0;
        volume += volumes[d] > simulation.estimated[3].value() ? 1.0 : 0.0;
    }
    CHECK(tons > 20.0);
    CHECK(volume > 20.0);

    // y saves 100 on every drain and asks 100 x (n + 0.75) more at once: beyond that it is low.
    const Decimal tie = items.items[drains].item.quantity + number("0.75");
    const PriceTable table = against(items, drains, number("100"), tie);
    double beyond = 0.0;
    for (std::size_t d = 0; d < 400; ++d) {
        beyond += drawn.values[d * drawn.items + drains] > to_double(tie) ? 1.0 : 0.0;
    }
    CHECK(beyond > 0.0);
    CHECK(reversal(table, drawn).chance == beyond / 400.0);

    // Another seed, other structures: those are not the draws of this simulation.
    CHECK_THROWS_AS(item_draws(items, std::span(records).first(1), simulation), InputError);
    const std::vector<Structure> others{records[1], records[1]};
    CHECK_THROWS_AS(item_draws(items, others, simulation), InputError);
}

TEST_CASE(
    "without ranges every draw has the quantities of the estimate, and the chance is 0 or 1") {
    const auto plan = estimate::make_plan(made_up::without_ranges());
    const auto records = known(two_structures(), *plan);
    const PayItems items = items_of(records, plan);
    const auto simulation = simulate::simulate(records, items.plan, {.draws = 20, .replicates = 2});
    const QuantityDraws drawn = item_draws(items, records, simulation);
    for (std::size_t d = 0; d < 20; ++d) {
        for (std::size_t i = 0; i < drawn.items; ++i) { // sums of a draw keep 2^-24 of an SI unit
            CHECK(drawn.values[d * drawn.items + i] ==
                  Approx(items.items[i].counted).epsilon(1e-6));
        }
    }
    const std::size_t drains = place_of(items, "DRAIN-OPEN");
    const PricedItem& item = items.items[drains];
    const double stated = to_double(item.item.quantity); // rounded: the draws are not
    const Decimal between = rounded_from_double((item.counted + stated) / 2.0, 6, "tie");
    REQUIRE(item.counted != Approx(stated).epsilon(1e-4));
    const Decimal turning = item.counted > stated ? number("100") : number("-100");
    CHECK(reversal(against(items, drains, turning, between), drawn).chance == 1.0);
    CHECK(reversal(against(items, drains, number("100"), number("1000")), drawn).chance == 0.0);
}

TEST_CASE("priced by quantity, the items of a draw come to what the draw costs") {
    // Work on drains alone, one closure, nothing that a shift adds: cost is a + b n, with b n in one
    // item and a in the other. Only n is drawn.
    Job job = made_up::without_ranges();
    job.service = {{"drain", "full_clean"}};
    for (const char* key : {"shift.travel_time", "shift.briefing_time", "shift.meal_time"}) {
        job = json::with_input(job, key, "\"0 h\"");
    }
    const auto plan = estimate::make_plan(job);
    std::vector<Structure> records = known({made_up::overpass()}, *plan);
    Uncertain drains_there = certain(5.0, Basis::measured);
    drains_there.guess = {.low = 3.0, .likely = 5.0, .high = 7.0};
    records[0].given.push_back({"drain_count", drains_there});
    const auto list = json::read_item_list(R"({"scupper_items": 1, "items": [
        {"code": "DRAIN", "description": "drains", "unit": "EA", "driver": "drain_count",
         "covers": [{"component": ["drain", "disposal", "supply"]}]},
        {"code": "MOB", "description": "the rest", "unit": "LS",
         "covers": [{"component": ["visit", "traffic_control", "indirect"]}]}]})",
                                           "items.json");
    const PayItems items = pay_items(estimate::estimate_all(records, plan), records, list,
                                     {.price_decimals = 6, .draws = {.draws = 0}});
    const auto simulation = simulate::simulate(records, plan, {.draws = 50, .replicates = 5});
    const QuantityDraws drawn = item_draws(items, records, simulation);
    const auto costs = simulate::DrawnTotal(simulation, 0).draws();
    const std::size_t drains = place_of(items, "DRAIN");
    const double price = to_double(items.items[drains].amount) / items.items[drains].counted;
    const double lump = to_double(items.items[place_of(items, "MOB")].amount);
    CHECK(*std::max_element(costs.begin(), costs.end()) > costs[0] + 10.0);
    for (std::size_t d = 0; d < 50; ++d) { // both amounts are rounded to the cent
        CHECK(std::abs(price * drawn.values[2 * d + drains] + lump - costs[d]) < 0.02);
    }
}
