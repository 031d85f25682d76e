// Measured structures in the project's own forms.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

#include <map>
#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using inventory::Inventory;

/// Line and cells of every row.
using SheetRows = std::vector<std::tuple<std::uint64_t, std::vector<std::string>>>;

Inventory read_table(const std::string& name, const std::vector<std::string>& headers,
                     const SheetRows& cells) {
    const py::gil_scoped_release free;
    std::vector<json::StructureRow> rows;
    rows.reserve(cells.size());
    for (const auto& [line, row] : cells) {
        rows.push_back({line, row});
    }
    return json::read_structure_table(name, headers, rows);
}

std::string write(const Inventory& inv) {
    const py::gil_scoped_release free;
    return json::write_structures(inv.structures);
}

std::vector<std::string> headers(const std::string& units) {
    return json::structure_headers(estimate::unit_system(units));
}

/// A column for every input that was measured at a structure; NaN where it was not.
Columns measured(const Inventory& inv) {
    const std::vector<double> nothing(inv.structures.size(), not_recorded);
    std::map<std::string, std::vector<double>> values;
    for (std::size_t i = 0; i < inv.structures.size(); ++i) {
        for (const GivenValue& given : inv.structures[i].given) {
            values.try_emplace(given.key, nothing).first->second[i] = given.value.guess.likely;
        }
    }
    Columns columns;
    for (auto& [key, column] : values) {
        const auto rows = static_cast<py::ssize_t>(column.size());
        const std::string header = json::measured_header(key, UnitSystem::si);
        columns[text(header)] = hand_over(std::move(column), {rows});
    }
    return columns;
}

} // namespace

void bind_structures(py::module_& m) {
    using py::arg;
    m.def("read_structure_table", &read_table, doc("json::read_structure_table"), arg("name"),
          arg("headers"), arg("rows"));
    m.def("write_structures", &write, doc("json::write_structures"), arg("inventory"));
    m.def("measured", &measured,
          "Columns of what was measured beyond the records, the likely values in SI units.",
          arg("inventory"));
    m.def("structure_headers", &headers, doc("json::structure_headers"), arg("units"));
    m.def("structures_form", &json::structures_form, doc("json::structures_form"));
    m.def("structures_schema", &json::structures_schema, doc("json::structures_schema"));
}

} // namespace scupper::python
