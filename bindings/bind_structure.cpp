// One structure as its record tells it.
#include "convert.hpp"
#include "docstrings.hpp"
#include "recorded.hpp"
#include "scupper/json.hpp"
#include "scupper/unit.hpp"

namespace scupper::python {

namespace {

py::object number_or_none(double value) {
    return std::isnan(value) ? py::object(py::none()) : py::object(py::float_(value));
}

Columns recorded(const Structure& s) {
    Columns fields;
    for (const TextField& f : text_fields) {
        fields[f.name] = text(f.get(s));
    }
    for (const Measure& f : measures) {
        fields[f.name] = number_or_none(to_unit(f.si(s), parse_unit(f.unit, f.name)));
    }
    for (const CodeField& f : code_fields) {
        const int code = s.codes.*f.member;
        fields[f.name] = code == no_code ? py::object(py::none()) : py::object(py::int_(code));
    }
    return fields;
}

template <auto Member>
py::str shown(const Structure& s) {
    return text(s.*Member);
}

/// A record from its own document.
Structure restored(const std::string& text) {
    return json::read_structure(text, "structure");
}

std::string repr(const Structure& s) {
    return "<Structure " + structure_key(s) + ": " + s.carries + " over " + s.crosses + ">";
}

} // namespace

void bind_structure(py::module_& m) {
    py::class_<Structure>(m, "Structure", doc("Structure"))
        .def_property_readonly(
            "key", [](const Structure& s) { return text(structure_key(s)); }, doc("structure_key"))
        .def_property_readonly("id", &shown<&Structure::id>, doc("Structure::id"))
        .def_property_readonly("state", &shown<&Structure::state>, doc("Structure::state"))
        .def_property_readonly("carries", &shown<&Structure::carries>, doc("Structure::carries"))
        .def_property_readonly("crosses", &shown<&Structure::crosses>, doc("Structure::crosses"))
        .def_property_readonly("location", &shown<&Structure::location>, doc("Structure::location"))
        .def_readonly("line", &Structure::line, doc("Structure::line"))
        .def("to_dict", &recorded,
             "Everything the record says, units in the names; None where it says nothing.")
        .def(py::pickle(&json::write_structure, &restored))
        .def("__repr__", [](const Structure& s) { return text(repr(s)); });
}

} // namespace scupper::python
