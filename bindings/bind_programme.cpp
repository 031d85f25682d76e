// Many structures priced.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "ranged_figures.hpp"
#include "scupper/inventory.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Programme;
using estimate::Show;
using estimate::Unpriced;

Programme price_all(const inventory::Inventory& inv, const PlanHandle& plan, unsigned threads,
                    const py::object& progress) {
    const py::gil_scoped_release free;
    return estimate::estimate_all(inv.structures, plan.plan, threads, watcher(progress));
}

std::vector<estimate::RangedFigure> draw_all(const Programme& p, const inventory::Inventory& inv,
                                             const estimate::DrawSettings& settings,
                                             unsigned threads, const py::object& progress) {
    const py::gil_scoped_release free;
    return estimate::total_ranges(p, inv.structures, settings, threads, watcher(progress));
}

Columns range_columns(const Programme& p, const inventory::Inventory& inv, std::size_t draws,
                      std::uint64_t seed, unsigned threads, const py::object& progress) {
    const estimate::DrawSettings settings{.seed = seed, .draws = draws};
    return ranged_columns(draw_all(p, inv, settings, threads, progress), *p.plan);
}

/// Key and unit of every column.
std::vector<std::pair<std::string, std::string>> columns(const Programme& p,
                                                         const std::string& units) {
    const Show show(units, p.plan->job.currency);
    std::vector<std::pair<std::string, std::string>> list;
    for (const std::string& key : p.keys) {
        const LayoutField& field = p.plan->figures.fields()[p.plan->figures.at(key, "programme")];
        list.emplace_back(key, show.unit(field.dimension, key).name);
    }
    return list;
}

py::array_t<double> table(const py::object& self) {
    const auto& p = self.cast<const Programme&>();
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(p.priced.size()),
                                         static_cast<py::ssize_t>(p.keys.size())};
    py::array_t<double> view(shape, p.table.data(), self);
    view.attr("setflags")(py::arg("write") = false);
    return view;
}

Columns unpriced_columns(const Programme& p) {
    Columns d;
    d["index"] = numbers<std::size_t>(p.unpriced, [](const Unpriced& u) { return u.index; });
    d["state"] = texts(p.unpriced, [](const Unpriced& u) { return u.state; });
    d["structure_id"] = texts(p.unpriced, [](const Unpriced& u) { return u.id; });
    d["reason"] = texts(p.unpriced, [](const Unpriced& u) { return u.reason; });
    return d;
}

} // namespace

void bind_programme(py::module_& m) {
    using py::arg;
    py::class_<Programme>(m, "Programme", doc("estimate::Programme"))
        .def("columns", &columns, "Key and unit of every column: us, metric or si.", arg("units"))
        .def("table", &table, doc("estimate::Programme::table"))
        .def(
            "totals",
            [](const Programme& p) {
                return numbers<double>(p.totals, [](double x) { return x; });
            },
            doc("estimate::Programme::totals"))
        .def(
            "priced",
            [](const Programme& p) {
                return numbers<std::size_t>(p.priced, [](std::size_t i) { return i; });
            },
            doc("estimate::Programme::priced"))
        .def(
            "closures",
            [](const Programme& p) {
                return py::typing::List<py::str>(texts(p.closures, closure::kind_name));
            },
            "How the road is closed at each priced structure: a word of the closure kinds.")
        .def("ranges", &range_columns, doc("estimate::total_ranges"), arg("inventory"),
             arg("draws"), arg("seed"), arg("threads"), arg("progress").none(true))
        .def("unpriced", &unpriced_columns, doc("estimate::Unpriced"));
    m.def("estimate_all", &price_all, doc("estimate::estimate_all"), arg("inventory"), arg("plan"),
          arg("threads"), arg("progress").none(true));
}

} // namespace scupper::python
