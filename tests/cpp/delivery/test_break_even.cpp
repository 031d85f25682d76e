#include "cases.hpp"
#include "catch.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

#include <cmath>
#include <numeric>

using namespace delivery_tests;
using d::Basis;

namespace {

double advantage_of(const d::Case<double>& c) {
    return d::advantage(d::compare_ways(c), Basis::full).si();
}

} // namespace

TEST_CASE("where all is linear, the search finds what the closed form gives") {
    const d::Case<double> c = case_with({{Input::structures, 30.0},
                                         {Input::cost_each, 900.0},
                                         {Input::price_each, 1500.0},
                                         {Input::facilities, 26400.0},
                                         {Input::preparation, 3000.0},
                                         {Input::inspection, 0.1}});
    const auto closed = d::linear_break_even(26400.0, 900.0, 3000.0, 1.1 * 1500.0);
    REQUIRE(closed);
    CHECK(*closed == Approx(31.2)); // 23,400 / 750
    const d::Flip flip = d::flip_of(c, Input::structures, Basis::full);
    REQUIRE(flip.all.size() == 1);
    CHECK(flip.nearest == Approx(*closed).epsilon(1e-12));
    CHECK_FALSE(d::linear_break_even(100.0, 5.0, 0.0, 4.0));
    CHECK_FALSE(d::linear_break_even(100.0, 5.0, 0.0, 5.0));
    for (const reference::Row& row : reference::rows("cost/economy")) {
        if (row.text("check") == "break_even_time") { // owning against hire, hours a year
            CHECK(*d::linear_break_even(row["fixed"], row["own_var_h"], 0.0, row["hire_h"]) ==
                  Approx(row.expected()).epsilon(1e-6));
        }
    }
}

TEST_CASE("at every value where the choice turns both ways cost the same") {
    const d::Case<double> c = full_case();
    std::size_t found = 0;
    for (std::size_t i = 0; i < d::case_table.size(); ++i) {
        const auto input = static_cast<Input>(i);
        for (const double x : d::flip_of(c, input, Basis::full).all) {
            INFO(d::case_table[i].key << " " << x);
            CHECK(std::abs(advantage_of(case_with({{input, x}}, c))) < 1e-6 * 1e5);
            ++found;
        }
    }
    CHECK(found >= 8);
}

TEST_CASE("no crossing is said so; a function of any shape is searched part by part") {
    const d::Case<double> c = case_with({{Input::price_each, 50000.0}}, full_case());
    CHECK(std::isnan(d::flip_of(c, Input::overhead, Basis::full).nearest));
    CHECK(d::flip_of(c, Input::overhead, Basis::full).all.empty());
    const auto roots = d::crossings([](double x) { return std::cos(x); }, 0.0, 10.0, 40);
    REQUIRE(roots.size() == 3);
    for (std::size_t i = 0; i < roots.size(); ++i) {
        CHECK(roots[i] == Approx((2.0 * static_cast<double>(i) + 1.0) * std::acos(0.0)));
    }
    const auto jump = d::crossings([](double x) { return x < 2.3 ? -1.0 : 1.0; }, 0.0, 10.0, 7);
    REQUIRE(jump.size() == 1);
    CHECK(jump[0] == Approx(2.3));
    CHECK_THROWS_AS(d::crossings([](double x) { return x; }, 1.0, 0.0, 4), scupper::InputError);
    CHECK_THROWS_AS(d::crossings([](double x) { return x; }, 0.0, 1.0, 0), scupper::InputError);
}

TEST_CASE("sensitivity: the widest first, limits of one's own, and what turns the choice") {
    const d::Case<double> c = full_case();
    const auto rows = d::sensitivity(c, Basis::full, {{Input::inspection, 0.01, 0.30}});
    for (std::size_t i = 1; i < rows.size(); ++i) {
        CHECK(std::abs(rows[i - 1].at_high - rows[i - 1].at_low) >=
              std::abs(rows[i].at_high - rows[i].at_low));
    }
    for (const d::Sensitivity& row : rows) {
        CHECK(row.ranged == (row.input == Input::inspection));
        const bool changes = (row.at_low > 0.0) != (row.at_high > 0.0);
        CHECK((!changes || row.turns));
    }
    CHECK_THROWS_AS(d::sensitivity(c, Basis::full, {{Input::inspection, 0.2, 0.3}}),
                    scupper::InputError);
}

TEST_CASE("travel there and back at a speed is twice the way") {
    using scupper::Speed;
    using scupper::Time;
    CHECK(d::one_way_distance(Time<>(3600.0), Speed<>(20.0)).si() == Approx(36000.0));
    CHECK_THROWS_AS(d::one_way_distance(Time<>(1.0), Speed<>(0.0)), scupper::InputError);
}

TEST_CASE("paired draws: chance, regrets and the worth of knowing") {
    const std::vector<double> advantages{-300.0, 100.0, 200.0, 400.0, -100.0, 300.0};
    const d::Chance chance = d::chance_of(advantages, 2);
    CHECK(chance.cheaper.value == Approx(4.0 / 6.0));
    CHECK(chance.advantage.value == Approx(100.0));
    CHECK(chance.regret_in_house.value == Approx(400.0 / 6.0));
    CHECK(chance.regret_contract.value == Approx(1000.0 / 6.0));
    CHECK(chance.information.value == Approx(400.0 / 6.0));
    // means of the halves are 0 and 200: sd 141.4, over sqrt 2
    CHECK(chance.advantage.standard_error == Approx(100.0));
    CHECK(chance.advantage.value ==
          Approx(chance.regret_contract.value - chance.regret_in_house.value));
    CHECK(std::isnan(d::chance_of(advantages, 1).cheaper.standard_error));
    CHECK_THROWS_AS(d::chance_of(advantages, 4), scupper::InputError);
    CHECK_THROWS_AS(d::chance_of({}, 1), scupper::InputError);
}

TEST_CASE("a draw that is the estimate gives the comparison; uncertain inputs spread it") {
    const d::Case<double> c = full_case();
    const std::size_t n = 2000;
    const std::vector<double> direct(n, 66000.0);
    const std::vector<double> time(n, 5.0);
    const std::vector<double> price(n, 88000.0);
    const d::PairedTotals totals{direct, time, price, 66000.0, 5.0, 88000.0, 10, 7};
    for (const double a : d::drawn_advantages(c, Basis::full, totals, {})) {
        REQUIRE(a == Approx(advantage_of(c)));
    }
    const scupper::ThreePoint guess{0.02, 0.06, 0.10};
    const auto spread = d::drawn_advantages(c, Basis::full, totals, {{Input::inspection, guess}});
    const double mean = std::accumulate(spread.begin(), spread.end(), 0.0) / double(n);
    // the advantage is linear in the share of 88,000, and the guess has its mean at 6 %
    CHECK(mean == Approx(advantage_of(c)).margin(4.0 * 88000.0 * guess.sd() / std::sqrt(n)));
    CHECK(spread == d::drawn_advantages(c, Basis::full, totals, {{Input::inspection, guess}}));
    CHECK(d::advantage_at(c, Basis::full, 5.0, 5.0, 7.0, 7.0) == Approx(advantage_of(c)));
    CHECK(d::advantage_at(c, Basis::full, 66000.0, 66000.0, 89000.0, 88000.0) ==
          Approx(advantage_of(c) + 1.1 * 1000.0));
    CHECK(std::isnan(d::advantage_at(c, Basis::full, std::nan(""), 5.0, 7.0, 7.0)));
    CHECK_THROWS_AS(d::advantage_at(c, Basis::full, 5.0, 0.0, 7.0, 7.0), scupper::InputError);
    d::PairedTotals unequal = totals;
    unequal.price = std::span(price).first(10);
    CHECK_THROWS_AS(d::drawn_advantages(c, Basis::full, unequal, {}), scupper::InputError);
}
