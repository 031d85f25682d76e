// Rates learned from a log of finished jobs.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "scupper/json.hpp"
#include "scupper/simulate.hpp"

#include <pybind11/stl.h>
#include <tuple>

namespace scupper::python {

namespace {

using estimate::Show;
using simulate::JobLog;
using simulate::Learned;
using simulate::LearnedRate;
using simulate::LogFault;
using simulate::Observed;

/// Rows of line and cells.
using LogRows = std::vector<std::tuple<std::uint64_t, std::vector<std::string>>>;

JobLog read_table(const std::string& name, const std::vector<std::string>& headers,
                  const LogRows& rows) {
    std::vector<json::LogCells> cells;
    for (const auto& [line, row] : rows) {
        cells.push_back({line, row});
    }
    return json::read_job_log(name, headers, cells);
}

Learned learn(const JobLog& log, const PlanHandle& plan, const inventory::Inventory& inv,
              const std::string& crew, const std::string& agency, std::size_t least_jobs,
              double least_gain, bool leave_out_outliers) {
    simulate::LearningSettings settings;
    settings.whose = {crew, agency};
    settings.least_jobs = least_jobs;
    settings.least_gain = least_gain;
    settings.leave_out_outliers = leave_out_outliers;
    const py::gil_scoped_release free;
    return simulate::learn(log, plan.plan, inv, settings);
}

/// Low and high of a value as it is shown: a rate stands for a time per unit, so the ends swap.
std::pair<double, double> ends(const Show& show, const LearnedRate& r, double low, double high) {
    const double a = show.number(low, r.dimension, r.key),
                 b = show.number(high, r.dimension, r.key);
    return std::minmax(a, b);
}

py::array_t<double> shown(const Learned& l, double (*si)(const LearnedRate&)) {
    const Show show(l.plan->job);
    return numbers<double>(
        l.rates, [&](const LearnedRate& r) { return show.number(si(r), r.dimension, r.key); });
}

/// Columns of low and high between two functions of a row.
void put_ends(Columns& d, const Learned& l, const std::string& low, const std::string& high,
              double (*from)(const LearnedRate&), double (*to)(const LearnedRate&)) {
    const Show show(l.plan->job);
    d[low.c_str()] = numbers<double>(
        l.rates, [&](const LearnedRate& r) { return ends(show, r, from(r), to(r)).first; });
    d[high.c_str()] = numbers<double>(
        l.rates, [&](const LearnedRate& r) { return ends(show, r, from(r), to(r)).second; });
}

Columns rate_columns(const Learned& l) {
    using R = LearnedRate;
    const Show show(l.plan->job);
    const auto& rates = l.rates;
    Columns d;
    d["key"] = texts(rates, [](const R& r) { return r.key; });
    d["label"] = texts(rates, [](const R& r) { return r.label; });
    d["unit"] = texts(rates, [&](const R& r) { return show.unit(r.dimension, r.key).name; });
    put_ends(
        d, l, "old_low", "old_high", [](const R& r) { return r.before.guess.low; },
        [](const R& r) { return r.before.guess.high; });
    d["old_likely"] = shown(l, [](const R& r) { return r.before.guess.likely; });
    put_ends(
        d, l, "new_low", "new_high", [](const R& r) { return r.after.guess.low; },
        [](const R& r) { return r.after.guess.high; });
    d["new_likely"] = shown(l, [](const R& r) { return r.after.guess.likely; });
    d["learned"] = numbers<bool>(rates, [](const R& r) { return r.learned; });
    d["jobs"] = numbers<std::size_t>(rates, [](const R& r) { return r.pooled.jobs; });
    d["crews"] = numbers<std::size_t>(rates, [](const R& r) { return r.pooled.crews; });
    d["outliers"] = numbers<std::int64_t>(rates, [](const R& r) {
        return std::count_if(r.jobs.begin(), r.jobs.end(),
                             [](const Observed& o) { return o.far_out; });
    });
    d["worth_jobs"] = numbers<double>(rates, [](const R& r) { return r.pooled.gain; });
    d["log_share"] = numbers<double>(rates, [](const R& r) { return r.pooled.share; });
    d["level"] = shown(l, [](const R& r) { return r.level(); });
    put_ends(
        d, l, "level_p10", "level_p90", [](const R& r) { return r.level_quantile(0.1); },
        [](const R& r) { return r.level_quantile(0.9); });
    put_ends(
        d, l, "job_p10", "job_p90", [](const R& r) { return r.job_quantile(0.1); },
        [](const R& r) { return r.job_quantile(0.9); });
    d["level_sd"] = numbers<double>(rates, [](const R& r) { return r.pooled.level_sd(); });
    d["job_sd"] = numbers<double>(rates, [](const R& r) { return r.pooled.job_sd(); });
    d["reason"] = texts(rates, [](const R& r) { return r.reason; });
    return d;
}

/// An observation and the rate it tells of.
struct Seen {
    const LearnedRate* rate;
    const Observed* what;
};

Columns job_columns(const Learned& l) {
    const Show show(l.plan->job);
    std::vector<Seen> seen;
    for (const LearnedRate& r : l.rates) {
        for (const Observed& o : r.jobs) {
            seen.push_back({&r, &o});
        }
    }
    const auto row = [&](const Seen& s) -> const simulate::LogRow& { return l.log[s.what->row]; };
    Columns d;
    d["key"] = texts(seen, [](const Seen& s) { return s.rate->key; });
    d["line"] = numbers<std::uint64_t>(seen, [&](const Seen& s) { return row(s).line; });
    d["date"] = texts(seen, [&](const Seen& s) { return row(s).date; });
    d["structure_id"] = texts(seen, [&](const Seen& s) { return row(s).structure; });
    d["crew"] = texts(seen, [](const Seen& s) { return s.what->crew; });
    d["agency"] = texts(seen, [](const Seen& s) { return s.what->agency; });
    d["value"] = numbers<double>(seen, [&](const Seen& s) {
        return show.number(s.what->value(), s.rate->dimension, s.rate->key);
    });
    d["unit"] =
        texts(seen, [&](const Seen& s) { return show.unit(s.rate->dimension, s.rate->key).name; });
    d["far_out"] = numbers<bool>(seen, [](const Seen& s) { return s.what->far_out; });
    d["counted"] = numbers<bool>(seen, [](const Seen& s) { return s.what->counted; });
    return d;
}

Columns fault_columns(const Learned& l) {
    Columns d;
    d["place"] = texts(l.faults, [&](const LogFault& f) {
        return l.name + ":" + std::to_string(f.line) + (f.column.empty() ? "" : " " + f.column);
    });
    d["line"] = numbers<std::uint64_t>(l.faults, [](const LogFault& f) { return f.line; });
    d["column"] = texts(l.faults, [](const LogFault& f) { return f.column; });
    d["found"] = texts(l.faults, [](const LogFault& f) { return f.found; });
    d["reason"] = texts(l.faults, [](const LogFault& f) { return f.reason; });
    return d;
}

} // namespace

void bind_learning(py::module_& m) {
    using py::arg;
    py::class_<JobLog>(m, "JobLog", doc("simulate::JobLog"))
        .def_static("read", &json::read_job_log_csv, doc("json::read_job_log_csv"), arg("text"),
                    arg("name"))
        .def_static("of_table", &read_table, doc("json::read_job_log"), arg("name"), arg("headers"),
                    arg("rows"));
    py::class_<Learned>(m, "Learned", doc("simulate::Learned"))
        .def("rates", &rate_columns, doc("simulate::LearnedRate"))
        .def("jobs", &job_columns, doc("simulate::Observed"))
        .def("faults", &fault_columns, doc("simulate::LogFault"))
        .def("book", &simulate::rates_of, doc("simulate::rates_of"))
        .def_readonly("name", &Learned::name, doc("simulate::Learned::name"))
        .def_readonly("first", &Learned::first, "Earliest date of the log [text].")
        .def_readonly("last", &Learned::last, "Latest date of the log [text].")
        .def_readonly("lines", &Learned::lines, doc("simulate::Learned::lines"))
        .def_readonly("used", &Learned::used, doc("simulate::Learned::used"));
    m.def("learn", &learn, doc("simulate::learn"), arg("log"), arg("plan"), arg("inventory"),
          arg("crew"), arg("agency"), arg("least_jobs"), arg("least_gain"),
          arg("leave_out_outliers"));
    m.def(
        "log_columns",
        [] { return std::vector<std::string>(json::log_columns.begin(), json::log_columns.end()); },
        "Columns of a log of finished jobs.");
}

} // namespace scupper::python
