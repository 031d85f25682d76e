// Every operation of the shipped rates, by its own quantity and its own time per unit.
#include "catch.hpp"
#include "estimate/structures.hpp"

#include <set>
#include <string>

using namespace scupper;
using namespace made_up;

namespace {

/// Wide, skewed, with walks and a median, posted: a bridge with something of everything.
Structure with_everything(Structure s) {
    s.dimensions.deck_width = Length<>(18.0);
    s.dimensions.left_walk_width = Length<>(1.5);
    s.dimensions.skew = Angle<>(0.3);
    s.codes.median = 3;
    s.given = {{"posting.limit", certain(9000.0, Basis::measured)},
               {"drain_box_count", certain(4.0, Basis::measured)},
               {"downspout_length", certain(12.0, Basis::measured)},
               {"pier.wall_share", certain(0.5, Basis::measured)},
               {"column_area", certain(20.0, Basis::measured)}};
    return s;
}

std::string way_for(const Job& job, const std::string& component, const std::string& wanted) {
    for (const Operation& op : job.operations) {
        for (const std::string& way : op.ways) {
            if (op.component == component && way == wanted) {
                return wanted;
            }
        }
    }
    return {};
}

/// The demo's job with one way wherever it is offered, the girders at one level.
Job job_by(const std::string& way, const std::string& girders) {
    Job job = full_job();
    job.service["girder"] = girders;
    for (const auto& [component, level] : job.service) {
        if (!way_for(job, component, way).empty()) {
            job.ways[component] = way;
        }
    }
    return job;
}

double priced_time(const estimate::Estimate& e, const std::string& op) {
    const std::size_t place = e.plan->inputs.at("operation[" + op + "].time_per_unit", "test");
    return e.resolved.values[place] * e.figure("operation[" + op + "].quantity");
}

/// Checks the operations that run and notes their names.
void check_operations(const estimate::Estimate& e, std::set<std::string>& ran) {
    for (const Operation& op : e.plan->job.operations) {
        const double time = e.figure("operation[" + op.name + "].time");
        if (time == 0.0 || op.timing == Timing::lost) {
            continue;
        }
        ran.insert(op.name);
        INFO(op.name);
        const double quantity = e.figure("operation[" + op.name + "].quantity");
        CHECK(quantity ==
              Approx(op.factor *
                     e.figure("takeoff[" + std::string(slot_table[op.driver].key) + "].quantity")));
        if (op.timing == Timing::clock_rate) {
            CHECK(time == Approx(priced_time(e, op.name)));
        } else if (op.timing == Timing::rate && op.method.empty()) {
            CHECK(e.figure("operation[" + op.name + "].productive_time") ==
                  Approx(priced_time(e, op.name)));
        } else if (op.timing == Timing::rate) { // from the approach a longer hose slows it
            CHECK(e.figure("operation[" + op.name + "].productive_time") >=
                  0.999 * priced_time(e, op.name));
        }
    }
}

} // namespace

TEST_CASE("every operation of the shipped rates runs somewhere, at its quantity and its rate") {
    std::set<std::string> ran;
    for (const char* way : {"hand_line", "flusher", "broom", "wand"}) {
        for (const char* girders : {"full_clean", "full_length"}) {
            Job job = job_by(way, girders);
            job.sharing = Sharing::own_shifts;
            if (std::string(way) == "flusher") { // a bar has no hose to reach from the approach
                job.posting = AtPosted::half_fill;
                job = json::with_input(job, "tank.empty_mass", "\"8,000 lb\"");
            }
            if (std::string(way) == "wand") {
                job.wash_water = WashWater::collect;
            }
            const auto plan = estimate::make_plan(job);
            for (const Structure& s : {overpass(), creek_bridge()}) {
                check_operations(estimate::estimate(with_everything(s), plan), ran);
            }
        }
    }
    std::set<std::string> all;
    for (const Operation& op : json::shipped_rates().operations) {
        all.insert(op.name);
    }
    for (const std::string& name : all) {
        INFO(name);
        CHECK(ran.count(name) == 1);
    }
}

TEST_CASE("equipment that operations name is on site where one of them is at work, and only there") {
    Job job = json::demo_job();
    job.equipment.push_back({"street_sweeper", {}, {}});
    job = json::with_input(job, "equipment[street_sweeper].number", "1");
    job = json::with_input(job, "equipment[street_sweeper].rate", "\"80 USD/h\"");
    const auto by_hand = estimate::estimate(overpass(), estimate::make_plan(job));
    job.ways["deck_top"] = "broom";
    job.equipment.push_back({"message_board", {}, {}}); // named by no operation: there all the time
    job = json::with_input(job, "equipment[message_board].number", "1");
    job = json::with_input(job, "equipment[message_board].rate", "\"5 USD/h\"");
    const auto by_broom = estimate::estimate(overpass(), estimate::make_plan(job));
    const auto paid = [](const estimate::Estimate& e, const std::string& resource) {
        double sum = 0.0;
        for (const auto& line : estimate::cost_lines(e)) {
            sum += line.resource == resource ? line.amount : 0.0;
        }
        return sum;
    };
    CHECK(paid(by_hand, "street_sweeper") == 0.0);
    CHECK(paid(by_hand, "pump_and_hose") > 0.0);
    CHECK(paid(by_broom, "street_sweeper") > 0.0);
    CHECK(paid(by_broom, "message_board") > 0.0);
}

TEST_CASE("a party takes all work of a kind of crew, unless another names a part of it") {
    Job job = full_job();
    job.stages = {{"all", {}, {{"above", {"deck"}}, {"below", {"underside"}}, {"caps", {"cap"}}}}};
    const auto party = [&](const std::string& name) {
        for (const Operation& op : job.operations) {
            if (op.name == name) {
                return party_of(job, op);
            }
        }
        return job.operations.size();
    };
    CHECK(party("deck_hand_line") == 0);
    CHECK(party("drain_free") == 0);
    CHECK(party("girder_end_wash") == 1);
    CHECK(party("bucket_set_up") == 1);
    CHECK(party("cap_wash") == 2);
    for (const Operation& op : json::shipped_rates().operations) {
        INFO(op.name);
        const bool besides = op.component == "visit" || op.component == "supply" ||
                             op.component == "disposal";
        CHECK((besides || !op.crew.empty()));
    }
}

TEST_CASE("every component of a bridge is served at some level, and costs money there") {
    std::set<std::string> served;
    for (const char* way : {"hand_line", "flusher", "broom", "wand"}) {
        Job job = job_by(way, "full_length");
        job.posting = AtPosted::half_fill;
        job = json::with_input(job, "tank.empty_mass", "\"8,000 lb\"");
        const auto plan = estimate::make_plan(job);
        for (const Structure& s : {overpass(), creek_bridge()}) {
            for (const auto& line :
                 estimate::cost_lines(estimate::estimate(with_everything(s), plan))) {
                if (line.amount > 0.0) {
                    served.insert(line.component);
                }
            }
        }
    }
    for (const std::string_view component : component_names) {
        INFO(component);
        const bool margin = component == "indirect"; // the demo adds none
        CHECK((margin || served.count(std::string(component)) == 1));
    }
}
