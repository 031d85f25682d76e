// Which inputs move the cost of a list.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/inventory.hpp"
#include "scupper/simulate.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using simulate::Swing;
using simulate::Swings;

Swings find_swings(const inventory::Inventory& inv, const PlanHandle& plan, double level,
                   unsigned threads, const py::object& progress) {
    const py::gil_scoped_release free;
    return simulate::swings(inv.structures, plan.plan, level, threads, watcher(progress));
}

Columns swing_columns(const Swings& swings) {
    Columns d;
    const auto money = [&](double Swing::*member) {
        return numbers<double>(swings.rows, [member](const Swing& s) { return s.*member; });
    };
    d["key"] = texts(swings.rows, [](const Swing& s) { return s.key; });
    d["label"] = texts(swings.rows, [](const Swing& s) { return s.label; });
    d["structures"] =
        numbers<std::size_t>(swings.rows, [](const Swing& s) { return s.structures; });
    d["cost_at_low"] = money(&Swing::cost_at_low);
    d["cost_at_high"] = money(&Swing::cost_at_high);
    d["width"] = money(&Swing::width);
    return d;
}

} // namespace

void bind_sensitivity(py::module_& m) {
    using py::arg;
    py::class_<Swings>(m, "Swings", doc("simulate::Swings"))
        .def("columns", &swing_columns, doc("simulate::Swing"))
        .def_readonly("cost", &Swings::cost, doc("simulate::Swings::cost"))
        .def_readonly("level", &Swings::level, doc("simulate::Swings::level"));
    m.def("swings", &find_swings, doc("simulate::swings"), arg("inventory"), arg("plan"),
          arg("level"), arg("threads"), arg("progress").none(true));
}

} // namespace scupper::python
