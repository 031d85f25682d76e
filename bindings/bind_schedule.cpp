// When the work of one structure can be done.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"

#include <limits>
#include <optional>
#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using estimate::Estimate;
using estimate::Schedule;

using WhenGiven = std::optional<std::string>;

WhenGiven day_text(const std::optional<Date>& day) {
    return day ? WhenGiven(work::date_text(*day)) : std::nullopt;
}

/// Day, lowest temperature in kelvin, whether it falls.
using AirRow = std::tuple<std::string, double, bool>;

Schedule schedule(const Estimate& e, const std::vector<AirRow>& rows) {
    work::AirByDay air;
    for (const auto& [day, lowest, falling] : rows) {
        air[work::parse_date(day, "air")] = {Temperature<>(lowest), falling};
    }
    return estimate::schedule(e, air);
}

Columns notice_columns(const Schedule& s) {
    using estimate::NoticeGiven;
    Columns columns;
    columns["notice"] = texts(s.notices, [](const NoticeGiven& n) { return n.notice.name; });
    columns["days_shortest"] =
        numbers<int>(s.notices, [](const NoticeGiven& n) { return n.notice.shortest; });
    columns["days_usual"] =
        numbers<int>(s.notices, [](const NoticeGiven& n) { return n.notice.usual; });
    columns["days_longest"] =
        numbers<int>(s.notices, [](const NoticeGiven& n) { return n.notice.longest; });
    columns["earliest"] =
        texts(s.notices, [](const NoticeGiven& n) { return day_text(n.usual).value_or(""); });
    columns["earliest_at_longest"] =
        texts(s.notices, [](const NoticeGiven& n) { return day_text(n.longest).value_or(""); });
    columns["source"] = texts(s.notices, [](const NoticeGiven& n) { return n.notice.source; });
    columns["note"] = texts(s.notices, [](const NoticeGiven& n) { return n.notice.note; });
    return columns;
}

Columns day_columns(const Schedule& s) {
    using work::PlannedDay;
    Columns columns;
    columns["date"] = texts(s.days, [](const PlannedDay& d) { return work::date_text(d.date); });
    columns["use"] = texts(s.days, [](const PlannedDay& d) {
        return work::day_use_names.at(static_cast<std::size_t>(d.use));
    });
    columns["season"] = texts(s.days, [](const PlannedDay& d) { return d.season; });
    columns["lowest_air_K"] = numbers<double>(s.days, [](const PlannedDay& d) {
        return d.air ? d.air->lowest.kelvin() : std::numeric_limits<double>::quiet_NaN();
    });
    return columns;
}

} // namespace

void bind_schedule(py::module_& m) {
    using py::arg;
    py::class_<Schedule>(m, "Schedule", doc("estimate::Schedule"))
        .def_readonly("shifts", &Schedule::shifts, doc("estimate::Schedule::shifts"))
        .def_property_readonly(
            "earliest", [](const Schedule& s) { return day_text(s.earliest); },
            doc("estimate::Schedule::earliest"))
        .def("notices", &notice_columns, doc("estimate::NoticeGiven"))
        .def("days", &day_columns, doc("work::PlannedDay"));
    m.def("schedule", &schedule, doc("estimate::schedule"), arg("estimate"), arg("air"));
}

} // namespace scupper::python
