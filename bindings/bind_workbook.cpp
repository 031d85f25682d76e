// The cells of an estimate's workbook, for the module that writes the file.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Conversion;
using estimate::Estimate;
using estimate::ShownCell;
using estimate::Workbook;

std::string_view kind_word(CellKind kind) {
    static constexpr std::array<std::string_view, 6> words{"input", "constant",  "result",
                                                           "part",  "condition", "solve"};
    return words.at(static_cast<std::size_t>(kind));
}

/// Text stands for itself, a number for the address of that cell.
py::list formula(const Formula& parts) {
    py::list list;
    for (const FormulaPart& part : parts) {
        if (part.cell == no_cell) {
            list.append(text(part.text));
        } else {
            list.append(part.cell);
        }
    }
    return list;
}

py::tuple conversion(const Conversion& c) {
    return py::make_tuple(text(c.before), text(c.after));
}

Columns shown_columns(const SheetCell& cell, const ShownCell& shown) {
    Columns d;
    d["number"] = shown.number;
    d["unit"] = text(shown.unit);
    d["si_unit"] = text(shown.si_unit);
    d["to_si"] = conversion(shown.to_si);
    d["to_shown"] = conversion(shown.to_shown);
    d["low"] = text(shown.low);
    d["likely"] = text(shown.likely);
    d["high"] = text(shown.high);
    d["value"] = cell.value;
    return d;
}

Columns cell(const SheetCell& cell, const ShownCell& shown) {
    Columns d = shown_columns(cell, shown);
    d["kind"] = kind_word(cell.kind);
    d["label"] = text(cell.label);
    d["key"] = text(cell.key);
    d["basis"] = text(cell.basis);
    d["source"] = text(cell.source);
    d["formula"] = formula(cell.formula);
    py::list checks;
    for (const Formula& check : cell.checks) {
        checks.append(formula(check));
    }
    d["checks"] = checks;
    return d;
}

py::list cells(const Workbook& book) {
    py::list list;
    for (std::size_t i = 0; i < book.cells.size(); ++i) {
        list.append(cell(book.cells[i], book.shown[i]));
    }
    return list;
}

py::list figures(const Workbook& book) {
    py::list list;
    for (const auto& figure : book.figures) {
        list.append(py::make_tuple(text(figure.label), figure.cell, text(figure.key)));
    }
    return list;
}

py::list lines(const Workbook& book) {
    py::list list;
    for (const auto& line : book.lines) {
        list.append(py::make_tuple(text(line.component), text(line.operation), text(line.resource),
                                   line.cell));
    }
    return list;
}

py::list checks(const Workbook& book) {
    py::list list;
    for (const auto& check : book.checks) {
        list.append(py::make_tuple(text(check.label), formula(check.formula)));
    }
    return list;
}

Workbook write(const Estimate& e, const std::vector<std::string>& keys) {
    const py::gil_scoped_release free;
    return estimate::workbook(e, keys);
}

Columns workbook(const Estimate& e, const std::vector<std::string>& keys) {
    const Workbook book = write(e, keys);
    Columns d;
    d["cells"] = cells(book);
    d["figures"] = figures(book);
    d["lines"] = lines(book);
    d["checks"] = checks(book);
    return d;
}

} // namespace

void bind_workbook(py::module_& m) {
    using py::arg;
    m.def("workbook_figures", &estimate::workbook_figures, doc("estimate::workbook_figures"),
          arg("estimate"));
    m.def("workbook", &workbook, doc("estimate::workbook"), arg("estimate"), arg("keys"));
}

} // namespace scupper::python
