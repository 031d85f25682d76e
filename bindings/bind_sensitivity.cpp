// Which inputs matter to a figure of a list: swings, indices, rank correlation.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/inventory.hpp"
#include "scupper/simulate.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using simulate::FactorIndices;
using simulate::FactorRow;
using simulate::Sensitivity;
using simulate::SensitivitySettings;
using simulate::Swing;
using simulate::Swings;

/// What was found for a figure, and how its totals are shown.
template <class Found>
struct Shown {
    std::shared_ptr<const estimate::Plan> plan;
    Found found;

    const LayoutField& field() const {
        const std::string_view key = simulate::simulated_figures.at(found.figure).key;
        return plan->figures.fields()[plan->figures.at(key, "simulate")];
    }
    double number(double si) const {
        return estimate::Show(plan->job).number(si, field().dimension, field().key);
    }
    std::string unit() const {
        return estimate::Show(plan->job).unit(field().dimension, field().key).name;
    }
};

using ShownSwings = Shown<Swings>;
using ShownSensitivity = Shown<Sensitivity>;

ShownSwings find_swings(const inventory::Inventory& inv, const PlanHandle& plan,
                        const std::string& figure, double level, unsigned threads,
                        const py::object& progress) {
    const std::size_t place = simulate::simulated_figure(figure);
    const py::gil_scoped_release free;
    return {plan.plan,
            simulate::swings(inv.structures, plan.plan, level, threads, watcher(progress), place)};
}

Columns swing_columns(const ShownSwings& swings) {
    const std::vector<Swing>& rows = swings.found.rows;
    const auto shown = [&](double Swing::*member) {
        return numbers<double>(rows,
                               [&, member](const Swing& s) { return swings.number(s.*member); });
    };
    Columns d;
    d["key"] = texts(rows, [](const Swing& s) { return s.key; });
    d["label"] = texts(rows, [](const Swing& s) { return s.label; });
    d["structures"] = numbers<std::size_t>(rows, [](const Swing& s) { return s.structures; });
    d["at_low"] = shown(&Swing::at_low);
    d["at_high"] = shown(&Swing::at_high);
    d["width"] = shown(&Swing::width);
    return d;
}

ShownSensitivity find_sensitivity(const inventory::Inventory& inv, const PlanHandle& plan,
                                  const std::string& figure, std::size_t draws,
                                  std::size_t replicates, std::uint64_t seed,
                                  const std::string& sampling, std::size_t top,
                                  const std::vector<std::vector<std::string>>& together,
                                  unsigned threads, const py::object& progress) {
    const SensitivitySettings settings{.figure = simulate::simulated_figure(figure),
                                       .top = top,
                                       .draws = {.seed = seed,
                                                 .draws = draws,
                                                 .replicates = replicates,
                                                 .sampling = simulate::sampling_of(sampling)},
                                       .together = together};
    const py::gil_scoped_release free;
    return {plan.plan,
            simulate::sensitivity(inv.structures, plan.plan, settings, threads, watcher(progress))};
}

template <class Rows, class Get>
void put_indices(Columns& d, const Rows& rows, const Get& indices) {
    const auto column = [&](double FactorIndices::*member) {
        return numbers<double>(rows, [&, member](const auto& row) { return indices(row).*member; });
    };
    d["first_order"] = column(&FactorIndices::first_order);
    d["first_order_se"] = column(&FactorIndices::first_order_se);
    d["total"] = column(&FactorIndices::total);
    d["total_se"] = column(&FactorIndices::total_se);
}

Columns factor_columns(const ShownSensitivity& s) {
    const std::vector<FactorRow>& rows = s.found.rows;
    Columns d;
    d["key"] = texts(rows, [](const FactorRow& row) {
        std::string key;
        for (const std::string& one : row.keys) {
            key += (key.empty() ? "" : " + ") + one;
        }
        return row.others ? "others" : key;
    });
    d["label"] = texts(rows, [](const FactorRow& row) { return row.label; });
    put_indices(d, rows, [](const FactorRow& row) { return row.indices; });
    d["rank_correlation"] =
        numbers<double>(rows, [](const FactorRow& row) { return row.rank_correlation; });
    return d;
}

Columns indices_of_runs(const std::vector<double>& first, const std::vector<double>& second,
                        const std::vector<std::vector<double>>& exchanged, std::size_t replicates) {
    const auto found = simulate::indices_of({first, second, exchanged}, replicates);
    Columns d;
    put_indices(d, found, [](const FactorIndices& indices) { return indices; });
    return d;
}

} // namespace

void bind_sensitivity(py::module_& m) {
    using py::arg;
    py::class_<ShownSwings>(m, "Swings", doc("simulate::Swings"))
        .def("columns", &swing_columns, doc("simulate::Swing"))
        .def_property_readonly("unit", &ShownSwings::unit, "The unit of the figure.")
        .def_property_readonly(
            "estimated", [](const ShownSwings& s) { return s.number(s.found.estimated); },
            doc("simulate::Swings::estimated"));
    m.def("swings", &find_swings, doc("simulate::swings"), arg("inventory"), arg("plan"),
          arg("figure"), arg("level"), arg("threads"), arg("progress").none(true));
    py::class_<ShownSensitivity>(m, "Sensitivity", doc("simulate::Sensitivity"))
        .def("columns", &factor_columns, doc("simulate::FactorRow"))
        .def_property_readonly("unit", &ShownSensitivity::unit, "The unit of the figure.")
        .def_property_readonly(
            "mean", [](const ShownSensitivity& s) { return s.number(s.found.mean); },
            doc("simulate::Sensitivity::mean"))
        .def_property_readonly(
            "sd", [](const ShownSensitivity& s) { return s.number(s.found.sd); },
            doc("simulate::Sensitivity::sd"))
        .def(
            "left_out",
            [](const ShownSensitivity& s) {
                return numbers<std::size_t>(s.found.left_out, [](std::size_t i) { return i; });
            },
            doc("simulate::Sensitivity::left_out"));
    m.def("sensitivity", &find_sensitivity, doc("simulate::sensitivity"), arg("inventory"),
          arg("plan"), arg("figure"), arg("draws"), arg("replicates"), arg("seed"), arg("sampling"),
          arg("top"), arg("together"), arg("threads"), arg("progress").none(true));
    m.def("indices_of", &indices_of_runs, doc("simulate::indices_of"), arg("first"), arg("second"),
          arg("exchanged"), arg("replicates"));
    m.def(
        "rank_correlation",
        [](const std::vector<double>& x, const std::vector<double>& y) {
            return simulate::rank_correlation(x, y);
        },
        doc("simulate::rank_correlation"), arg("x"), arg("y"));
}

} // namespace scupper::python
