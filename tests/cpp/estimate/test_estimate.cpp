#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <map>

using namespace scupper;
using namespace made_up;

namespace {

template <class E>
E refused(const Job& job, const Structure& s = overpass()) {
    try {
        estimate::estimate(s, estimate::make_plan(job));
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", "", "was accepted", "an error"});
}

} // namespace

TEST_CASE("cost lines add up to the total under every kind of sharing") {
    for (const Sharing sharing : {Sharing::own_shifts, Sharing::pro_rata, Sharing::count_a_shift,
                                  Sharing::one_closure, Sharing::by_the_hour}) {
        Job job = json::demo_job();
        job.sharing = sharing;
        job.charges.push_back({"permit", {}, {}});
        job = json::with_input(job, "charge[permit].amount", "\"150 USD\"");
        for (const char* margin : {"overhead", "profit", "bond", "mobilization", "contingency"}) {
            job = json::with_input(job, std::string("margin.") + margin, "0.07");
        }
        const auto plan = estimate::make_plan(job);
        for (const Structure& s : {overpass(), counted_overpass(), creek_bridge()}) {
            const auto e = estimate::estimate(s, plan);
            double sum = 0.0;
            for (const auto& line : estimate::cost_lines(e)) {
                sum += line.amount;
            }
            CHECK(sum == Approx(e.figure("cost.total")).epsilon(1e-9));
            CHECK(e.figure("cost.labour") + e.figure("cost.equipment") +
                      e.figure("cost.materials") ==
                  Approx(e.figure("cost.direct") - e.figure("cost.charges")).epsilon(1e-12));
        }
    }
}

TEST_CASE("paid hours are hours on site and hours lost, and operations fill them") {
    Job job = json::demo_job();
    job.sharing = Sharing::own_shifts;
    const auto plan = estimate::make_plan(job);
    const auto e = estimate::estimate(overpass(), plan);
    CHECK(e.figure("hours.on_site") + e.figure("hours.lost") == Approx(e.figure("hours.paid")));
    double operations = 0.0;
    for (const auto& op : plan->operations) {
        operations += e.figure("operation[" + op.name + "].time");
    }
    CHECK(operations == Approx(e.figure("hours.paid")));
    CHECK(e.figure("shift.count") == 1.0);
    CHECK(e.figure("idle") > 0.0);
}

TEST_CASE("margins stand one on the other and make the price") {
    Job job = json::with_input(json::demo_job(), "margin.overhead", "\"12 %\"");
    job = json::with_input(job, "margin.profit", "0.08");
    const auto e = estimate::estimate(overpass(), estimate::make_plan(job));
    CHECK(e.figure("cost.total") == Approx(e.figure("cost.direct") * 1.12 * 1.08));
    CHECK(e.figure("cost.profit") == Approx(e.figure("cost.direct") * 1.12 * 0.08));
    const auto plain = estimate::estimate(overpass(), demo_plan());
    CHECK(plain.figure("cost.total") == plain.figure("cost.direct"));
}

TEST_CASE("an overrun of a shift is paid as overtime, with its premium") {
    Job job = json::demo_job();
    job.sharing = Sharing::own_shifts;
    job.price_at = PriceAt::likely;
    const double on_site =
        estimate::estimate(overpass(), estimate::make_plan(job)).figure("hours.on_site");
    const double lost = (1.0 + 0.5 + 0.5) * 3600.0; // travel, briefing, meal
    job = json::with_input(job, "shift.length",
                           "\"" + std::to_string((on_site + lost - 1800.0) / 3600.0) + " h\"");
    const auto e = estimate::estimate(overpass(), estimate::make_plan(job));
    CHECK(e.figure("shift.count") == 1.0);
    CHECK(e.figure("hours.overtime") == Approx(1800.0).epsilon(1e-4));
    double operations = 0.0;
    for (const auto& op : e.plan->operations) {
        operations += e.figure("operation[" + op.name + "].time");
    }
    CHECK(operations == Approx(e.figure("hours.paid")));
    const double wages = 4 * 46.0 + 2 * 38.0;
    CHECK(e.figure("cost.labour") ==
          Approx((e.figure("hours.paid") + 0.5 * 1800.0) / 3600.0 * wages).epsilon(1e-4));
}

TEST_CASE("sharing a shift costs less than a shift of one's own") {
    const auto total = [](Sharing sharing) {
        Job job = json::demo_job();
        job.sharing = sharing;
        return estimate::estimate(creek_bridge(), estimate::make_plan(job)).figure("cost.total");
    };
    CHECK(total(Sharing::pro_rata) < total(Sharing::own_shifts));
    CHECK(total(Sharing::count_a_shift) < total(Sharing::own_shifts));
    CHECK(total(Sharing::one_closure) < total(Sharing::pro_rata));
}

TEST_CASE("what cannot be priced is refused with the reason") {
    const auto e = refused<InputError>(json::demo_job(), culvert());
    CHECK(e.id() == "estimate.unpriced");
    CHECK(e.path() == "99:P1");
    CHECK(e.found().find("culvert") != std::string::npos);
    const Job weak = json::with_input(
        json::with_input(json::demo_job(), "pump[hand_line].pressure", "\"1 psi\""),
        "hose[supply].rise", "\"20 ft\"");
    CHECK(refused<InputError>(weak).found().find("no water reaches the nozzle") !=
          std::string::npos);
    const Job far = json::with_input(json::demo_job(), "shift.travel_time", "\"10 h\"");
    CHECK(refused<InputError>(far).found().find("the whole shift") != std::string::npos);
}

TEST_CASE("a value out of bounds or missing is refused, naming it") {
    const Job hot = json::with_input(json::demo_job(), "water.temperature", "\"90 degC\"");
    const auto bounds = refused<InputError>(hot);
    CHECK(bounds.id() == "job.bounds");
    CHECK(bounds.path() == "job.inputs.water.temperature");
    Job bare = json::demo_job();
    bare.settings.clear();
    CHECK(refused<InputError>(bare).id() == "job.missing");
    Structure s = overpass();
    s.given = {{"drian_count", certain(1.0, Basis::measured)}};
    CHECK(refused<UnknownNameError>(json::demo_job(), s).id() == "schema.key");
}

TEST_CASE("an override changes one structure and no other") {
    const Job job = json::with_override(json::demo_job(), "Y1", "drains", "0");
    const auto plan = estimate::make_plan(job);
    CHECK(estimate::estimate(overpass(), plan).figure("drain_count") == 0.0);
    CHECK(estimate::estimate(creek_bridge(), plan).figure("drain_count") > 0.0);
    const Job by_state = json::with_override(json::demo_job(), "99:C1", "drains", "2");
    CHECK(estimate::estimate(creek_bridge(), estimate::make_plan(by_state)).figure("drain_count") ==
          2.0);
}

TEST_CASE("a quantity given for the whole job holds for every structure, an override beats it") {
    const Job none = json::with_input(json::demo_job(), "drains", "0");
    const auto plan = estimate::make_plan(none);
    CHECK(estimate::estimate(overpass(), plan).figure("drain_count") == 0.0);
    CHECK(estimate::estimate(creek_bridge(), plan).figure("drain_free") == 0.0);
    CHECK(estimate::untold_quantities(estimate::estimate(overpass(), plan)).empty());
    const auto counted = estimate::make_plan(json::with_override(none, "Y1", "drains", "8"));
    CHECK(estimate::estimate(overpass(), counted).figure("drain_count") == 8.0);
}

TEST_CASE("a measured dimension also reaches what follows from it by rule") {
    Structure s = overpass();
    const double before = estimate::estimate(s, demo_plan()).figure("girder_area");
    s.given = {{"span.longest", certain(40.0, Basis::measured)}};
    CHECK(estimate::estimate(s, demo_plan()).figure("girder_area") > before);
    const Job job = json::with_override(json::demo_job(), "Y1", "span.longest", "\"40 m\"");
    CHECK(estimate::estimate(overpass(), estimate::make_plan(job)).figure("girder_area") > before);
}

TEST_CASE("a measured deck length does not count the drains") {
    Structure s = overpass();
    s.given = {{"deck.length", certain(61.5, Basis::measured)}};
    const auto untold = estimate::untold_quantities(estimate::estimate(s, demo_plan()));
    REQUIRE(!untold.empty());
    CHECK(untold.front().slot == slot("drain_count"));
}

TEST_CASE("what moves with an untold quantity is less than twice the price") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const auto untold = estimate::untold_quantities(e).front();
    Structure few = overpass(), many = overpass();
    few.given = {{"drain_count", certain(untold.low, Basis::measured)}};
    many.given = {{"drain_count", certain(untold.high, Basis::measured)}};
    const double moved = estimate::estimate(many, demo_plan()).figure("cost.total") -
                         estimate::estimate(few, demo_plan()).figure("cost.total");
    CHECK(untold.worth == Approx(moved));
    CHECK(untold.worth < 2.0 * e.figure("cost.total"));
}

TEST_CASE("guesses are ordered by the money they move; certain inputs are none") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const auto guesses = estimate::assumptions(e);
    REQUIRE(guesses.size() > 10);
    for (std::size_t i = 1; i < guesses.size(); ++i) {
        CHECK(guesses[i - 1].worth >= guesses[i].worth);
    }
    for (const auto& guess : guesses) {
        CHECK(guess.value.guess.low < guess.value.guess.high);
        CHECK(guess.value.origin != nullptr);
        CHECK(guess.key != "nozzle[hand_line].bore"); // the yard knows its own nozzle
    }
}

TEST_CASE("a quantity no record can tell is listed with its range and what rests on it") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const auto untold = estimate::untold_quantities(e);
    REQUIRE(!untold.empty());
    CHECK(untold.front().slot == slot("drain_count"));
    CHECK(untold.front().low < untold.front().used);
    CHECK(untold.front().used < untold.front().high);
    CHECK(untold.front().worth > 0.0);
    CHECK(estimate::untold_quantities(estimate::estimate(counted_overpass(), demo_plan())).empty());
}

namespace {

using Moves = std::map<std::string, bool>;

/// Notes which inputs of a structure move any figure when they are made a little or much smaller.
void note_moves(const Structure& s, const estimate::Plan& plan, Moves& moves) {
    estimate::Resolved r;
    estimate::resolve(s, plan, r);
    estimate::Workspace<double> before(plan), after(plan);
    estimate::price(r.model, {plan.inputs, r.values.data()}, before);
    for (std::size_t i = 0; i < r.values.size(); ++i) {
        const LayoutField& field = plan.inputs.fields()[i];
        for (const double factor : {1.003, 0.85, 0.2, 0.02}) {
            std::vector<double> values = r.values;
            const double more = factor < 0.1 ? 0.0 : 1e-3; // what is nothing moves too
            values[i] = std::max(field.least, values[i] * factor + more);
            estimate::price(r.model, {plan.inputs, values.data()}, after);
            moves[field.key] |= before.figures.values() != after.figures.values();
        }
    }
}

/// Work by night for an owner who charges for closed lanes and for finishing late.
Job by_night_under_contract() {
    Job job = json::demo_job();
    job.work_time = WorkTime::night;
    for (const auto& [key, value] : {std::pair{"contract.occupancy_charge", "\"100 USD/h\""},
                                     {"contract.late_chance", "0.1"},
                                     {"contract.late_time", "\"2 day\""},
                                     {"contract.damages", "\"1,000 USD/day\""},
                                     {"shift.unpaid_meal_share", "0.5"},
                                     {"shift.cancelled", "0.1"},
                                     {"shift.show_up_time", "\"3 h\""},
                                     {"mobilization.pieces", "2"},
                                     {"mobilization.distance", "\"30 mi\""},
                                     {"mobilization.price", "\"4 USD/mi\""},
                                     {"mobilization.fixed", "\"60 USD\""},
                                     {"mobilization.structures", "3"},
                                     {"escalation.rate", "0.04"},
                                     {"escalation.time", "\"1 year\""}}) {
        job = json::with_input(job, key, value);
    }
    return job;
}

/// The demo's job cleaned in full, by each way to serve a component, with and without overtime, its
/// wash water released and collected.
std::vector<Job> all_jobs() {
    std::vector<Job> jobs{json::demo_job()};
    jobs.back().sharing = Sharing::count_a_shift;
    for (const char* way : {"hand_line", "flusher", "broom"}) {
        for (const Sharing sharing : {Sharing::pro_rata, Sharing::count_a_shift,
                                      Sharing::one_closure, Sharing::own_shifts}) {
            Job job = json::with_input(full_job(), "shift.length", "\"8 h\"");
            job.ways["deck_top"] = way;
            job.service["girder"] = sharing == Sharing::pro_rata ? "full_clean" : "full_length";
            job.sharing = sharing;
            jobs.push_back(std::move(job));
        }
    }
    Job job = full_job();
    for (const char* component :
         {"joint", "rail", "parapet", "girder", "bearing", "cap", "seat", "back_wall", "column"}) {
        job.ways[component] = "wand";
    }
    job.wash_water = WashWater::collect;
    job.hauls = {{"truck", {}, DumpWhen::after_shift, {}}};
    jobs.push_back(job);
    job.service["girder"] = "full_clean";
    for (WashMethod& method : job.methods) {
        method.truck = TruckPlace::below;
    }
    jobs.push_back(job);
    jobs.push_back(by_night_under_contract());
    return jobs;
}

/// A bridge too weak for the full truck, served either way; with a tenth of its water it passes.
void note_moves_at_posted_bridge(Moves& moves) {
    Structure s = overpass();
    s.given = {{"posting.limit", certain(11.752 * factor::short_ton, Basis::measured)}};
    for (const AtPosted way : {AtPosted::approach, AtPosted::half_fill}) {
        Job job = json::demo_job();
        job.posting = way;
        note_moves(s, *estimate::make_plan(job), moves);
    }
}

/// A site over a railway of which a person has said all there is to say, cleaned after some years.
void note_moves_at_known_site(Moves& moves) {
    Structure s = overpass();
    s.codes.service_under = 2;
    Job job = full_job();
    job.site["every"] = {"nesting", "overhead_line", "confined_space", "obstructed", "high"};
    for (const char* since : {"some_years", "neglected"}) {
        job.build_up = since;
        note_moves(s, *estimate::make_plan(job), moves);
    }
}

} // namespace

TEST_CASE("every input of the schema reaches some figure") {
    // A key that moved nothing would let a user change a value in vain.
    Moves moves;
    for (Job& job : all_jobs()) {
        for (const std::string_view closure : closure_kind_names) {
            job.closure = closure;
            const auto plan = estimate::make_plan(job);
            for (Structure s : {overpass(), creek_bridge()}) {
                s.dimensions.left_walk_width = Length<>(1.5);
                s.dimensions.skew = Angle<>(0.3);
                s.dimensions.deck_width = Length<>(15.0); // room for a median with a barrier
                s.codes.median = 3;
                s.codes.navigation = 1;
                note_moves(s, *plan, moves);
            }
        }
    }
    note_moves_at_posted_bridge(moves);
    note_moves_at_known_site(moves);
    for (const auto& [key, moved] : moves) {
        const bool only_where_given = key.starts_with("quantity[");
        const bool unused_by_row = key.ends_with(".water_per_unit") ||
                                   key.ends_with(".trigger_share") || key == "dirt[cap].width" ||
                                   key == "dirt[seat].width";
        const bool by_inference = key == "span.longest"; // the girder depth follows from it
        // test_site_closure.cpp and test_road_users.cpp move the lay-out and the traffic past it.
        const bool by_closure = key.starts_with("road.") || key.starts_with("traffic.");
        if (!only_where_given && !unused_by_row && !by_inference && !by_closure) {
            INFO(key);
            CHECK(moved);
        }
    }
}
