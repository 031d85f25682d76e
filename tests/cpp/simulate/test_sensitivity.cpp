#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using simulate::FactorRow;
using simulate::Sensitivity;
using simulate::SensitivitySettings;

namespace {

std::vector<Structure> three() {
    Structure longer = overpass();
    longer.id = longer.number = "Y2";
    longer.dimensions.length = Length<>(120.0);
    return {overpass(), longer, creek_bridge(), culvert()};
}

Sensitivity found(const std::vector<Structure>& list, SensitivitySettings settings = {},
                  unsigned threads = 2) {
    settings.draws.draws = 500;
    return simulate::sensitivity(list, demo_plan(), settings, threads);
}

const FactorRow& row_of(const Sensitivity& s, const std::string& key) {
    const auto at = std::find_if(s.rows.begin(), s.rows.end(), [&](const FactorRow& row) {
        return !row.others && std::find(row.keys.begin(), row.keys.end(), key) != row.keys.end();
    });
    REQUIRE(at != s.rows.end());
    return *at;
}

bool same(const Sensitivity& a, const Sensitivity& b) {
    return std::equal(a.rows.begin(), a.rows.end(), b.rows.begin(), b.rows.end(),
                      [](const FactorRow& x, const FactorRow& y) {
                          return x.keys == y.keys && x.indices.total == y.indices.total &&
                                 x.indices.first_order == y.indices.first_order &&
                                 x.indices.total_se == y.indices.total_se;
                      });
}

} // namespace

TEST_CASE("mean and spread are those of a simulation, whose draws are the first sample") {
    const auto run = simulate::simulate(three(), demo_plan(), {.draws = 500});
    const Sensitivity s = found(three());
    CHECK(s.mean == Approx(simulate::DrawnTotal(run, 0).mean().value).epsilon(0.01));
    CHECK(s.sd == Approx(simulate::DrawnTotal(run, 0).sd().value).epsilon(0.1));
}

TEST_CASE("what is alone is the whole variance, alone and in all, and of rank 1 where it rises") {
    Job job = without_ranges();
    for (Setting& s : job.settings) {
        if (s.key == "labour[wash_crew].wage") {
            s.value.guess = {.low = 40.0 / 3600.0, .likely = 46.0 / 3600.0, .high = 60.0 / 3600.0};
        }
    }
    Structure s = counted_overpass();
    const auto plan = estimate::make_plan(job);
    estimate::Resolved resolved;
    estimate::resolve(s, *plan, resolved);
    for (std::size_t i = 0; i < resolved.values.size(); ++i) {
        if (!is_certain(resolved.uncertain[i]) && !std::isnan(resolved.values[i])) {
            const std::string& key = plan->inputs.fields()[i].key;
            if (key != "labour[wash_crew].wage") {
                s.given.push_back({key, certain(resolved.values[i], Basis::measured)});
            }
        }
    }
    const Sensitivity found = simulate::sensitivity({&s, 1}, plan, {.draws = {.draws = 500}});
    REQUIRE(found.rows.size() == 1);
    const FactorRow& row = found.rows.front();
    CHECK(row.keys == std::vector<std::string>{"labour[wash_crew].wage"});
    CHECK(row.indices.first_order == Approx(1.0).margin(4.0 * row.indices.first_order_se));
    CHECK(row.indices.total == Approx(1.0).margin(4.0 * row.indices.total_se));
    CHECK(row.rank_correlation == Approx(1.0));
}

TEST_CASE("first-order indices add up to at most 1, totals to at least 1; others come last") {
    const Sensitivity s = found(three());
    REQUIRE(s.rows.size() == 13);
    CHECK(s.rows.back().others);
    CHECK(s.rows.back().keys.size() > 5);
    double first = 0.0, total = 0.0;
    for (const FactorRow& row : s.rows) {
        first += row.indices.first_order;
        total += row.indices.total;
        CHECK(row.indices.total > 0.0);
        CHECK(std::isnan(row.rank_correlation) == (row.keys.size() != 1));
    }
    CHECK(first == Approx(1.0).margin(0.15));
    CHECK(total > 0.9);
    for (std::size_t i = 2; i < s.rows.size(); ++i) {
        CHECK(s.rows[i - 1].indices.total * 1.0 + (s.rows[i].others ? 1.0 : 0.0) >=
              s.rows[i].indices.total);
    }
}

TEST_CASE("what matters is the same for any threads and order of structures") {
    std::vector<Structure> reversed = three();
    std::reverse(reversed.begin(), reversed.end());
    const Sensitivity one = found(three(), {}, 1);
    CHECK(same(one, found(three(), {}, 3)));
    CHECK(same(one, found(reversed)));
}

TEST_CASE("inputs taken together are one factor with what both do") {
    const Sensitivity apart = found(three());
    const std::string a = apart.rows[0].keys.front();
    const std::string b = apart.rows[1].keys.front();
    SensitivitySettings settings;
    settings.together = {{a, b}};
    const Sensitivity s = found(three(), settings);
    const FactorRow& row = row_of(s, a);
    CHECK(row.keys.size() == 2);
    CHECK(&row == &row_of(s, b));
    const double sum = apart.rows[0].indices.first_order + apart.rows[1].indices.first_order;
    CHECK(row.indices.first_order == Approx(sum).margin(0.1));
}

TEST_CASE("every figure has what matters to it, in the order of its swings") {
    for (std::size_t f = 0; f < simulate::figure_count; ++f) {
        SensitivitySettings settings{.figure = f, .top = 4};
        const Sensitivity s = found(three(), settings);
        const auto swings = simulate::swings(three(), demo_plan(), 0.1, 1, {}, f);
        REQUIRE(s.rows.size() == std::min<std::size_t>(5, swings.rows.size()));
        for (std::size_t k = 0; k < 4; ++k) {
            row_of(s, swings.rows[k].key);
        }
        CHECK(s.sd > 0.0);
    }
    CHECK(simulate::simulated_figure("water") == 2);
    CHECK_THROWS_AS(simulate::simulated_figure("beer"), UnknownNameError);
}

TEST_CASE("keys that are not there or stand twice, and odd draws, are refused") {
    SensitivitySettings settings;
    settings.together = {{"labour[nobody].wage"}};
    CHECK_THROWS_AS(found(three(), settings), UnknownNameError);
    settings.together = {{"dirt[gutter].depth"}, {"dirt[gutter].depth"}};
    CHECK_THROWS_AS(found(three(), settings), InputError);
    settings = {.draws = {.draws = 501}};
    CHECK_THROWS_AS(simulate::sensitivity(three(), demo_plan(), settings), InputError);
    CHECK(found({culvert()}).rows.empty());
}
