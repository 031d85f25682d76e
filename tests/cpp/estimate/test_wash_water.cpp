#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <algorithm>

using namespace scupper;
using namespace made_up;

namespace {

estimate::Estimate priced(Job job, WashWater wash_water, const Structure& s,
                          Sharing sharing = Sharing::pro_rata) {
    job.wash_water = wash_water;
    job.sharing = sharing;
    return estimate::estimate(s, estimate::make_plan(job));
}

double sum_of_lines(const estimate::Estimate& e) {
    double sum = 0.0;
    for (const estimate::PricedLine& l : estimate::cost_lines(e)) {
        sum += l.amount;
    }
    return sum;
}

} // namespace

TEST_CASE("collecting the wash water costs more than releasing it, whatever the job shares") {
    for (const Job& job : {json::demo_job(), full_job()}) {
        for (const Structure& s : {overpass(), counted_overpass(), creek_bridge()}) {
            for (const Sharing sharing :
                 {Sharing::own_shifts, Sharing::pro_rata, Sharing::count_a_shift,
                  Sharing::one_closure, Sharing::by_the_hour}) {
                const auto release = priced(job, WashWater::release, s, sharing);
                const auto collect = priced(job, WashWater::collect, s, sharing);
                CHECK(collect.figure("cost.total") > release.figure("cost.total"));
                CHECK(collect.figure("debris.loads") >= release.figure("debris.loads"));
                CHECK(collect.figure("water") == release.figure("water"));
                CHECK(sum_of_lines(collect) == Approx(collect.figure("cost.total")).epsilon(1e-9));
            }
        }
    }
}

TEST_CASE("what is collected is the wash water less what dries or soaks in") {
    Job job = json::with_input(json::demo_job(), "water.loss_share", "0.1");
    const auto collect = priced(job, WashWater::collect, overpass());
    CHECK(collect.figure("water.picked_up") == Approx(0.9 * collect.figure("water")));
    CHECK(collect.figure("collected_water_volume") <= collect.figure("water.picked_up"));
    CHECK(collect.figure("wash_water_pick_up") > 0.0);
    CHECK(priced(job, WashWater::release, overpass()).figure("wash_water_pick_up") == 0.0);
    job = json::with_input(json::demo_job(), "water.loss_share", "0.9");
    const auto dry_day = priced(job, WashWater::collect, overpass());
    const auto release = priced(job, WashWater::release, overpass());
    CHECK(dry_day.figure("water.picked_up") >= release.figure("water.picked_up"));
}

TEST_CASE("collected water goes on the truck that takes the drains") {
    Job job = json::demo_job();
    job.hauls = {{"sweeper", {"gutter"}, {}, {}}, {"jet_vac", {}, DumpWhen::after_shift, {}}};
    spread_haul_values(job);
    const auto release = priced(job, WashWater::release, overpass());
    const auto collect = priced(job, WashWater::collect, overpass());
    CHECK(collect.figure("haul[sweeper].hauled_mass") ==
          release.figure("haul[sweeper].hauled_mass"));
    CHECK(collect.figure("haul[jet_vac].water") > release.figure("haul[jet_vac].water"));
    CHECK(collect.figure("haul[jet_vac].water") + collect.figure("haul[sweeper].water") ==
          Approx(collect.figure("water.picked_up")));
    CHECK(sum_of_lines(collect) == Approx(collect.figure("cost.total")).epsilon(1e-9));
}

TEST_CASE("where no water may be used, washing is refused and named; dry removal is priced") {
    for (const Job& job : {json::demo_job(), full_job()}) {
        for (const Structure& s : {overpass(), counted_overpass(), creek_bridge()}) {
            const auto none = priced(job, WashWater::none, s);
            const auto release = priced(job, WashWater::release, s);
            CHECK(none.figure("water") == 0.0);
            CHECK(none.figure("water.picked_up") == 0.0);
            CHECK(none.figure("water.refills") == 0.0);
            CHECK(none.figure("cost.total") < release.figure("cost.total"));
            CHECK(none.figure("dry_pick_up_gutter") > 0.0);
            CHECK(none.figure("windrow_pick_up") == 0.0); // without water there is no windrow
            CHECK(none.figure("debris.mass") > 0.0);
            const auto refused = estimate::refused_operations(none);
            CHECK(std::count(refused.begin(), refused.end(), "deck_hand_line") == 1);
            CHECK(std::count(refused.begin(), refused.end(), "drain_free") == 1);
            for (const std::string& name : refused) {
                CHECK(none.figure("operation[" + name + "].time") == 0.0);
            }
            CHECK(estimate::refused_operations(release).empty());
        }
    }
}

TEST_CASE("an operation that is told to use no water is not refused") {
    Job job = json::with_input(json::demo_job(), "operation[drain_free].water_per_unit",
                               "\"0 gal/each\"");
    const auto none = priced(job, WashWater::none, counted_overpass());
    const auto refused = estimate::refused_operations(none);
    CHECK(std::count(refused.begin(), refused.end(), "drain_free") == 0);
    CHECK(none.figure("drain_free") > 0.0);
    CHECK(none.figure("water") == 0.0);
}

TEST_CASE("what only collecting or a dump run after the shift needs is not asked for otherwise") {
    Job job = json::demo_job();
    std::erase_if(job.settings, [](const Setting& s) {
        return s.key == "water.loss_share" || s.key == "price.wash_water" ||
               s.key == "haul[truck].wage" || s.key == "haul[truck].people";
    });
    CHECK_NOTHROW(estimate::make_plan(job));
    job.wash_water = WashWater::collect;
    CHECK_THROWS_AS(estimate::make_plan(job), InputError);
    job.wash_water = WashWater::release;
    job.hauls = {{"truck", {}, DumpWhen::after_shift, {}}};
    CHECK_THROWS_AS(estimate::make_plan(job), InputError);
}
