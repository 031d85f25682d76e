#include "cases.hpp"
#include "catch.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"

#include <limits>

using namespace delivery_tests;
using d::Basis;

namespace {

double line(const d::Ways<double>& ways, std::string_view key) {
    for (std::size_t i = 0; i < d::line_table.size(); ++i) {
        if (d::line_table[i].key == key) {
            return ways.lines[i].si();
        }
    }
    FAIL("no such line");
    return 0.0;
}

} // namespace

TEST_CASE("a year both ways, line by line, as computed by hand") {
    const d::Ways<double> ways = d::compare_ways(full_case());
    // 40 structures, 20,000 m2: 40 x 900 + 20,000 x 1.5; 40 x 3 h + 20,000 x 0.004 h
    CHECK(line(ways, "direct") == Approx(66000.0));
    CHECK(ways.crew_time.si() == Approx(200.0 * hour));
    CHECK(line(ways, "kept") == Approx(5000.0));
    CHECK(line(ways, "displaced") == Approx(50.0 * 60.0));
    CHECK(line(ways, "idle_equipment") == Approx(30000.0 * (1.0 - 500.0 / 800.0)));
    CHECK(line(ways, "supervision") == Approx(3300.0));
    CHECK(line(ways, "overhead") == Approx(3960.0));
    CHECK(line(ways, "facilities") == Approx(4000.0));
    CHECK(line(ways, "price") == Approx(88000.0));
    CHECK(line(ways, "preparation") == Approx(7000.0));
    CHECK(line(ways, "administration") == Approx(3520.0));
    CHECK(line(ways, "inspection") == Approx(5280.0));
    // i / (1 - (1 + i)^-5) of -1.6 %
    const double recovery = -0.016 / (1.0 - std::pow(0.984, -5.0));
    CHECK(line(ways, "conversion") == Approx(20000.0 * recovery));
    CHECK(line(ways, "differential") == Approx(3630.0));
    CHECK(ways.avoidable.si() == Approx(74000.0));
    CHECK(ways.full.si() == Approx(74000.0 + 11250.0 + 3300.0 + 3960.0 + 4000.0));
    CHECK(ways.contract.si() == Approx(103800.0 + 20000.0 * recovery));
    CHECK(d::advantage(ways, Basis::full).si() ==
          Approx(ways.contract.si() + 3630.0 - ways.full.si()));
}

TEST_CASE("the least saving by law meets the worked rows, spread over the years") {
    for (const reference::Row& row : reference::rows("cost/economy")) {
        if (row.text("check") != "conversion_differential") {
            continue;
        }
        const double years = 5.0;
        const double personnel = row["personnel_cost"] / years;
        const auto c = case_with({{Input::structures, 1.0},
                                  {Input::cost_each, personnel},
                                  {Input::labour_share, 1.0},
                                  {Input::years, years * scupper::factor::year},
                                  {Input::differential_share, 0.10},
                                  {Input::differential_most, 10e6}});
        CHECK(years * d::compare_ways(c).differential.si() == Approx(row.expected()));
        const scupper::Amount<> asked =
            d::least_saving(scupper::Amount<>(personnel), years, 0.10, scupper::Amount<>(10e6));
        CHECK(years * asked.si() == Approx(row.expected()));
    }
}

TEST_CASE("worked example A: in-house 2,335.84 against a contract of 3,433.62") {
    // in-house: labour 1,283.31, equipment 627.71, water and disposal 120.15, 15 % on all of it;
    // contract: 2,663.52 direct, times 1.28913
    const double direct = 1283.31 + 627.71 + 120.15;
    const auto c = case_with({{Input::structures, 1.0},
                              {Input::cost_each, direct},
                              {Input::labour_share, 1283.31 / direct},
                              {Input::overhead, 0.15 * direct / 1283.31},
                              {Input::price_each, 2663.52 * 1.28913}});
    const d::Ways<double> ways = d::compare_ways(c);
    CHECK(ways.full.si() == Approx(2335.84).margin(0.01));
    CHECK(ways.contract.si() == Approx(3433.62).margin(0.01));
}

TEST_CASE("the explanation is the comparison, to the bit, and names its inputs") {
    const d::Case<double> c = full_case();
    for (const Basis basis : {Basis::avoidable, Basis::full}) {
        const scupper::Derivation why = d::explain(c, basis);
        CHECK(why.steps.front().value == d::advantage(d::compare_ways(c), basis).si());
        std::size_t inputs = 0;
        for (const scupper::DerivedStep& step : why.steps) {
            inputs += step.kind == scupper::DerivedKind::input;
        }
        CHECK(inputs == (basis == Basis::full ? 27 : 22));
    }
}

TEST_CASE("two parts meet the sum exactly and are never below 0") {
    const std::vector<double> areas{100.0, 300.0, 500.0, 900.0};
    std::vector<double> costs;
    for (const double a : areas) {
        costs.push_back(700.0 + 2.5 * a);
    }
    const d::TwoPart line = d::two_part(costs, areas);
    CHECK(line.each == Approx(700.0));
    CHECK(line.by_area == Approx(2.5));
    CHECK(line.explains == Approx(1.0));
    for (const std::vector<double>& c :
         {std::vector<double>{9.0, 5.0, 4.0, 1.0}, std::vector<double>{0.0, 50.0, 300.0, 2000.0},
          std::vector<double>{7.0, 7.0, 7.0, 7.0}}) {
        const d::TwoPart p = d::two_part(c, areas);
        CHECK(p.each >= 0.0);
        CHECK(p.by_area >= 0.0);
        CHECK(4.0 * p.each + 1800.0 * p.by_area == Approx(c[0] + c[1] + c[2] + c[3]));
    }
    CHECK(d::two_part(std::vector{5.0}, std::vector{80.0}).each == Approx(5.0));
    CHECK_THROWS_AS(d::two_part(std::vector{5.0}, areas), scupper::InputError);
    CHECK_THROWS_AS(d::two_part(std::vector{-5.0}, std::vector{1.0}), scupper::InputError);
}

TEST_CASE("the case of a priced list has the list's sums") {
    const std::vector<double> areas{200.0, 500.0, 1100.0};
    const std::vector<double> direct{900.0, 1400.0, 3300.0};
    const std::vector<double> wages{450.0, 700.0, 1500.0};
    const std::vector<double> time{9.0 * hour, 12.0 * hour, 25.0 * hour};
    const std::vector<double> price{1300.0, 2000.0, 3900.0};
    const auto c = d::priced_case(full_case(), {areas, direct, wages, time, price});
    const d::Ways<double> ways = d::compare_ways(c);
    CHECK(line(ways, "direct") == Approx(5600.0));
    CHECK(line(ways, "price") == Approx(7200.0));
    CHECK(line(ways, "overhead") == Approx(0.12 * 2650.0));
    CHECK(ways.crew_time.si() == Approx(46.0 * hour));
    CHECK(c[Input::inspection] == full_case()[Input::inspection]);
}

TEST_CASE("a case that cannot be is refused by the key of its input") {
    CHECK_NOTHROW(d::check(full_case()));
    CHECK_NOTHROW(d::check(d::empty_case()));
    for (std::size_t i = 0; i < d::case_table.size(); ++i) {
        for (const double wrong : {d::case_table[i].least - 1.0, std::nan("")}) {
            d::Case<double> c = full_case();
            c.values[i] = wrong;
            try {
                d::check(c);
                FAIL("passed: " << d::case_table[i].key);
            } catch (const scupper::InputError& e) {
                CHECK(e.id() == "delivery." + std::string(d::case_table[i].key));
            }
        }
    }
    CHECK_THROWS_AS(d::check(case_with({{Input::rated_time, 0.0}}, full_case())),
                    scupper::InputError);
    CHECK(d::input_of("contract.inspection") == Input::inspection);
    CHECK_THROWS_AS(d::input_of("contract.inspektion"), scupper::UnknownNameError);
    CHECK_THROWS_AS(d::basis_of("half"), scupper::UnknownNameError);
}
