// Where a nozzle falls short, what mends it, and where it is too strong.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Estimate;
using estimate::Remedy;
using estimate::Shortfall;
using estimate::Show;
using estimate::TooStrong;

struct Texts {
    Show show;

    std::string flow(const Flow<>& q) const { return show.text(q.si(), dim::flow, "nozzle.flow"); }
    std::string pressure(const Pressure<>& p) const {
        return show.text(p.si(), dim::pressure, "nozzle.pressure");
    }
};

std::vector<Shortfall> found_shortfalls(const Estimate& e) {
    const py::gil_scoped_release free;
    return estimate::shortfalls(e);
}

py::list shortfalls(const Estimate& e) {
    const Texts texts{Show(e.plan->job)};
    py::list rows;
    for (const Shortfall& s : found_shortfalls(e)) {
        py::list remedies;
        for (const Remedy& r : s.remedies) {
            remedies.append(
                py::make_tuple(r.what, texts.flow(r.flow), texts.pressure(r.pressure), r.total));
        }
        py::dict row;
        row["method"] = s.method;
        row["flow"] = texts.flow(s.flow);
        row["pressure"] = texts.pressure(s.pressure);
        row["least_flow"] = texts.flow(s.need.flow);
        row["least_pressure"] = texts.pressure(s.need.pressure);
        row["source"] = s.need.source;
        row["remedies"] = remedies;
        rows.append(row);
    }
    return rows;
}

py::list too_strong(const Estimate& e) {
    const Texts texts{Show(e.plan->job)};
    py::list rows;
    for (const TooStrong& s : estimate::too_strong(e)) {
        py::dict row;
        row["method"] = s.method;
        row["pressure"] = texts.pressure(s.pressure);
        row["surface"] = s.limit.surface;
        row["from"] = texts.pressure(s.limit.from);
        row["to"] = texts.pressure(s.limit.to);
        row["source"] = s.limit.source;
        rows.append(row);
    }
    return rows;
}

} // namespace

void bind_jets(py::module_& m) {
    m.def("shortfalls", &shortfalls, doc("estimate::shortfalls"), py::arg("estimate"));
    m.def("too_strong", &too_strong, doc("estimate::too_strong"), py::arg("estimate"));
}

} // namespace scupper::python
