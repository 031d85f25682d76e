// Draws of a whole list: ranges by structure, totals by draw.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/inventory.hpp"
#include "scupper/simulate.hpp"

#include <pybind11/stl.h>
#include <pybind11/typing.h>

namespace scupper::python {

namespace {

using estimate::FixedTotal;
using estimate::Unpriced;
using simulate::DrawnTotal;
using simulate::Estimated;
using simulate::SimulatedStructure;
using simulate::Simulation;
using simulate::SimulationSettings;
using simulate::StructureRange;

constexpr std::size_t range_width = sizeof(StructureRange) / sizeof(double);
static_assert(std::is_trivially_copyable_v<StructureRange>);
static_assert(range_width == 3 + simulate::kept_levels.size(), "a range is numbers alone");

Simulation run(const inventory::Inventory& inv, const PlanHandle& plan, std::size_t draws,
               std::size_t replicates, std::uint64_t seed, const std::string& sampling,
               double relative_error, unsigned threads, const py::object& progress) {
    const SimulationSettings settings{.seed = seed,
                                      .draws = draws,
                                      .replicates = replicates,
                                      .sampling = simulate::sampling_of(sampling)};
    const py::gil_scoped_release free;
    return relative_error > 0.0
               ? simulate::simulate_until(inv.structures, plan.plan, settings, relative_error,
                                          threads, watcher(progress))
               : simulate::simulate(inv.structures, plan.plan, settings, threads,
                                    watcher(progress));
}

/// Name, key and unit of every simulated figure.
std::vector<std::array<std::string, 3>> figures(const Simulation& s, const std::string& units) {
    const estimate::Show show(units, s.plan->job.currency);
    std::vector<std::array<std::string, 3>> list;
    for (const auto& [name, key] : simulate::simulated_figures) {
        const LayoutField& field = s.plan->figures.fields()[s.plan->figures.at(key, "simulate")];
        list.push_back(
            {std::string(name), std::string(key), show.unit(field.dimension, field.key).name});
    }
    return list;
}

py::array_t<double> ranges(const Simulation& s) {
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(s.simulated.size()),
                                         static_cast<py::ssize_t>(simulate::figure_count),
                                         static_cast<py::ssize_t>(range_width)};
    py::array_t<double> table(shape);
    auto* out = reinterpret_cast<StructureRange*>(table.mutable_data());
    for (const SimulatedStructure& row : s.simulated) {
        out = std::copy(row.ranges.begin(), row.ranges.end(), out);
    }
    return table;
}

Columns structures_of(const std::vector<Unpriced>& list) {
    Columns d;
    d["index"] = numbers<std::size_t>(list, [](const Unpriced& u) { return u.index; });
    d["state"] = texts(list, [](const Unpriced& u) { return u.state; });
    d["structure_id"] = texts(list, [](const Unpriced& u) { return u.id; });
    d["reason"] = texts(list, [](const Unpriced& u) { return u.reason; });
    return d;
}

using Words = std::vector<std::array<std::uint64_t, 2>>;
using Rows = std::vector<std::tuple<std::size_t, std::string, std::string, std::string>>;

py::bytes bytes_of(const std::vector<FixedTotal>& totals) {
    Words words;
    for (const FixedTotal& total : totals) {
        words.push_back(total.words());
    }
    return py::bytes(reinterpret_cast<const char*>(words.data()), words.size() * sizeof words[0]);
}

std::vector<FixedTotal> totals_of(const std::string& bytes) {
    Words words(bytes.size() / sizeof(Words::value_type));
    std::memcpy(words.data(), bytes.data(), words.size() * sizeof words[0]);
    std::vector<FixedTotal> totals;
    for (const auto& halves : words) {
        totals.push_back(FixedTotal::of_words(halves));
    }
    return totals;
}

Rows rows_of(const std::vector<Unpriced>& list) {
    Rows rows;
    for (const Unpriced& u : list) {
        rows.emplace_back(u.index, u.id, u.state, u.reason);
    }
    return rows;
}

std::vector<Unpriced> unpriced_of(const Rows& rows) {
    std::vector<Unpriced> list;
    for (const auto& [index, id, state, reason] : rows) {
        list.push_back({index, id, state, reason});
    }
    return list;
}

/// Everything but the plan, to carry to another process.
using State = py::typing::Tuple<py::object, py::ellipsis>;

State state_of(const Simulation& s) {
    static_assert(std::is_trivially_copyable_v<SimulatedStructure>);
    return py::make_tuple(s.settings.seed, s.settings.draws, s.settings.replicates,
                          static_cast<int>(s.settings.sampling), s.structures,
                          py::bytes(reinterpret_cast<const char*>(s.simulated.data()),
                                    s.simulated.size() * sizeof(SimulatedStructure)),
                          rows_of(s.unpriced), rows_of(s.left_out), bytes_of(s.estimated),
                          bytes_of(s.totals));
}

Simulation of_state(const PlanHandle& plan, const State& state) {
    Simulation s;
    s.plan = plan.plan;
    s.settings = {.seed = state[0].cast<std::uint64_t>(),
                  .draws = state[1].cast<std::size_t>(),
                  .replicates = state[2].cast<std::size_t>(),
                  .sampling = static_cast<Sampling>(state[3].cast<int>())};
    s.structures = state[4].cast<std::size_t>();
    const auto rows = state[5].cast<std::string>();
    s.simulated.resize(rows.size() / sizeof(SimulatedStructure));
    std::memcpy(s.simulated.data(), rows.data(), s.simulated.size() * sizeof(SimulatedStructure));
    s.unpriced = unpriced_of(state[6].cast<Rows>());
    s.left_out = unpriced_of(state[7].cast<Rows>());
    s.estimated = totals_of(state[8].cast<std::string>());
    s.totals = totals_of(state[9].cast<std::string>());
    return s;
}

/// Settings with other draws.
SimulationSettings most_of(SimulationSettings settings, std::size_t draws, std::size_t replicates) {
    settings.draws = draws;
    settings.replicates = replicates;
    return settings;
}

/// Draws and replicates.
std::pair<std::size_t, std::size_t> round_of(const SimulationSettings& settings) {
    return {settings.draws, settings.replicates};
}

std::pair<double, double> pair_of(const Estimated& e) {
    return {e.value, e.standard_error};
}

void bind_totals(py::module_& m) {
    using py::arg;
    py::class_<DrawnTotal>(m, "DrawnTotal", doc("simulate::DrawnTotal"))
        .def(
            "mean", [](const DrawnTotal& t) { return pair_of(t.mean()); },
            doc("simulate::DrawnTotal::mean"))
        .def(
            "sd", [](const DrawnTotal& t) { return pair_of(t.sd()); },
            doc("simulate::DrawnTotal::sd"))
        .def(
            "quantile",
            [](const DrawnTotal& t, double level) { return pair_of(t.quantile(level)); },
            doc("simulate::DrawnTotal::quantile"), arg("level"))
        .def(
            "chance_above",
            [](const DrawnTotal& t, double limit) { return pair_of(t.chance_above(limit)); },
            doc("simulate::DrawnTotal::chance_above"), arg("limit"))
        .def(
            "contingency",
            [](const DrawnTotal& t, double level) { return pair_of(t.contingency(level)); },
            doc("simulate::DrawnTotal::contingency"), arg("level"))
        .def(
            "half_width",
            [](const DrawnTotal& t, const std::pair<double, double>& found, double confidence) {
                return t.half_width({found.first, found.second}, confidence);
            },
            doc("simulate::DrawnTotal::half_width"), arg("found"), arg("confidence"))
        .def_property_readonly("estimated", &DrawnTotal::estimated,
                               doc("simulate::DrawnTotal::estimated"))
        .def(
            "draws",
            [](const DrawnTotal& t) {
                return numbers<double>(t.draws(), [](double x) { return x; });
            },
            doc("simulate::DrawnTotal::draws"));
}

} // namespace

void bind_simulation(py::module_& m) {
    using py::arg;
    bind_totals(m);
    py::class_<Simulation>(m, "Simulation", doc("simulate::Simulation"))
        .def("figures", &figures, doc("simulate::SimulatedFigure"), arg("units"))
        .def(
            "simulated",
            [](const Simulation& s) {
                return numbers<std::size_t>(s.simulated,
                                            [](const SimulatedStructure& r) { return r.index; });
            },
            doc("simulate::SimulatedStructure::index"))
        .def("ranges", &ranges, doc("simulate::StructureRange"))
        .def(
            "total", [](const Simulation& s, std::size_t figure) { return DrawnTotal(s, figure); },
            doc("simulate::DrawnTotal"), arg("figure"))
        .def(
            "unpriced", [](const Simulation& s) { return structures_of(s.unpriced); },
            doc("simulate::Simulation::unpriced"))
        .def(
            "left_out", [](const Simulation& s) { return structures_of(s.left_out); },
            doc("simulate::Simulation::left_out"))
        .def_readonly("structures", &Simulation::structures,
                      doc("simulate::Simulation::structures"))
        .def_property_readonly(
            "draws", [](const Simulation& s) { return s.settings.draws; },
            doc("simulate::SimulationSettings::draws"))
        .def_property_readonly(
            "seed", [](const Simulation& s) { return s.settings.seed; },
            doc("simulate::SimulationSettings::seed"))
        .def_property_readonly(
            "replicates", [](const Simulation& s) { return s.settings.replicates; },
            doc("simulate::SimulationSettings::replicates"))
        .def(
            "append", [](Simulation& whole, const Simulation& part) { append(whole, part); },
            doc("simulate::append"), arg("part"))
        .def(
            "next_round",
            [](const Simulation& s, std::size_t draws, std::size_t replicates, double limit) {
                return round_of(next_round(s, most_of(s.settings, draws, replicates), limit));
            },
            doc("simulate::next_round"), arg("draws"), arg("replicates"), arg("relative_error"))
        .def("state", &state_of, "Everything but the job, to carry to another process.")
        .def_static("of_state", &of_state, "The simulation that a state belongs to.", arg("plan"),
                    arg("state"));
    m.def("simulate", &run, doc("simulate::simulate"), arg("inventory"), arg("plan"), arg("draws"),
          arg("replicates"), arg("seed"), arg("sampling"), arg("relative_error"), arg("threads"),
          arg("progress").none(true));
    m.def(
        "first_round",
        [](std::size_t draws, std::size_t replicates) {
            return round_of(simulate::first_round(most_of({}, draws, replicates)));
        },
        doc("simulate::first_round"), arg("draws"), arg("replicates"));
    m.def("replicates_for", &simulate::replicates_for, doc("simulate::replicates_for"),
          arg("draws"));
    m.def(
        "kept_levels", [] { return simulate::kept_levels; },
        "Probabilities whose quantiles are kept of every structure.");
}

} // namespace scupper::python
