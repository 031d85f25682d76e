#include <bit>
#include <cmath>
#include <cstdint>
#include <vector>

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/random.hpp"

using namespace scupper;
using namespace made_up;

namespace {

bool same_bits(double a, double b) {
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b) ||
           (std::isnan(a) && std::isnan(b));
}

/// Prices with both number types and compares every figure to the bit.
void compare_number_types(const estimate::Resolved& resolved, const std::vector<double>& values,
                          const estimate::Plan& plan) {
    estimate::Workspace<double> plain(plan);
    estimate::price(resolved.model, estimate::Inputs<double>(plan.inputs, values.data()), plain);
    Recording recording;
    std::vector<Traced> leaves;
    for (const double value : values) {
        leaves.emplace_back(value, &recording, recording.leaf(value, {}));
    }
    estimate::Workspace<Traced> traced(plan);
    estimate::price(resolved.model, estimate::Inputs<Traced>(plan.inputs, leaves.data()), traced);
    for (std::size_t i = 0; i < plan.figures.size(); ++i) {
        INFO(plan.figures.fields()[i].key);
        REQUIRE(same_bits(plain.figures.at(i), traced.figures.at(i).value()));
    }
}

} // namespace

TEST_CASE("pricing and explaining give the same bits, at the mean and in draws") {
    const auto plan = demo_plan();
    for (const Structure& s : {overpass(), counted_overpass(), creek_bridge()}) {
        estimate::Resolved resolved;
        estimate::resolve(s, *plan, resolved);
        compare_number_types(resolved, resolved.values, *plan);
        const estimate::InputDraws draws(resolved, {.seed = 11, .draws = 40});
        std::vector<double> values(plan->inputs.size());
        for (std::size_t d = 0; d < 40; ++d) {
            draws.fill(d, values);
            compare_number_types(resolved, values, *plan);
        }
    }
}

TEST_CASE("the worked rinse by hand: every step of a structure without ranges") {
    // By hand from the demo job at likely values; inputs common practice or invented.
    Job job = json::demo_job();
    job.price_at = PriceAt::likely;
    const auto e = estimate::estimate(counted_overpass(), estimate::make_plan(job));
    constexpr double hour = 3600.0;
    constexpr double foot = 0.3048;
    const double deck = 61.0 * 9.75 / (foot * foot) / 10000.0 * hour; // productive
    CHECK(e.figure("operation[deck_hand_line].productive_time") == Approx(deck));
    CHECK(e.figure("operation[deck_hand_line].time") == Approx(deck / 0.75));
    const double gutters = 2.0 * 61.0 / foot / 400.0 * hour;
    CHECK(e.figure("operation[windrow_pick_up].productive_time") == Approx(gutters));
    CHECK(e.figure("drain_free") == Approx(3 * 600.0 / 0.75));
    CHECK(e.figure("drain_clogged") == Approx(2400.0 / 0.75));
    CHECK(e.figure("closure_set_up") == Approx(25 * 60.0));
    const double gallon = 231 * 0.0254 * 0.0254 * 0.0254;
    const double water = e.figure("nozzle[hand_line].flow") * deck * 0.5 + (3 * 60 + 120) * gallon;
    CHECK(e.figure("water") == Approx(water));
    const double dirt = 2.0 * 61.0 * 1.5 * foot * 0.15 * 0.0254 + (3 * 0.3 + 1.0) * std::pow(foot, 3);
    CHECK(e.figure("debris") == Approx(dirt));
    CHECK(e.figure("shift.count") == Approx(e.figure("hours.on_site") / (8.0 * hour)));
    CHECK(e.figure("hours.labour") == Approx(6.0 * e.figure("hours.paid")));
    const double paid_hours = e.figure("hours.paid") / hour;
    CHECK(e.figure("cost.labour") == Approx(paid_hours * (4 * 46 + 2 * 38)));
    CHECK(e.figure("cost.equipment") == Approx(paid_hours * (90 + 45 + 15 + 25)));
}

TEST_CASE("over water the gutter is picked up dry, elsewhere as a windrow") {
    const auto over_creek = estimate::estimate(creek_bridge(), demo_plan());
    CHECK(over_creek.figure("dry_pick_up_gutter") > 0.0);
    CHECK(over_creek.figure("windrow_pick_up") == 0.0);
    const auto over_road = estimate::estimate(overpass(), demo_plan());
    CHECK(over_road.figure("dry_pick_up_gutter") == 0.0);
    CHECK(over_road.figure("windrow_pick_up") > 0.0);
}

TEST_CASE("longer and wider decks take more of everything, less drains less") {
    const auto total = [](const Structure& s) {
        return estimate::estimate(s, demo_plan()).figure("cost.total");
    };
    double before = 0.0;
    for (double length = 20.0; length < 400.0; length += 20.0) {
        Structure s = counted_overpass();
        s.dimensions.length = Length<>(length);
        const double now = total(s);
        CHECK(now > before);
        before = now;
    }
    Structure none = counted_overpass();
    none.given = {{"drain_count", certain(0.0, Basis::measured)}};
    Structure eight = counted_overpass();
    eight.given = {{"drain_count", certain(8.0, Basis::measured)}};
    CHECK(total(none) < total(counted_overpass()));
    CHECK(total(counted_overpass()) < total(eight));
    CHECK(estimate::estimate(none, demo_plan()).figure("drain_free") == 0.0);
}

TEST_CASE("a higher pump pressure means more water; water never falls from the sky") {
    const auto water = [](const char* pressure) {
        const Job job = json::with_input(json::demo_job(), "pump[hand_line].pressure", pressure);
        return estimate::estimate(overpass(), estimate::make_plan(job)).figure("water");
    };
    CHECK(water("\"60 psi\"") < water("\"80 psi\""));
    CHECK(water("\"80 psi\"") < water("\"120 psi\""));
}
