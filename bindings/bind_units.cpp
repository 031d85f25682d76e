// Text and arrays with a unit, to SI and back. A dimension is named by a unit of it.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/estimate.hpp"
#include "scupper/unit.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

double parse_like(const std::string& text, const std::string& like, const std::string& path) {
    const Dimension due = parse_unit(like, path).dimension;
    if (due == dim::temperature) {
        return parse_temperature(text, path).kelvin();
    }
    std::string currency; // whichever the text names; callers see to it that it is one
    return due.money != 0 ? parse_as(text, due, path, currency) : parse_as(text, due, path);
}

NumberArray to_si(const Array& numbers, const std::string& unit, const std::string& like,
                  const std::string& path) {
    const Unit given = parse_unit(unit, path);
    if (given.dimension != parse_unit(like, path).dimension) {
        parse_like("1 " + unit, like, path); // refuses, with a valid example
    }
    if (given.factor == 1.0 && given.offset == 0.0) {
        return numbers; // as they are
    }
    return elementwise([&](double x) { return from_unit(x, given); }, numbers);
}

NumberArray from_si(const Array& si, const std::string& unit) {
    const Unit shown = parse_unit(unit, "unit");
    return elementwise([&](double x) { return to_unit(x, shown); }, si);
}

std::tuple<double, std::string, std::string> parse_any(const std::string& text,
                                                       const std::string& path) {
    const ParsedQuantity q = parse_quantity(text, path);
    const std::string unit =
        q.absolute_temperature ? "K" : display_unit(q.dimension, UnitSystem::si).name;
    return {q.si, unit, q.currency};
}

std::string shown_unit(const std::string& like, const std::string& units) {
    const Unit unit = parse_unit(like, "unit");
    const std::string currency = unit.currency.empty() ? "currency" : unit.currency;
    return estimate::Show(units, currency).unit(unit.dimension).name;
}

using Row =
    std::tuple<std::string_view, std::string_view, std::string, double, double, std::string_view>;

std::vector<Row> table() {
    std::vector<Row> rows;
    for (const UnitRow& u : unit_table()) {
        rows.emplace_back(u.name, u.aliases, si_unit_name(u.dimension), u.factor, u.offset,
                          u.pint_name);
    }
    return rows;
}

} // namespace

void bind_units(py::module_& m) {
    m.def("parse_as", &parse_like,
          "The SI value of a text, of the dimension that `like` is a unit of.", py::arg("text"),
          py::arg("like"), py::arg("path"));
    m.def("parse_quantity", &parse_any, "SI value, SI unit and currency of a text.",
          py::arg("text"), py::arg("path"));
    m.def("to_si", &to_si, "Numbers of a unit in SI, of the dimension that `like` is a unit of.",
          py::arg("numbers"), py::arg("unit"), py::arg("like"), py::arg("path"));
    m.def("from_si", &from_si, "SI numbers in a unit.", py::arg("si"), py::arg("unit"));
    m.def("shown_unit", &shown_unit, "The unit in which a dimension is shown: us, metric or si.",
          py::arg("like"), py::arg("units"));
    m.def("unit_table", &table,
          "Rows of name, aliases, SI unit, factor, offset and name in pint of every unit.");
    m.def(
        "format_quantity",
        [](double si, const std::string& unit, int digits) {
            return format_quantity(si, unit, digits);
        },
        "An SI value as text in a unit.", py::arg("si"), py::arg("unit"), py::arg("digits"));
}

} // namespace scupper::python
