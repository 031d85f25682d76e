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
using simulate::Simulation;
using simulate::SimulationSettings;

namespace test_simulation {

namespace {

std::vector<Structure> several(int number) {
    std::vector<Structure> list;
    for (int i = 0; i < number; ++i) {
        Structure s = i % 3 == 0 ? creek_bridge() : i % 3 == 1 ? overpass() : counted_overpass();
        s.id = s.number = "S" + std::to_string(i);
        s.dimensions.length = Length<>(s.dimensions.length.si() * (1.0 + 0.2 * i));
        list.push_back(s);
    }
    list.push_back(culvert());
    return list;
}

bool same_bits(const Simulation& a, const Simulation& b) {
    if (a.simulated.size() != b.simulated.size() || !(a.totals == b.totals) ||
        !(a.estimated == b.estimated) || a.unpriced.size() != b.unpriced.size()) {
        return false;
    }
    for (std::size_t i = 0; i < a.simulated.size(); ++i) {
        if (a.simulated[i].index != b.simulated[i].index ||
            std::memcmp(&a.simulated[i].ranges, &b.simulated[i].ranges,
                        sizeof a.simulated[i].ranges) != 0) {
            return false;
        }
    }
    return true;
}

const Sampling samplings[] = {Sampling::plain, Sampling::latin_hypercube, Sampling::sobol};

} // namespace

TEST_CASE("a simulation is the same to the bit for any threads and any partition") {
    const std::vector<Structure> list = several(9);
    for (const Sampling sampling : samplings) {
        const SimulationSettings settings{
            .seed = 7, .draws = 256, .replicates = 4, .sampling = sampling};
        const Simulation one = simulate::simulate(list, demo_plan(), settings, 1);
        CHECK(one.simulated.size() == 9);
        CHECK(one.unpriced.size() == 1);
        CHECK(same_bits(one, simulate::simulate(list, demo_plan(), settings, 3)));
        Simulation parts;
        for (const std::size_t cut : {0, 4, 5}) {
            const std::size_t end = cut == 0 ? 4 : cut == 4 ? 5 : list.size();
            simulate::append(parts, simulate::simulate(std::span(list).subspan(cut, end - cut),
                                                       demo_plan(), settings, 2));
        }
        CHECK(same_bits(one, parts));
        CHECK(parts.unpriced[0].index == one.unpriced[0].index);
    }
}

TEST_CASE("a simulation does not depend on the order of structures") {
    std::vector<Structure> list = several(6);
    const SimulationSettings settings{.draws = 60, .replicates = 3};
    const Simulation there = simulate::simulate(list, demo_plan(), settings);
    std::reverse(list.begin(), list.end());
    const Simulation back = simulate::simulate(list, demo_plan(), settings);
    CHECK(there.totals == back.totals);
    CHECK(there.simulated[0].ranges[0].quantiles == back.simulated[5].ranges[0].quantiles);
}

TEST_CASE("draws are those of the ranges of one estimate") {
    const std::vector<Structure> one{overpass()};
    const SimulationSettings settings{.seed = 3, .draws = 300, .replicates = 1};
    const Simulation simulation = simulate::simulate(one, demo_plan(), settings);
    const auto rows =
        estimate::ranges(estimate::estimate(one[0], demo_plan()), {.seed = 3, .draws = 300});
    for (std::size_t f = 0; f < simulate::figure_count; ++f) {
        const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& r) {
            return r.key == simulate::simulated_figures[f].key;
        });
        REQUIRE(row != rows.end());
        const auto& range = simulation.simulated[0].ranges[f];
        CHECK(range.estimated == row->value);
        // Both read tables of quantiles, each within 1e-5 of the width of an input.
        CHECK(range.quantiles.front() == Approx(row->low).epsilon(1e-5));
        CHECK(range.quantiles[3] == Approx(row->middle).epsilon(1e-5));
        CHECK(range.quantiles.back() == Approx(row->high).epsilon(1e-5));
    }
}

TEST_CASE("draws beyond what the schema allows are priced as they are") {
    Structure odd = overpass();
    Uncertain wage = certain(30.0 / 3600.0, Basis::measured);
    wage.guess = {5.0 / 3600.0, 30.0 / 3600.0, 55.0 / 3600.0, Family::normal, Meaning::p10_p90};
    odd.given.push_back({"labour[wash_crew].wage", wage});
    const std::vector<Structure> one{odd};
    const SimulationSettings settings{.seed = 3, .draws = 2000, .replicates = 1};
    const Simulation simulation = simulate::simulate(one, demo_plan(), settings);
    const auto rows =
        estimate::ranges(estimate::estimate(odd, demo_plan()), {.seed = 3, .draws = 2000});
    const auto row =
        std::find_if(rows.begin(), rows.end(), [](const auto& r) { return r.key == "cost.total"; });
    REQUIRE(row != rows.end());
    REQUIRE(simulation.simulated.size() == 1);
    const auto& cost = simulation.simulated[0].ranges[0];
    CHECK(cost.quantiles.front() == Approx(row->low).epsilon(1e-5));
    CHECK(cost.quantiles.back() == Approx(row->high).epsilon(1e-5));
}

TEST_CASE("without ranges every draw is the estimate, to the bit") {
    const std::vector<Structure> list = several(4);
    const auto plan = estimate::make_plan(without_ranges());
    std::vector<Structure> known = list;
    for (Structure& s : known) {
        estimate::Resolved resolved;
        estimate::resolve(s, *plan, resolved);
        for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
            if (!std::isnan(resolved.uncertain[i].guess.likely) &&
                !is_certain(resolved.uncertain[i])) {
                s.given.push_back(
                    {plan->inputs.fields()[i].key, certain(resolved.values[i], Basis::measured)});
            }
        }
    }
    const SimulationSettings settings{.draws = 32, .replicates = 4, .sampling = Sampling::sobol};
    const Simulation result = simulate::simulate(known, plan, settings);
    const auto programme = estimate::estimate_all(known, plan);
    REQUIRE(result.simulated.size() == 4);
    for (const auto& s : result.simulated) {
        for (const auto& range : s.ranges) {
            CHECK(range.mean == range.estimated);
            CHECK(range.sd == 0.0);
            CHECK(range.quantiles.front() == range.estimated);
            CHECK(range.quantiles.back() == range.estimated);
        }
    }
    const auto total = std::find(programme.keys.begin(), programme.keys.end(), "cost.total");
    const double cost = programme.totals[static_cast<std::size_t>(total - programme.keys.begin())];
    for (std::size_t d = 0; d < settings.draws; ++d) {
        CHECK(result.totals[d * simulate::figure_count].value() == cost);
    }
}

TEST_CASE("any figures are drawn with the bits of the simulation beside them") {
    const std::vector<Structure> list = several(5);
    const std::vector<std::size_t> asked{estimate::figure_place_of(*demo_plan(), "deck_top_area"),
                                         estimate::figure_place_of(*demo_plan(), "debris.volume")};
    for (const Sampling sampling : samplings) {
        const SimulationSettings settings{.draws = 256, .replicates = 2, .sampling = sampling};
        const Simulation whole = simulate::simulate(list, demo_plan(), settings);
        const auto drawn = simulate::figure_draws(list, *demo_plan(), asked, settings, 1);
        const auto again = simulate::figure_draws(list, *demo_plan(), asked, settings, 3);
        CHECK(drawn.totals == again.totals);
        CHECK(drawn.structures == whole.simulated.size());
        REQUIRE(drawn.places.size() == simulate::figure_count + 2);
        bool same = true;
        for (std::size_t d = 0; d < settings.draws; ++d) {
            const auto* row = drawn.totals.data() + d * drawn.places.size();
            const auto* beside = whole.totals.data() + d * simulate::figure_count;
            same = same && std::equal(beside, beside + simulate::figure_count, row);
            same = same && row[simulate::figure_count + 1] == beside[3]; // debris
        }
        CHECK(same);
    }
    CHECK_THROWS_AS(
        simulate::figure_draws(list, *demo_plan(), asked, {.draws = 10, .replicates = 3}),
        InputError);
    CHECK_THROWS_AS(
        simulate::figure_draws(std::span(list).first(1), *demo_plan(), asked,
                               {.draws = 8, .replicates = 1, .sampling = Sampling::sobol_single}),
        InputError);
}

TEST_CASE("another seed draws otherwise, and the first replicate does not depend on their number") {
    const std::vector<Structure> list = several(2);
    const auto total = [&](const SimulationSettings& settings, std::size_t draw) {
        return simulate::simulate(list, demo_plan(), settings)
            .totals[draw * simulate::figure_count]
            .value();
    };
    CHECK(total({.seed = 1, .draws = 20, .replicates = 1}, 0) !=
          total({.seed = 2, .draws = 20, .replicates = 1}, 0));
    CHECK(total({.draws = 20, .replicates = 1}, 19) == total({.draws = 60, .replicates = 3}, 19));
}

TEST_CASE("draws that replicates do not divide, foreign parts and a stop are refused") {
    const std::vector<Structure> list = several(2);
    const auto run = [&](SimulationSettings settings, const estimate::RunProgress& progress = {}) {
        return simulate::simulate(list, demo_plan(), settings, 1, progress);
    };
    CHECK_THROWS_AS(run({.draws = 25, .replicates = 10}), InputError);
    CHECK_THROWS_AS(run({.draws = 0, .replicates = 1}), InputError);
    CHECK_THROWS_AS(run({.draws = 10, .replicates = 0}), InputError);
    CHECK_THROWS_AS(run({.draws = 10, .replicates = 1}, [](auto, auto) { return false; }),
                    Interrupted);
    Simulation whole = run({.draws = 10, .replicates = 1});
    CHECK_THROWS_AS(simulate::append(whole, run({.seed = 2, .draws = 10, .replicates = 1})),
                    InputError);
}

TEST_CASE("a stop rule draws no more replicates than it takes") {
    const std::vector<Structure> list = several(3);
    const SimulationSettings most{.draws = 600, .replicates = 20};
    const auto until = [&](double limit) {
        return simulate::simulate_until(list, demo_plan(), most, limit, 2);
    };
    const Simulation rough = until(0.5);
    CHECK(rough.settings.replicates == 4);
    CHECK(rough.settings.draws == 120);
    const Simulation all = simulate::simulate(list, demo_plan(), most);
    CHECK(same_bits(until(1e-9), all));
    const auto mean = simulate::DrawnTotal(all, 0).mean();
    const Simulation middling = until(1.5 * mean.standard_error / mean.value);
    const auto reached = simulate::DrawnTotal(middling, 0).mean();
    CHECK(reached.standard_error <= 1.5 * mean.standard_error / mean.value * reached.value);
    CHECK_THROWS_AS(until(0.0), InputError);
    CHECK_THROWS_AS(until(std::nan("")), InputError);
}

TEST_CASE("Sobol' points of one structure know its price better than plain draws") {
    const std::vector<Structure> one{overpass()};
    const auto error = [&](Sampling sampling) {
        const SimulationSettings settings{.draws = 2048, .replicates = 16, .sampling = sampling};
        return simulate::DrawnTotal(simulate::simulate(one, demo_plan(), settings), 0)
            .mean()
            .standard_error;
    };
    const double plain = error(Sampling::plain);
    // A standard error from 16 replicates is itself uncertain by 18 %.
    CHECK(error(Sampling::sobol_single) < 0.5 * plain);
    CHECK(error(Sampling::sobol) < 0.6 * plain);
}

TEST_CASE("Sobol' points come in powers of two, and alone means one structure") {
    const std::vector<Structure> list = several(2);
    const auto run = [&](const SimulationSettings& settings) {
        return simulate::simulate(list, demo_plan(), settings, 1);
    };
    try {
        run({.draws = 10000, .replicates = 10, .sampling = Sampling::sobol});
        FAIL("1000 draws in a replicate");
    } catch (const InputError& e) {
        CHECK(std::string(e.what()).find("5120 or 10240") != std::string::npos);
    }
    CHECK_THROWS_AS(run({.draws = 64, .replicates = 1, .sampling = Sampling::sobol_single}),
                    InputError);
}

TEST_CASE("kinds of sampling go by their words") {
    CHECK(simulate::sampling_of("plain") == Sampling::plain);
    CHECK(simulate::sampling_of("latin_hypercube") == Sampling::latin_hypercube);
    CHECK(simulate::sampling_of("sobol") == Sampling::sobol);
    CHECK(simulate::sampling_of("sobol_single") == Sampling::sobol_single);
    CHECK_THROWS_AS(simulate::sampling_of("hypercube"), UnknownNameError);
}

TEST_CASE("replicates divide the draws") {
    CHECK(simulate::replicates_for(10000) == 10);
    CHECK(simulate::replicates_for(512) == 8);
    CHECK(simulate::replicates_for(7) == 7);
    CHECK(simulate::replicates_for(13) == 1);
}

} // namespace test_simulation
