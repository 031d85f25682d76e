#include "scupper/estimate/road_users.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/show.hpp"
#include "scupper/estimate/site_closure.hpp"
#include "traffic_facts.hpp"
#include "users_past.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace scupper::estimate {

namespace {

using namespace scupper::literals;
using closure::Kind;
using detail::TrafficFacts;

/// Advised at most: California edition 2026 of the federal manual, 6B.01.
constexpr Speed<> usual_reduction = 10.0_mph;
constexpr Speed<> slowest_zone = 15.0_mph;

/// A structure, and the closure of one of its stages.
struct Past {
    const Structure& structure;
    const Resolved& resolved;
    const Job& job() const { return resolved.model.plan->job; }
};

Inputs<double> priced(const Past& e) {
    return {e.resolved.model.plan->inputs, e.resolved.values.data()};
}

/// The hour at which a closure begins: that of the window where traffic is limited.
std::size_t start_of(const Past& e, const closure::HourSpan& window) {
    if (detail::limits_traffic(e.resolved) && window.hours > 0) {
        return window.first;
    }
    const bool night = e.job().work_time == WorkTime::night;
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

Speed<> zone_speed(const Past& e, const Speed<>& usual) {
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

void add_queue(const TrafficFacts& facts, const Past& e, RoadUsers& u) {
    u.queue = closure::closure_queue(u.day, u.start, u.closed);
    u.queue_delay = u.queue.delay;
    if (u.kind == Kind::one_lane_two_way) {
        u.queue_delay += closure::closure_queue(other_direction(facts), u.start, u.closed).delay;
    }
    u.queue_length =
        closure::queue_length(u.queue.longest, priced(e).get<"traffic.vehicle_spacing">(),
                              static_cast<double>(facts.lanes));
}

void add_slowing(const TrafficFacts& facts, const Past& e, RoadUsers& u) {
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

Length<> detour_of(const Past& e) {
    const Length<> given = priced(e).get<"traffic.detour">();
    return std::isnan(given.si()) ? e.structure.dimensions.detour : given;
}

/// Whoever would have passed drives round.
Amount<> detour_cost(const TrafficFacts& facts, const Past& e, const RoadUsers& u) {
    const Length<> detour = detour_of(e);
    if (std::isnan(detour.si())) {
        return Amount<>(detour.si());
    }
    const Speed<> speed(detail::road_of(e.structure, e.resolved).speed.guess.likely);
    return closure::detour_cost(vehicles_during(u) * (1.0 + facts.other_direction), detour, speed,
                                u.time_value, priced(e).get<"traffic.running_cost">());
}

/// Where nobody is held up nothing is lost, whatever time is worth.
Amount<> lost(const closure::VehicleTime<>& delay, const AmountPerTime<>& value) {
    return delay.si() > 0.0 ? closure::delay_cost(delay, value) : Amount<>(0.0);
}

/// A value as it was priced, and where it comes from.
std::string stated(const Past& e, std::string_view key) {
    const Plan& plan = *e.resolved.model.plan;
    const std::size_t place = plan.inputs.at(key, "road users");
    const LayoutField& field = plan.inputs.fields()[place];
    const Uncertain& input = e.resolved.uncertain[place];
    std::string text = std::string(field.label) + ": " +
                       Show(plan.job).text(e.resolved.values[place], field.dimension, key) + ", " +
                       std::string(basis_name(input.basis));
    if (input.origin != nullptr) {
        for (const std::string& said : {input.origin->source, input.origin->note}) {
            text += said.empty() ? "" : "; " + said;
        }
    }
    return text;
}

void add_sources(const Past& e, RoadUsers& u) {
    const auto say = [&](std::string_view key, double si) {
        if (!std::isnan(si)) {
            u.sources.push_back(stated(e, key));
        }
    };
    say("traffic.car_time_value", priced(e).get<"traffic.car_time_value">().si());
    say("traffic.truck_time_value", priced(e).get<"traffic.truck_time_value">().si());
    if (u.kind == Kind::full_closure) {
        say("traffic.running_cost", priced(e).get<"traffic.running_cost">().si());
    }
}

void add_cost(const TrafficFacts& facts, const Past& e, RoadUsers& u) {
    u.time_value =
        closure::time_value(priced(e).get<"traffic.car_time_value">(),
                            priced(e).get<"traffic.truck_time_value">(), facts.truck_share);
    u.per_closure = u.kind == Kind::full_closure ? detour_cost(facts, e, u)
                                                 : lost(u.queue_delay + u.slow_delay, u.time_value);
    u.total = u.per_closure * number(u.closures);
    u.per_hour = u.closed > 0.0_h ? u.per_closure / u.closed : AmountPerTime<>(0.0);
}

/// What keeps a total from being figured.
void add_not_figured(const Past& e, RoadUsers& u) {
    const auto say = [&](bool holds, const char* text) {
        if (holds) {
            u.not_figured.emplace_back(text);
        }
    };
    const bool detour = u.kind == Kind::full_closure;
    say(std::isnan(u.time_value.si()) && (detour || (u.queue_delay + u.slow_delay).si() > 0.0),
        "No value of time is given (traffic.car_time_value, traffic.truck_time_value): delay has "
        "no price.");
    say(detour && std::isnan(detour_of(e).si()),
        "No detour is recorded or given: its cost is not known.");
    say(detour && std::isnan(priced(e).get<"traffic.running_cost">().si()),
        "No running cost is given (traffic.running_cost): the distance of a detour has no price.");
    u.cautions.insert(u.cautions.end(), u.not_figured.begin(), u.not_figured.end());
}

void add_cautions(const TrafficFacts& facts, const Past& e, RoadUsers& u) {
    const auto say = [&](bool holds, const char* text) {
        if (holds) {
            u.cautions.emplace_back(text);
        }
    };
    say(e.job().traffic.shares.empty(),
        "The hours of the day follow a usual distribution (from memory); a count of the road takes "
        "its place.");
    say(facts.trucks_assumed, "No record tells the share of trucks: 5 % are assumed.");
    say(facts.lanes_missing,
        "The record has no lane left beside those the closure takes: one more is assumed.");
    say(detail::queues_at(u.kind) && !closure::is_freeway(e.structure.codes.functional_class) &&
            u.kind != Kind::one_lane_two_way,
        "The capacity is one of freeway work zones; other roads have crossings besides.");
    say(u.queue.left > 0.0_each, "The queue outlasts the day.");
}

/// Closures of a stage and how long each stands.
void count_closures(const CrewHours<double>& crew, RoadUsers& u) {
    const Time<> closed = crew.work + crew.set_up + crew.removal + crew.outing.meal;
    u.closures = crew.closures;
    u.closed = u.closures > 0.0_each ? closed / number(u.closures) : 0.0_h;
    u.closed = min_of(u.closed, static_cast<double>(closure::hours_a_day) * 1.0_h);
}

void add_traffic(const TrafficFacts& facts, const Past& e, RoadUsers& u) {
    u.known = true;
    u.day = facts.day;
    u.permitted.fill(closure::hours_a_day);
    if (detail::queues_at(u.kind)) {
        u.permitted =
            closure::permitted_hours(u.day, detail::queue_limits(e.resolved, facts.lanes));
    }
    u.window = closure::longest_window(u.permitted, detail::part_of_day(e.job()));
    u.start = start_of(e, u.window);
    if (detail::queues_at(u.kind)) {
        add_queue(facts, e, u);
        add_slowing(facts, e, u);
    }
    add_cost(facts, e, u);
    add_sources(e, u);
    add_cautions(facts, e, u);
    add_not_figured(e, u);
}

RoadUsers users_of_stage(const Past& e, std::size_t row, const CrewHours<double>& crew) {
    const Model& model = e.resolved.model;
    RoadUsers u;
    u.stage = model.plan->stages[row].name;
    u.kind = model.closures[row];
    count_closures(crew, u);
    if (const auto facts = detail::traffic_facts(e.structure, e.resolved, u.kind)) {
        add_traffic(*facts, e, u);
        return u;
    }
    u.total = u.per_closure = Amount<>(std::numeric_limits<double>::quiet_NaN());
    u.not_figured.emplace_back(
        "No record or job tells how many vehicles pass: nothing can be said of queues.");
    u.cautions = u.not_figured;
    return u;
}

/// The first stage in front, the money of all of them.
RoadUsers gathered(std::vector<RoadUsers> stages) {
    RoadUsers all = stages.front();
    all.total = Amount<>(0.0);
    all.closures = Count<>(0.0);
    for (const RoadUsers& u : stages) {
        all.total += u.total;
        all.closures += u.closures;
        for (const std::string& text : u.not_figured) {
            if (std::find(all.not_figured.begin(), all.not_figured.end(), text) ==
                all.not_figured.end()) {
                all.not_figured.push_back(text);
            }
        }
    }
    all.stages = std::move(stages);
    return all;
}

} // namespace

RoadUsers detail::users_past(const Structure& structure, const Resolved& resolved,
                             const Workspace<double>& ws) {
    const Model& model = resolved.model;
    std::vector<RoadUsers> stages;
    for (std::size_t row = 0; row < model.closures.size(); ++row) {
        if (model.closures[row] != Kind::none) {
            const CrewHours<double>& crew = ws.crews[model.plan->stages[row].crew];
            stages.push_back(users_of_stage({structure, resolved}, row, crew));
        }
    }
    return stages.empty() ? RoadUsers{} : gathered(std::move(stages));
}

RoadUsers road_users(const Estimate& e) {
    Workspace<double> ws(*e.plan);
    price(e.resolved.model, Inputs<double>(e.plan->inputs, e.resolved.values.data()), ws);
    return detail::users_past(e.structure, e.resolved, ws);
}

} // namespace scupper::estimate
