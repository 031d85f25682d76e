// The traffic past the closure of an estimate, and what the closure takes of the crew.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/bid/daily_cost.hpp"
#include "scupper/estimate.hpp"

#include <optional>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::ClosureEffort;
using estimate::RoadUsers;

/// A time in hours, a price per hour, vehicles an hour: as the trade counts them.
double by_the_hour(double si, const Dimension& dimension) {
    static const estimate::Show show("us", "USD");
    return show.number(si, dimension);
}

Columns hour_columns(const RoadUsers& u) {
    Columns columns;
    columns["demand"] = numbers<double>(u.day.demand, [](const closure::TrafficFlow<>& demand) {
        return by_the_hour(demand.si(), dim::count / dim::time);
    });
    columns["permitted"] = numbers<std::int64_t>(
        u.permitted, [](std::size_t hours) { return static_cast<std::int64_t>(hours); });
    return columns;
}

Columns effort_columns(const estimate::Estimate& e) {
    const auto rows = estimate::closure_effort(e);
    Columns columns;
    columns["step"] = texts(rows, [](const ClosureEffort& r) { return r.step; });
    columns["people"] = texts(rows, [](const ClosureEffort& r) { return r.people; });
    columns["number"] = numbers<double>(rows, [](const ClosureEffort& r) { return r.number.si(); });
    columns["time"] = numbers<double>(
        rows, [](const ClosureEffort& r) { return by_the_hour(r.time.si(), dim::time); });
    columns["labour"] = numbers<double>(rows, [](const ClosureEffort& r) {
        return by_the_hour(r.labour.si(), dim::count * dim::time);
    });
    return columns;
}

template <class Get>
void si_property(py::class_<RoadUsers>& bound, const char* name, Get get, const char* text) {
    bound.def_property_readonly(
        name, [get](const RoadUsers& u) { return get(u).si(); }, text);
}

void bind_figures(py::class_<RoadUsers>& bound) {
    si_property(
        bound, "open", [](const RoadUsers& u) { return u.day.open; },
        doc("closure::TrafficDay::open"));
    si_property(
        bound, "past_closure", [](const RoadUsers& u) { return u.day.closed; },
        doc("closure::TrafficDay::closed"));
    si_property(
        bound, "closed", [](const RoadUsers& u) { return u.closed; },
        doc("estimate::RoadUsers::closed"));
    si_property(
        bound, "closures", [](const RoadUsers& u) { return u.closures; },
        doc("estimate::RoadUsers::closures"));
    si_property(
        bound, "queue_length", [](const RoadUsers& u) { return u.queue_length; },
        doc("estimate::RoadUsers::queue_length"));
    si_property(
        bound, "queue_delay", [](const RoadUsers& u) { return u.queue_delay; },
        doc("estimate::RoadUsers::queue_delay"));
    si_property(
        bound, "slow_delay", [](const RoadUsers& u) { return u.slow_delay; },
        doc("estimate::RoadUsers::slow_delay"));
    si_property(
        bound, "time_value", [](const RoadUsers& u) { return u.time_value; },
        doc("estimate::RoadUsers::time_value"));
    si_property(
        bound, "per_closure", [](const RoadUsers& u) { return u.per_closure; },
        doc("estimate::RoadUsers::per_closure"));
    si_property(
        bound, "total", [](const RoadUsers& u) { return u.total; },
        doc("estimate::RoadUsers::total"));
    bound.def_property_readonly(
        "hourly_cost",
        [](const RoadUsers& u) { return by_the_hour(u.per_hour.si(), dim::money_per_time); },
        doc("estimate::RoadUsers::per_hour"));
}

bid::DailyCost daily_cost(const std::vector<RoadUsers>& users, const std::string& currency,
                          std::optional<double> days) {
    return bid::daily_cost(users, parse_currency(currency, "currency"), days);
}

void bind_daily_cost(py::module_& m) {
    using bid::DailyCost;
    py::class_<DailyCost>(m, "DailyCost", doc("bid::DailyCost"))
        .def_property_readonly(
            "amount", [](const DailyCost& d) { return to_text(d.amount); },
            doc("bid::DailyCost::amount"))
        .def_readonly("structures", &DailyCost::structures, doc("bid::DailyCost::structures"))
        .def_property_readonly(
            "closures", [](const DailyCost& d) { return d.closures.si(); },
            doc("bid::DailyCost::closures"))
        .def_property_readonly(
            "closed_hours",
            [](const DailyCost& d) { return by_the_hour(d.closed.si(), dim::time); },
            doc("bid::DailyCost::closed"))
        .def_property_readonly(
            "total", [](const DailyCost& d) { return d.total.si(); }, doc("bid::DailyCost::total"))
        .def_readonly("days", &DailyCost::days, doc("bid::DailyCost::days"))
        .def_readonly("earliest", &DailyCost::earliest, doc("bid::DailyCost::earliest"))
        .def_readonly("latest", &DailyCost::latest, doc("bid::DailyCost::latest"))
        .def_readonly("sources", &DailyCost::sources, doc("bid::DailyCost::sources"))
        .def_readonly("cautions", &DailyCost::cautions, doc("bid::DailyCost::cautions"));
    m.def("daily_cost", &daily_cost, doc("bid::daily_cost"), py::arg("users"), py::arg("currency"),
          py::arg("days"));
}

RoadUsers road_users(const estimate::Estimate& e) {
    const py::gil_scoped_release free;
    return estimate::road_users(e);
}

} // namespace

void bind_road_users(py::module_& m) {
    using py::arg;
    py::class_<RoadUsers> bound(m, "RoadUsers", doc("estimate::RoadUsers"));
    bind_figures(bound);
    bound
        .def_property_readonly(
            "kind", [](const RoadUsers& u) { return closure::kind_name(u.kind); },
            doc("estimate::RoadUsers::kind"))
        .def_readonly("known", &RoadUsers::known, doc("estimate::RoadUsers::known"))
        .def("hours", &hour_columns, "Columns of demand and permitted hours, from midnight.")
        .def_property_readonly(
            "window", [](const RoadUsers& u) { return std::pair(u.window.first, u.window.hours); },
            doc("estimate::RoadUsers::window"))
        .def_readonly("start", &RoadUsers::start, doc("estimate::RoadUsers::start"))
        .def_readonly("queue", &RoadUsers::queue, doc("estimate::RoadUsers::queue"))
        .def_readonly("stage", &RoadUsers::stage, doc("estimate::RoadUsers::stage"))
        .def_readonly("stages", &RoadUsers::stages, doc("estimate::RoadUsers::stages"))
        .def_readonly("not_figured", &RoadUsers::not_figured,
                      doc("estimate::RoadUsers::not_figured"))
        .def_readonly("sources", &RoadUsers::sources, doc("estimate::RoadUsers::sources"))
        .def_readonly("cautions", &RoadUsers::cautions, doc("estimate::RoadUsers::cautions"));
    bind_daily_cost(m);
    m.def("road_users", &road_users, doc("estimate::road_users"), arg("estimate"));
    m.def("closure_effort", &effort_columns, doc("estimate::closure_effort"), arg("estimate"));
}

} // namespace scupper::python
