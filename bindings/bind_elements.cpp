// Element records: read, joined to an inventory, shown as columns.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/inventory.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using inventory::ElementJoin;
using inventory::ElementRecord;
using inventory::ElementRecords;
using inventory::Inventory;

ElementRecords read_elements(const std::string& path) {
    const py::gil_scoped_release free;
    return inventory::read_elements(path);
}

Columns record_columns(const std::vector<ElementRecord>& rows) {
    Columns columns;
    columns["line"] = numbers<std::uint64_t>(rows, [](const ElementRecord& r) { return r.line; });
    columns["state"] = texts(rows, [](const ElementRecord& r) { return r.state; });
    columns["structure_id"] = texts(rows, [](const ElementRecord& r) { return r.structure; });
    columns["element"] = numbers<int>(rows, [](const ElementRecord& r) { return r.element; });
    columns["name"] = texts(rows, [](const ElementRecord& r) {
        return std::string(inventory::element_name(r.element));
    });
    columns["parent"] = numbers<int>(rows, [](const ElementRecord& r) { return r.parent; });
    columns["total"] = numbers<double>(rows, [](const ElementRecord& r) { return r.total; });
    columns["unit"] = texts(rows, [](const ElementRecord& r) {
        const auto unit = static_cast<std::size_t>(inventory::element_unit(r.element));
        return std::string(inventory::element_unit_names.at(unit));
    });
    return columns;
}

Columns rejected_columns(const ElementRecords& e) {
    using inventory::Rejected;
    Columns columns;
    columns["where"] =
        texts(e.rejected, [&](const Rejected& r) { return e.file + ":" + std::to_string(r.line); });
    columns["line"] = numbers<std::uint64_t>(e.rejected, [](const Rejected& r) { return r.line; });
    columns["state"] = texts(e.rejected, [](const Rejected& r) { return r.state; });
    columns["structure_id"] = texts(e.rejected, [](const Rejected& r) { return r.structure; });
    columns["found"] = texts(e.rejected, [](const Rejected& r) { return r.found; });
    columns["reason"] = texts(e.rejected, [](const Rejected& r) { return r.reason; });
    return columns;
}

} // namespace

void bind_elements(py::module_& m) {
    using py::arg;
    py::class_<ElementRecords>(m, "ElementRecords", doc("inventory::ElementRecords"))
        .def("__len__", [](const ElementRecords& e) { return e.records.size(); })
        .def(
            "records", [](const ElementRecords& e) { return record_columns(e.records); },
            doc("inventory::ElementRecord"))
        .def("rejected", &rejected_columns, doc("inventory::ElementRecords::rejected"));
    py::class_<ElementJoin>(m, "ElementJoin", doc("inventory::ElementJoin"))
        .def_readonly("structures", &ElementJoin::structures,
                      doc("inventory::ElementJoin::structures"))
        .def_readonly("matched", &ElementJoin::matched, doc("inventory::ElementJoin::matched"))
        .def_readonly("used", &ElementJoin::used, doc("inventory::ElementJoin::used"))
        .def(
            "unmatched", [](const ElementJoin& j) { return record_columns(j.unmatched); },
            doc("inventory::ElementJoin::unmatched"));
    m.def("read_elements", &read_elements, doc("inventory::read_elements"), arg("path"));
    m.def("join_elements", &inventory::join_elements, doc("inventory::join_elements"),
          arg("inventory"), arg("elements"));
}

} // namespace scupper::python
