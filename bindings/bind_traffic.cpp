// Traffic past a closure: hours of the day, capacity by method, queues, windows, road-user cost.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

namespace c = closure;
using Numbers = std::vector<double>;
using Flow = c::TrafficFlow<>;

c::LaneClosure lane_closure(int lanes, int open, bool barrier, bool rural, bool night,
                            double clearance) {
    c::LaneClosure closure;
    closure.lanes = lanes;
    closure.open = open;
    closure.barrier = barrier;
    closure.rural = rural;
    closure.night = night;
    closure.clearance = Length<>(clearance);
    return closure;
}

double queue_discharge(int lanes, int open, bool barrier, bool rural, bool night,
                       double clearance) {
    return c::queue_discharge(lane_closure(lanes, open, barrier, rural, night, clearance)).si();
}

double work_zone_capacity(const std::string& method, int lanes, int open, bool barrier, bool rural,
                          bool night, double clearance, double truck_share, double truck_equivalent,
                          double intensity) {
    c::LaneClosure closure = lane_closure(lanes, open, barrier, rural, night, clearance);
    closure.truck_share = truck_share;
    closure.truck_equivalent = truck_equivalent;
    closure.intensity = Flow(intensity);
    return c::work_zone_capacity(closure, c::capacity_method_by_name(method)).si();
}

double work_zone_speed(int lanes, int open, bool barrier, bool night, double limit,
                       double zone_limit, double ramps) {
    return c::work_zone_speed(lane_closure(lanes, open, barrier, false, night, 0.0), Speed<>(limit),
                              Speed<>(zone_limit), Quantity<dim::count / dim::length>(ramps))
        .si();
}

NumberArray truck_equivalent(const Array& flow, const std::string& terrain) {
    const c::Terrain which = c::terrain_by_name(terrain);
    return elementwise([which](double q) { return c::truck_equivalent(Flow(q), which); }, flow);
}

c::TrafficDay traffic_day(const Numbers& demand, double open, double closed) {
    if (demand.size() != c::hours_a_day) {
        throw InputError({"closure.demand", "demand", std::to_string(demand.size()) + " hours",
                          "24 hours from midnight"});
    }
    c::TrafficDay day;
    std::transform(demand.begin(), demand.end(), day.demand.begin(),
                   [](double vehicles) { return Flow(vehicles); });
    day.open = Flow(open);
    day.closed = Flow(closed);
    return day;
}

c::Queue queue(const Numbers& lengths, const Numbers& demand, const Numbers& capacity) {
    std::vector<c::Period> periods;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        periods.push_back({Time<>(lengths.at(i)), Flow(demand.at(i)), Flow(capacity.at(i))});
    }
    return c::queue(periods);
}

c::Queue closure_queue(const Numbers& demand, double open, double closed, std::size_t first,
                       double time) {
    return c::closure_queue(traffic_day(demand, open, closed), first, Time<>(time));
}

std::vector<std::size_t> permitted_hours(const Numbers& demand, double open, double closed,
                                         double waiting, double delay) {
    const py::gil_scoped_release free;
    const auto hours =
        c::permitted_hours(traffic_day(demand, open, closed), {Count<>(waiting), Time<>(delay)});
    return {hours.begin(), hours.end()};
}

std::pair<std::size_t, std::size_t> longest_window(const std::vector<std::size_t>& permitted,
                                                   std::size_t first, std::size_t hours) {
    std::array<std::size_t, c::hours_a_day> all{};
    std::copy_n(permitted.begin(), std::min(permitted.size(), all.size()), all.begin());
    const c::HourSpan found = c::longest_window(all, {first, hours});
    return {found.first, found.hours};
}

Columns step_columns(const c::Queue& q) {
    using c::QueueStep;
    Columns columns;
    columns["end"] = numbers<double>(q.steps, [](const QueueStep& s) { return s.end.si(); });
    columns["waiting"] =
        numbers<double>(q.steps, [](const QueueStep& s) { return s.waiting.si(); });
    columns["longest"] =
        numbers<double>(q.steps, [](const QueueStep& s) { return s.longest.si(); });
    columns["delay"] = numbers<double>(q.steps, [](const QueueStep& s) { return s.delay.si(); });
    return columns;
}

void bind_queue(py::module_& m) {
    using c::Queue;
    const auto in_si = [](auto member) {
        return [member](const Queue& q) { return (q.*member).si(); };
    };
    py::class_<Queue>(m, "TrafficQueue", doc("closure::Queue"))
        .def("steps", &step_columns, doc("closure::QueueStep"))
        .def_property_readonly("longest", in_si(&Queue::longest), doc("closure::Queue::longest"))
        .def_property_readonly("longest_at", in_si(&Queue::longest_at),
                               doc("closure::Queue::longest_at"))
        .def_property_readonly("delay", in_si(&Queue::delay), doc("closure::Queue::delay"))
        .def_property_readonly("longest_delay", in_si(&Queue::longest_delay),
                               doc("closure::Queue::longest_delay"))
        .def_property_readonly("arrived", in_si(&Queue::arrived), doc("closure::Queue::arrived"))
        .def_property_readonly("delayed", in_si(&Queue::delayed), doc("closure::Queue::delayed"))
        .def_property_readonly("left", in_si(&Queue::left), doc("closure::Queue::left"))
        .def_property_readonly(
            "cleared",
            [](const Queue& q) {
                return q.cleared ? std::optional(q.cleared->si()) : std::nullopt;
            },
            doc("closure::Queue::cleared"));
}

void bind_capacity(py::module_& m) {
    using py::arg;
    m.def("closure_severity", &c::closure_severity, doc("closure::closure_severity"), arg("lanes"),
          arg("open"));
    m.def("queue_discharge", &queue_discharge, doc("closure::queue_discharge"), arg("lanes"),
          arg("open"), arg("barrier"), arg("rural"), arg("night"), arg("clearance"));
    m.def("capacity_before_queue", over_arrays(&c::capacity_before_queue<double>),
          doc("closure::capacity_before_queue"), arg("discharge"), arg("drop"));
    m.def("heavy_vehicle_factor", over_arrays(&c::heavy_vehicle_factor<double>),
          doc("closure::heavy_vehicle_factor"), arg("share"), arg("equivalent"));
    m.def("work_zone_capacity", &work_zone_capacity, doc("closure::work_zone_capacity"),
          arg("method"), arg("lanes"), arg("open"), arg("barrier"), arg("rural"), arg("night"),
          arg("clearance"), arg("truck_share"), arg("truck_equivalent"), arg("intensity"));
    m.def("work_zone_speed", &work_zone_speed, doc("closure::work_zone_speed"), arg("lanes"),
          arg("open"), arg("barrier"), arg("night"), arg("limit"), arg("zone_limit"), arg("ramps"));
    m.def("optimal_green", over_arrays(&c::optimal_green<double>), doc("closure::optimal_green"),
          arg("length"));
    m.def("truck_equivalent", &truck_equivalent, doc("closure::truck_equivalent"), arg("flow"),
          arg("terrain"));
    m.def("passenger_car_demand", over_arrays(&c::passenger_car_demand<double>),
          doc("closure::passenger_car_demand"), arg("demand"), arg("peak_factor"),
          arg("grade_factor"), arg("heavy_factor"));
    m.def("one_lane_speed", over_arrays(&c::one_lane_speed<double>), doc("closure::one_lane_speed"),
          arg("limit"));
}

void bind_windows(py::module_& m) {
    using py::arg;
    m.def(
        "hourly_shares",
        [](const std::string& pattern) {
            return numbers<double>(c::hourly_shares(c::hour_pattern_by_name(pattern)),
                                   [](double share) { return share; });
        },
        doc("closure::hourly_shares"), arg("pattern"));
    m.def("traffic_queue", &queue, doc("closure::queue"), arg("lengths"), arg("demand"),
          arg("capacity"));
    m.def("queue_length", over_arrays(&c::queue_length<double>), doc("closure::queue_length"),
          arg("waiting"), arg("spacing"), arg("lanes"));
    m.def("closure_queue", &closure_queue, doc("closure::closure_queue"), arg("demand"),
          arg("open"), arg("closed"), arg("first"), arg("time"));
    m.def("permitted_hours", &permitted_hours, doc("closure::permitted_hours"), arg("demand"),
          arg("open"), arg("closed"), arg("waiting"), arg("delay"));
    m.def("longest_window", &longest_window, doc("closure::longest_window"), arg("permitted"),
          arg("first"), arg("hours"));
}

void bind_road_user_cost(py::module_& m) {
    using py::arg;
    m.def("time_value", over_arrays(&c::time_value<double>), doc("closure::time_value"), arg("car"),
          arg("truck"), arg("truck_share"));
    m.def("delay_cost", over_arrays(&c::delay_cost<double>), doc("closure::delay_cost"),
          arg("delay"), arg("value"));
    m.def("slowing_delay", over_arrays(&c::slowing_delay<double>), doc("closure::slowing_delay"),
          arg("vehicles"), arg("length"), arg("usual"), arg("slow"));
    m.def("turn_delay", over_arrays(&c::turn_delay<double>), doc("closure::turn_delay"),
          arg("vehicles"), arg("cycle"), arg("green"));
    m.def("detour_cost", over_arrays(&c::detour_cost<double>), doc("closure::detour_cost"),
          arg("vehicles"), arg("detour"), arg("speed"), arg("value"), arg("running"));
    m.def("bid_with_time", over_arrays(&c::bid_with_time<double>), doc("closure::bid_with_time"),
          arg("bid"), arg("time"), arg("daily_cost"));
}

} // namespace

void bind_traffic(py::module_& m) {
    bind_queue(m);
    bind_capacity(m);
    bind_windows(m);
    bind_road_user_cost(m);
}

} // namespace scupper::python
