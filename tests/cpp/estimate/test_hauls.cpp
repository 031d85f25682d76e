// Debris haulage in the estimate. Worked figures by hand, inputs common practice.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <map>

using namespace scupper;
using namespace scupper::literals;
using namespace made_up;

namespace {

Job with_values(Job job, const std::vector<std::pair<std::string, std::string>>& values) {
    for (const auto& [key, value] : values) {
        job = json::with_input(job, key, value);
    }
    return job;
}

/// A job whose loads are whole trips, priced at likely values, by trucks of its own.
Job with_trucks(std::map<std::string, std::string> service, std::vector<Haul> hauls) {
    Job job = json::demo_job();
    job.service = std::move(service);
    job.hauls = std::move(hauls);
    job.price_at = PriceAt::likely;
    job.sharing = Sharing::own_shifts;
    spread_haul_values(job);
    return job;
}

/// A jet/vac truck of 12 yd3 and 12,000 lb that opens 40 drains and picks up half their water.
Job jet_vac_job(DumpWhen dump) {
    return with_values(with_trucks({{"drain", "rinse"}}, {{"jet_vac", {"drain"}, dump, {}}}),
                       {{"haul.gross_limit", "\"54,000 lb\""},
                        {"haul.empty_mass", "\"42,000 lb\""},
                        {"haul.water_aboard", "\"0 gal\""},
                        {"haul.volume", "\"12 yd3\""},
                        {"haul.water_share", "0.5"},
                        {"haul.distance", "\"12 mi\""},
                        {"haul.speed", "\"35 mph\""},
                        {"haul.dump_time", "\"30 min\""},
                        {"haul.decant_time", "\"0 min\""},
                        {"haul.people", "2"},
                        {"haul.wage", "\"62 USD/h\""},
                        {"drain_dirt[free].volume", "\"0.5 ft3/each\""},
                        {"drain_dirt[clogged].volume", "\"1.5 ft3/each\""},
                        {"drain_dirt[frozen].volume", "\"2.5 ft3/each\""}});
}

Structure forty_drains() {
    Structure s = overpass();
    s.given = {{"drain_count", certain(40.0, Basis::measured)},
               {"drain_free_count", certain(24.0, Basis::measured)},
               {"drain_clogged_count", certain(12.0, Basis::measured)},
               {"drain_frozen_count", certain(4.0, Basis::measured)}};
    return s;
}

estimate::Estimate priced(const Job& job, const Structure& s) {
    return estimate::estimate(s, estimate::make_plan(job));
}

double line(const estimate::Estimate& e, const std::string& resource) {
    double sum = 0.0;
    for (const estimate::PricedLine& l : estimate::cost_lines(e)) {
        sum += l.resource == resource ? l.amount : 0.0;
    }
    return sum;
}

bool explained(const estimate::Estimate& e, std::string_view figure, std::string_view step) {
    const Derivation d = estimate::explain(e, figure);
    return std::any_of(d.steps.begin(), d.steps.end(),
                       [&](const DerivedStep& s) { return s.name == step; });
}

} // namespace

TEST_CASE("a truck that is emptied after every shift makes a run a shift, full or not") {
    const auto after = priced(jet_vac_job(DumpWhen::after_shift), forty_drains());
    const auto each = priced(jet_vac_job(DumpWhen::each_shift), forty_drains());
    REQUIRE(after.figure("shift.count") == each.figure("shift.count"));
    CHECK(after.figure("haul.loads") == 2.0);
    CHECK(each.figure("haul.loads") == std::max(2.0, each.figure("shift.count")));
    CHECK(each.figure("haul.loads") > after.figure("haul.loads"));
    CHECK(each.figure("dump_count") == each.figure("haul.loads"));
    CHECK(each.figure("debris.loads") == each.figure("haul.loads"));
    const double runs = each.figure("haul.loads") / after.figure("haul.loads");
    CHECK(each.figure("haul.labour") == Approx(runs * after.figure("haul.labour")));
    CHECK(line(each, "dump run") == Approx(runs * line(after, "dump run")));
    CHECK(explained(each, "haul.loads", "shifts it works in"));
    Structure clean = forty_drains();
    for (GivenValue& given : clean.given) {
        given.value = certain(0.0, Basis::measured);
    }
    CHECK(priced(jet_vac_job(DumpWhen::each_shift), clean).figure("haul.loads") == 0.0);
}

TEST_CASE("a jet/vac truck makes two dumps by weight; the dirt alone would say one") {
    // 4,400 lb of dirt and 1,840 gal: 19,755 lb, 10.59 yd3; water of 8.345 lb/gal by hand, of 15 degC
    // here.
    const Job job = jet_vac_job(DumpWhen::after_shift);
    const auto e = priced(job, forty_drains());
    CHECK(e.figure("haul.payload") == Approx((12000_lb).si()));
    CHECK(e.figure("haul.water") == Approx((1840_gal).si()));
    CHECK(e.figure("haul.hauled_mass") == Approx((19755_lb).si()).epsilon(2e-3));
    CHECK(e.figure("haul.hauled_volume") == Approx((10.59_yd3).si()).epsilon(1e-3));
    CHECK(e.figure("haul.loads") == 2.0);
    CHECK(e.figure("debris.loads") == 2.0);
    CHECK(explained(e, "haul.loads", "loads by weight"));
    CHECK(explained(e, "haul.loads", "loads by volume"));
    const auto dry = priced(json::with_input(job, "haul.water_share", "0"), forty_drains());
    CHECK(dry.figure("debris.loads") == 1.0);
    CHECK(dry.figure("debris.mass") == e.figure("debris.mass"));
}

TEST_CASE("dump runs after the shift are labour-hours of their own and do not lengthen the day") {
    // (2 x 12 mi / 35 mph + 30 min) x 2 people x 2 runs = 4.743 labour-h.
    const auto after = priced(jet_vac_job(DumpWhen::after_shift), forty_drains());
    const auto in_shift = priced(jet_vac_job(DumpWhen::in_shift), forty_drains());
    const double run = 2.0 * (12_mi).si() / (35_mph).si() + 1800.0;
    CHECK(after.figure("haul.labour") / 3600.0 == Approx(4.743).epsilon(1e-3));
    CHECK(after.figure("operation[dump].time") == 0.0);
    CHECK(in_shift.figure("operation[dump].time") == Approx(2.0 * run));
    CHECK(in_shift.figure("hours.on_site") ==
          Approx(after.figure("hours.on_site") + 2.0 * run).epsilon(1e-9));
    CHECK(in_shift.figure("haul.labour") == 0.0);
    const double crew = 4.0 + 2.0; // wash crew and flaggers
    CHECK(after.figure("hours.labour") ==
          Approx(crew * after.figure("hours.paid") + 4.0 * run).epsilon(1e-9));
    CHECK(line(after, "dump run") == Approx(4.743 * 62.0).epsilon(1e-3));
    CHECK(line(in_shift, "dump run") == 0.0);
}

TEST_CASE("a sweeper fills by volume; the dump truck it tips into takes all in one load") {
    // 3,600 ft of gutter, 2 ft x 0.25 in: 5.56 yd3, 14,250 lb; hopper 3.4 yd3, truck 20,000 lb.
    Job job = with_trucks({{"deck_top", "rinse"}, {"gutter", "rinse"}},
                          {{"sweeper", {"gutter"}, {}, {}}, {"dump_truck", {"gutter"}, {}, {}}});
    job.ways["deck_top"] = "broom";
    job = with_values(job, {{"dirt[gutter].width", "\"2 ft\""},
                            {"dirt[gutter].depth", "\"0.25 in\""},
                            {"haul[sweeper].volume", "\"3.4 yd3\""},
                            {"haul[dump_truck].gross_limit", "\"40,000 lb\""},
                            {"haul[dump_truck].empty_mass", "\"20,000 lb\""},
                            {"haul[dump_truck].water_aboard", "\"0 gal\""}});
    Structure s = overpass();
    s.given = {{"gutter_length", certain((3600_ft).si(), Basis::measured)}};
    const auto e = priced(job, s);
    CHECK(e.figure("haul[sweeper].hauled_volume") == Approx((5.56_yd3).si()).epsilon(1e-3));
    CHECK(e.figure("haul[dump_truck].hauled_mass") == Approx((14250_lb).si()));
    CHECK(e.figure("haul[sweeper].loads") == 2.0);
    CHECK(e.figure("haul[dump_truck].loads") == 1.0);
    CHECK(e.figure("debris.loads") == 3.0);
    CHECK(e.figure("takeoff[dump_count].quantity") == 3.0);
}

TEST_CASE("more water and more dirt never make fewer loads") {
    for (const Sharing sharing : {Sharing::pro_rata, Sharing::own_shifts}) {
        Job job = json::demo_job();
        job.sharing = sharing;
        double before = 0.0;
        for (const char* share : {"0", "0.2", "0.5", "0.8", "1"}) {
            const double loads =
                priced(json::with_input(job, "haul.water_share", share), overpass())
                    .figure("debris.loads");
            CHECK(loads >= before);
            before = loads;
        }
        before = 0.0;
        for (const char* depth : {"0 in", "0.1 in", "0.5 in", "2 in", "8 in"}) {
            const std::string value = "\"" + std::string(depth) + "\"";
            const double loads =
                priced(json::with_input(job, "dirt[gutter].depth", value), overpass())
                    .figure("debris.loads");
            CHECK(loads >= before);
            before = loads;
        }
    }
}

TEST_CASE("weight governs dirt, volume governs leaves") {
    const auto loads = [](const char* density) {
        const auto e =
            priced(json::with_input(json::demo_job(), "dirt[gutter].density", density), overpass());
        const double by_volume = e.figure("haul.hauled_volume") / (12_yd3).si();
        const double by_weight = e.figure("haul.hauled_mass") / e.figure("haul.payload");
        CHECK(e.figure("haul.loads") == Approx(std::max(by_volume, by_weight)));
        return by_weight > by_volume;
    };
    CHECK(loads("\"110 lb/ft3\""));
    Job leaves = json::with_input(json::demo_job(), "haul.volume", "\"1 yd3\"");
    const auto e = priced(leaves, overpass());
    CHECK(e.figure("haul.loads") == Approx(e.figure("haul.hauled_volume") / (1_yd3).si()));
}

TEST_CASE("a truck that may carry nothing is refused, by the job and at one structure") {
    const Job heavy = json::with_input(json::demo_job(), "haul.empty_mass", "\"60,000 lb\"");
    try {
        estimate::make_plan(heavy);
        FAIL("should have been refused");
    } catch (const InputError& e) {
        CHECK(e.id() == "job.payload");
        CHECK(e.path() == "job.inputs.haul[truck].gross_limit");
        CHECK(e.found().find("62,000 lb") != std::string::npos);
        CHECK(e.found().find("60,000 lb") != std::string::npos);
    }
    const Job there =
        json::with_override(json::demo_job(), "Y1", "haul.gross_limit", "\"40,000 lb\"");
    CHECK_THROWS_AS(priced(there, overpass()), InputError);
    CHECK(priced(there, creek_bridge()).figure("debris.loads") > 0.0);
    const auto list = estimate::estimate_all(std::vector{overpass()}, estimate::make_plan(there));
    REQUIRE(list.unpriced.size() == 1);
    CHECK(list.unpriced.front().reason.find("may carry nothing") != std::string::npos);
}

TEST_CASE("a charge by the load is a line of its own, decanting lengthens wet trips alone") {
    const auto plain = priced(json::demo_job(), overpass());
    const auto charged =
        priced(json::with_input(json::demo_job(), "haul.load_charge", "\"250 USD\""), overpass());
    const double charges = 250.0 * plain.figure("debris.loads");
    CHECK(line(charged, "load charge") == Approx(charges));
    CHECK(charged.figure("cost.materials") == Approx(plain.figure("cost.materials") + charges));
    const auto trip = [](const char* share, const char* decant) {
        Job job = json::with_input(json::demo_job(), "haul.water_share", share);
        job = json::with_input(job, "haul.decant_time", decant);
        const auto e = priced(job, overpass());
        return e.figure("operation[dump].time") / e.figure("debris.loads");
    };
    CHECK(trip("0.5", "\"60 min\"") == Approx(trip("0.5", "\"0 min\"") + 3600.0));
    CHECK(trip("0", "\"60 min\"") == Approx(trip("0", "\"0 min\"")));
}

TEST_CASE("by broom the sweeper picks up, and no windrow is left for the vacuum") {
    Job job = json::demo_job();
    const auto by_hand = priced(job, overpass());
    job.ways["deck_top"] = "broom";
    const auto by_broom = priced(job, overpass());
    CHECK(by_broom.figure("windrow_pick_up") == 0.0);
    CHECK(by_broom.figure("sweeper_pick_up") > 0.0);
    CHECK(by_hand.figure("sweeper_pick_up") == 0.0);
    CHECK(by_broom.figure("debris.mass") == by_hand.figure("debris.mass"));
    const auto over_creek = priced(job, creek_bridge());
    CHECK(over_creek.figure("dry_pick_up_gutter") == 0.0); // the sweeper works dry
    CHECK(over_creek.figure("drain_cover") > 0.0);
    CHECK(by_broom.figure("drain_cover") == 0.0); // nothing to keep out of
}

TEST_CASE("a flusher's parapets are loosened first; box and downspout belong to a full clean") {
    Job job = json::demo_job();
    CHECK(priced(job, counted_overpass()).figure("loosen_parapet") == 0.0);
    CHECK(priced(job, counted_overpass()).figure("drain_box_flush") == 0.0);
    job.ways["deck_top"] = "flusher";
    CHECK(priced(job, counted_overpass()).figure("loosen_parapet") > 0.0);
    job.service["drain"] = "full_clean";
    const auto e = priced(job, counted_overpass());
    CHECK(e.figure("operation[drain_box_flush].quantity") == e.figure("drain_box_count"));
    CHECK(e.figure("operation[downspout_flush].quantity") == e.figure("downspout_length"));
}

TEST_CASE("a wand of 3,000 psi gives 4 gpm: less water than a hand line and more time") {
    Job job = full_job();
    job.service["girder"] = "full_clean";
    const auto hand = priced(job, counted_overpass());
    for (const char* component :
         {"joint", "rail", "parapet", "girder", "bearing", "cap", "seat", "back_wall", "column"}) {
        job.ways[component] = "wand";
    }
    const auto wand = priced(job, counted_overpass());
    CHECK(wand.figure("nozzle[wand].flow") == Approx((4_gpm).si()).epsilon(0.02));
    CHECK(wand.figure("nozzle[wand].pressure") > (2800_psi).si());
    CHECK(wand.figure("nozzle[wand].reaction") < (25_lbf).si());
    CHECK(wand.figure("water") < hand.figure("water"));
    CHECK(wand.figure("hours.productive") > hand.figure("hours.productive"));
    CHECK(wand.figure("girder_end_wash") == 0.0);
    CHECK(wand.figure("girder_end_wand") > 0.0);
    CHECK(hand.figure("girder_end_wand") == 0.0); // the first way offered stays the hand line
}

TEST_CASE("an operation for each dump trip has its time and may use no water") {
    Job job = json::demo_job();
    Operation ticket;
    ticket.name = "weigh_ticket";
    ticket.component = "disposal";
    ticket.driver = slot("dump_count");
    ticket.timing = Timing::clock_rate;
    job.operations.push_back(ticket);
    job = json::with_input(job, "operation[weigh_ticket].time_per_unit", "\"5 min/each\"");
    const Job dry =
        json::with_input(job, "operation[weigh_ticket].water_per_unit", "\"0 gal/each\"");
    const auto e = priced(dry, overpass());
    CHECK(e.figure("weigh_ticket") == Approx(300.0 * e.figure("debris.loads")));
    const Job wet =
        json::with_input(job, "operation[weigh_ticket].water_per_unit", "\"9 gal/each\"");
    CHECK_THROWS_AS(estimate::make_plan(wet), InputError);
}
