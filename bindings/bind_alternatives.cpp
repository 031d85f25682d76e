// Which method: alternatives at one structure, and what lies around it.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate.hpp"
#include "scupper/inventory.hpp"
#include "value_columns.hpp"

#include <map>
#include <pybind11/stl.h>
#include <string>
#include <vector>

namespace scupper::python {

namespace {

using estimate::AlternativeRow;
using estimate::Criteria;
using estimate::Estimate;
using estimate::PlannedAlternative;
using estimate::Show;
using estimate::SurroundingFound;

/// Every alternative of a job, made ready once for many structures.
struct Alternatives {
    std::vector<PlannedAlternative> planned;
    Job job;
};

Alternatives ready(const Job& job) {
    const py::gil_scoped_release free;
    return {estimate::plan_alternatives(job), job};
}

Criteria weights_of(const std::map<std::string, double>& named) {
    Criteria weights{};
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const auto found = named.find(std::string(criterion_names[i]));
        weights[i] = found == named.end() ? 0.0 : found->second;
    }
    return weights;
}

std::map<std::string, double> usual_weights() {
    std::map<std::string, double> named;
    for (std::size_t i = 0; i < criterion_names.size(); ++i) {
        named[std::string(criterion_names[i])] = estimate::usual_weights[i];
    }
    return named;
}

/// The rows of one structure as columns of name, unit and values.
class Sheet {
  public:
    Sheet(const Alternatives& all, const std::vector<AlternativeRow>& rows)
        : all_(all), rows_(rows), show_(all.job) {}

    const Alternative& of(const AlternativeRow& row) const {
        return all_.planned[row.alternative].alternative;
    }
    template <class Get>
    void add(const char* name, Get get) {
        py::list list;
        for (const AlternativeRow& row : rows_) {
            list.append(get(row));
        }
        table_.emplace_back(name, "1", list);
    }
    void add_criterion(std::size_t i, const Dimension& dimension, const char* key) {
        add_number(std::string(criterion_names[i]).c_str(), dimension, key,
                   [i](const AlternativeRow& row) { return row.amount[i]; });
    }
    template <class Get>
    void add_number(const char* name, const Dimension& dimension, const char* key, Get get) {
        const bool plain = dimension == dim::none;
        table_.emplace_back(name, plain ? "1" : show_.unit(dimension, key).name,
                            numbers<double>(rows_, [&](const AlternativeRow& row) {
                                return plain ? get(row) : show_.number(get(row), dimension, key);
                            }));
    }
    Table take() { return std::move(table_); }

  private:
    const Alternatives& all_;
    const std::vector<AlternativeRow>& rows_;
    Show show_;
    Table table_;
};

std::string_view question_of(const Alternative& a) {
    return question_names.at(static_cast<std::size_t>(a.question));
}

void add_verdicts(Sheet& sheet, const Alternatives& all) {
    const auto planned = [&](const AlternativeRow& r) -> const PlannedAlternative& {
        return all.planned[r.alternative];
    };
    sheet.add("question", [&](const AlternativeRow& r) { return text(question_of(sheet.of(r))); });
    sheet.add("alternative", [&](const AlternativeRow& r) { return text(sheet.of(r).name); });
    sheet.add("recommended", [](const AlternativeRow& r) { return r.recommended; });
    sheet.add("feasible", [](const AlternativeRow& r) { return r.feasible; });
    sheet.add("current", [&](const AlternativeRow& r) { return planned(r).current; });
    sheet.add("in_scope", [&](const AlternativeRow& r) { return planned(r).in_scope; });
}

void add_amounts(Sheet& sheet) {
    sheet.add_criterion(0, dim::money, "cost.total");
    sheet.add_criterion(1, dim::count * dim::time, "hours.labour");
    sheet.add_criterion(2, dim::time, "hours.on_site");
    sheet.add_number("shifts", dim::none, "", [](const AlternativeRow& r) { return r.shifts; });
    sheet.add_criterion(3, dim::volume, "water.volume");
    sheet.add_criterion(4, dim::time, "hours.on_site");
    sheet.add_criterion(5, dim::none, "");
    sheet.add_criterion(6, dim::money, "cost.total");
    sheet.add_number("dirt_left_low", dim::none, "",
                     [](const AlternativeRow& r) { return r.left_low; });
    sheet.add_number("dirt_left_high", dim::none, "",
                     [](const AlternativeRow& r) { return r.left_high; });
    sheet.add_number("dirt_left_mass", dim::mass, "debris.mass",
                     [](const AlternativeRow& r) { return r.left_mass; });
    sheet.add_number("score", dim::none, "", [](const AlternativeRow& r) { return r.score; });
}

Table compare(const Alternatives& all, const Structure& structure,
              const std::map<std::string, double>& weights) {
    std::vector<AlternativeRow> rows;
    {
        const py::gil_scoped_release free;
        rows = estimate::compare_alternatives(structure, all.planned, weights_of(weights));
    }
    Sheet sheet(all, rows);
    add_verdicts(sheet, all);
    add_amounts(sheet);
    sheet.add("reasons", [](const AlternativeRow& r) { return py::cast(r.reasons); });
    sheet.add("doubts", [](const AlternativeRow& r) { return py::cast(r.doubts); });
    sheet.add("not_figured", [](const AlternativeRow& r) { return py::cast(r.not_figured); });
    sheet.add("no_price", [](const AlternativeRow& r) { return text(r.no_price); });
    sheet.add("why", [](const AlternativeRow& r) { return text(r.why); });
    sheet.add("note", [&](const AlternativeRow& r) { return text(sheet.of(r).note); });
    sheet.add("source", [&](const AlternativeRow& r) { return text(sheet.of(r).source); });
    return sheet.take();
}

Columns surrounding_columns(const Estimate& e) {
    const auto found = estimate::surroundings(e);
    const auto text_of = [&](std::string Surrounding::*member) {
        return texts(found, [=](const SurroundingFound& f) { return f.surrounding.*member; });
    };
    const auto usual = [&](double ThreePoint::*member) {
        return numbers<double>(found, [=](const SurroundingFound& f) {
            return f.surrounding.usual.value.guess.*member;
        });
    };
    Columns columns;
    columns["name"] = text_of(&Surrounding::name);
    columns["priced"] = numbers<bool>(found, [](const SurroundingFound& f) { return f.priced; });
    columns["amount"] = numbers<double>(found, [](const SurroundingFound& f) { return f.amount; });
    columns["per"] = texts(found, [](const SurroundingFound& f) {
        return charge_per_names.at(static_cast<std::size_t>(f.surrounding.per));
    });
    columns["usual_low"] = usual(&ThreePoint::low);
    columns["usual"] = usual(&ThreePoint::likely);
    columns["usual_high"] = usual(&ThreePoint::high);
    columns["currency"] = text_of(&Surrounding::currency);
    columns["caution"] = text_of(&Surrounding::caution);
    columns["source"] = text_of(&Surrounding::source);
    columns["note"] = text_of(&Surrounding::note);
    return columns;
}

} // namespace

void bind_alternatives(py::module_& m) {
    using py::arg;
    py::class_<Alternatives>(m, "Alternatives", doc("estimate::PlannedAlternative"))
        .def(py::init(&ready), doc("estimate::plan_alternatives"), arg("job"))
        .def("compare", &compare, doc("estimate::compare_alternatives"), arg("structure"),
             arg("weights"));
    m.def("usual_weights", &usual_weights,
          "How much each criterion counts where nobody says, by its name.");
    m.def("surroundings", &surrounding_columns, doc("estimate::surroundings"), arg("estimate"));
    m.def("unpriced_surroundings", &estimate::unpriced_surroundings,
          doc("estimate::unpriced_surroundings"), arg("estimate"));
}

} // namespace scupper::python
