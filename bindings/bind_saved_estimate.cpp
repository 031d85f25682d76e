// Estimates as documents, and beside each other.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "scupper/json.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::ChangedFigure;
using estimate::ChangedInput;
using estimate::Estimate;
using estimate::Show;
using json::SavedEstimate;

/// What both kinds of change have, in the units of a job.
template <class Row>
Columns named_rows(const std::vector<Row>& rows, const Show& show) {
    Columns columns;
    columns["key"] = texts(rows, [](const Row& r) { return r.key; });
    columns["label"] = texts(rows, [](const Row& r) { return r.label; });
    columns["unit"] = texts(rows, [&](const Row& r) { return show.unit(r.dimension, r.key).name; });
    return columns;
}

Columns figure_rows(const std::vector<ChangedFigure>& rows, const Show& show) {
    const auto shown = [&](double ChangedFigure::*member) {
        return numbers<double>(rows, [&, member](const ChangedFigure& r) {
            return show.number(r.*member, r.dimension, r.key);
        });
    };
    Columns columns = named_rows(rows, show);
    columns["here"] = shown(&ChangedFigure::here);
    columns["there"] = shown(&ChangedFigure::there);
    return columns;
}

/// A rate stands for a time per unit: the lesser of its ends as shown comes first.
ThreePoint as_shown(const ThreePoint& si, const ChangedInput& r, const Show& show) {
    const auto shown = [&](double value) { return show.number(value, r.dimension, r.key); };
    return {.low = std::min(shown(si.low), shown(si.high)),
            .likely = shown(si.likely),
            .high = std::max(shown(si.low), shown(si.high))};
}

Columns input_rows(const std::vector<ChangedInput>& rows, const Show& show) {
    Columns columns = named_rows(rows, show);
    const auto add = [&](const std::string& side, Uncertain ChangedInput::*value) {
        const auto shown = [&](double ThreePoint::*member) {
            return numbers<double>(rows, [&, member](const ChangedInput& r) {
                return as_shown((r.*value).guess, r, show).*member;
            });
        };
        columns[py::str(side + "_low")] = shown(&ThreePoint::low);
        columns[py::str(side)] = shown(&ThreePoint::likely);
        columns[py::str(side + "_high")] = shown(&ThreePoint::high);
        columns[py::str(side + "_source")] = texts(rows, [&](const ChangedInput& r) {
            const Provenance* origin = (r.*value).origin;
            return origin == nullptr ? std::string{} : origin->source;
        });
    };
    add("here", &ChangedInput::here);
    add("there", &ChangedInput::there);
    return columns;
}

constexpr double to_the_bit = 0.0;

Columns changed_figures(const Estimate& here, const Estimate& there) {
    const auto rows = estimate::changed_figures(estimate::named_figures(here),
                                                estimate::named_figures(there), to_the_bit);
    return figure_rows(rows, Show(here.plan->job));
}

Columns changed_inputs(const Estimate& here, const Estimate& there) {
    return input_rows(estimate::changed_inputs(here, there), Show(here.plan->job));
}

/// What has moved since an estimate was saved.
Columns moved(const SavedEstimate& saved, const Estimate& now, double tolerance) {
    const auto rows =
        estimate::changed_figures(estimate::named_figures(now), saved.figures, tolerance);
    return figure_rows(rows, Show(now.plan->job));
}

} // namespace

void bind_saved_estimate(py::module_& m) {
    using py::arg;
    py::class_<SavedEstimate>(m, "SavedEstimate", doc("json::SavedEstimate"))
        .def_static("read", &json::read_estimate, doc("json::read_estimate"), arg("text"),
                    arg("name"))
        .def_readonly("structure", &SavedEstimate::structure, doc("json::SavedEstimate::structure"))
        .def_readonly("job", &SavedEstimate::job, doc("json::SavedEstimate::job"))
        .def_readonly("stamp", &SavedEstimate::stamp, doc("json::SavedEstimate::stamp"))
        .def("moved", &moved, doc("estimate::changed_figures"), arg("now"), arg("tolerance"));
    m.def("write_estimate", &json::write_estimate, doc("json::write_estimate"), arg("estimate"),
          arg("job"), arg("stamp"));
    m.def("changed_figures", &changed_figures, doc("estimate::changed_figures"), arg("here"),
          arg("there"));
    m.def("changed_inputs", &changed_inputs, doc("estimate::changed_inputs"), arg("here"),
          arg("there"));
}

} // namespace scupper::python
