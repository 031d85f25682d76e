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

using NameAndUnit = std::pair<std::string_view, std::string>;

std::vector<NameAndUnit> take_off_columns(const std::string& units) {
    const estimate::Show show(units, "currency");
    std::vector<NameAndUnit> columns;
    for (Slot s = 0; s < column_count(); ++s) {
        columns.emplace_back(slot_table[s].key, show.unit(slot_table[s].dimension).name);
    }
    return columns;
}

/// The numbers in the units of their columns, in place: copies of a nation's take-off cost time.
void show_in(const std::vector<NameAndUnit>& columns, std::size_t rows,
             std::vector<double>& values) {
    auto next = values.begin();
    for (const auto& [name, unit_name] : columns) {
        const Unit unit = parse_unit(unit_name, "unit");
        const auto end = next + static_cast<std::ptrdiff_t>(values.empty() ? 0 : rows);
        std::transform(next, end, next, [&](double si) { return to_unit(si, unit); });
        next = end;
    }
}

Columns take_off(const inventory::Inventory& inv, unsigned threads, const py::object& progress,
                 bool ranges, const std::string& units) {
    const std::vector<NameAndUnit> columns = take_off_columns(units);
    TakeOffTable table = table_of(inv, threads, progress, ranges);
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(column_count()),
                                         static_cast<py::ssize_t>(table.verdict.size())};
    Columns result;
    const auto add = [&](const char* name, std::vector<double>& values) {
        show_in(columns, table.verdict.size(), values);
        result[name] = hand_over(std::move(values), shape);
    };
    add("value", table.value);
    if (ranges) {
        add("low", table.low);
        add("high", table.high);
    }
    result["basis"] = hand_over(codes(table.basis), shape);
    result["verdict"] = hand_over(codes(table.verdict), {shape[1]});
    return result;
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
          py::arg("threads"), py::arg("progress").none(true), py::arg("ranges"), py::arg("units"));
    m.def("take_off_columns", &take_off_columns,
          "Quantity and unit of every column, in the order of the table.", py::arg("units"));
    m.def("rules", &rule_columns, doc("takeoff::rules"));
}

} // namespace scupper::python
