// A job: read, written, changed, made ready.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "scupper/job.hpp"
#include "scupper/json.hpp"

#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using estimate::Plan;
using estimate::Show;

Job read_on(const std::string& text, const std::string& name, const RateBook& book) {
    Job job = json::read_job(text, name, book);
    check_job(job);
    return job;
}

Job read_job(const std::string& text, const std::string& name) {
    return read_on(text, name, json::shipped_rates());
}

PlanHandle ready(const Job& job) {
    const py::gil_scoped_release free;
    return {estimate::make_plan(job)};
}

/// Values of the inputs in the units of the job, one row an input. A rate stands for a time per
/// unit, so that its low comes from the high of the time.
struct InputTable {
    std::vector<std::string> keys, labels, units, basis, sources;
    std::vector<double> low, likely, high;

    void add(const LayoutField& field, const Uncertain& value, const Show& show) {
        const bool follows = std::isnan(value.guess.likely); // from the record of a structure
        keys.push_back(field.key);
        labels.push_back(field.label);
        units.push_back(show.unit(field.dimension, field.key).name);
        const auto shown = [&](double si) { return show.number(si, field.dimension, field.key); };
        low.push_back(std::min(shown(value.guess.low), shown(value.guess.high)));
        likely.push_back(shown(value.guess.likely));
        high.push_back(std::max(shown(value.guess.low), shown(value.guess.high)));
        basis.emplace_back(follows ? std::string_view{} : basis_name(value.basis));
        sources.push_back(follows || value.origin == nullptr ? "" : value.origin->source);
    }
};

/// A job from its own document alone.
Job restored(const std::string& text) {
    return json::read_job(text, "job", RateBook{});
}

Job without_hose_values(Job job) {
    clear_hose_values(job, json::shipped_hose_library());
    return job;
}

Job without_build_up_values(Job job) {
    clear_build_up_values(job, json::shipped_dirt_table());
    return job;
}

/// Rows of structure, place and cells.
using SurveyRows = std::vector<std::tuple<std::string, std::string, std::vector<std::string>>>;

Job survey(const Job& job, const std::string& place, const std::vector<std::string>& headers,
           const SurveyRows& rows) {
    std::vector<json::SurveyRow> list;
    for (const auto& [structure, where, cells] : rows) {
        list.push_back({structure, where, cells});
    }
    return json::with_survey(job, place, headers, list);
}

std::vector<std::string> survey_headers(const Job& job) {
    std::vector<std::string> headers;
    for (const json::SurveyColumn& c : json::survey_columns(job)) {
        headers.push_back(c.header);
    }
    return headers;
}

Columns input_columns(const PlanHandle& handle) {
    const Plan& plan = *handle.plan;
    const Show show(plan.job);
    InputTable table;
    for (std::size_t i = 0; i < plan.base.size(); ++i) {
        table.add(plan.inputs.fields()[i], plan.base[i], show);
    }
    Columns columns;
    columns["key"] = table.keys;
    columns["label"] = table.labels;
    columns["unit"] = table.units;
    columns["low"] = table.low;
    columns["likely"] = table.likely;
    columns["high"] = table.high;
    columns["basis"] = table.basis;
    columns["source"] = table.sources;
    return columns;
}

} // namespace

void bind_job(py::module_& m) {
    using py::arg;
    py::class_<PlanHandle>(m, "Plan", doc("estimate::Plan"))
        .def("inputs", &input_columns, "Columns of every input of the job, in the job's units.");
    py::class_<Job>(m, "Job", doc("Job"))
        .def_static(
            "demo", [] { return json::demo_job(); }, doc("json::demo_job"))
        .def_static("read", &read_job, doc("json::read_job"), arg("text"), arg("name"))
        .def_static("read_on", &read_on, doc("json::read_job"), arg("text"), arg("name"),
                    arg("book"))
        .def_readonly("rate_books", &Job::rate_books, doc("Job::rate_books"))
        .def("write", &json::write_job, doc("json::write_job"))
        .def("with_rates", &json::with_rates, doc("json::with_rates"), arg("book"))
        .def("with_input", &json::with_input, doc("json::with_input"), arg("key"), arg("value"))
        .def("with_override", &json::with_override, doc("json::with_override"), arg("structure"),
             arg("key"), arg("value"))
        .def("with_means", &with_means, doc("with_means"))
        .def("without_hose_values", &without_hose_values, doc("clear_hose_values"))
        .def("without_build_up_values", &without_build_up_values, doc("clear_build_up_values"))
        .def("with_survey", &survey, doc("json::with_survey"), arg("place"), arg("headers"),
             arg("rows"))
        .def("survey_headers", &survey_headers, doc("json::survey_columns"))
        .def("form", &json::job_form, doc("json::job_form"))
        .def(py::pickle(&json::write_job, &restored))
        .def("plan", &ready, doc("estimate::make_plan"))
        .def_readonly("name", &Job::name, "What people call the job.")
        .def_readonly("currency", &Job::currency, "Three-letter code of every amount.")
        .def_readonly("frequency", &Job::frequency, doc("Job::frequency"))
        .def_readonly("units", &Job::units, doc("Job::units"))
        .def_property_readonly(
            "price_at",
            [](const Job& j) { return j.price_at == PriceAt::mean ? "mean" : "likely"; },
            doc("PriceAt"));
    m.def("rate_book_of", &json::rate_book_of, doc("json::rate_book_of"), arg("job"));
    m.def("job_schema", &json::job_schema, doc("json::job_schema"));
}

} // namespace scupper::python
