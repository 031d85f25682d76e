#include "catch.hpp"
#include "reference.hpp"
#include "scupper/delivery.hpp"
#include "scupper/error.hpp"

#include <cmath>

namespace d = scupper::delivery;
using d::Prices;

TEST_CASE("the yearly cost of buying is what its flows are worth, spread evenly") {
    for (const double interest : {-0.018, 0.0, 0.07}) {
        const d::Purchase p{120000.0, 0.2, 9000.0, 1500.0, interest};
        const int years = 8;
        std::vector<double> flows{120000.0};
        for (int k = 1; k <= years; ++k) {
            flows.push_back(9000.0 + 1500.0 * (k - 1));
        }
        flows.back() -= d::salvage(p, years);
        double factor = 0.0;
        double worth = 0.0;
        for (int k = 0; k <= years; ++k) {
            const double discount = std::pow(1.0 + interest, -k);
            worth += flows[static_cast<std::size_t>(k)] * discount;
            factor += k > 0 ? discount : 0.0;
        }
        CHECK(d::annual_cost(p, years) == Approx(worth / factor));
        CHECK(d::net_present_value(flows, Prices::constant, interest, Prices::constant, {}) ==
              Approx(worth));
    }
    CHECK_THROWS_AS(d::annual_cost({-1.0, 0.2, 0.0, 0.0, 0.0}, 5), scupper::InputError);
    CHECK_THROWS_AS(d::annual_cost({1.0, 1.2, 0.0, 0.0, 0.0}, 5), scupper::InputError);
    CHECK_THROWS_AS(d::annual_cost({1.0, 0.2, 0.0, 0.0, 0.0}, 2.5), scupper::InputError);
}

TEST_CASE("economic life: no other age costs less; cheap repair moves it out, growth pulls it in") {
    const d::Purchase p{120000.0, 0.2, 9000.0, 4000.0, 0.03};
    const d::EconomicLife life = d::economic_life(p, 25);
    CHECK_FALSE(life.at_end);
    for (const double cost : life.by_age) {
        CHECK(cost >= life.cost);
    }
    d::Purchase dearer = p;
    dearer.growth = 8000.0;
    CHECK(d::economic_life(dearer, 25).years < life.years);
    d::Purchase even = p;
    even.growth = 0.0;
    CHECK(d::economic_life(even, 25).at_end);
    CHECK_THROWS_AS(d::economic_life(p, 0), scupper::InputError);
}

TEST_CASE("real and nominal flows are worth the same; a nominal rate on real flows is refused") {
    double same = 0.0;
    double trap = 0.0;
    for (const reference::Row& row : reference::rows("cost/economy")) {
        same = row.text("id") == "makebuy-091" ? row.expected() : same;
        trap = row.text("id") == "makebuy-092" ? row.expected() : trap;
    }
    std::vector<double> real{0.0};
    std::vector<double> nominal{0.0};
    for (int k = 1; k <= 5; ++k) {
        real.push_back(1e5);
        nominal.push_back(1e5 * std::pow(1.03, k));
    }
    const auto worth = [](const std::vector<double>& flows, Prices prices, double rate, Prices of,
                          std::optional<double> inflation) {
        return d::net_present_value(flows, prices, rate, of, inflation);
    };
    CHECK(worth(real, Prices::constant, 0.03, Prices::constant, {}) == Approx(same));
    CHECK(worth(nominal, Prices::current, 0.0609, Prices::current, {}) == Approx(same));
    CHECK(worth(real, Prices::constant, 0.0609, Prices::current, 0.03) == Approx(same));
    CHECK(worth(nominal, Prices::current, 0.03, Prices::constant, 0.03) == Approx(same));
    // what the refusal guards against: real flows taken for nominal ones
    CHECK(worth(real, Prices::current, 0.0609, Prices::current, {}) == Approx(trap));
    CHECK_THROWS_AS(worth(real, Prices::constant, 0.0609, Prices::current, {}),
                    scupper::InputError);
    CHECK_THROWS_AS(worth({}, Prices::constant, 0.03, Prices::constant, {}), scupper::InputError);
}

TEST_CASE("published discount rates are shipped as they were read, and the rule between them") {
    std::size_t rows = 0;
    for (const reference::Row& row : reference::rows("cost/economy")) {
        if (row.text("id") == "makebuy-032") { // the rule between the terms of three and five years
            CHECK(d::discount_rate(2003, Prices::constant, row["years"]) ==
                  Approx(row.expected() / 100.0));
        }
        if (!row.text("quantity").ends_with("discount rate") || !row.has_number("years")) {
            continue;
        }
        const int edition = row.text("source").find("2003") != std::string::npos ? 2003 : 2021;
        const Prices prices = row.starts("nominal") ? Prices::current : Prices::constant;
        CHECK(d::discount_rate(edition, prices, row["years"]) == Approx(row.expected() / 100.0));
        ++rows;
    }
    CHECK(rows == d::discount_rate_table.size());
    CHECK(d::discount_rate(2021, Prices::constant, 40.0) == Approx(-0.003));
    CHECK(d::discount_rate(2021, Prices::constant, 1.0) == Approx(-0.018));
    CHECK_THROWS_AS(d::discount_rate(2003, Prices::constant, 20.0), scupper::InputError);
    CHECK_THROWS_AS(d::discount_rate(1999, Prices::constant, 5.0), scupper::InputError);
    CHECK_THROWS_AS(d::discount_rate(2021, Prices::constant, 0.0), scupper::InputError);
}

TEST_CASE("a season's time: crews, days, shifts, leave and weather") {
    using scupper::Time;
    const Time<> shift(36000.0);
    CHECK(d::available_time(2, 100, 1, shift, 0.1, 0.2).si() == Approx(2 * 100 * 36000.0 * 0.72));
    CHECK(d::available_time(0, 100, 1, shift, 0.0, 0.0).si() == 0.0);
    CHECK_THROWS_AS(d::available_time(1, 100, 1, shift, 1.1, 0.0), scupper::InputError);
    CHECK_THROWS_AS(d::available_time(1, -1, 1, shift, 0.0, 0.0), scupper::InputError);
}
