// Traffic past the closure of an estimate: windows, queue, cost, and what the closure takes.

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <string>
#include <utility>
#include <vector>

using namespace scupper;
using namespace made_up;
using namespace scupper::literals;

namespace test_road_users {

namespace {

estimate::Estimate priced(const Structure& s, const Job& job = json::demo_job()) {
    return estimate::estimate(s, estimate::make_plan(job));
}

Job with(const char* key, const char* value, Job job = json::demo_job()) {
    return json::with_input(job, key, value);
}

/// Three lanes one way, 45,000 vehicles a day, two lanes closed.
Structure freeway() {
    Structure s = overpass();
    s.codes.functional_class = 11;
    s.codes.lanes_on = 3;
    s.codes.traffic_direction = 1;
    s.codes.daily_traffic = 45000;
    s.codes.truck_percent = 10;
    s.dimensions.roadway_width = Length<>(17.1);
    s.dimensions.deck_width = Length<>(18.0);
    return s;
}

Job by_night(Job job = json::demo_job()) {
    job.work_time = WorkTime::night;
    return job;
}

template <class F>
std::string refused(F&& call) {
    try {
        call();
    } catch (const InputError& e) {
        return e.what();
    }
    return {};
}

double per_hour(const closure::TrafficFlow<>& flow) {
    return flow.si() * factor::hour;
}

} // namespace

TEST_CASE("demand and capacity follow from the record, by hand") {
    Job job = json::demo_job();
    job.closure = "two_freeway_lanes";
    const auto u = estimate::road_users(priced(freeway(), job));
    CHECK(u.known);
    // Urban hours: 7.8 % at 7 o'clock of 45,000, one direction; three lanes to one: 1,450.
    CHECK(per_hour(u.day.demand.at(7)) == Approx(0.078 * 45000.0));
    CHECK(per_hour(u.day.closed) == Approx(1450.0));
    CHECK(u.queue.longest.si() > 0.0);
    CHECK(u.per_closure.si() > 0.0);
    CHECK(u.total.si() == Approx(u.per_closure.si() * u.closures.si()));
    CHECK(u.per_hour.si() * u.closed.si() == Approx(u.per_closure.si()));
}

TEST_CASE("capacity is judged by the method that the job names") {
    Job job = json::demo_job();
    job.closure = "two_freeway_lanes";
    job.traffic.capacity = "missouri_2011";
    // 1,199 passenger cars, 10 % trucks of two cars each (the mean of 1.5 to 2.5).
    CHECK(per_hour(estimate::road_users(priced(freeway(), job)).day.closed) ==
          Approx(1199.0 / 1.1));
}

TEST_CASE("a limit of the queue shortens the hours in which the road may be closed, and the price "
          "rises") {
    Job job = json::demo_job();
    job.closure = "two_freeway_lanes";
    job.sharing = Sharing::own_shifts;
    const Job limited = with("traffic.queue_limit", "\"0.25 mi\"", job);
    const auto day = priced(freeway(), by_night(job));
    const auto night = priced(freeway(), by_night(limited));
    CHECK(night.resolved.model.window_by_traffic);
    const auto u = estimate::road_users(night);
    CHECK(u.window.hours > 0);
    CHECK(u.window.hours < 12);
    CHECK(u.queue_length <= 0.25 * 1.0_mi * (1.0 + 1e-9));
    CHECK(night.figure("cost.total") >= day.figure("cost.total"));
    // By day no hour is left: the structure is reported, with the reason.
    CHECK(refused([&] { priced(freeway(), limited); }).find("traffic leaves no hours") !=
          std::string::npos);
    // A quiet road is not held up.
    CHECK_FALSE(priced(creek_bridge(), limited).resolved.model.window_by_traffic);
}

TEST_CASE("flaggers: the shared lane's capacity, turns and slow driving cost time") {
    const auto e = priced(overpass());
    const auto u = estimate::road_users(e);
    CHECK(u.kind == closure::Kind::one_lane_two_way);
    const closure::Plan plan = estimate::closure_plan(e);
    const Length<> shared = plan.length - Length<>((1500.0_ft).si());
    CHECK(u.day.closed.si() == Approx(closure::one_lane_capacity(
                                          shared, 25.0_mph, closure::optimal_green(shared),
                                          u.day.closed * 0.0 + Count<>(1483.3333333333333) / 1.0_h)
                                          .si())); // mean of 1,200, 1,500 (likely) and 1,700
    CHECK(u.slow_delay.si() > 0.0);
    CHECK(u.permitted.at(7) == 24); // nothing is limited
    CHECK(u.start == 8);
    CHECK(estimate::road_users(priced(overpass(), by_night())).start == 20);
}

TEST_CASE("a full closure costs a detour, a shoulder closure nothing") {
    Job job = json::demo_job();
    job.closure = "full_closure";
    Structure s = overpass();
    s.dimensions.detour = 10.0_mi;
    const auto near = estimate::road_users(priced(s, job));
    CHECK(near.queue.longest.si() == 0.0);
    CHECK(near.total.si() > 0.0);
    s.dimensions.detour = 20.0_mi;
    CHECK(estimate::road_users(priced(s, job)).total.si() == Approx(2.0 * near.total.si()));
    job.closure = "shoulder";
    CHECK(
        estimate::road_users(priced(s, with("road.shoulder_width", "\"8 ft\"", job))).total.si() ==
        0.0);
}

TEST_CASE("traffic nobody tells is said to be unknown, a share of trucks to be assumed") {
    Structure s = overpass();
    s.codes.daily_traffic = no_code;
    const auto u = estimate::road_users(priced(s));
    CHECK_FALSE(u.known);
    REQUIRE(u.cautions.size() == 1);
    CHECK(u.cautions.front().find("how many vehicles pass") != std::string::npos);
    s.codes.daily_traffic = 4000;
    s.codes.truck_percent = no_code;
    bool told = false;
    for (const std::string& caution : estimate::road_users(priced(s)).cautions) {
        told |= caution.find("share of trucks") != std::string::npos;
    }
    CHECK(told);
    CHECK(estimate::road_users(priced(s, with("traffic.daily", "8000"))).day.demand.at(8).si() ==
          Approx(2.0 * estimate::road_users(priced(s)).day.demand.at(8).si()));
}

TEST_CASE("every input of the traffic moves what the closure does to it, and none the price") {
    Job job = json::demo_job();
    const auto figures = [](const estimate::Estimate& e) {
        const auto u = estimate::road_users(e);
        return std::vector<double>{
            u.day.demand.at(8).si(), u.total.si(),           u.queue_length.si(),
            u.queue.delay.si(),      u.day.closed.si(),      u.day.open.si(),
            double(u.start),         double(u.window.hours), u.slow_delay.si()};
    };
    struct Case {
        const char* key;
        const char* value;
        const char* closure;
        bool night;
    };
    for (const Case& c : std::vector<Case>{
             {"traffic.daily", "9000", "one_lane_two_way", false},
             {"traffic.directional_share", "0.6", "one_lane_two_way", false},
             {"traffic.truck_share", "0.3", "one_lane_two_way", false},
             {"traffic.lane_capacity", "\"2,500 vehicle/h\"", "one_lane_two_way", false},
             {"traffic.saturation", "\"1,300 vehicle/h\"", "one_lane_two_way", false},
             {"traffic.pass_speed", "\"15 mph\"", "one_lane_two_way", false},
             {"traffic.green_time", "\"50 s\"", "one_lane_two_way", false},
             {"traffic.zone_speed", "\"20 mph\"", "rural_lane", false},
             {"traffic.day_start", "\"6 h\"", "one_lane_two_way", false},
             {"traffic.night_start", "\"22 h\"", "one_lane_two_way", true},
             {"traffic.car_time_value", "\"30 USD/h\"", "one_lane_two_way", false},
             {"traffic.truck_time_value", "\"90 USD/h\"", "one_lane_two_way", false},
             {"traffic.running_cost", "\"2 USD/mi\"", "full_closure", false},
             {"traffic.detour", "\"33 mi\"", "full_closure", false}}) {
        INFO(c.key);
        job.closure = c.closure;
        job.work_time = c.night ? WorkTime::night : WorkTime::day;
        const auto before = priced(overpass(), job);
        const auto after = priced(overpass(), with(c.key, c.value, job));
        CHECK(figures(after) != figures(before));
        CHECK(after.figure("cost.total") == before.figure("cost.total"));
    }
    job.closure = "two_freeway_lanes";
    job.work_time = WorkTime::day;
    job.traffic.capacity = "hcm_2000";
    const auto before = priced(freeway(), job);
    for (const auto& [key, value] : {std::pair{"traffic.vehicle_spacing", "\"40 ft/each\""},
                                     {"traffic.truck_equivalent", "3"}}) {
        CHECK(figures(priced(freeway(), with(key, value, job))) != figures(before));
    }
    const Job limited = by_night(with("traffic.delay_limit", "\"5 min\"", job));
    CHECK(figures(priced(freeway(), limited)) != figures(priced(freeway(), by_night(job))));
}

TEST_CASE("own hours of the day take the place of the usual ones") {
    Job job = json::demo_job();
    job.traffic.shares.assign(24, 1.0 / 24.0);
    const auto u = estimate::road_users(priced(overpass(), job));
    CHECK(u.day.demand.at(3).si() == Approx(u.day.demand.at(17).si()));
    job.traffic.shares.assign(24, 1.0);
    CHECK_THROWS_AS(estimate::road_users(priced(overpass(), job)), InputError);
}

TEST_CASE("set-up and removal by people add up to what the operations take") {
    const auto e = priced(overpass());
    double set_up = 0.0;
    for (const auto& row : estimate::closure_effort(e)) {
        CHECK(row.labour.si() == Approx(row.number.si() * row.time.si()));
        if (row.step == "closure_set_up") {
            set_up += row.labour.si();
        }
    }
    // Four of the wash crew and two flaggers, all the time of the set-up.
    CHECK(set_up == Approx(6.0 * e.figure("operation[closure_set_up].time")));
    Job none = json::demo_job();
    none.closure = "none";
    CHECK(estimate::closure_effort(priced(overpass(), none)).empty());
}

TEST_CASE("price and lay-out agree on people and vehicles of every closure") {
    for (const std::string_view kind : closure_kind_names) {
        Job job = with("road.shoulder_width", "\"6 ft\"");
        job.closure = kind;
        for (const char* speed : {"\"30 mph\"", "\"55 mph\""}) {
            const auto e = priced(overpass(), with("road.speed", speed, job));
            const closure::Plan plan = estimate::closure_plan(e);
            const auto pieces = [&](const char* key) {
                return e.resolved.values[e.plan->inputs.at(key, "test")];
            };
            INFO(kind << " " << speed);
            CHECK(pieces("labour[flagger].people") == plan.flaggers);
            CHECK(pieces("labour[shadow_driver].people") == plan.shadow_vehicles);
            CHECK(pieces("equipment[shadow_vehicle].number") == plan.shadow_vehicles);
            CHECK(pieces("equipment[arrow_board].number") == plan.arrow_boards);
        }
    }
}

TEST_CASE("devices and signs may be hired by the piece; without a shoulder there is no lay-out") {
    Job job = json::demo_job();
    job.equipment.push_back({"drum", {"any_closure"}, {}, {}, "devices"});
    job.equipment.push_back({"sign", {"any_closure"}, {}, {}, "advance_signs"});
    job = with("equipment[drum].rate", "\"0.1 USD/h\"", job);
    job = with("equipment[sign].rate", "\"0.5 USD/h\"", job);
    const auto e = priced(overpass(), job);
    const closure::Plan plan = estimate::closure_plan(e);
    const auto pieces = [&](const char* key) {
        return e.resolved.values[e.plan->inputs.at(key, "test")];
    };
    CHECK(pieces("equipment[drum].number") == number(plan.devices));
    CHECK(pieces("equipment[sign].number") == plan.advance_signs);
    CHECK(e.figure("cost.total") > priced(overpass()).figure("cost.total"));
    job.closure = "shoulder";
    CHECK(refused([&] {
              priced(overpass(), with("road.shoulder_width", "\"0 ft\"", job));
          }).find("no room") != std::string::npos);
    job.equipment.back().plan = "cones";
    CHECK_THROWS_AS(estimate::make_plan(job), UnknownNameError);
}

TEST_CASE("by night the pace is slower, pay is higher and lights stand") {
    const auto day = priced(overpass());
    const auto night = priced(overpass(), by_night());
    CHECK(night.figure("operation[deck_hand_line].productive_time") ==
          day.figure("operation[deck_hand_line].productive_time"));
    // Mean pace of 0.8, 0.85 (likely) and 0.95 is 5.15 / 6.
    CHECK(night.figure("operation[deck_hand_line].time") ==
          Approx(day.figure("operation[deck_hand_line].time") / (5.15 / 6.0)));
    CHECK(night.figure("cost.total") > day.figure("cost.total"));
    bool lights = false;
    for (const auto& line : estimate::cost_lines(night)) {
        lights |= line.resource == "light_tower";
    }
    CHECK(lights);
    for (const auto& line : estimate::cost_lines(day)) {
        CHECK(line.resource != "light_tower");
    }
    // Without slower pace, premium and lights a night costs what a day costs.
    Job plain = by_night(with("night.pace", "1", with("night.premium", "0")));
    plain = with("equipment[light_tower].number", "0", plain);
    CHECK(priced(overpass(), plain).figure("cost.total") == Approx(day.figure("cost.total")));
}

TEST_CASE("lane occupancy and expected damages are cost lines, only where the contract has them") {
    const auto without = priced(overpass());
    CHECK(without.figure("cost.contract") == 0.0);
    CHECK(without.figure("hours.closed") > 0.0);
    Job job = with("contract.occupancy_charge", "\"100 USD/h\"");
    const auto e = priced(overpass(), job);
    CHECK(e.figure("cost.contract") == Approx(100.0 * e.figure("hours.closed") / factor::hour));
    CHECK(e.figure("cost.direct") ==
          Approx(without.figure("cost.direct") + e.figure("cost.contract")));
    double lines = 0.0;
    for (const auto& line : estimate::cost_lines(e)) {
        lines += line.amount;
    }
    CHECK(lines == Approx(e.figure("cost.total")));
    // One time in ten two days late, 1,000 a day: 200.
    job = with("contract.late_chance", "0.1", with("contract.late_time", "\"2 day\""));
    job = with("contract.damages", "\"1,000 USD/day\"", job);
    CHECK(priced(overpass(), job).figure("cost.contract") == Approx(200.0));
    CHECK(refused([&] {
              priced(overpass(), with("contract.damages", "\"1,000 USD/day\""));
          }).find("contract.late") != std::string::npos);
}

TEST_CASE("hours the road is closed hold work, set-up, removal and meals") {
    const auto e = priced(overpass());
    CHECK(e.figure("hours.closed") ==
          Approx(e.figure("hours.on_site") + e.figure("operation[meal].time")));
    Job off = json::demo_job();
    off.closure = "off_road";
    CHECK(priced(overpass(), off).figure("hours.closed") == 0.0);
}

} // namespace test_road_users
