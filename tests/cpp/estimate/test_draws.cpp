#include "catch.hpp"
#include "estimate/structures.hpp"

#include <bit>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

std::vector<std::size_t> all_places(const estimate::Plan& plan) {
    std::vector<std::size_t> places(plan.figures.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    return places;
}

/// A structure whose every dimension is known: measured dimensions have no range.
Structure measured(const Structure& record, const estimate::Plan& plan) {
    estimate::Resolved resolved;
    estimate::resolve(record, plan, resolved);
    Structure s = record;
    for (std::size_t i = 0; i < takeoff::dimension_count; ++i) {
        s.given.push_back(
            {plan.inputs.fields()[i].key, certain(resolved.values[i], Basis::measured)});
    }
    return s;
}

std::vector<estimate::Resolved> group_of(const std::vector<Structure>& structures,
                                         const estimate::Plan& plan) {
    std::vector<estimate::Resolved> group(structures.size());
    for (std::size_t i = 0; i < structures.size(); ++i) {
        estimate::resolve(structures[i], plan, group[i]);
    }
    return group;
}

} // namespace

TEST_CASE("without ranges every draw of a group is the estimate, to the bit") {
    const auto plan = estimate::make_plan(without_ranges());
    const std::vector<Structure> structures{measured(overpass(), *plan),
                                            measured(creek_bridge(), *plan)};
    const auto group = group_of(structures, *plan);
    const auto places = all_places(*plan);
    constexpr std::size_t draws = 64;
    const std::vector<double> table =
        estimate::draw_group(group, {.seed = 5, .draws = draws}, places);
    REQUIRE(table.size() == group.size() * draws * places.size());
    for (std::size_t g = 0; g < group.size(); ++g) {
        const auto e = estimate::estimate(structures[g], plan);
        for (std::size_t d = 0; d < draws; ++d) {
            for (std::size_t k = 0; k < places.size(); ++k) {
                const double drawn = table[(g * draws + d) * places.size() + k];
                REQUIRE(std::bit_cast<std::uint64_t>(drawn) ==
                        std::bit_cast<std::uint64_t>(e.figures[k]));
            }
        }
    }
}

TEST_CASE("a structure draws the same alone, in a group, and in any order") {
    const auto plan = demo_plan();
    const std::vector<std::size_t> places{estimate::figure_place_of(*plan, "cost.total")};
    const estimate::DrawSettings settings{.seed = 3, .draws = 50};
    const auto both = group_of({overpass(), creek_bridge()}, *plan);
    const auto turned = group_of({creek_bridge(), overpass()}, *plan);
    const auto a = estimate::draw_group(both, settings, places);
    const auto b = estimate::draw_group(turned, settings, places);
    const auto alone = estimate::draw_group({both.data(), 1}, settings, places);
    CHECK(std::equal(a.begin(), a.begin() + 50, b.begin() + 50));
    CHECK(std::equal(a.begin() + 50, a.end(), b.begin()));
    CHECK(std::equal(alone.begin(), alone.end(), a.begin()));
    const auto other_seed = estimate::draw_group(both, {.seed = 4, .draws = 50}, places);
    CHECK(other_seed != a);
}

TEST_CASE("an input common to all structures moves together, one of its own does not") {
    Job job = without_ranges();
    job = json::with_input(job, "labour[wash_crew].wage",
                           R"({"value": ["30 USD/h", "46 USD/h", "62 USD/h"], "shared_share": 1})");
    job = json::with_input(job, "shift.travel_time", R"(["0.2 h", "1 h", "1.8 h"])");
    const auto plan = estimate::make_plan(job);
    const auto group = group_of({overpass(), creek_bridge()}, *plan);
    const std::size_t wage = plan->inputs.at("labour[wash_crew].wage", "test");
    const std::size_t travel = plan->inputs.at("shift.travel_time", "test");
    const estimate::DrawSettings settings{.seed = 1, .draws = 40};
    const estimate::InputDraws first(group[0], settings), second(group[1], settings);
    std::vector<double> x(plan->inputs.size()), y(plan->inputs.size());
    int same_travel = 0;
    for (std::size_t d = 0; d < 40; ++d) {
        first.fill(d, x);
        second.fill(d, y);
        CHECK(x[wage] == y[wage]);
        same_travel += x[travel] == y[travel] ? 1 : 0;
    }
    CHECK(same_travel == 0);
}

TEST_CASE("a half-shared input correlates by half between structures") {
    Job job = without_ranges();
    job = json::with_input(job, "shift.travel_time",
                           R"({"value": ["0.2 h", "1 h", "1.8 h"], "shared_share": 0.5})");
    const auto plan = estimate::make_plan(job);
    const auto group = group_of({overpass(), creek_bridge()}, *plan);
    const std::size_t place = plan->inputs.at("shift.travel_time", "test");
    constexpr std::size_t n = 4000;
    const estimate::DrawSettings settings{.seed = 2, .draws = n};
    const estimate::InputDraws first(group[0], settings), second(group[1], settings);
    std::vector<double> v(plan->inputs.size());
    double sx = 0, sy = 0, sxx = 0, syy = 0, sxy = 0;
    for (std::size_t d = 0; d < n; ++d) {
        first.fill(d, v);
        const double x = v[place] / 3600.0;
        second.fill(d, v);
        const double y = v[place] / 3600.0;
        sx += x, sy += y, sxx += x * x, syy += y * y, sxy += x * y;
    }
    const double r = (sxy - sx * sy / n) / std::sqrt((sxx - sx * sx / n) * (syy - sy * sy / n));
    CHECK(r == Approx(0.5).margin(0.05)); // standard error of r at n = 4000: 0.012
    CHECK(sx / n == Approx(1.0).margin(0.01));
}

TEST_CASE("the estimate lies between the fifth and the ninety-fifth percentile of its draws") {
    for (const auto& range : estimate::ranges(estimate::estimate(overpass(), demo_plan()), {})) {
        INFO(range.key);
        CHECK(range.low <= range.value);
        CHECK(range.value <= range.high);
        CHECK(range.low <= range.middle);
        CHECK(range.middle <= range.high);
    }
}

TEST_CASE("quantiles of a sample interpolate between its order statistics") {
    std::vector<double> sample{4.0, 1.0, 3.0, 2.0};
    CHECK(estimate::sample_quantile(sample, 0.0) == 1.0);
    CHECK(estimate::sample_quantile(sample, 0.5) == 2.5);
    CHECK(estimate::sample_quantile(sample, 1.0) == 4.0);
    std::vector<double> none;
    CHECK(std::isnan(estimate::sample_quantile(none, 0.5)));
}

TEST_CASE("the standard error of a quantile is that of its rank") {
    std::vector<double> even;
    for (int i = 0; i <= 1000; ++i) {
        even.push_back((i + 0.5) / 1001.0); // each in the middle of its part
    }
    // A uniform distribution: sqrt(u (1 - u) / n), the density being 1.
    CHECK(estimate::quantile_error(even, 0.5) == Approx(std::sqrt(0.25 / 1001.0)));
    CHECK(estimate::quantile_error(even, 0.8) == Approx(std::sqrt(0.16 / 1001.0)));
    CHECK(estimate::quantile_error(std::vector<double>{3.0}, 0.5) == 0.0);
    CHECK(std::isnan(estimate::quantile_error({}, 0.5)));
}
