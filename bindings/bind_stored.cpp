// An inventory as columns and notes: for files that hold columns and for other processes.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"

#include <pybind11/stl.h>
#include <pybind11/typing.h>
#include <tuple>

namespace scupper::python {

namespace {

using inventory::Doubt;
using inventory::Inventory;
using inventory::Rejected;
using json::StructureColumn;

/// What an inventory holds beside its structures.
using Notes = py::typing::Dict<py::str, py::object>;
/// File, line, state, structure, found, reason.
using RejectedRow =
    std::tuple<std::uint32_t, std::uint64_t, std::string, std::string, std::string, std::string>;
/// File, line, state, structure, column, found, reason, kept.
using DoubtRow = std::tuple<std::uint32_t, std::uint64_t, std::string, std::string, std::string,
                            std::string, std::string, bool>;

py::object handed_over(StructureColumn& column) {
    if (const auto* words = std::get_if<std::vector<std::string>>(&column.values)) {
        return texts(*words, [](const std::string& word) { return word; });
    }
    const auto array = [](auto& values) -> py::object {
        const auto rows = static_cast<py::ssize_t>(values.size());
        return hand_over(std::move(values), {rows});
    };
    auto* numbers = std::get_if<std::vector<double>>(&column.values);
    return numbers != nullptr ? array(*numbers)
                              : array(std::get<std::vector<std::int64_t>>(column.values));
}

Columns structure_columns(const Inventory& inv) {
    Columns columns;
    for (StructureColumn& column : json::structure_columns(inv.structures)) {
        columns[text(column.name)] = handed_over(column);
    }
    return columns;
}

StructureColumn column_of(const std::string& name, const py::handle& values) {
    const auto is = [&](const char* kind) {
        return py::isinstance<py::array>(values) &&
               py::str(values.attr("dtype").attr("kind")).equal(py::str(kind));
    };
    if (is("f")) {
        return {name, values.cast<std::vector<double>>()};
    }
    if (is("i")) {
        return {name, values.cast<std::vector<std::int64_t>>()};
    }
    return {name, values.cast<std::vector<std::string>>()};
}

/// Everything but the structures, as plain values.
Notes notes_of(const Inventory& inv) {
    std::vector<RejectedRow> rejected;
    for (const Rejected& r : inv.rejected) {
        rejected.emplace_back(r.file, r.line, r.state, r.structure, r.found, r.reason);
    }
    std::vector<DoubtRow> doubts;
    for (const Doubt& d : inv.doubts) {
        doubts.emplace_back(d.file, d.line, d.state, d.structure, d.column, d.found, d.reason,
                            d.kept);
    }
    Notes notes;
    notes["files"] = py::cast(inv.files);
    notes["absent_columns"] = py::cast(inv.absent_columns);
    notes["rows"] = py::cast(inv.rows);
    notes["routes_under"] = py::cast(inv.routes_under);
    notes["blank_lines"] = py::cast(inv.blank_lines);
    notes["rejected"] = py::cast(rejected);
    notes["doubts"] = py::cast(doubts);
    return notes;
}

void read_notes(const Notes& notes, Inventory& inv) {
    inv.files = notes["files"].cast<std::vector<std::string>>();
    inv.absent_columns = notes["absent_columns"].cast<std::vector<std::string>>();
    inv.rows = notes["rows"].cast<std::uint64_t>();
    inv.routes_under = notes["routes_under"].cast<std::uint64_t>();
    inv.blank_lines = notes["blank_lines"].cast<std::uint64_t>();
    for (const auto& [file, line, state, id, found, reason] :
         notes["rejected"].cast<std::vector<RejectedRow>>()) {
        inv.rejected.push_back({file, line, state, id, found, reason});
    }
    for (const auto& [file, line, state, id, column, found, reason, kept] :
         notes["doubts"].cast<std::vector<DoubtRow>>()) {
        inv.doubts.push_back({file, line, state, id, column, found, reason, kept});
    }
}

Inventory inventory_of(const Columns& columns, const Notes& notes) {
    std::vector<StructureColumn> list;
    for (const auto& [name, values] : columns) {
        list.push_back(column_of(name.cast<std::string>(), values));
    }
    Inventory inv;
    read_notes(notes, inv);
    inv.structures = json::structures_of(list);
    inv.reindex();
    return inv;
}

/// A run of its structures; what was rejected or doubted stays with the whole.
Inventory slice(const Inventory& from, std::size_t first, std::size_t count) {
    Inventory part;
    const std::size_t begin = std::min(first, from.structures.size());
    const std::size_t rows = std::min(count, from.structures.size() - begin);
    const auto at = from.structures.begin() + static_cast<std::ptrdiff_t>(begin);
    part.structures.assign(at, at + static_cast<std::ptrdiff_t>(rows));
    part.files = from.files;
    part.rows = rows;
    part.reindex();
    return part;
}

} // namespace

void bind_stored(py::module_& m) {
    using py::arg;
    m.def("structure_columns", &structure_columns, doc("json::structure_columns"),
          arg("inventory"));
    m.def("inventory_notes", &notes_of,
          "Files, rows, rejected records and doubts of an inventory, as plain values.",
          arg("inventory"));
    m.def("inventory_of", &inventory_of, doc("json::structures_of"), arg("columns"), arg("notes"));
    m.def("inventory_slice", &slice, "Some structures of an inventory that follow on one another.",
          arg("inventory"), arg("first"), arg("count"));
}

} // namespace scupper::python
