// Rate books: read, written, merged, laid out as rows.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/cost.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Show;

RateBook read_book(const std::string& text, const std::string& name) {
    return json::read_rate_book(text, name, json::shipped_rates());
}

std::string write(const RateBook& book, const std::string& units) {
    return json::write_rate_book(book, json::shipped_rates(), units);
}

/// Values in the units of a system, one row a value; the parts of a built-up rate follow it.
struct RateTable {
    std::vector<std::string> keys, labels, units, basis, sources, dates, notes;
    std::vector<double> low, likely, high, shared;

    void add(const std::string& key, const std::string& label, const Dimension& dimension,
             const Uncertain& value, const Show& show) {
        const auto shown = [&](double si) { return show.number(si, dimension, key); };
        keys.push_back(key);
        labels.push_back(label);
        units.push_back(show.unit(dimension, key).name);
        low.push_back(std::min(shown(value.guess.low), shown(value.guess.high)));
        likely.push_back(shown(value.guess.likely));
        high.push_back(std::max(shown(value.guess.low), shown(value.guess.high)));
        shared.push_back(value.shared_share);
        basis.emplace_back(basis_name(value.basis));
        sources.push_back(value.origin == nullptr ? "" : value.origin->source);
        dates.push_back(value.origin == nullptr ? "" : value.origin->date);
        notes.push_back(value.origin == nullptr ? "" : value.origin->note);
    }

    void add_parts(const LayoutField& field, const Setting& setting, const Show& show) {
        for (const PartValue& p : setting.origin->parts) {
            const cost::RatePart& part =
                cost::rate_part(cost::built_up_of(field.key), p.name, field.key);
            Uncertain value =
                between(p.low, p.value, p.high, setting.value.basis, setting.origin.get());
            value.shared_share = setting.value.shared_share; // a built-up rate is drawn as a whole
            add(field.key + "." + p.name, std::string(part.label), part.dimension, value, show);
        }
    }
};

Columns columns_of(const RateBook& book, const std::string& units) {
    const Layout layout = json::rate_layout(book, json::shipped_rates());
    const Show show(units, book.currency);
    RateTable table;
    for (const Setting& s : book.settings) {
        const LayoutField& field = layout.fields()[layout.at(s.key, "rates")];
        table.add(field.key, field.label, field.dimension, s.value, show);
        if (s.origin) {
            table.add_parts(field, s, show);
        }
    }
    Columns columns;
    columns["key"] = table.keys;
    columns["label"] = table.labels;
    columns["low"] = table.low;
    columns["likely"] = table.likely;
    columns["high"] = table.high;
    columns["unit"] = table.units;
    columns["shared_share"] = table.shared;
    columns["basis"] = table.basis;
    columns["source"] = table.sources;
    columns["date"] = table.dates;
    columns["note"] = table.notes;
    return columns;
}

} // namespace

void bind_rates(py::module_& m) {
    using py::arg;
    py::class_<RateBook>(m, "RateBook", doc("RateBook"))
        .def_static(
            "shipped", [] { return json::shipped_rates(); }, doc("json::shipped_rates"))
        .def_static("read", &read_book, doc("json::read_rate_book"), arg("text"), arg("name"))
        .def("write", &write, doc("json::write_rate_book"), arg("units"))
        .def("merged", &merge, doc("merge"), arg("over"))
        .def("columns", &columns_of, "Columns of every value, parts of built-up rates too.",
             arg("units"))
        .def_property_readonly("title", &title_of, doc("title_of"))
        .def_readonly("beneath", &RateBook::beneath, doc("RateBook::beneath"))
        .def_readonly("name", &RateBook::name, doc("RateBook::name"))
        .def_readonly("version", &RateBook::version, doc("RateBook::version"))
        .def_readonly("date", &RateBook::date, doc("RateBook::date"))
        .def_readonly("currency", &RateBook::currency, doc("RateBook::currency"))
        .def_readonly("source", &RateBook::source, doc("RateBook::source"))
        .def_readonly("note", &RateBook::note, doc("RateBook::note"));
}

} // namespace scupper::python
