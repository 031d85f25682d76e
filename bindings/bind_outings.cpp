// Shifts of a structure, outings of several, a year of a programme.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/estimate/outings.hpp"
#include "scupper/estimate/season.hpp"
#include "scupper/estimate/shift_plan.hpp"
#include "scupper/inventory.hpp"
#include "scupper/work/daylight.hpp"
#include "scupper/work/phases.hpp"

#include <map>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Outing;
using estimate::OutingCost;
using estimate::OutingPlan;
using estimate::OutingRules;
using estimate::Show;
using estimate::Year;

/// A segment with the outing or stage it belongs to.
struct Row {
    std::size_t outing;
    const work::Segment* segment;
};

template <class Rows>
Columns segment_columns(const Rows& rows) {
    const Unit hour = parse_unit("h", "shifts");
    Columns d;
    d["outing"] = numbers<std::size_t>(rows, [](const Row& r) { return r.outing; });
    d["shift"] = numbers<std::size_t>(rows, [](const Row& r) { return r.segment->shift; });
    d["party"] = texts(rows, [](const Row& r) { return r.segment->party; });
    d["spent"] = texts(rows, [](const Row& r) {
        return work::spent_names.at(static_cast<std::size_t>(r.segment->spent));
    });
    d["what"] = texts(rows, [](const Row& r) { return r.segment->what; });
    d["site"] = texts(rows, [](const Row& r) { return r.segment->site; });
    d["start_h"] =
        numbers<double>(rows, [&](const Row& r) { return to_unit(r.segment->start.si(), hour); });
    d["end_h"] =
        numbers<double>(rows, [&](const Row& r) { return to_unit(r.segment->end.si(), hour); });
    return d;
}

std::vector<std::pair<std::string, Columns>> shift_columns(const estimate::Estimate& e) {
    std::vector<std::pair<std::string, Columns>> stages;
    for (const estimate::StageShifts& stage : estimate::shift_plan(e)) {
        std::vector<Row> rows;
        for (const work::Segment& s : stage.layout.segments) {
            rows.push_back({stages.size(), &s});
        }
        stages.emplace_back(stage.stage, segment_columns(rows));
    }
    return stages;
}

/// Name, structures, whether one closure covers them.
using Groups = std::vector<std::tuple<std::string, std::vector<std::string>, bool>>;

/// Day, lowest temperature in kelvin, whether it falls.
using AirRow = std::tuple<std::string, double, bool>;

OutingRules rules(const Groups& groups, const std::map<std::string, double>& si,
                  const std::string& first, bool daylight, const std::vector<AirRow>& air) {
    OutingRules rules;
    for (const auto& [name, structures, one_closure] : groups) {
        rules.groups.push_back({name, structures, one_closure});
    }
    const auto put = [&](const char* name, auto set) {
        if (const auto found = si.find(name); found != si.end()) {
            set(found->second);
        }
    };
    put("within", [&](double x) { rules.within = Length<>(x); });
    put("most", [&](double x) { rules.most = static_cast<std::size_t>(x); });
    put("twins", [&](double x) { rules.twins = Length<>(x); });
    put("twins_one_closure", [&](double x) { rules.twins_one_closure = x > 0.0; });
    put("detour", [&](double x) { rules.detour = x; });
    put("speed", [&](double x) { rules.speed = Speed<>(x); });
    put("move", [&](double x) { rules.move = Time<>(x); });
    put("day_limit", [&](double x) { rules.limits.day = Time<>(x); });
    put("week_limit", [&](double x) { rules.limits.week = Time<>(x); });
    put("cancelled", [&](double x) { rules.cancelled = x; });
    put("show_up", [&](double x) { rules.show_up = Time<>(x); });
    for (const auto& [day, lowest, falling] : air) {
        rules.air[work::parse_date(day, "air")] = {Temperature<>(lowest), falling};
    }
    if (!first.empty()) {
        rules.first = work::parse_date(first, "first");
    }
    rules.daylight = daylight;
    return rules;
}

OutingPlan plan(const inventory::Inventory& inv, const PlanHandle& handle, const Groups& groups,
                const std::map<std::string, double>& si, const std::string& first, bool daylight,
                const std::vector<AirRow>& air) {
    const OutingRules by = rules(groups, si, first, daylight, air);
    const py::gil_scoped_release free;
    return estimate::plan_outings(inv.structures, handle.plan, by);
}

/// Shifts of all outings, one row each.
struct ShiftRow {
    std::size_t outing;
    std::size_t shift;
    const Outing* of;
};

std::vector<ShiftRow> shift_rows(const OutingPlan& p) {
    std::vector<ShiftRow> rows;
    for (std::size_t o = 0; o < p.outings.size(); ++o) {
        for (std::size_t s = 0; s < p.outings[o].layout.paid.size(); ++s) {
            rows.push_back({o, s, &p.outings[o]});
        }
    }
    return rows;
}

Columns outing_shifts(const OutingPlan& p) {
    const Unit hour = parse_unit("h", "shifts");
    const std::vector<ShiftRow> rows = shift_rows(p);
    Columns d;
    d["outing"] = numbers<std::size_t>(rows, [](const ShiftRow& r) { return r.outing; });
    d["shift"] = numbers<std::size_t>(rows, [](const ShiftRow& r) { return r.shift; });
    d["date"] = texts(rows, [](const ShiftRow& r) {
        return r.of->days.empty() ? std::string() : work::date_text(r.of->days[r.shift]);
    });
    d["stops"] =
        numbers<std::size_t>(rows, [](const ShiftRow& r) { return r.of->layout.stops[r.shift]; });
    d["paid_h"] = numbers<double>(
        rows, [&](const ShiftRow& r) { return to_unit(r.of->layout.paid[r.shift].si(), hour); });
    d["overtime_h"] = numbers<double>(
        rows, [&](const ShiftRow& r) { return to_unit(r.of->overtime[r.shift].si(), hour); });
    return d;
}

Columns outing_columns(const OutingPlan& p) {
    const Unit hour = parse_unit("h", "outings");
    const auto money = [&](double OutingCost::*part) {
        return numbers<double>(p.outings, [part](const Outing& o) { return o.cost.*part; });
    };
    Columns d;
    d["name"] = texts(p.outings, [](const Outing& o) { return o.name; });
    d["stage"] = texts(p.outings, [](const Outing& o) { return o.stage; });
    d["members"] = py::cast([&] {
        std::vector<std::vector<std::size_t>> members;
        for (const Outing& o : p.outings) {
            members.push_back(o.members);
        }
        return members;
    }());
    d["shifts"] =
        numbers<std::size_t>(p.outings, [](const Outing& o) { return o.layout.paid.size(); });
    d["labour_h"] =
        numbers<double>(p.outings, [&](const Outing& o) { return to_unit(o.labour_hours, hour); });
    d["labour"] = money(&OutingCost::labour);
    d["overtime"] = money(&OutingCost::overtime);
    d["show_up"] = money(&OutingCost::show_up);
    d["equipment"] = money(&OutingCost::equipment);
    return d;
}

/// Days between outings without a shift, with the outing that waits and why.
Columns lost_days(const OutingPlan& p) {
    struct LostDay {
        std::size_t outing;
        const work::PlannedDay* day;
    };
    std::vector<LostDay> rows;
    for (std::size_t o = 0; o < p.outings.size(); ++o) {
        for (const work::PlannedDay& day : p.outings[o].lost) {
            rows.push_back({o, &day});
        }
    }
    Columns d;
    d["outing"] = numbers<std::size_t>(rows, [](const LostDay& r) { return r.outing; });
    d["date"] = texts(rows, [](const LostDay& r) { return work::date_text(r.day->date); });
    d["use"] = texts(rows, [](const LostDay& r) {
        return work::day_use_names.at(static_cast<std::size_t>(r.day->use));
    });
    d["season"] = texts(rows, [](const LostDay& r) { return r.day->season; });
    return d;
}

Columns outing_segments(const OutingPlan& p) {
    std::vector<Row> rows;
    for (std::size_t o = 0; o < p.outings.size(); ++o) {
        for (const work::Segment& s : p.outings[o].layout.segments) {
            rows.push_back({o, &s});
        }
    }
    return segment_columns(rows);
}

std::map<std::string, double> cost_parts(const OutingCost& c) {
    return {{"labour", c.labour},
            {"overtime", c.overtime},
            {"show_up", c.show_up},
            {"equipment", c.equipment}};
}

Year year(const inventory::Inventory& inv, const Job& job, const estimate::Frequency& frequency,
          unsigned threads, const py::object& progress) {
    const py::gil_scoped_release free;
    return estimate::year_of(inv.structures, job, frequency, threads, watcher(progress));
}

std::vector<std::tuple<double, std::vector<std::string>, double, std::size_t>>
year_rounds(const Year& y) {
    std::vector<std::tuple<double, std::vector<std::string>, double, std::size_t>> rounds;
    for (const estimate::Round& r : y.rounds) {
        const auto at = std::find(r.programme.keys.begin(), r.programme.keys.end(), "cost.total");
        rounds.emplace_back(
            r.per_year, r.components,
            r.programme.totals[static_cast<std::size_t>(at - r.programme.keys.begin())],
            r.programme.priced.size());
    }
    return rounds;
}

/// Name, unit and values of every column, in the units of a job.
std::vector<std::tuple<std::string, std::string, NumberArray>> year_table(const Year& y,
                                                                          const Job& job) {
    const Show show(job);
    const estimate::Plan& p = *y.rounds.front().programme.plan;
    std::vector<std::tuple<std::string, std::string, NumberArray>> columns;
    for (std::size_t k = 0; k < y.keys.size(); ++k) {
        const LayoutField& field = p.figures.fields()[p.figures.at(y.keys[k], "season")];
        NumberArray values(static_cast<py::ssize_t>(y.priced.size()));
        for (std::size_t i = 0; i < y.priced.size(); ++i) {
            values.mutable_at(static_cast<py::ssize_t>(i)) =
                show.number(y.table[i * y.keys.size() + k], field.dimension, field.key);
        }
        columns.emplace_back(y.keys[k], show.unit(field.dimension, field.key).name, values);
    }
    return columns;
}

std::map<std::string, double> load(const Year& y, const Job& job, const std::string& first,
                                   const std::string& last, double crews, double lost) {
    const auto& p = *y.rounds.front().programme.plan;
    const Time<> shift(p.base_values[p.inputs.at("shift.length", "season")]);
    const estimate::SeasonLoad found =
        estimate::season_load(y, job.calendar, work::parse_date(first, "first"),
                              work::parse_date(last, "last"), crews, lost, shift);
    const Unit hour = parse_unit("h", "season");
    return {{"days", found.days},
            {"shifts_there", found.shifts_there},
            {"shifts_needed", found.shifts_needed},
            {"hours_there", to_unit(found.hours_there, hour)},
            {"hours_needed", to_unit(found.hours_needed, hour)},
            {"share", found.share}};
}

std::vector<double> washed_widths(double roadway, const std::vector<double>& open) {
    std::vector<Length<>> widths(open.begin(), open.end());
    std::vector<double> washed;
    for (const Length<>& w : work::washed_widths(Length<>(roadway), widths)) {
        washed.push_back(w.si());
    }
    return washed;
}

void bind_plan(py::module_& m) {
    py::class_<OutingPlan>(m, "OutingPlan", doc("estimate::OutingPlan"))
        .def("outings", &outing_columns, doc("estimate::Outing"))
        .def("shifts", &outing_shifts, "Columns of every shift: outing, date, stops, paid hours.")
        .def("lost_days", &lost_days, doc("estimate::Outing::lost"))
        .def("segments", &outing_segments, doc("work::Segment"))
        .def(
            "cost", [](const OutingPlan& p) { return cost_parts(p.cost); },
            doc("estimate::OutingCost"))
        .def(
            "alone", [](const OutingPlan& p) { return cost_parts(p.alone); },
            doc("estimate::OutingPlan::alone"))
        .def_readonly("visits", &OutingPlan::visits, doc("estimate::OutingPlan::visits"))
        .def_readonly("price", &OutingPlan::price, doc("estimate::OutingPlan::price"))
        .def_readonly("price_alone", &OutingPlan::price_alone,
                      doc("estimate::OutingPlan::price_alone"))
        .def_readonly("price_shared", &OutingPlan::price_shared,
                      doc("estimate::OutingPlan::price_shared"))
        .def_readonly("unpriced", &OutingPlan::unpriced, doc("estimate::OutingPlan::unpriced"));
}

} // namespace

void bind_outings(py::module_& m) {
    using py::arg;
    bind_plan(m);
    m.def("shift_plan", &shift_columns, doc("estimate::shift_plan"), arg("estimate"));
    m.def("plan_outings", &plan, doc("estimate::plan_outings"), arg("inventory"), arg("plan"),
          arg("groups"), arg("si"), arg("first"), arg("daylight"), arg("air"));
    py::class_<Year>(m, "Year", doc("estimate::Year"))
        .def("rounds", &year_rounds, doc("estimate::rounds_of"))
        .def("table", &year_table, doc("estimate::year_of"), arg("job"))
        .def("load", &load, doc("estimate::season_load"), arg("job"), arg("first"), arg("last"),
             arg("crews"), arg("lost"))
        .def_readonly("priced", &Year::priced, doc("estimate::Year::priced"));
    m.def("year_of", &year, doc("estimate::year_of"), arg("inventory"), arg("job"),
          arg("frequency"), arg("threads"), arg("progress").none(true));
    m.def("washed_widths", &washed_widths, doc("work::washed_widths"), arg("roadway"), arg("open"));
    m.def(
        "day_length",
        [](double latitude, const std::string& day) {
            return work::day_length(Angle<>(latitude), work::parse_date(day, "day")).si();
        },
        doc("work::day_length"), arg("latitude"), arg("day"));
}

} // namespace scupper::python
