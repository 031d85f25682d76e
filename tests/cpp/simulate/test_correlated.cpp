#include "catch.hpp"
#include "estimate/structures.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"

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

/// A normal amount of 1000 by its standard deviation.
std::string amount(double sd, double shared_share) {
    const double half = 3.0902323061678135 * sd; // of Meaning::limits
    return R"({"low": ")" + std::to_string(1000.0 - half) +
           R"( USD", "likely": "1000 USD", "high": ")" + std::to_string(1000.0 + half) +
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
