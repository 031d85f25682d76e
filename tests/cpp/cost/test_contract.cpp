#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <numeric>
#include <vector>

using namespace scupper;
using namespace scupper::cost;
using namespace scupper::literals;

TEST_CASE("a closed lane is charged by the hour, damages by what they come to on average") {
    const AmountPerTime<> charge = Amount<>(250.0) / 1.0_h;
    CHECK(cost::occupancy(6.0_h, charge).si() == Approx(1500.0));
    const AmountPerTime<> damages = Amount<>(2000.0) / Time<>(factor::day);
    // One time in ten three days late, 2,000 a day.
    CHECK(cost::expected_damages(0.1, Time<>(3.0 * factor::day), damages).si() == Approx(600.0));
    CHECK(cost::expected_damages(0.0, Time<>(3.0 * factor::day), damages).si() == 0.0);
}

TEST_CASE("traced terms have the value of the plain ones") {
    const auto traced = cost::occupancy(Time<Traced>(6.0_h), AmountPerTime<Traced>(Traced(0.07)));
    CHECK(traced.si().value() == cost::occupancy(6.0_h, AmountPerTime<>(0.07)).si());
}

TEST_CASE("a quantity that varies is paid at the contract's price up to the limit") {
    // 23 CFR 635.109(a)(3), read as: above 125 % only what is above; below 75 % the actual work
    const auto paid = [](double quantity) {
        return varied_payment(quantity, 100.0, Amount<>(10.0), 0.25, Amount<>(8.0), Amount<>(13.0))
            .si();
    };
    CHECK(paid(100) == Approx(1000.0));
    CHECK(paid(125) == Approx(1250.0));
    CHECK(paid(150) == Approx(1250.0 + 25 * 8.0));
    CHECK(paid(75) == Approx(750.0));
    CHECK(paid(70) == Approx(70 * 13.0));
    CHECK(paid(0) == 0.0);
    CHECK_THROWS_AS(varied_payment(1.0, 0.0, Amount<>(1.0), 0.25, Amount<>(1.0), Amount<>(1.0)),
                    InputError);
}

TEST_CASE("retainage is kept back, stops at its limit, and is released") {
    const std::vector<double> earned{1000.0, 2000.0, 3000.0};
    const CashFlow flow = retainage(earned, 0.10, 0.05, 2, 0.01);
    REQUIRE(flow.paid.size() == 5);
    CHECK(flow.kept == std::vector<double>{100.0, 200.0, 0.0, 0.0, 0.0});
    CHECK(flow.paid[4] == Approx(300.0));
    CHECK(flow.outstanding.back() == 0.0);
    CHECK(std::accumulate(flow.paid.begin(), flow.paid.end(), 0.0) == Approx(6000.0));
    // by hand: 100 / 1.01 + 200 / 1.01^2 - 300 / 1.01^5
    CHECK(flow.waiting_cost == Approx(9.6294).epsilon(1e-5));
    CHECK(retainage(earned, 0.10, 0.05, 2, 0.0).waiting_cost == Approx(0.0).margin(1e-9));
    CHECK(retainage(earned, 0.0, 1.0, 0, 0.05).waiting_cost == 0.0);
    CHECK_THROWS_AS(retainage({}, 0.1, 1.0, 0, 0.0), InputError);
    CHECK_THROWS_AS(retainage(earned, 1.1, 1.0, 0, 0.0), InputError);
}

TEST_CASE("somebody sent for is paid at least the show-up time") {
    CHECK(show_up_time(Time<>(3600.0), Time<>(14400.0)).si() == 14400.0);
    CHECK(show_up_time(Time<>(36000.0), Time<>(14400.0)).si() == 36000.0);
}

TEST_CASE("indirect cost is shared out whole") {
    const std::vector<double> direct{10.0, 30.0, 60.0};
    double sum = 0.0;
    for (const double d : direct) {
        sum += distributed(Amount<>(50.0), Amount<>(d), Amount<>(100.0)).si();
    }
    CHECK(sum == Approx(50.0));
    CHECK(unit_cost(Amount<>(50.0), 20.0).si() == Approx(2.5));
    CHECK_THROWS_AS(unit_cost(Amount<>(50.0), 0.0), InputError);
}

TEST_CASE("owning pays above the hours at which it costs what hiring does") {
    const AmountPerTime<> own(45.0 / factor::hour);
    const AmountPerTime<> hired(110.0 / factor::hour);
    const Time<> even = break_even_time(Amount<>(38292.16), own, hired);
    CHECK((Amount<>(38292.16) + own * even).si() == Approx((hired * even).si()));
    CHECK_THROWS_AS(break_even_time(Amount<>(1.0), hired, own), InputError);
}
