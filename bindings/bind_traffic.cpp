// Traffic past a closure: hours of the day, capacity by method, queues, windows, road-user cost.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using Numbers = std::vector<double>;
using Vehicles = closure::TrafficFlow<>;

closure::LaneClosure lane_closure(int lanes, int open, bool barrier, bool rural, bool night,
                                  double clearance) {
    closure::LaneClosure closure;
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
    return closure::queue_discharge(lane_closure(lanes, open, barrier, rural, night, clearance))
        .si();
}

double work_zone_capacity(const std::string& method, int lanes, int open, bool barrier, bool rural,
                          bool night, double clearance, double truck_share, double truck_equivalent,
                          double intensity) {
    closure::LaneClosure closure = lane_closure(lanes, open, barrier, rural, night, clearance);
    closure.truck_share = truck_share;
    closure.truck_equivalent = truck_equivalent;
    closure.intensity = Vehicles(intensity);
    return closure::work_zone_capacity(closure, closure::capacity_method_by_name(method)).si();
}

double work_zone_speed(int lanes, int open, bool barrier, bool night, double limit,
                       double zone_limit, double ramps) {
    return closure::work_zone_speed(lane_closure(lanes, open, barrier, false, night, 0.0),
                                    Speed<>(limit), Speed<>(zone_limit),
                                    Quantity<dim::count / dim::length>(ramps))
        .si();
}

NumberArray truck_equivalent(const Array& flow, const std::string& terrain) {
    const closure::Terrain which = closure::terrain_by_name(terrain);
    return elementwise([which](double q) { return closure::truck_equivalent(Vehicles(q), which); },
                       flow);
}

closure::TrafficDay traffic_day(const Numbers& demand, double open, double closed) {
    if (demand.size() != closure::hours_a_day) {
        throw InputError({"closure.demand", "demand", std::to_string(demand.size()) + " hours",
                          "24 hours from midnight"});
    }
    closure::TrafficDay day;
    std::transform(demand.begin(), demand.end(), day.demand.begin(),
                   [](double vehicles) { return Vehicles(vehicles); });
    day.open = Vehicles(open);
    day.closed = Vehicles(closed);
    return day;
}

closure::Queue queue(const Numbers& lengths, const Numbers& demand, const Numbers& capacity) {
    std::vector<closure::Period> periods;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        periods.push_back(
            {Time<>(lengths.at(i)), Vehicles(demand.at(i)), Vehicles(capacity.at(i))});
    }
    return closure::queue(periods);
}

closure::Queue closure_queue(const Numbers& demand, double open, double closed, std::size_t first,
                             double time) {
    return closure::closure_queue(traffic_day(demand, open, closed), first, Time<>(time));
}

std::vector<std::size_t> permitted_hours(const Numbers& demand, double open, double closed,
                                         double waiting, double delay) {
    const py::gil_scoped_release free;
    const auto hours = closure::permitted_hours(traffic_day(demand, open, closed),
                                                {Count<>(waiting), Time<>(delay)});
    return {hours.begin(), hours.end()};
}

std::pair<std::size_t, std::size_t> longest_window(const std::vector<std::size_t>& permitted,
                                                   std::size_t first, std::size_t hours) {
    std::array<std::size_t, closure::hours_a_day> all{};
    std::copy_n(permitted.begin(), std::min(permitted.size(), all.size()), all.begin());
    const closure::HourSpan found = closure::longest_window(all, {first, hours});
    return {found.first, found.hours};
}

Columns step_columns(const closure::Queue& q) {
    using closure::QueueStep;
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
    using closure::Queue;
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
    m.def("closure_severity", &closure::closure_severity, doc("closure::closure_severity"),
          arg("lanes"), arg("open"));
    m.def("queue_discharge", &queue_discharge, doc("closure::queue_discharge"), arg("lanes"),
          arg("open"), arg("barrier"), arg("rural"), arg("night"), arg("clearance"));
    m.def("capacity_before_queue", over_arrays(&closure::capacity_before_queue<double>),
          doc("closure::capacity_before_queue"), arg("discharge"), arg("drop"));
    m.def("heavy_vehicle_factor", over_arrays(&closure::heavy_vehicle_factor<double>),
          doc("closure::heavy_vehicle_factor"), arg("share"), arg("equivalent"));
    m.def("work_zone_capacity", &work_zone_capacity, doc("closure::work_zone_capacity"),
          arg("method"), arg("lanes"), arg("open"), arg("barrier"), arg("rural"), arg("night"),
          arg("clearance"), arg("truck_share"), arg("truck_equivalent"), arg("intensity"));
    m.def("work_zone_speed", &work_zone_speed, doc("closure::work_zone_speed"), arg("lanes"),
          arg("open"), arg("barrier"), arg("night"), arg("limit"), arg("zone_limit"), arg("ramps"));
    m.def("optimal_green", over_arrays(&closure::optimal_green<double>),
          doc("closure::optimal_green"), arg("length"));
    m.def("truck_equivalent", &truck_equivalent, doc("closure::truck_equivalent"), arg("flow"),
          arg("terrain"));
    m.def("passenger_car_demand", over_arrays(&closure::passenger_car_demand<double>),
          doc("closure::passenger_car_demand"), arg("demand"), arg("peak_factor"),
          arg("grade_factor"), arg("heavy_factor"));
    m.def("one_lane_speed", over_arrays(&closure::one_lane_speed<double>),
          doc("closure::one_lane_speed"), arg("limit"));
}

void bind_windows(py::module_& m) {
    using py::arg;
    m.def(
        "hourly_shares",
        [](const std::string& pattern) {
            return numbers<double>(closure::hourly_shares(closure::hour_pattern_by_name(pattern)),
                                   [](double share) { return share; });
        },
        doc("closure::hourly_shares"), arg("pattern"));
    m.def("traffic_queue", &queue, doc("closure::queue"), arg("lengths"), arg("demand"),
          arg("capacity"));
    m.def("queue_length", over_arrays(&closure::queue_length<double>), doc("closure::queue_length"),
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
    m.def("time_value", over_arrays(&closure::time_value<double>), doc("closure::time_value"),
          arg("car"), arg("truck"), arg("truck_share"));
    m.def("delay_cost", over_arrays(&closure::delay_cost<double>), doc("closure::delay_cost"),
          arg("delay"), arg("value"));
    m.def("slowing_delay", over_arrays(&closure::slowing_delay<double>),
          doc("closure::slowing_delay"), arg("vehicles"), arg("length"), arg("usual"), arg("slow"));
    m.def("turn_delay", over_arrays(&closure::turn_delay<double>), doc("closure::turn_delay"),
          arg("vehicles"), arg("cycle"), arg("green"));
    m.def("detour_cost", over_arrays(&closure::detour_cost<double>), doc("closure::detour_cost"),
          arg("vehicles"), arg("detour"), arg("speed"), arg("value"), arg("running"));
    m.def("bid_with_time", over_arrays(&closure::bid_with_time<double>),
          doc("closure::bid_with_time"), arg("bid"), arg("time"), arg("daily_cost"));
}

} // namespace

void bind_traffic(py::module_& m) {
    bind_queue(m);
    bind_capacity(m);
    bind_windows(m);
    bind_road_user_cost(m);
}

} // namespace scupper::python
