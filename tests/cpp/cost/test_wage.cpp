#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace scupper::cost;

namespace test_wage {

namespace {
AmountPerTime<> per_hour(double value) {
    return AmountPerTime<>(value / factor::hour);
}
} // namespace

TEST_CASE("the burden of a capped tax falls during the year and its sum is that of the year") {
    const Amount<> cap(7000.0);
    double sum = 0.0;
    double last = 1.0;
    for (double earned = 0.0; earned < 26000.0; earned += 1000.0) {
        const double tax = capped_tax(0.027, Amount<>(earned), Amount<>(1000.0), cap).si();
        CHECK(tax <= last * 1000.0);
        last = tax / 1000.0;
        sum += tax;
    }
    CHECK(last == 0.0);
    CHECK(sum == Approx(26000.0 * capped_tax_share(0.027, Amount<>(26000.0), cap)));
}

TEST_CASE(
    "moving money between cash and fringe changes no straight pay and no premium below basic") {
    // US DOL resource book: the premium rests on the higher of cash and basic rate
    const auto pay = [](double cash, double fringe) {
        return week_pay(Time<>(50 * factor::hour), per_hour(cash), per_hour(fringe), per_hour(22.0),
                        Time<>(40 * factor::hour), 1.5)
            .si();
    };
    CHECK(pay(22, 5) == Approx(50 * 27 + 10 * 11));
    CHECK(pay(15, 12) == Approx(pay(22, 5)));
    CHECK(pay(25, 2) == Approx(50 * 27 + 10 * 12.5));
    CHECK(pay(27, 0) > pay(22, 5));
}

TEST_CASE("an hour bears leave, burden, fringe and per diem") {
    // by hand: 30 x 2080/1776 x 1.2 + 12 + 80/10
    const double hour =
        labour_hour(per_hour(30), per_hour(12), 0.2, 2080.0 / 1776.0, per_hour(8)).si() *
        factor::hour;
    CHECK(hour == Approx(62.1622).epsilon(1e-5));
}

TEST_CASE("wages that cannot be are refused") {
    CHECK_THROWS_AS(capped_tax_share(-0.1, Amount<>(1.0), Amount<>(1.0)), InputError);
    CHECK_THROWS_AS(capped_tax_share(0.1, Amount<>(0.0), Amount<>(1.0)), InputError);
    CHECK_THROWS_AS(leave_factor(Time<>(1.0), Time<>(0.0)), InputError);
    CHECK_THROWS_AS(overtime_premium(per_hour(20), per_hour(20), 0.5, 0.0), InputError);
    CHECK_THROWS_AS(overtime_base(per_hour(-1), per_hour(20)), InputError);
}

} // namespace test_wage
