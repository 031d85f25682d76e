#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace scupper::cost;

namespace {
constexpr double price = 300000.0;
constexpr double salvage = 50000.0;
constexpr double life = 8.0;

template <class F>
double over_life(F depreciation) {
    double sum = 0.0;
    for (double year = 1.0; year <= life; year += 1.0) {
        sum += depreciation(year).si();
    }
    return sum;
}
} // namespace

TEST_CASE("every depreciation adds up to what is lost, declining ones stop at the salvage") {
    const Amount<> p(price);
    const Amount<> s(salvage);
    CHECK(over_life([&](double) { return straight_line(p, s, life); }) == Approx(price - salvage));
    CHECK(over_life([&](double k) { return sum_of_years(p, s, life, k); }) ==
          Approx(price - salvage));
    CHECK(over_life([&](double k) { return declining_balance(p, s, 0.5, k); }) ==
          Approx(price - salvage));
    CHECK(over_life([&](double k) { return declining_balance(p, s, 2.0 / life, k); }) <=
          price - salvage + 1e-6);
    CHECK(sum_of_years(p, s, life, 1.0).si() == Approx(250000.0 * 8.0 / 36.0));
    CHECK(declining_balance(p, s, 0.25, 2.0).si() == Approx(300000.0 * 0.75 * 0.25));
    CHECK(sum_of_years(p, s, life, 9.0).si() == 0.0);
}

TEST_CASE("capital recovery pays the price back with interest") {
    const double annual =
        ownership_by_recovery(Amount<>(price), Amount<>(salvage), life, 0.08, 0.0).si();
    double owed = price;
    for (int year = 0; year < 8; ++year) {
        owed = owed * 1.08 - annual;
    }
    CHECK(owed == Approx(salvage));
    CHECK(ownership_by_recovery(Amount<>(price), Amount<>(salvage), life, 0.0, 0.0).si() ==
          Approx(straight_line(Amount<>(price), Amount<>(salvage), life).si()));
}

TEST_CASE("average investment bears simple interest: a little less than capital recovery") {
    const Amount<> p(price);
    const Amount<> s(salvage);
    const double recovery = ownership_by_recovery(p, s, life, 0.08, 0.02).si();
    const double investment = ownership_by_investment(p, s, life, 0.08, 0.02).si();
    CHECK(investment == Approx(recovery).epsilon(0.10));
    CHECK(investment < recovery);
}

TEST_CASE("equipment that cannot be is refused") {
    CHECK_THROWS_AS(straight_line(Amount<>(-1.0), Amount<>(0.0), 5.0), InputError);
    CHECK_THROWS_AS(straight_line(Amount<>(1.0), Amount<>(0.0), 0.0), InputError);
    CHECK_THROWS_AS(declining_balance(Amount<>(1.0), Amount<>(0.0), 1.5, 1.0), InputError);
    CHECK_THROWS_AS(sum_of_years(Amount<>(1.0), Amount<>(0.0), 5.0, 0.0), InputError);
    CHECK_THROWS_AS(hourly(Amount<>(1.0), Time<>(0.0)), InputError);
}
