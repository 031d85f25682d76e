#include "cases.hpp"
#include "catch.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

using namespace delivery_tests;

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
constexpr double unlimited = std::numeric_limits<double>::infinity();

std::vector<d::SplitItem> three() {
    return {{"A", "north", 100.0, 150.0, {10.0, 4.0}, 80.0, 150.0},
            {"B", "north", 200.0, 210.0, {20.0, 0.0}, 120.0, 210.0},
            {"C", "south", 300.0, none, {30.0, 6.0}, 90.0, 0.0}};
}

d::SplitRules rules() {
    d::SplitRules r;
    r.limits = {{"crew", 40.0}};
    r.kept = 50.0;
    r.per_contract = 5.0;
    r.most = unlimited;
    return r;
}

/// Whether unknowns keep to every row of a model.
bool holds(const d::SplitModel& m, const std::vector<double>& x) {
    for (std::size_t r = 0; r < m.low.size(); ++r) {
        double sum = 0.0;
        for (std::size_t e = m.starts[r]; e < m.starts[r + 1]; ++e) {
            const std::size_t column = m.columns[e];
            sum += m.entries[e] * x[column];
        }
        if (sum < m.low[r] - 1e-9 || sum > m.high[r] + 1e-9) {
            return false;
        }
    }
    for (std::size_t i = 0; i < x.size(); ++i) {
        if (x[i] > m.upper[i]) {
            return false;
        }
    }
    return true;
}

} // namespace

TEST_CASE("the programme's cost is that of the split, and its rows are the rules") {
    const auto items = three();
    const d::SplitModel model = d::split_model(items, rules());
    // x[A,0] x[A,1] x[B,0] x[B,1] x[C,0] x[C,1] y z
    REQUIRE(model.cost.size() == 8);
    const std::size_t n = model.cost.size();
    std::size_t allowed = 0;
    for (unsigned bits = 0; bits < 1U << n; ++bits) {
        std::vector<double> x(n);
        double cost = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            x[i] = (bits >> i & 1U) != 0U ? 1.0 : 0.0;
            cost += model.cost[i] * x[i];
        }
        if (holds(model, x)) {
            ++allowed;
            const d::Split split = d::split_of(items, rules(), x);
            CHECK(split.cost == Approx(cost));
            CHECK(d::split_fault(items, rules(), split.to).empty());
        }
    }
    // C stays in-house; A fits beside it, B does not
    CHECK(allowed == 2);
}

TEST_CASE("a split says which rule it breaks") {
    const auto items = three();
    d::SplitRules r = rules();
    CHECK(d::split_fault(items, r, {0, 0, 0}) == "more hours of crew than there are");
    CHECK(d::split_fault(items, r, {1, 1, 1}) == "C cannot go out");
    r.least = 200.0;
    CHECK(d::split_fault(items, r, {1, 0, 0}) != "");
    CHECK(d::split_fault(items, r, {0, 1, 0}).empty());
    r.most = 300.0;
    r.limits = {{"crew", unlimited}, {"bucket_truck", 9.0}};
    CHECK(d::split_fault(items, r, {0, 1, 0}) == "more hours of bucket_truck than there are");
    r.limits.pop_back();
    CHECK(d::split_fault(items, r, {1, 1, 0}) == "a contract is too large");
    r.most = unlimited;
    r.together = true;
    CHECK(d::split_fault(items, r, {0, 1, 0}) == "a region is divided");
    r.nothing_in_house = true;
    CHECK(d::split_fault(items, r, {1, 1, 0}) == "C cannot be done in-house");
}

TEST_CASE("a saving that law asks for is in what the programme compares, and in no cost") {
    const auto items = three();
    d::SplitRules r = rules();
    r.limits = {{"crew", 1000.0}, {"bucket_truck", 1000.0}};
    r.contracts = 2;
    for (const d::SavingOver over : {d::SavingOver::contract, d::SavingOver::programme}) {
        r.saving = {over, 0.5, 90.0, 2.0}; // most of a year: 45
        const d::SplitModel model = d::split_model(items, r);
        const bool each = over == d::SavingOver::contract;
        // x of three structures, own people and two contracts; y, z1, z2; w and r of each contract
        REQUIRE(model.cost.size() == 12U + (each ? 4U : 2U));
        const std::size_t groups = each ? 2 : 1;
        for (const std::vector<std::size_t>& to :
             {std::vector<std::size_t>{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {1, 2, 0}}) {
            double least = unlimited;
            for (unsigned w = 0; w < 1U << groups; ++w) {
                std::vector<double> x(model.cost.size());
                std::vector<double> asked(groups);
                for (std::size_t i = 0; i < items.size(); ++i) {
                    x[3 * i + to[i]] = 1.0;
                    if (to[i] > 0) {
                        x[9 + to[i]] = 1.0;
                        asked[each ? to[i] - 1 : 0] += 0.5 * items[i].personnel;
                    }
                }
                x[9] = 1.0;
                for (std::size_t g = 0; g < groups; ++g) {
                    const bool reached = (w >> g & 1U) != 0U;
                    x[12 + g] = reached ? 1.0 : 0.0;
                    x[12 + groups + g] = reached ? asked[g] - 45.0 : 0.0;
                }
                if (holds(model, x) && *std::min_element(x.begin(), x.end()) >= 0.0) {
                    least = std::min(
                        least, std::inner_product(x.begin(), x.end(), model.cost.begin(), 0.0));
                }
            }
            const d::Split split = d::priced_split(items, r, to);
            CHECK(split.compared == Approx(least));
            CHECK(split.cost + split.saving_asked == Approx(split.compared));
        }
        // by hand: shares of 40 and 60, held to 45 each, or together
        CHECK(d::priced_split(items, r, {1, 2, 0}).saving_asked == Approx(each ? 85.0 : 45.0));
        CHECK(d::priced_split(items, r, {1, 0, 0}).saving_asked == Approx(40.0));
        CHECK(d::priced_split(items, r, {0, 0, 0}).saving_asked == 0.0);
        const d::ComparedWork first = d::priced_split(items, r, {1, 2, 0}).out.front();
        CHECK(first.structures == (each ? 1U : 2U));
        CHECK(first.saved == Approx(each ? 100.0 - 155.0 : 300.0 - 370.0));
        CHECK_FALSE(first.meets);
    }
    r.saving.years = 0.0;
    CHECK_THROWS_AS(d::split_model(items, r), scupper::InputError);
}

TEST_CASE("administration and inspection go with what goes out, supervision with what stays") {
    const auto c = case_with(
        {{Input::administration, 0.04}, {Input::inspection, 0.06}, {Input::supervision, 0.1}});
    const d::SplitItem item = d::split_item(c, "A", "north", 100.0, 50.0, 200.0, {60.0}, 200.0);
    CHECK(item.contract == Approx(220.0));
    CHECK(item.in_house == 100.0);
    CHECK(item.personnel == Approx(55.0));
    // nothing to hold a contract against where own people have no price
    CHECK(d::split_item(c, "A", "north", none, none, 200.0, {60.0}, 200.0).personnel == 0.0);
}

TEST_CASE("items and rules that cannot be used are refused") {
    auto items = three();
    CHECK_THROWS_AS(d::split_model({}, rules()), scupper::InputError);
    items[2].in_house = none;
    CHECK_THROWS_AS(d::split_model(items, rules()), scupper::InputError);
    items = three();
    items[0].times[1] = none;
    CHECK_THROWS_AS(d::split_model(items, rules()), scupper::InputError);
    items[0].times.clear();
    CHECK_THROWS_AS(d::split_model(items, rules()), scupper::InputError);
    d::SplitRules r = rules();
    r.least = 10.0;
    r.most = 5.0;
    CHECK_THROWS_AS(d::split_model(three(), r), scupper::InputError);
    CHECK_THROWS_AS(d::split_of(three(), rules(), std::vector<double>(3)), scupper::InputError);
    CHECK_THROWS_AS(d::priced_split(three(), rules(), {0}), scupper::InputError);
}
