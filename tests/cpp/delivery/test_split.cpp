#include "cases.hpp"
#include "catch.hpp"
#include "scupper/error.hpp"

#include <limits>

using namespace delivery_tests;

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
constexpr double unlimited = std::numeric_limits<double>::infinity();

std::vector<d::SplitItem> three() {
    return {{"A", "north", 100.0, 150.0, 10.0, 150.0},
            {"B", "north", 200.0, 210.0, 20.0, 210.0},
            {"C", "south", 300.0, none, 30.0, 0.0}};
}

d::SplitRules rules() {
    d::SplitRules r;
    r.time_there = 40.0;
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
    CHECK(d::split_fault(items, r, {0, 0, 0}) == "more crew time than there is");
    CHECK(d::split_fault(items, r, {1, 1, 1}) == "C cannot go out");
    r.least = 200.0;
    CHECK(d::split_fault(items, r, {1, 0, 0}) != "");
    CHECK(d::split_fault(items, r, {0, 1, 0}).empty());
    r.most = 300.0;
    r.time_there = unlimited;
    CHECK(d::split_fault(items, r, {1, 1, 0}) == "a contract is too large");
    r.most = unlimited;
    r.together = true;
    CHECK(d::split_fault(items, r, {0, 1, 0}) == "a region is divided");
    r.nothing_in_house = true;
    CHECK(d::split_fault(items, r, {1, 1, 0}) == "C cannot be done in-house");
}

TEST_CASE("administration and inspection go with what goes out") {
    d::Case<double> c = d::empty_case();
    c[Input::administration] = 0.04;
    c[Input::inspection] = 0.06;
    const d::SplitItem item = d::split_item(c, "A", "north", 100.0, 200.0, 60.0, 200.0);
    CHECK(item.contract == Approx(220.0));
    CHECK(item.in_house == 100.0);
}

TEST_CASE("items and rules that cannot be used are refused") {
    auto items = three();
    CHECK_THROWS_AS(d::split_model({}, rules()), scupper::InputError);
    items[2].in_house = none;
    CHECK_THROWS_AS(d::split_model(items, rules()), scupper::InputError);
    items = three();
    items[0].time = none;
    CHECK_THROWS_AS(d::split_model(items, rules()), scupper::InputError);
    d::SplitRules r = rules();
    r.least = 10.0;
    r.most = 5.0;
    CHECK_THROWS_AS(d::split_model(three(), r), scupper::InputError);
    CHECK_THROWS_AS(d::split_of(three(), rules(), std::vector<double>(3)), scupper::InputError);
    CHECK_THROWS_AS(d::priced_split(three(), rules(), {0}), scupper::InputError);
}
