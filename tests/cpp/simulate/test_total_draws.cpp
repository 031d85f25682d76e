#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

using simulate::SimulationSettings;

const SimulationSettings few{.draws = 256, .replicates = 1};

/// Quantiles of a total.
struct Quantiles {
    double low, middle, high;
};

std::vector<Structure> twins(int number) {
    std::vector<Structure> list(static_cast<std::size_t>(number), counted_overpass());
    for (std::size_t i = 0; i < list.size(); ++i) {
        list[i].id = list[i].number = "T" + std::to_string(i);
    }
    return list;
}

/// The demo's job with every input as common to all structures as given.
std::shared_ptr<const estimate::Plan> plan_with_share(double share) {
    Job job = json::demo_job();
    for (Setting& s : job.settings) {
        s.value.shared_share = share;
    }
    return estimate::make_plan(job);
}

Quantiles quantiles_of(const std::vector<double>& sample) {
    return {estimate::sorted_quantile(sample, 0.05), estimate::sorted_quantile(sample, 0.5),
            estimate::sorted_quantile(sample, 0.95)};
}

/// Of every column of a programme.
std::vector<Quantiles> ranges_of(const std::vector<Structure>& structures,
                                 const std::shared_ptr<const estimate::Plan>& plan,
                                 unsigned threads = 2) {
    const auto programme = estimate::estimate_all(structures, plan, threads);
    std::vector<Quantiles> ranges;
    for (const auto& sample : simulate::total_samples(programme, structures, few, threads)) {
        ranges.push_back(quantiles_of(sample));
    }
    return ranges;
}

Quantiles cost_range(const std::vector<Structure>& structures,
                     const std::shared_ptr<const estimate::Plan>& plan) {
    const auto programme = estimate::estimate_all(structures, plan);
    const std::size_t place = estimate::figure_place_of(*plan, "cost.total");
    auto drawn = simulate::total_draws(programme, structures, {&place, 1}, few);
    std::sort(drawn.front().begin(), drawn.front().end());
    return quantiles_of(drawn.front());
}

/// Width of the range in parts of its middle.
double spread(const Quantiles& r) {
    return (r.high - r.low) / r.middle;
}

} // namespace

TEST_CASE("the range of a programme of one structure is that of the structure") {
    const std::vector<Structure> one{overpass()};
    const auto programme = estimate::estimate_all(one, demo_plan());
    const auto samples = simulate::total_samples(programme, one, {.draws = 512, .replicates = 1});
    const auto alone = estimate::ranges(estimate::estimate(one[0], demo_plan()), {.draws = 512});
    int compared = 0;
    for (const estimate::RangedFigure& row : alone) {
        const auto at = std::find(programme.keys.begin(), programme.keys.end(), row.key);
        if (at == programme.keys.end() || std::isnan(row.low)) {
            continue;
        }
        INFO(row.key);
        const auto& sample = samples[static_cast<std::size_t>(at - programme.keys.begin())];
        const Quantiles found = quantiles_of(sample);
        // Values of a PERT come from tables within 1e-5 of the width of an input.
        CHECK(found.low == Approx(row.low).epsilon(1e-4).margin(1e-6));
        CHECK(found.middle == Approx(row.middle).epsilon(1e-4).margin(1e-6));
        CHECK(found.high == Approx(row.high).epsilon(1e-4).margin(1e-6));
        ++compared;
    }
    CHECK(compared > 10);
}

TEST_CASE("totals are those of the simulation, draw by draw, to the bit") {
    const std::vector<Structure> list{overpass(), creek_bridge(), culvert()};
    const auto plan = demo_plan();
    const auto programme = estimate::estimate_all(list, plan);
    const SimulationSettings settings{.seed = 4, .draws = 300, .replicates = 3};
    const auto whole = simulate::simulate(list, plan, settings);
    for (std::size_t f = 0; f < simulate::figure_count; ++f) {
        const std::size_t place =
            estimate::figure_place_of(*plan, simulate::simulated_figures[f].key);
        CHECK(simulate::total_draws(programme, list, {&place, 1}, settings).front() ==
              simulate::DrawnTotal(whole, f).draws());
    }
    CHECK_THROWS_AS(simulate::total_draws(programme, list, {}, {.draws = 0}), InputError);
}

TEST_CASE("what is shared widens the range of a sum, what is each one's own cancels out") {
    const auto structures = twins(25);
    const double own = spread(cost_range(structures, plan_with_share(0.0)));
    const double demo = spread(cost_range(structures, demo_plan()));
    const double shared = spread(cost_range(structures, plan_with_share(1.0)));
    const double single = spread(cost_range(twins(1), demo_plan()));
    CHECK(own < demo);
    CHECK(demo < shared);
    CHECK(demo < single);
}

TEST_CASE("in every draw the total is the sum over the structures") {
    const std::vector<Structure> structures{overpass(), creek_bridge()};
    const auto plan = demo_plan();
    std::vector<estimate::Resolved> group(2);
    for (std::size_t i = 0; i < group.size(); ++i) {
        estimate::resolve(structures[i], *plan, group[i]);
    }
    const std::vector<std::size_t> places{estimate::figure_place_of(*plan, "cost.total")};
    const std::vector<double> drawn = estimate::draw_group(group, {.draws = 256}, places);
    std::vector<double> sums;
    for (std::size_t d = 0; d < 256; ++d) {
        sums.push_back(drawn[d] + drawn[256 + d]);
    }
    const Quantiles total = cost_range(structures, plan);
    CHECK(total.low == Approx(estimate::sample_quantile(sums, 0.05)).epsilon(1e-4));
    CHECK(total.middle == Approx(estimate::sample_quantile(sums, 0.5)).epsilon(1e-4));
    CHECK(total.high == Approx(estimate::sample_quantile(sums, 0.95)).epsilon(1e-4));
}

TEST_CASE("ranges of a programme give the same bits for any number of threads") {
    const auto structures = twins(300);
    const auto one = ranges_of(structures, demo_plan(), 1);
    const auto many = ranges_of(structures, demo_plan(), 5);
    for (std::size_t i = 0; i < one.size(); ++i) {
        CHECK(std::memcmp(&one[i].low, &many[i].low, sizeof(double)) == 0);
        CHECK(std::memcmp(&one[i].high, &many[i].high, sizeof(double)) == 0);
    }
}

TEST_CASE("structures without a price have no part in the range, and a run can be stopped") {
    std::vector<Structure> structures = twins(2);
    const double before = cost_range(structures, demo_plan()).high;
    structures.insert(structures.begin(), culvert());
    CHECK(cost_range(structures, demo_plan()).high == before);
    const auto programme = estimate::estimate_all(structures, demo_plan());
    const auto stop = [](std::size_t, std::size_t) { return false; };
    CHECK_THROWS_AS(simulate::total_samples(programme, structures, few, 1, stop), Interrupted);
    CHECK(cost_range({culvert()}, demo_plan()).high == 0.0);
}
