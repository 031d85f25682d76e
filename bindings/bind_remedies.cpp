// Where a nozzle falls short, what mends it, and where it is too strong.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"

#include <map>
#include <pybind11/stl.h>
#include <string>
#include <utility>
#include <vector>

namespace scupper::python {

namespace {

using estimate::Estimate;
using estimate::HardToHold;
using estimate::Remedy;
using estimate::Shortfall;
using estimate::Show;
using estimate::TooStrong;

using RemedyRow = std::map<std::string, py::object>;
using RemedyRows = std::vector<RemedyRow>;

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

RemedyRows shortfalls(const Estimate& e) {
    const Texts texts{Show(e.plan->job)};
    RemedyRows rows;
    for (const Shortfall& s : found_shortfalls(e)) {
        py::list remedies;
        for (const Remedy& r : s.remedies) {
            remedies.append(
                py::make_tuple(r.what, texts.flow(r.flow), texts.pressure(r.pressure), r.total));
        }
        RemedyRow row;
        row["method"] = py::str(s.method);
        row["flow"] = py::str(texts.flow(s.flow));
        row["pressure"] = py::str(texts.pressure(s.pressure));
        row["least_flow"] = py::str(texts.flow(s.need.flow));
        row["least_pressure"] = py::str(texts.pressure(s.need.pressure));
        row["source"] = py::str(s.need.source);
        row["remedies"] = remedies;
        rows.push_back(std::move(row));
    }
    return rows;
}

RemedyRows too_strong(const Estimate& e) {
    const Texts texts{Show(e.plan->job)};
    RemedyRows rows;
    for (const TooStrong& s : estimate::too_strong(e)) {
        RemedyRow row;
        row["method"] = py::str(s.method);
        row["pressure"] = py::str(texts.pressure(s.pressure));
        row["surface"] = py::str(s.limit.surface);
        row["from"] = py::str(texts.pressure(s.limit.from));
        row["to"] = py::str(texts.pressure(s.limit.to));
        row["source"] = py::str(s.limit.source);
        rows.push_back(std::move(row));
    }
    return rows;
}

RemedyRows hard_to_hold(const Estimate& e) {
    const Show show(e.plan->job);
    const auto text = [&](const Force<>& f) {
        return py::str(show.text(f.si(), dim::force, "nozzle.reaction"));
    };
    RemedyRows rows;
    for (const HardToHold& h : estimate::hard_to_hold(e)) {
        RemedyRow row;
        row["method"] = py::str(h.method);
        row["reaction"] = text(h.reaction);
        row["limit"] = text(h.limit);
        row["from_bucket"] = py::bool_(h.from_bucket);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace

void bind_remedies(py::module_& m) {
    m.def("shortfalls", &shortfalls, doc("estimate::shortfalls"), py::arg("estimate"));
    m.def("hard_to_hold", &hard_to_hold, doc("estimate::hard_to_hold"), py::arg("estimate"));
    m.def("too_strong", &too_strong, doc("estimate::too_strong"), py::arg("estimate"));
}

} // namespace scupper::python
