// Reading an inventory; its structures, doubts and rejected records as columns.
#include "convert.hpp"
#include "docstrings.hpp"
#include "progress.hpp"
#include "recorded.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"
#include "scupper/random.hpp"
#include "scupper/unit.hpp"

#include <bit>
#include <cmath>
#include <optional>
#include <pybind11/stl.h>
#include <set>
#include <utility>

namespace scupper::python {

namespace {

using inventory::Doubt;
using inventory::FileReader;
using inventory::Inventory;
using inventory::Rejected;

Inventory read_inventory(const std::string& path, const py::object& progress) {
    const py::gil_scoped_release free;
    return json::read_any_inventory(path, watcher(progress));
}

/// The next piece of a file, or None after the last.
std::optional<Inventory> next_piece(FileReader& reader, const py::object& progress) {
    const py::gil_scoped_release free;
    return reader.next(watcher(progress));
}

/// Structures from anywhere.
Inventory gathered(const std::vector<const Structure*>& structures) {
    Inventory result;
    for (const Structure* s : structures) {
        result.structures.push_back(*s);
    }
    result.rows = result.structures.size();
    result.reindex();
    return result;
}

/// Some structures of an inventory, with the doubts about them.
Inventory part(const Inventory& from, const std::vector<const Structure*>& structures) {
    Inventory result = gathered(structures);
    std::set<std::pair<std::string, std::string>> names;
    for (const Structure& s : result.structures) {
        names.emplace(s.state, s.id);
    }
    result.files = from.files;
    for (const Doubt& d : from.doubts) {
        if (names.contains({d.state, d.structure})) {
            result.doubts.push_back(d);
        }
    }
    return result;
}

/// Every recorded field, or those of some names.
Columns recorded_columns(const Inventory& inv, const std::set<std::string>& names) {
    const auto& rows = inv.structures;
    const auto wanted = [&](const char* name) { return names.empty() || names.contains(name); };
    Columns columns;
    for (const TextField& f : text_fields) {
        if (wanted(f.name)) {
            columns[f.name] = texts(rows, f.get);
        }
    }
    for (const Measure& f : measures) {
        if (wanted(f.name)) {
            const Unit unit = parse_unit(f.unit, f.name);
            columns[f.name] =
                numbers<double>(rows, [&](const Structure& s) { return to_unit(f.si(s), unit); });
        }
    }
    for (const CodeField& f : code_fields) {
        if (wanted(f.name)) {
            columns[f.name] =
                numbers<int>(rows, [&](const Structure& s) { return s.codes.*f.member; });
        }
    }
    return columns;
}

/// The bits of a value; whatever is not recorded has the same.
std::uint64_t bits(double value) {
    return std::bit_cast<std::uint64_t>(std::isnan(value) ? not_recorded : value);
}

/// One text that changes with anything the record says.
std::string content(const Structure& s) {
    std::string all;
    for (const TextField& f : text_fields) {
        all += f.get(s) + '\n';
    }
    for (const Measure& f : measures) {
        all += std::to_string(bits(f.si(s))) + '\n';
    }
    for (const CodeField& f : code_fields) {
        all += std::to_string(s.codes.*f.member) + '\n';
    }
    for (const GivenValue& given : s.given) {
        all += given.key + '\n';
        for (const double v :
             {given.value.guess.low, given.value.guess.likely, given.value.guess.high}) {
            all += std::to_string(bits(v)) + '\n';
        }
    }
    return all;
}

std::uint64_t hash(const Inventory& inv) {
    const py::gil_scoped_release free;
    std::uint64_t all = 0;
    for (const Structure& s : inv.structures) {
        all = combine(all, hash_text(content(s)));
    }
    return all;
}

template <class Row>
Columns row_columns(const Inventory& inv, const std::vector<Row>& rows) {
    Columns columns;
    columns["where"] = texts(rows, [&](const Row& r) { return where(inv, r); });
    columns["line"] = numbers<std::uint64_t>(rows, [](const Row& r) { return r.line; });
    columns["state"] = texts(rows, [](const Row& r) { return r.state; });
    columns["structure_id"] = texts(rows, [](const Row& r) { return r.structure; });
    columns["found"] = texts(rows, [](const Row& r) { return r.found; });
    columns["reason"] = texts(rows, [](const Row& r) { return r.reason; });
    return columns;
}

Columns doubt_columns(const Inventory& inv) {
    Columns columns = row_columns(inv, inv.doubts);
    columns["column"] = texts(inv.doubts, [](const Doubt& d) { return d.column; });
    columns["kept"] = numbers<bool>(inv.doubts, [](const Doubt& d) { return d.kept; });
    return columns;
}

const Structure& at(const Inventory& inv, std::size_t position) {
    if (position >= inv.structures.size()) {
        throw py::index_error("the inventory has " + std::to_string(inv.structures.size()) +
                              " structures");
    }
    return inv.structures[position];
}

} // namespace

void bind_inventory(py::module_& m) {
    using py::arg;
    py::class_<Inventory>(m, "Inventory", doc("inventory::Inventory"))
        .def_static("of", &gathered, "Structures gathered from anywhere.", arg("structures"))
        .def("part", &part, "Some of its structures, with the doubts about them.",
             arg("structures"))
        .def("__len__", [](const Inventory& inv) { return inv.structures.size(); })
        .def("at", &at, "The structure at a position from 0.", arg("position"),
             py::return_value_policy::reference_internal)
        .def("find", &Inventory::find, doc("inventory::Inventory::find"), arg("id"),
             py::return_value_policy::reference_internal)
        .def("near_misses", &Inventory::near_misses, doc("inventory::Inventory::near_misses"),
             arg("id"), arg("most"))
        .def_readonly("files", &Inventory::files, doc("inventory::Inventory::files"))
        .def_readonly("rows", &Inventory::rows, doc("inventory::Inventory::rows"))
        .def_readonly("routes_under", &Inventory::routes_under,
                      doc("inventory::Inventory::routes_under"))
        .def_readonly("absent_columns", &Inventory::absent_columns,
                      doc("inventory::Inventory::absent_columns"))
        .def("recorded", &recorded_columns, "Columns of the recorded fields, or of some by name.",
             arg("names") = std::set<std::string>{})
        .def(
            "rejected", [](const Inventory& inv) { return row_columns(inv, inv.rejected); },
            doc("inventory::Inventory::rejected"))
        .def("hash", &hash, "A hash of everything that the records say, in their order.")
        .def("doubts", &doubt_columns, doc("inventory::Inventory::doubts"));
    m.def("read_inventory", &read_inventory, doc("json::read_any_inventory"), arg("path"),
          arg("progress").none(true));
    m.def("known_columns", &inventory::known_columns, doc("inventory::known_columns"));
    py::class_<FileReader>(m, "InventoryFile", doc("inventory::FileReader"))
        .def(py::init<const std::string&, std::size_t>(), arg("path"), arg("most"))
        .def("next", &next_piece, doc("inventory::FileReader::next"), arg("progress").none(true));
}

} // namespace scupper::python
