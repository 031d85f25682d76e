// The estimate of one structure.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "ranged_figures.hpp"
#include "shown_derivation.hpp"

#include <optional>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Assumption;
using estimate::Estimate;
using estimate::PricedLine;
using estimate::RangedFigure;
using estimate::Show;
using estimate::Untold;

Estimate price(const Structure& structure, const PlanHandle& plan) {
    const py::gil_scoped_release free;
    return estimate::estimate(structure, plan.plan);
}

const LayoutField& field_of(const Estimate& e, std::string_view key) {
    return e.plan->figures.fields()[estimate::figure_place_of(*e.plan, key)];
}

/// A figure in the units of the job, and that unit.
std::pair<double, std::string> figure(const Estimate& e, const std::string& key) {
    const Show show(e.plan->job);
    const LayoutField& f = field_of(e, key);
    return {show.number(e.figure(key), f.dimension, f.key), show.unit(f.dimension, f.key).name};
}

py::str figure_text(const Estimate& e, const std::string& key) {
    const LayoutField& f = field_of(e, key);
    return text(Show(e.plan->job).text(e.figure(key), f.dimension, f.key));
}

Columns figure_columns(const Estimate& e) {
    const Show show(e.plan->job);
    const auto& fields = e.plan->figures.fields();
    py::list values;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        values.append(show.number(e.figures[i], fields[i].dimension, fields[i].key));
    }
    Columns columns;
    columns["key"] = texts(fields, [](const LayoutField& f) { return f.key; });
    columns["label"] = texts(fields, [](const LayoutField& f) { return f.label; });
    columns["value"] = values;
    columns["unit"] =
        texts(fields, [&](const LayoutField& f) { return show.unit(f.dimension, f.key).name; });
    return columns;
}

Columns cost_line_columns(const Estimate& e) {
    const auto lines = estimate::cost_lines(e);
    Columns columns;
    columns["component"] = texts(lines, [](const PricedLine& l) { return l.component; });
    columns["operation"] = texts(lines, [](const PricedLine& l) { return l.operation; });
    columns["resource"] = texts(lines, [](const PricedLine& l) { return l.resource; });
    columns["amount"] = numbers<double>(lines, [](const PricedLine& l) { return l.amount; });
    return columns;
}

std::vector<std::pair<std::string, std::string_view>> stage_closures(const Estimate& e) {
    std::vector<std::pair<std::string, std::string_view>> rows;
    for (std::size_t i = 0; i < e.plan->stages.size(); ++i) {
        rows.emplace_back(e.plan->stages[i].name, closure::kind_name(e.resolved.model.closures[i]));
    }
    return rows;
}

std::vector<std::string> active_methods(const Estimate& e) {
    std::vector<std::string> names;
    for (std::size_t row = 0; row < e.plan->methods.size(); ++row) {
        if (e.resolved.model.active_methods[row]) {
            names.push_back(e.plan->methods[row].name);
        }
    }
    return names;
}

std::vector<std::pair<std::string, closure::Plan>> stage_plans(const Estimate& e) {
    std::vector<std::pair<std::string, closure::Plan>> plans;
    for (estimate::StagePlan& p : estimate::closure_plans(e)) {
        plans.emplace_back(std::move(p.stage), std::move(p.plan));
    }
    return plans;
}

ShownDerivation explain(const Estimate& e, const std::string& key,
                        std::optional<std::size_t> depth) {
    const py::gil_scoped_release free;
    return {estimate::explain(e, key), Show(e.plan->job), depth.value_or(every_level)};
}

std::vector<RangedFigure> draw(const Estimate& e, std::size_t draws, std::uint64_t seed) {
    const py::gil_scoped_release free;
    return estimate::ranges(e, {.seed = seed, .draws = draws});
}

Columns range_columns(const Estimate& e, std::size_t draws, std::uint64_t seed) {
    return ranged_columns(draw(e, draws, seed), *e.plan);
}

std::vector<Assumption> guesses(const Estimate& e) {
    const py::gil_scoped_release free;
    return estimate::assumptions(e);
}

/// A rate stands for a time per unit: shown, its ends change places.
bool ends_change(const Assumption& a, const Show& show) {
    return show.number(a.value.guess.low, a.dimension, a.key) >
           show.number(a.value.guess.high, a.dimension, a.key);
}

Assumption as_shown(Assumption a, const Show& show) {
    if (ends_change(a, show)) {
        std::swap(a.value.guess.low, a.value.guess.high);
        std::swap(a.total_at_low, a.total_at_high);
    }
    return a;
}

Columns assumption_columns(const Estimate& e) {
    auto rows = guesses(e);
    const Show show(e.plan->job);
    std::transform(rows.begin(), rows.end(), rows.begin(),
                   [&](const Assumption& a) { return as_shown(a, show); });
    const auto shown = [&](double ThreePoint::*member) {
        return texts(rows, [&, member](const Assumption& a) {
            return show.text(a.value.guess.*member, a.dimension, a.key);
        });
    };
    Columns columns;
    columns["key"] = texts(rows, [](const Assumption& a) { return a.key; });
    columns["label"] = texts(rows, [](const Assumption& a) { return a.label; });
    columns["low"] = shown(&ThreePoint::low);
    columns["likely"] = shown(&ThreePoint::likely);
    columns["high"] = shown(&ThreePoint::high);
    columns["basis"] = texts(rows, [](const Assumption& a) { return basis_name(a.value.basis); });
    columns["source"] = texts(rows, [](const Assumption& a) {
        return a.value.origin == nullptr ? std::string{} : a.value.origin->source;
    });
    columns["total_at_low"] =
        numbers<double>(rows, [](const Assumption& a) { return a.total_at_low; });
    columns["total_at_high"] =
        numbers<double>(rows, [](const Assumption& a) { return a.total_at_high; });
    columns["worth"] = numbers<double>(rows, [](const Assumption& a) { return a.worth; });
    return columns;
}

std::vector<Untold> untold(const Estimate& e) {
    const py::gil_scoped_release free;
    return estimate::untold_quantities(e);
}

using UntoldRow = std::tuple<std::string_view, double, double, std::string, double>;

/// Rows of label, low, high, unit and worth.
std::vector<UntoldRow> untold_rows(const Estimate& e) {
    const Show show(e.plan->job);
    std::vector<UntoldRow> rows;
    for (const Untold& u : untold(e)) {
        const SlotInfo& slot = slot_table[u.slot];
        rows.emplace_back(slot.label, show.number(u.low, slot.dimension),
                          show.number(u.high, slot.dimension), show.unit(slot.dimension).name,
                          u.worth);
    }
    return rows;
}

/// Id, text and source of every caution.
std::vector<std::map<std::string, std::string>> caution_rows(const Estimate& e) {
    std::vector<std::map<std::string, std::string>> rows;
    for (const Caution& c : estimate::cautions(e)) {
        rows.push_back({{"id", c.id}, {"text", c.text}, {"source", c.source}});
    }
    return rows;
}

} // namespace

void bind_estimate(py::module_& m) {
    using py::arg;
    py::class_<Estimate>(m, "Estimate", doc("estimate::Estimate"))
        .def_property_readonly(
            "structure", [](const Estimate& e) { return e.structure; },
            "The record that was priced.")
        .def_property_readonly(
            "closure",
            [](const Estimate& e) { return closure::kind_name(e.resolved.model.closure); },
            "How the road is closed, as the job or else the record has it; of several stages the "
            "first that has a closure.")
        .def_property_readonly("closures", &stage_closures,
                               "Name of every stage and how the road is closed meanwhile.")
        .def("figure", &figure, doc("estimate::Estimate::figure"), arg("key"))
        .def("text", &figure_text, "A figure as text in the job's units.", arg("key"))
        .def("figures", &figure_columns, "Columns of every figure, in the job's units.")
        .def("cost_lines", &cost_line_columns, doc("estimate::cost_lines"))
        .def("explain", &explain, doc("estimate::explain"), arg("key"), arg("depth") = py::none())
        .def("ranges", &range_columns, doc("estimate::ranges"), arg("draws"), arg("seed"))
        .def("assumptions", &assumption_columns, doc("estimate::assumptions"))
        .def("methods", &active_methods, "Methods whose nozzle runs at this structure.")
        .def("refused", &estimate::refused_operations, doc("estimate::refused_operations"))
        .def("cautions", &caution_rows, doc("estimate::cautions"))
        .def(
            "closure_plan", [](const Estimate& e) { return estimate::closure_plan(e); },
            doc("estimate::closure_plan"))
        .def("closure_plans", &stage_plans, doc("estimate::closure_plans"))
        .def("posting_warnings", &estimate::posting_warnings, doc("estimate::posting_warnings"))
        .def("untold", &untold_rows, doc("estimate::untold_quantities"));
    m.def("estimate", &price, doc("estimate::estimate"), arg("structure"), arg("plan"));
}

} // namespace scupper::python
