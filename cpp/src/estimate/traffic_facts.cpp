#include "traffic_facts.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/site_closure.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate::detail {

namespace {

using closure::Kind;
using closure::TrafficFlow;

constexpr int one_way = 1;
constexpr double assumed_trucks = 0.05;
constexpr double percent = 0.01;

Inputs<double> priced(const Resolved& r) {
    return {r.model.plan->inputs, r.values.data()};
}

bool is_given(double value) {
    return !std::isnan(value);
}

double daily_vehicles(const Structure& s, const Resolved& r) {
    const double given = number(priced(r).get<"traffic.daily">());
    return is_given(given) ? given : static_cast<double>(s.codes.daily_traffic);
}

double trucks(const Structure& s, const Resolved& r, bool& assumed) {
    const double given = priced(r).get<"traffic.truck_share">();
    assumed = !is_given(given) && s.codes.truck_percent < 0;
    return is_given(given) ? given : assumed ? assumed_trucks : percent * s.codes.truck_percent;
}

closure::HourlyShares shares_of(const Structure& s, const Job& job) {
    if (!job.traffic.shares.empty()) {
        return closure::checked_shares(job.traffic.shares);
    }
    return closure::hourly_shares(job.traffic.hours == "by_record"
                                      ? closure::hour_pattern_by_record(s.codes.functional_class)
                                      : closure::hour_pattern_by_name(job.traffic.hours));
}

int lanes_of_direction(const Structure& s) {
    const int lanes = std::max(s.codes.lanes_on, 1);
    return s.codes.traffic_direction == one_way ? lanes : std::max(lanes / 2, 1);
}

/// What the lanes that stay open carry, by the job's method.
TrafficFlow<> lanes_left(const Structure& s, const Resolved& r, Kind kind, TrafficFacts& facts) {
    const int taken = closure::lanes_closed(kind);
    facts.lanes_missing = facts.lanes <= taken;
    closure::LaneClosure lanes;
    lanes.lanes = std::max(facts.lanes, taken + 1);
    lanes.open = lanes.lanes - taken;
    lanes.rural =
        closure::hour_pattern_by_record(s.codes.functional_class) == closure::HourPattern::rural;
    lanes.night = r.model.plan->job.work_time == WorkTime::night;
    lanes.truck_share = facts.truck_share;
    lanes.truck_equivalent = priced(r).get<"traffic.truck_equivalent">();
    return closure::work_zone_capacity(
        lanes, closure::capacity_method_by_name(r.model.plan->job.traffic.capacity));
}

/// The lane that both directions share, from flagger to flagger.
TrafficFlow<> shared_lane(const Structure& s, const Resolved& r, TrafficFacts& facts) {
    const Inputs<double> in = priced(r);
    for (const closure::Element& e :
         closure::plan(site_of(s, r, Kind::one_lane_two_way)).elements) {
        facts.shared_lane += e.name.starts_with("advance_warning") ? Length<>(0.0) : e.length;
    }
    const Time<> given = in.get<"traffic.green_time">();
    facts.green = is_given(given.si()) ? given : closure::optimal_green(facts.shared_lane);
    const Speed<> speed = in.get<"traffic.pass_speed">();
    facts.cycle = closure::one_lane_cycle(facts.shared_lane, speed, facts.green);
    return closure::one_lane_capacity(facts.shared_lane, speed, facts.green,
                                      in.get<"traffic.saturation">());
}

TrafficFlow<> past_closure(const Structure& s, const Resolved& r, Kind kind, TrafficFacts& facts) {
    switch (kind) {
    case Kind::one_lane_two_way:
        return shared_lane(s, r, facts);
    case Kind::rural_lane:
    case Kind::freeway_lane:
    case Kind::two_freeway_lanes:
        return lanes_left(s, r, kind, facts);
    case Kind::full_closure:
        return TrafficFlow<>(0.0);
    case Kind::none:
    case Kind::shoulder:
    case Kind::off_road:
        break;
    }
    return facts.day.open;
}

} // namespace

std::optional<TrafficFacts> traffic_facts(const Structure& s, const Resolved& r, Kind kind) {
    const Inputs<double> in = priced(r);
    const double daily = daily_vehicles(s, r);
    if (daily < 0.0) {
        return std::nullopt;
    }
    const bool both_ways = s.codes.traffic_direction != one_way;
    const double busier = both_ways ? in.get<"traffic.directional_share">() : 1.0;
    TrafficFacts facts{};
    facts.truck_share = trucks(s, r, facts.trucks_assumed);
    facts.lanes = lanes_of_direction(s);
    facts.other_direction = (1.0 - busier) / busier;
    const closure::HourlyShares shares = shares_of(s, r.model.plan->job);
    TrafficFlow<> peak;
    for (std::size_t hour = 0; hour < closure::hours_a_day; ++hour) {
        facts.day.demand.at(hour) = closure::hourly_demand(Count<>(daily), shares.at(hour), busier);
        peak = max_of(peak, facts.day.demand.at(hour));
    }
    // What queues without any closure is no doing of the closure.
    facts.day.open =
        max_of(static_cast<double>(facts.lanes) * in.get<"traffic.lane_capacity">(), peak);
    facts.day.closed = min_of(past_closure(s, r, kind, facts), facts.day.open);
    return facts;
}

bool limits_traffic(const Resolved& r) {
    return is_given(priced(r).get<"traffic.queue_limit">().si()) ||
           is_given(priced(r).get<"traffic.delay_limit">().si());
}

closure::QueueLimits queue_limits(const Resolved& r, int lanes) {
    const Inputs<double> in = priced(r);
    closure::QueueLimits limits = closure::no_limits();
    if (const Length<> queue = in.get<"traffic.queue_limit">(); is_given(queue.si())) {
        limits.waiting = static_cast<double>(lanes) * (queue / in.get<"traffic.vehicle_spacing">());
    }
    if (const Time<> delay = in.get<"traffic.delay_limit">(); is_given(delay.si())) {
        limits.delay = delay;
    }
    return limits;
}

bool queues_at(Kind kind) {
    return closure::takes_a_lane(kind) && kind != Kind::full_closure;
}

closure::HourSpan part_of_day(const Job& job) {
    return job.work_time == WorkTime::night ? closure::hours_by_night : closure::hours_by_day;
}

} // namespace scupper::estimate::detail
