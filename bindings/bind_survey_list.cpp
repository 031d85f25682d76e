// Which few measurements would narrow the cost of a programme most.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"
#include "scupper/simulate.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Show;
using simulate::Measurement;
using simulate::SurveyList;
using simulate::Visit;

SurveyList make(const inventory::Inventory& inv, const PlanHandle& plan, std::size_t visits,
                double least_share, std::size_t draws, std::uint64_t seed, unsigned threads,
                const py::object& progress) {
    const simulate::SurveySettings settings{
        .visits = visits, .least_share = least_share, .draws = {.seed = seed, .draws = draws}};
    const py::gil_scoped_release free;
    return simulate::survey_list(inv.structures, plan.plan, settings, threads, watcher(progress));
}

/// A measurement, and the number of the visit it belongs to.
struct VisitRow {
    std::size_t visit;
    const Measurement* what;
};

std::vector<VisitRow> rows_of(const SurveyList& list) {
    std::vector<VisitRow> rows;
    for (std::size_t v = 0; v < list.visits.size(); ++v) {
        for (const Measurement& m : list.visits[v].measurements) {
            rows.push_back({v, &m});
        }
    }
    return rows;
}

Columns measurement_columns(const SurveyList& list) {
    const Show show(list.plan->job);
    const std::vector<VisitRow> rows = rows_of(list);
    const auto shown = [&](double Measurement::*member) {
        return numbers<double>(rows, [&, member](const VisitRow& r) {
            return show.number(r.what->*member, r.what->dimension, r.what->key);
        });
    };
    Columns d;
    d["visit"] = numbers<std::size_t>(rows, [](const VisitRow& r) { return r.visit; });
    d["measure"] = texts(rows, [](const VisitRow& r) { return r.what->words; });
    d["key"] = texts(rows, [](const VisitRow& r) { return r.what->key; });
    d["low"] = shown(&Measurement::low);
    d["likely"] = shown(&Measurement::likely);
    d["high"] = shown(&Measurement::high);
    d["unit"] = texts(
        rows, [&](const VisitRow& r) { return show.unit(r.what->dimension, r.what->key).name; });
    d["basis"] = texts(rows, [](const VisitRow& r) { return basis_name(r.what->basis); });
    d["narrows"] = numbers<double>(rows, [](const VisitRow& r) { return r.what->narrows; });
    return d;
}

Columns visit_columns(const SurveyList& list) {
    Columns d;
    d["index"] = numbers<std::size_t>(list.visits, [](const Visit& v) { return v.index; });
    d["measurements"] =
        numbers<std::size_t>(list.visits, [](const Visit& v) { return v.measurements.size(); });
    d["narrows"] = numbers<double>(list.visits, [](const Visit& v) { return v.narrows; });
    d["range_left"] = numbers<double>(list.visits, [](const Visit& v) { return v.range_left; });
    d["narrows_by_draws"] =
        numbers<double>(list.visits, [](const Visit& v) { return v.narrows_by_draws; });
    d["narrows_by_draws_se"] =
        numbers<double>(list.visits, [](const Visit& v) { return v.narrows_error; });
    d["left_by_draws"] =
        numbers<double>(list.visits, [](const Visit& v) { return v.left_by_draws; });
    return d;
}

} // namespace

void bind_survey_list(py::module_& m) {
    using py::arg;
    py::class_<SurveyList>(m, "SurveyList", doc("simulate::SurveyList"))
        .def("measurements", &measurement_columns, doc("simulate::Measurement"))
        .def("visits", &visit_columns, doc("simulate::Visit"))
        .def(
            "left_out",
            [](const SurveyList& list) {
                return numbers<std::size_t>(list.left_out, [](std::size_t i) { return i; });
            },
            doc("simulate::SurveyList::left_out"))
        .def_readonly("middle_range", &SurveyList::middle_range,
                      doc("simulate::SurveyList::middle_range"))
        .def_readonly("mean", &SurveyList::mean, doc("simulate::SurveyList::mean"))
        .def_readonly("low", &SurveyList::low, doc("simulate::SurveyList::low"))
        .def_readonly("high", &SurveyList::high, "95 % of the draws lie below [currency].");
    m.def("survey_list", &make, doc("simulate::survey_list"), arg("inventory"), arg("plan"),
          arg("visits"), arg("least_share"), arg("draws"), arg("seed"), arg("threads"),
          arg("progress").none(true));
    m.def(
        "survey_header",
        [](const Job& job, const std::string& key) { return json::survey_column(job, key).header; },
        doc("json::survey_column"), arg("job"), arg("key"));
    m.attr("NOT_ASKED") = py::str(std::string(json::not_asked));
}

} // namespace scupper::python
