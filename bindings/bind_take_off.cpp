// The take-off of an inventory as arrays, and the rules it follows.
#include "convert.hpp"
#include "docstrings.hpp"
#include "progress.hpp"
#include "scupper/estimate.hpp"
#include "scupper/inventory.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::TakeOffTable;
using takeoff::Rule;

TakeOffTable table_of(const inventory::Inventory& inv, unsigned threads, const py::object& progress,
                      bool ranges) {
    const py::gil_scoped_release free;
    return estimate::take_off_table(inv.structures, threads, watcher(progress),
                                    ranges ? estimate::Ranges::drawn : estimate::Ranges::none);
}

template <class Enum>
std::vector<std::uint8_t> codes(const std::vector<Enum>& values) {
    std::vector<std::uint8_t> result(values.size());
    std::transform(values.begin(), values.end(), result.begin(),
                   [](Enum e) { return static_cast<std::uint8_t>(e); });
    return result;
}

Columns take_off(const inventory::Inventory& inv, unsigned threads, const py::object& progress,
                 bool ranges) {
    TakeOffTable table = table_of(inv, threads, progress, ranges);
    const auto rows = static_cast<py::ssize_t>(table.verdict.size());
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(column_count()), rows};
    Columns result;
    result["value"] = hand_over(std::move(table.value), shape);
    if (ranges) {
        result["low"] = hand_over(std::move(table.low), shape);
        result["high"] = hand_over(std::move(table.high), shape);
    }
    result["basis"] = hand_over(codes(table.basis), shape);
    result["verdict"] = texts(table.verdict, [](takeoff::Verdict v) { return verdict_name(v); });
    return result;
}

using NameAndUnit = std::pair<std::string_view, std::string>;

std::vector<NameAndUnit> take_off_columns(const std::string& units) {
    const estimate::Show show(units, "currency");
    std::vector<NameAndUnit> columns;
    for (Slot s = 0; s < column_count(); ++s) {
        columns.emplace_back(slot_table[s].key, show.unit(slot_table[s].dimension).name);
    }
    return columns;
}

Columns rule_columns() {
    const auto rows = takeoff::rules();
    Columns columns;
    columns["name"] = texts(rows, [](const Rule& r) { return r.name; });
    columns["field"] = texts(rows, [](const Rule& r) { return r.field; });
    columns["formula"] = texts(rows, [](const Rule& r) { return r.formula; });
    columns["low"] = numbers<double>(rows, [](const Rule& r) { return r.low; });
    columns["likely"] = numbers<double>(rows, [](const Rule& r) { return r.likely; });
    columns["high"] = numbers<double>(rows, [](const Rule& r) { return r.high; });
    columns["basis"] = texts(rows, [](const Rule& r) { return basis_name(r.basis); });
    columns["when"] = texts(rows, [](const Rule& r) { return r.when; });
    columns["missing"] = texts(rows, [](const Rule& r) { return r.missing; });
    columns["source"] = texts(rows, [](const Rule& r) { return r.source; });
    return columns;
}

} // namespace

void bind_take_off(py::module_& m) {
    m.def("take_off", &take_off, doc("estimate::take_off_table"), py::arg("inventory"),
          py::arg("threads"), py::arg("progress").none(true), py::arg("ranges"));
    m.def("take_off_columns", &take_off_columns,
          "Quantity and unit of every column, in the order of the table.", py::arg("units"));
    m.def("rules", &rule_columns, doc("takeoff::rules"));
}

} // namespace scupper::python
