// A figure explained, in the units of the job.
#include "convert.hpp"
#include "docstrings.hpp"
#include "shown_derivation.hpp"

#include <optional>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

std::string_view kind_word(DerivedKind kind) {
    static constexpr std::array<std::string_view, 5> words{"result", "input", "constant", "choice",
                                                           "solve"};
    return words.at(static_cast<std::size_t>(kind));
}

Columns choice(const DerivedStep& s) {
    Columns d;
    d["condition"] = text(s.condition);
    d["taken"] = s.taken_first ? 0 : 1;
    d["arms"] = py::make_tuple(text(s.arms[0]), text(s.arms[1]));
    d["arm_parts"] = py::make_tuple(s.arm_parts[0], s.arm_parts[1]);
    return d;
}

Columns step(const DerivedStep& s, const estimate::Show& show) {
    Columns d;
    d["kind"] = kind_word(s.kind);
    d["name"] = text(s.name);
    d["key"] = text(s.key);
    d["expression"] = text(s.expression);
    d["value"] = show.number(s.value, s.dimension, s.key);
    d["unit"] = show.unit(s.dimension, s.key).name;
    d["si"] = s.value;
    d["si_unit"] = si_unit_name(s.dimension);
    d["basis"] = text(s.basis);
    d["source"] = text(s.source);
    d["parts"] = s.parts;
    if (s.kind == DerivedKind::choice) {
        d["choice"] = choice(s);
    }
    if (s.kind == DerivedKind::solve) {
        d["residual"] = s.residual;
    }
    return d;
}

Columns to_dict(const ShownDerivation& d) {
    py::list steps;
    for (const DerivedStep& s : d.derivation.steps) {
        steps.append(step(s, d.show));
    }
    Columns result;
    result["steps"] = steps;
    return result;
}

py::str as_text(const ShownDerivation& d) {
    return text(d.derivation.text(d.show.writer(), d.depth));
}

py::str text_to(const ShownDerivation& d, std::optional<std::size_t> depth) {
    return text(d.derivation.text(d.show.writer(), depth.value_or(every_level)));
}

py::str html_to(const ShownDerivation& d, std::optional<std::size_t> depth) {
    return text(d.derivation.html(d.show.writer(), depth.value_or(every_level)));
}

} // namespace

void bind_derivation(py::module_& m) {
    py::class_<ShownDerivation>(m, "Derivation", doc("Derivation"))
        .def("to_dict", &to_dict,
             "The steps, the figure first; parts are positions in the list of steps.")
        .def("text", &text_to, doc("Derivation::text"), py::arg("depth") = py::none())
        .def("html", &html_to, doc("Derivation::html"), py::arg("depth") = py::none())
        .def("__str__", &as_text)
        .def("__repr__", &as_text)
        .def("_repr_html_", [](const ShownDerivation& d) {
            return text(d.derivation.html(d.show.writer(), d.depth));
        });
}

} // namespace scupper::python
