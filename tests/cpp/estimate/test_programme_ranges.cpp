#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <cstring>
#include <stdexcept>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

using estimate::DrawSettings;
using estimate::RangedFigure;

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

std::vector<RangedFigure> ranges_of(const std::vector<Structure>& structures,
                                    const std::shared_ptr<const estimate::Plan>& plan,
                                    unsigned threads = 2) {
    const auto programme = estimate::estimate_all(structures, plan, threads);
    return estimate::total_ranges(programme, structures, DrawSettings{.draws = 256}, threads);
}

const RangedFigure& cost_of(const std::vector<RangedFigure>& rows) {
    for (const RangedFigure& r : rows) {
        if (r.key == "cost.total") {
            return r;
        }
    }
    throw std::logic_error("no total");
}

/// Width of the range in parts of its middle.
double spread(const RangedFigure& r) {
    return (r.high - r.low) / r.middle;
}

} // namespace

TEST_CASE("the range of a programme of one structure is that of the structure") {
    const std::vector<Structure> one{overpass()};
    const auto programme = estimate::estimate_all(one, demo_plan());
    const auto rows = estimate::total_ranges(programme, one, DrawSettings{});
    const auto alone = estimate::ranges(estimate::estimate(one[0], demo_plan()), DrawSettings{});
    REQUIRE(rows.size() == programme.keys.size());
    for (std::size_t i = 0; i < alone.size(); ++i) {
        CHECK(rows[i].key == alone[i].key);
        CHECK(rows[i].value == Approx(alone[i].value).margin(1e-6));
        CHECK(rows[i].low == Approx(alone[i].low).margin(1e-6));
        CHECK(rows[i].middle == Approx(alone[i].middle).margin(1e-6));
        CHECK(rows[i].high == Approx(alone[i].high).margin(1e-6));
    }
}

TEST_CASE("what is shared widens the range of a sum, what is each one's own cancels out") {
    const auto structures = twins(25);
    const double own = spread(cost_of(ranges_of(structures, plan_with_share(0.0))));
    const double demo = spread(cost_of(ranges_of(structures, demo_plan())));
    const double shared = spread(cost_of(ranges_of(structures, plan_with_share(1.0))));
    const double single = spread(cost_of(ranges_of(twins(1), demo_plan())));
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
    const RangedFigure total = cost_of(ranges_of(structures, plan));
    CHECK(total.low == Approx(estimate::sample_quantile(sums, 0.05)).epsilon(1e-9));
    CHECK(total.middle == Approx(estimate::sample_quantile(sums, 0.5)).epsilon(1e-9));
    CHECK(total.high == Approx(estimate::sample_quantile(sums, 0.95)).epsilon(1e-9));
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
    const double before = cost_of(ranges_of(structures, demo_plan())).high;
    structures.insert(structures.begin(), culvert());
    CHECK(cost_of(ranges_of(structures, demo_plan())).high == before);
    const auto programme = estimate::estimate_all(structures, demo_plan());
    const auto stop = [](std::size_t, std::size_t) { return false; };
    CHECK_THROWS_AS(estimate::total_ranges(programme, structures, DrawSettings{}, 1, stop),
                    Interrupted);
    const std::vector<Structure> culverts{culvert()};
    CHECK(cost_of(ranges_of(culverts, demo_plan())).high == 0.0);
}
