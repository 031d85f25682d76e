#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <initializer_list>
#include <limits>

using namespace scupper;
using namespace scupper::cost;

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
} // namespace

TEST_CASE("interest factors are those of each other") {
    for (const double i : {-0.018, -1e-9, 0.0, 1e-9, 2e-6, 0.0025, 0.07, 0.5}) {
        for (const double n : {1.0, 5.0, 8.5, 30.0}) {
            INFO(i << " over " << n);
            CHECK(present_worth_factor(i, n) * compound_amount_factor(i, n) == Approx(1.0));
            CHECK(capital_recovery_factor(i, n) ==
                  Approx(sinking_fund_factor(i, n) + i).epsilon(1e-8));
            CHECK(series_present_worth_factor(i, n) * capital_recovery_factor(i, n) == Approx(1.0));
        }
    }
}

TEST_CASE("a rate of nothing shares out evenly, and no jump leads there") {
    CHECK(capital_recovery_factor(0.0, 8.0) == Approx(1.0 / 8.0));
    CHECK(gradient_present_worth_factor(0.0, 10.0) == Approx(45.0));
    const double below = series_amount_factor(0.999e-6, 30.0);
    const double above = series_amount_factor(1.001e-6, 30.0);
    CHECK(above > below);
    CHECK(above - below < 1e-5);
}

TEST_CASE("a gradient is the sum of series that start later") {
    double sum = 0.0;
    for (double start = 1.0; start < 12.0; start += 1.0) {
        sum += series_present_worth_factor(0.04, 12.0 - start) * present_worth_factor(0.04, start);
    }
    CHECK(gradient_present_worth_factor(0.04, 12.0) == Approx(sum));
}

TEST_CASE("real and nominal rates go there and back") {
    for (const double inflation : {-0.01, 0.0, 0.03}) {
        const double nominal = nominal_rate(0.02, inflation);
        CHECK(real_rate(nominal, inflation) == Approx(0.02));
        CHECK(implied_inflation(nominal, 0.02) == Approx(inflation).margin(1e-15));
    }
}

TEST_CASE("a rate beyond the published terms is that of the nearest") {
    const auto at = [](double years) {
        return rate_for_term(Time<>(years * factor::year), Time<>(20 * factor::year), 0.015,
                             Time<>(30 * factor::year), 0.017);
    };
    CHECK(at(45) == Approx(0.017));
    CHECK(at(2) == Approx(0.015));
    CHECK(at(25) == Approx(0.016));
}

TEST_CASE("rates and periods that cannot be are refused") {
    for (const double bad : {-1.0, -2.0, 11.0, not_a_number}) {
        CHECK_THROWS_AS(capital_recovery_factor(bad, 5.0), InputError);
    }
    for (const double bad : {0.0, -1.0, not_a_number}) {
        CHECK_THROWS_AS(capital_recovery_factor(0.05, bad), InputError);
    }
    CHECK_THROWS_AS(gradient_present_worth_factor(0.05, 2.5), InputError);
    CHECK_THROWS_AS(gradient_present_worth_factor(0.05, 1e9), InputError);
    CHECK_THROWS_AS(rate_for_term(Time<>(1.0), Time<>(5.0), 0.0, Time<>(5.0), 0.0), InputError);
}
