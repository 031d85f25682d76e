#include "catch.hpp"
#include "reference.hpp"
#include "scupper/cost.hpp"
#include "scupper/work.hpp"

#include <functional>
#include <map>

using namespace scupper;
using namespace scupper::cost;
using reference::Row;

namespace test_published {

namespace {

Amount<> amount(double value) {
    return Amount<>(value);
}
AmountPerTime<> per_hour(double value) {
    return AmountPerTime<>(value / factor::hour);
}
double an_hour(const AmountPerTime<>& rate) {
    return rate.si() * factor::hour;
}
Time<> hours(double value) {
    return Time<>(value * factor::hour);
}
Time<> years(double value) {
    return Time<>(value * factor::year);
}

using Check = std::function<double(const Row&)>;

/// A factor of interest and periods.
Check by_periods(double (*f)(const double&, const double&)) {
    return [f](const Row& r) { return f(r["i_pct"] / 100.0, r["n"]); };
}
Check by_whole_periods(double (*f)(const double&, double)) {
    return [f](const Row& r) { return f(r["i_pct"] / 100.0, r["n"]); };
}

void add_interest(std::map<std::string, Check>& checks) {
    checks["compound_amount_factor"] = by_periods(&compound_amount_factor<double>);
    checks["sinking_fund_factor"] = by_periods(&sinking_fund_factor<double>);
    checks["series_amount_factor"] = by_periods(&series_amount_factor<double>);
    checks["capital_recovery_factor"] = by_periods(&capital_recovery_factor<double>);
    checks["series_present_worth_factor"] = by_periods(&series_present_worth_factor<double>);
    checks["gradient_present_worth_factor"] =
        by_whole_periods(&gradient_present_worth_factor<double>);
    checks["gradient_series_factor"] = by_whole_periods(&gradient_series_factor<double>);
    checks["rate_for_term"] = [](const Row& r) {
        return 100.0 * rate_for_term(years(r["years"]), years(r["shorter"]),
                                     r["shorter_pct"] / 100.0, years(r["longer"]),
                                     r["longer_pct"] / 100.0);
    };
    checks["implied_inflation"] = [](const Row& r) {
        return 100.0 * implied_inflation(r["nominal_pct"] / 100.0, r["real_pct"] / 100.0);
    };
    checks["present_worth"] = [](const Row& r) {
        return present_worth(amount(r["real_cost"]), r["i"], r["n"]).si();
    };
    checks["present_worth_both_ways"] = [](const Row& r) {
        const double real = present_worth(amount(r["real_cost"]), r["real_i"], r["n"]).si();
        double nominal = 0.0;
        for (double k = 1.0; k <= r["n"]; k += 1.0) {
            nominal += r["real_cost"] * compound_amount_factor(r["infl"], k) *
                       present_worth_factor(nominal_rate(r["real_i"], r["infl"]), k);
        }
        CHECK(nominal == Approx(real).epsilon(1e-12));
        return real;
    };
}

void add_equipment(std::map<std::string, Check>& checks) {
    checks["straight_line"] = [](const Row& r) {
        return straight_line(amount(r["cost"]), amount(r["salvage"]), r["years"]).si();
    };
    checks["hourly"] = [](const Row& r) {
        return an_hour(hourly(amount(r["annual"]), hours(r["hours"])));
    };
    checks["average_investment"] = [](const Row& r) {
        return average_investment(amount(r["P"]), amount(r["S"]), r["N"]).si();
    };
    checks["ownership_by_investment"] = [](const Row& r) {
        const Amount<> annual =
            ownership_by_investment(amount(r["P"]), amount(r["S"]), r["N"], r["i"], 0.0);
        return an_hour(hourly(annual, hours(r["h"])));
    };
    checks["fuel"] = [](const Row& r) {
        return an_hour(cost::fuel(
            Power<>(r["hp"] * factor::horsepower),
            FuelUse<>(r["factor"] * factor::us_gallon / (factor::horsepower * factor::hour)),
            r["load"], AmountPerVolume<>(r["price"] / factor::us_gallon)));
    };
    checks["tyres"] = [](const Row& r) {
        return an_hour(tyres(amount(r["set"]), hours(r["life_h"]), r["repair_pct"] / 100.0));
    };
    checks["repair"] = [](const Row& r) {
        return an_hour(repair(per_hour(r["depr_per_h"]), r["pct"] / 100.0));
    };
    checks["break_even_time"] = [](const Row& r) {
        return break_even_time(amount(r["fixed"]), per_hour(r["own_var_h"]), per_hour(r["hire_h"]))
                   .si() /
               factor::hour;
    };
    checks["conversion_differential"] = [](const Row& r) {
        return conversion_differential(amount(r["personnel_cost"]), 0.10, amount(10e6)).si();
    };
}

/// Payroll taxes on the next hundred of pay after so much was earned, in per cent.
double next_tax(const Row& r, double earned) {
    const Amount<> capped =
        capped_tax(r["capped_pct"] / 100.0, amount(earned), amount(100.0), amount(r["base"]));
    return r["uncapped_pct"] + capped.si();
}

void add_labour(std::map<std::string, Check>& checks) {
    checks["capped_tax_of_a_year"] = [](const Row& r) {
        return capped_tax(r["tax_pct"] / 100.0, amount(0.0), amount(50000.0), amount(r["base"]))
            .si();
    };
    checks["payroll_tax_below_cap"] = [](const Row& r) { return next_tax(r, 0.0); };
    checks["payroll_tax_above_cap"] = [](const Row& r) { return next_tax(r, r["base"]); };
    checks["payroll_tax_of_a_year"] = [](const Row& r) {
        return r["uncapped_pct"] + 100.0 * capped_tax_share(r["capped_pct"] / 100.0,
                                                            amount(r["wage"]), amount(r["base"]));
    };
    checks["week_pay"] = [](const Row& r) {
        return week_pay(hours(r["hours"]), per_hour(r["cash"]), per_hour(r["fringe"]),
                        per_hour(r["basic"]), hours(40.0), 1.5)
            .si();
    };
    checks["overtime_hour"] = [](const Row& r) {
        const AmountPerTime<> base = per_hour(r["base"]);
        return an_hour(labour_hour(base, per_hour(r["fringe"]), r["burden"], 1.0, per_hour(0.0)) +
                       overtime_premium(base, base, 1.5, r["burden"]));
    };
    checks["leave_factor"] = [](const Row& r) {
        return leave_factor(hours(r["paid"]), hours(r["worked"]));
    };
    checks["clock_output"] = [](const Row& r) {
        const Time<> for_one = hours(1.0 / (r["cycles_h"] * r["LCY"]));
        return factor::hour / work::clock_time<double>(for_one, r["eff"]).si();
    };
    checks["hire"] = [](const Row& r) {
        return hire<double>(hours(r["hours"]), Count<>(1.0), per_hour(r["team_rate"])).si();
    };
    checks["unit_cost"] = [](const Row& r) { return unit_cost(amount(r["cost"]), r["LCY"]).si(); };
}

} // namespace

TEST_CASE("every published figure of money is met, or it says why it is no check") {
    std::map<std::string, Check> checks;
    add_interest(checks);
    add_equipment(checks);
    add_labour(checks);
    std::map<std::string, int> used;
    for (const char* file : {"cost/equipment", "cost/labour", "cost/economy"}) {
        reference::Tally tally;
        int no_check = 0;
        for (const Row& row : reference::rows(file)) {
            INFO(row.text("id"));
            const std::string& check = row.text("check");
            REQUIRE(check.empty() != row.text("reason").empty());
            if (check.empty()) {
                ++no_check;
                continue;
            }
            REQUIRE(checks.count(check) == 1);
            ++used[check];
            const double ours = checks.at(check)(row);
            // 38,292.16 is printed to the cent, the answer to a billionth of an hour
            tally.add(row, ours, {{"inputs_rounded", reference::within(row, ours, 1e-7)}});
        }
        const std::string counted =
            std::string(file) + ": " + tally.summary() + ", no_check " + std::to_string(no_check);
        INFO(counted);
        CHECK(counted.find("unexplained") == std::string::npos);
        const std::map<std::string, std::string> expected{
            {"cost/equipment", "cost/equipment: agrees 7, no_check 23"},
            {"cost/labour", "cost/labour: agrees 12, no_check 19"},
            {"cost/economy",
             "cost/economy: agrees 46, agrees_from_memory 1, inputs_rounded 1, no_check 23"}};
        CHECK(counted == expected.at(file));
    }
    CHECK(used.size() == checks.size());
}

TEST_CASE("an hour of fifty minutes gives 3,000 Q over C") {
    // excavation handbook, p. 2.56: 3000 Q / C with C in seconds, 2700 of 45 minutes
    for (const auto& [minutes, constant] : {std::pair{50.0, 3000.0}, std::pair{45.0, 2700.0}}) {
        const Time<> cycle(32.0);
        const double cycles = factor::hour / work::clock_time<double>(cycle, minutes / 60.0).si();
        CHECK(1.5 * cycles == Approx(constant * 1.5 / 32.0));
    }
}

TEST_CASE("published discount rates are rates, below zero too") {
    int negative = 0;
    for (const Row& row : reference::rows("cost/economy")) {
        if (!row.text("quantity").ends_with("discount rate") || !row.has_number("years")) {
            continue;
        }
        const double rate = row.expected() / 100.0;
        negative += rate < 0.0;
        const double recovery = capital_recovery_factor(rate, row["years"]);
        // paid back in even parts: more than the mean part with interest, less without it
        CHECK((recovery > 1.0 / row["years"]) == (rate > 0.0));
        CHECK(recovery * series_present_worth_factor(rate, row["years"]) == Approx(1.0));
    }
    CHECK(negative == 6);
}

} // namespace test_published
