#include "catch.hpp"
#include "estimate/structures.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"
#include "told.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using simulate::DrawnTotal;
using simulate::Simulation;
using simulate::SimulationSettings;

namespace {

const Sampling samplings[] = {Sampling::plain, Sampling::latin_hypercube, Sampling::sobol};

/// A normal amount by its standard deviation.
std::string amount(double sd, double shared_share, double mean = 1000.0) {
    const double half = 3.0902323061678135 * sd; // of Meaning::limits
    return R"({"low": ")" + std::to_string(mean - half) + R"( USD", "likely": ")" +
           std::to_string(mean) + R"( USD", "high": ")" + std::to_string(mean + half) +
           R"( USD", "family": "normal", "shared_share": )" + std::to_string(shared_share) + "}";
}

/// A job whose cost is a certain sum and three charges with these standard deviations.
Job charged(const std::vector<double>& sds, double shared_share) {
    Job job = without_ranges();
    for (std::size_t i = 0; i < sds.size(); ++i) {
        const std::string name(1, static_cast<char>('a' + i));
        Resource charge;
        charge.name = name;
        job.charges.push_back(charge);
        job = json::with_input(job, "charge[" + name + "].amount", amount(sds[i], shared_share));
    }
    for (const char* margin : {"overhead", "profit", "bond", "mobilization", "contingency"}) {
        job = json::with_input(job, std::string("margin.") + margin, "0");
    }
    return job;
}

std::string key(char name) {
    return std::string("charge[") + name + "].amount";
}

/// Structures of which everything is known.
std::vector<Structure> known(const estimate::Plan& plan, std::vector<Structure> list) {
    for (Structure& s : list) {
        estimate::Resolved resolved;
        estimate::resolve(s, plan, resolved);
        for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
            const std::string& name = plan.inputs.fields()[i].key;
            const Uncertain& input = resolved.uncertain[i];
            if (!std::isnan(input.guess.likely) && !is_certain(input) &&
                !name.starts_with("charge[")) {
                s.given.push_back({name, certain(resolved.values[i], Basis::measured)});
            }
        }
    }
    return list;
}

double sd_of_total(const Job& job, const std::vector<Structure>& list, Sampling sampling,
                   std::size_t draws) {
    const auto plan = estimate::make_plan(job);
    const SimulationSettings settings{
        .seed = 5, .draws = draws, .replicates = 4, .sampling = sampling};
    return DrawnTotal(simulate::simulate(known(*plan, list), plan, settings), 0).sd().value;
}

const std::string depth_key = "dirt[gutter].depth";

Correlation ranked(double normal, char first, char second) {
    return {{key(first), key(second)}, rank_correlation(normal)};
}

} // namespace

TEST_CASE("sums of correlated normal amounts spread as their formula says") {
    constexpr std::size_t draws = 1024;
    const double tolerance = 4.0 / std::sqrt(2.0 * draws); // relative, of a standard deviation
    for (const reference::Row& row : reference::rows("simulate/risk")) {
        const bool equal = row.is("sd of sum of 3 equal items");
        if (!equal && !row.is("sd of sum, mixed")) {
            continue;
        }
        Job job =
            charged(equal ? std::vector<double>(3, row["sd"]) : std::vector{5.0, 8.0, 12.0}, 1.0);
        if (!equal) {
            job.correlations = {ranked(row["rho12"], 'a', 'b'), ranked(row["rho13"], 'a', 'c')};
        }
        for (const Sampling sampling : samplings) {
            INFO(row.text("id"));
            const double expected = std::stod(row.text("value"));
            CHECK(sd_of_total(job, {overpass()}, sampling, draws) ==
                  Approx(expected).epsilon(tolerance));
        }
    }
}

TEST_CASE("what is shared varies together over a list, what is own at each structure") {
    constexpr std::size_t draws = 1024;
    const double tolerance = 4.0 / std::sqrt(2.0 * draws);
    Structure second = overpass();
    second.id = second.number = "Y2";
    const double r = 0.7;
    const double one = std::sqrt(100.0 + 100.0 + 2.0 * r * 100.0); // sd of a + b, 10 each
    for (const double share : {0.0, 0.5, 1.0}) {
        Job job = charged({10.0, 10.0}, share);
        job.correlations = {ranked(r, 'a', 'b')};
        for (const Sampling sampling : samplings) {
            INFO(share);
            // Two structures: variance 2 + 2 share times that of one.
            CHECK(sd_of_total(job, {overpass(), second}, sampling, draws) ==
                  Approx(one * std::sqrt(2.0 + 2.0 * share)).epsilon(tolerance));
        }
    }
}

TEST_CASE("inputs that vary together keep their strata") {
    Job job = charged({10.0, 10.0, 10.0}, 1.0);
    job.correlations = {{{key('a'), key('b'), key('c')}, 0.8}};
    const auto plan = estimate::make_plan(job);
    const std::vector<Structure> list = known(*plan, {overpass()});
    const auto error = [&](Sampling sampling) {
        const SimulationSettings settings{.draws = 4000, .replicates = 10, .sampling = sampling};
        return DrawnTotal(simulate::simulate(list, plan, settings), 0).mean().standard_error;
    };
    CHECK(error(Sampling::latin_hypercube) < 0.02 * error(Sampling::plain));
}

TEST_CASE(
    "correlated draws are the same to the bit for any partition, and nothing without ranges") {
    Structure second = creek_bridge();
    const std::vector<Structure> list{overpass(), second};
    Job job = json::demo_job();
    job.correlations = {{{"labour[wash_crew].wage", "labour[flagger].wage"}, 0.6},
                        {{"shift.travel_time", "dirt[gutter].depth", "deck.overhang_width"}, 0.5}};
    Job certain_job = without_ranges();
    certain_job.correlations = job.correlations;
    for (const Sampling sampling : samplings) {
        const SimulationSettings settings{.draws = 128, .replicates = 2, .sampling = sampling};
        const auto plan = estimate::make_plan(job);
        const Simulation whole = simulate::simulate(list, plan, settings, 2);
        Simulation parts = simulate::simulate({list.data(), 1}, plan, settings);
        simulate::append(parts, simulate::simulate({list.data() + 1, 1}, plan, settings));
        CHECK(whole.totals == parts.totals);
        const auto bare = estimate::make_plan(certain_job);
        const std::vector<Structure> sure = known(*bare, list);
        const Simulation nothing = simulate::simulate(sure, bare, settings);
        const auto& totals = nothing.totals;
        for (std::size_t i = 0; i < totals.size(); ++i) {
            CHECK(totals[i] == nothing.estimated[i % simulate::figure_count]);
        }
    }
}

TEST_CASE("correlations that cannot be are refused, with what can") {
    const auto refused = [](std::vector<Correlation> list) -> std::string {
        Job job = charged({1.0, 1.0, 1.0}, 1.0);
        job.correlations = std::move(list);
        try {
            estimate::make_plan(job);
        } catch (const Error& e) {
            return e.what();
        }
        return {};
    };
    CHECK(refused({{{key('a'), key('b'), key('c')}, 0.99}}).empty());
    const std::string negative = refused({{{key('a'), key('b'), key('c')}, -0.8}});
    CHECK(negative.find("charge[a].amount with charge[c].amount -0.8") != std::string::npos);
    // I + s (R - I) is singular where every pair is at -1/2: rank 6 asin(-1/4) / pi = -0.4826
    CHECK(negative.find("charge[b].amount with charge[c].amount -0.48") != std::string::npos);
    CHECK(refused({{{key('a'), key('b'), key('c')}, -0.48}}).empty());
    CHECK_FALSE(refused({{{key('a'), key('b')}, 1.0}}).empty());
    CHECK_FALSE(refused({{{key('a'), key('b')}, std::nan("")}}).empty());
    CHECK_FALSE(refused({{{key('a')}, 0.5}}).empty());
    CHECK_FALSE(refused({{{key('a'), key('a')}, 0.5}}).empty());
    CHECK_FALSE(refused({ranked(0.5, 'a', 'b'), ranked(0.4, 'b', 'a')}).empty());
    CHECK(refused({{{key('a'), "charge[b].amuont"}, 0.5}}).find("charge[b].amount") !=
          std::string::npos);
}

TEST_CASE("measured scores move the others as the conditional normal distribution says") {
    Job job = charged({100.0, 100.0, 100.0}, 0.0);
    job.correlations = {ranked(0.5, 'a', 'b'), ranked(0.6, 'a', 'c'), ranked(0.4, 'b', 'c')};
    const auto plan = estimate::make_plan(job);
    estimate::Resolved resolved;
    estimate::resolve(overpass(), *plan, resolved);
    const auto place = [&](char name) { return plan->inputs.at(key(name), "test"); };
    const simulate::detail::Told told(resolved, {place('a'), place('b')});
    REQUIRE(told.inputs().size() == 1);
    const simulate::detail::ToldInput& c = told.inputs()[0];
    CHECK(c.place == place('c'));
    // R^-1 r with R = (1, 0.5; 0.5, 1) and r = (0.6, 0.4).
    CHECK(c.weights[0] == Approx((0.6 - 0.5 * 0.4) / 0.75).epsilon(1e-9));
    CHECK(c.weights[1] == Approx((0.4 - 0.5 * 0.6) / 0.75).epsilon(1e-9));
    CHECK(c.spread * c.spread ==
          Approx(1.0 - 0.6 * c.weights[0] - 0.4 * c.weights[1]).epsilon(1e-9));
    CHECK(told.is_joint());
    std::vector<double> scores{1.0, 2.0};
    told.mix(scores);
    CHECK(scores[0] == 1.0);
    CHECK(scores[1] == Approx(0.5 + std::sqrt(0.75) * 2.0).epsilon(1e-9));
}

TEST_CASE("measuring one of two inputs that vary together narrows what the other does") {
    // A charge whose spread is some hundred times what the depth of the dirt does to the price.
    const auto narrowed = [](double normal, double depth_share, double charge_share,
                             std::size_t draws = 4096) {
        Job job = charged({100.0}, charge_share);
        job = json::with_input(job, key('a'), amount(20000.0, charge_share, 100000.0));
        for (const Setting& s : full_job().settings) {
            if (s.key == depth_key) {
                std::erase_if(job.settings, [](const Setting& t) { return t.key == depth_key; });
                job.settings.push_back(s);
                job.settings.back().value.shared_share = depth_share;
            }
        }
        if (normal != 0.0) {
            job.correlations = {{{key('a'), depth_key}, rank_correlation(normal)}};
        }
        const auto plan = estimate::make_plan(job);
        Structure s = counted_overpass();
        estimate::Resolved resolved;
        estimate::resolve(s, *plan, resolved);
        for (std::size_t i = 0; i < takeoff::dimension_count; ++i) {
            s.given.push_back(
                {plan->inputs.fields()[i].key, certain(resolved.values[i], Basis::measured)});
        }
        const auto list = simulate::survey_list(std::vector{s}, plan, {.draws = {.draws = draws}});
        REQUIRE(list.visits.size() == 1);
        REQUIRE(list.visits[0].measurements.size() == 1);
        return std::pair(list.visits[0].narrows_by_draws / list.middle_range,
                         list.visits[0].narrows / (list.high - list.low));
    };
    // Of a sum that is all but normal: sqrt(1 - r^2) of the spread is left. The widths before and
    // after have a standard error of 1.3 % each, by that of P10 and P90 of 4096 draws.
    for (const double r : {0.6, -0.6}) {
        const auto [by_draws, by_variance] = narrowed(r, 0.0, 0.0);
        CHECK(by_draws == Approx(0.2).margin(0.035));
        CHECK(by_variance == Approx(0.2).margin(0.035)); // 16 strata miss some of the tails
    }
    CHECK(narrowed(0.6, 1.0, 1.0).first == Approx(0.2).margin(0.035));
    // What all share tells nothing of what is each one's own, and nothing tells without a correlation.
    CHECK(narrowed(0.6, 1.0, 0.0, 512).first == Approx(0.0).margin(0.01));
    CHECK(narrowed(0.0, 0.0, 0.0, 512).first == Approx(0.0).margin(0.01));
}
