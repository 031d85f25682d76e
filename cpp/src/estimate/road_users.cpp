#include "scupper/estimate/road_users.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/site_closure.hpp"
#include "traffic_facts.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate {

namespace {

using namespace scupper::literals;
using closure::Kind;
using detail::TrafficFacts;

/// Advised at most: California edition 2026 of the federal manual, 6B.01.
constexpr Speed<> usual_reduction = 10.0_mph;
constexpr Speed<> slowest_zone = 15.0_mph;

Inputs<double> priced(const Estimate& e) {
    return {e.plan->inputs, e.resolved.values.data()};
}

/// The hour at which a closure begins: that of the window where traffic is limited.
std::size_t start_of(const Estimate& e, const closure::HourSpan& window) {
    if (detail::limits_traffic(e.resolved) && window.hours > 0) {
        return window.first;
    }
    const bool night = e.plan->job.work_time == WorkTime::night;
    const Time<> at =
        night ? priced(e).get<"traffic.night_start">() : priced(e).get<"traffic.day_start">();
    return static_cast<std::size_t>(at.in(1.0_h) * (1.0 + count_slack)) % closure::hours_a_day;
}

/// Vehicles of the busier direction that come while a closure stands.
Count<> vehicles_during(const RoadUsers& u) {
    Count<> vehicles;
    Time<> left = u.closed;
    for (const closure::Period& p : closure::closure_periods(u.day, u.start, u.closed)) {
        const Time<> here = min_of(p.length, left);
        vehicles += p.demand * here;
        left = max_of(left - here, 0.0_h);
    }
    return vehicles;
}

Speed<> zone_speed(const Estimate& e, const Speed<>& usual) {
    const Speed<> given = priced(e).get<"traffic.zone_speed">();
    return std::isnan(given.si()) ? min_of(usual, max_of(usual - usual_reduction, slowest_zone))
                                  : given;
}

/// Tapers, buffer and work space: where traffic is slow.
Length<> slow_stretch(const closure::Plan& plan) {
    Length<> length;
    for (const closure::Element& e : plan.elements) {
        length += e.name.starts_with("advance_warning") ? 0.0_ft : e.length;
    }
    return length;
}

closure::TrafficDay other_direction(const TrafficFacts& facts) {
    closure::TrafficDay day = facts.day;
    for (closure::TrafficFlow<>& hour : day.demand) {
        hour = facts.other_direction * hour;
    }
    return day;
}

void add_queue(const TrafficFacts& facts, const Estimate& e, RoadUsers& u) {
    u.queue = closure::closure_queue(u.day, u.start, u.closed);
    u.queue_delay = u.queue.delay;
    if (u.kind == Kind::one_lane_two_way) {
        u.queue_delay += closure::closure_queue(other_direction(facts), u.start, u.closed).delay;
    }
    u.queue_length =
        closure::queue_length(u.queue.longest, priced(e).get<"traffic.vehicle_spacing">(),
                              static_cast<double>(facts.lanes));
}

void add_slowing(const TrafficFacts& facts, const Estimate& e, RoadUsers& u) {
    const Speed<> usual(detail::road_of(e.structure, e.resolved).speed.guess.likely);
    const Count<> vehicles = vehicles_during(u);
    if (u.kind == Kind::one_lane_two_way) {
        const Count<> both = vehicles * (1.0 + facts.other_direction);
        u.slow_delay = closure::slowing_delay(both, facts.shared_lane, usual,
                                              priced(e).get<"traffic.pass_speed">()) +
                       closure::turn_delay(both, facts.cycle, facts.green);
        return;
    }
    u.slow_delay = closure::slowing_delay(
        vehicles, slow_stretch(closure::plan(detail::site_of(e.structure, e.resolved, u.kind))),
        usual, zone_speed(e, usual));
}

Length<> detour_of(const Estimate& e) {
    const Length<> given = priced(e).get<"traffic.detour">();
    return std::isnan(given.si()) ? e.structure.dimensions.detour : given;
}

/// Whoever would have passed drives round.
Amount<> detour_cost(const TrafficFacts& facts, const Estimate& e, const RoadUsers& u) {
    const Length<> detour = detour_of(e);
    if (std::isnan(detour.si())) {
        return Amount<>(detour.si());
    }
    const Speed<> speed(detail::road_of(e.structure, e.resolved).speed.guess.likely);
    return closure::detour_cost(vehicles_during(u) * (1.0 + facts.other_direction), detour, speed,
                                u.time_value, priced(e).get<"traffic.running_cost">());
}

void add_cost(const TrafficFacts& facts, const Estimate& e, RoadUsers& u) {
    u.time_value =
        closure::time_value(priced(e).get<"traffic.car_time_value">(),
                            priced(e).get<"traffic.truck_time_value">(), facts.truck_share);
    u.per_closure = u.kind == Kind::full_closure
                        ? detour_cost(facts, e, u)
                        : closure::delay_cost(u.queue_delay + u.slow_delay, u.time_value);
    u.total = u.per_closure * number(u.closures);
    u.per_hour = u.closed > 0.0_h ? u.per_closure / u.closed : AmountPerTime<>(0.0);
}

void add_cautions(const TrafficFacts& facts, const Estimate& e, RoadUsers& u) {
    const auto say = [&](bool holds, const char* text) {
        if (holds) {
            u.cautions.emplace_back(text);
        }
    };
    say(e.plan->job.traffic.shares.empty(),
        "The hours of the day follow a usual distribution (from memory); a count of the road takes "
        "its place.");
    say(facts.trucks_assumed, "No record tells the share of trucks: 5 % are assumed.");
    say(facts.lanes_missing,
        "The record has no lane left beside those the closure takes: one more is assumed.");
    say(detail::queues_at(u.kind) && !closure::is_freeway(e.structure.codes.functional_class) &&
            u.kind != Kind::one_lane_two_way,
        "The capacity is one of freeway work zones; other roads have crossings besides.");
    say(std::isnan(u.time_value.si()),
        "No value of time is given (traffic.car_time_value, traffic.truck_time_value): delay has "
        "no price.");
    say(u.kind == Kind::full_closure && std::isnan(detour_of(e).si()),
        "No detour is recorded or given: its cost is not known.");
    say(u.queue.left > 0.0_each, "The queue outlasts the day.");
}

/// Closures of the visit and how long each stands.
void count_closures(const Estimate& e, RoadUsers& u) {
    const double closures = e.figure("takeoff[closure_count].quantity");
    u.closures = Count<>(closures);
    u.closed = Time<>(closures > 0.0 ? e.figure("hours.closed") / closures : 0.0);
    u.closed = min_of(u.closed, static_cast<double>(closure::hours_a_day) * 1.0_h);
}

} // namespace

RoadUsers road_users(const Estimate& e) {
    RoadUsers u;
    u.kind = e.resolved.model.closure;
    count_closures(e, u);
    const auto facts = detail::traffic_facts(e.structure, e.resolved, u.kind);
    if (!facts) {
        u.cautions.emplace_back(
            "No record or job tells how many vehicles pass: nothing can be said of queues.");
        return u;
    }
    u.known = true;
    u.day = facts->day;
    u.permitted.fill(closure::hours_a_day);
    if (detail::queues_at(u.kind)) {
        u.permitted =
            closure::permitted_hours(u.day, detail::queue_limits(e.resolved, facts->lanes));
    }
    u.window = closure::longest_window(u.permitted, detail::part_of_day(e.plan->job));
    u.start = start_of(e, u.window);
    if (detail::queues_at(u.kind)) {
        add_queue(*facts, e, u);
        add_slowing(*facts, e, u);
    }
    add_cost(*facts, e, u);
    add_cautions(*facts, e, u);
    return u;
}

} // namespace scupper::estimate
