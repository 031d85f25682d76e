// Hose lays: read, solve, sweep and ask backwards; tables as columns in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/estimate.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/json.hpp"
#include "scupper/schema.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

namespace h = hydraulics;
using h::HoseLay;
using h::LaySolution;

/// A solution with the lay it is of, whose names its tables bear.
struct Solved {
    std::shared_ptr<const HoseLay> lay;
    LaySolution solution;
};

struct Lay {
    std::shared_ptr<const HoseLay> lay;

    std::size_t nozzle(const std::string& name) const {
        return h::nozzle_index(*lay, name, "nozzle");
    }
    std::size_t segment(const std::string& name) const {
        return h::segment_index(*lay, name, "segment");
    }
};

Lay read_lay(const std::string& document, const std::string& name) {
    const py::gil_scoped_release free;
    return {std::make_shared<const HoseLay>(json::read_hose_lay(document, name))};
}

Solved solve(const Lay& self) {
    const py::gil_scoped_release free;
    return {self.lay, h::solve(*self.lay)};
}

std::string_view name_of(const HoseLay& lay, std::size_t segment) {
    return segment == h::at_pump ? std::string_view("pump") : lay.segments[segment].name;
}

template <class Items>
std::vector<std::string> names_of(const Items& items) {
    std::vector<std::string> out;
    for (const auto& item : items) {
        out.push_back(item.name);
    }
    return out;
}

std::string_view limit_name(h::PumpLimit limit) {
    return hose_lay_limit_names.at(static_cast<std::size_t>(limit));
}

Columns segment_columns(const Solved& s) {
    const auto& segments = s.lay->segments;
    const auto& flows = s.solution.segments;
    using F = h::SegmentFlow;
    const auto column = [&](auto member) {
        return numbers<double>(flows, [&](const F& f) { return (f.*member).si(); });
    };
    Columns out;
    out["name"] = texts(segments, [](const auto& x) { return x.name; });
    out["from"] = texts(segments, [&](const auto& x) { return name_of(*s.lay, x.from); });
    out["flow"] = column(&F::flow);
    out["velocity"] = column(&F::velocity);
    out["inlet_pressure"] = column(&F::inlet_pressure);
    out["outlet_pressure"] = column(&F::outlet_pressure);
    out["static_pressure"] = column(&F::static_pressure);
    out["friction_loss"] = column(&F::friction_loss);
    out["minor_loss"] = column(&F::minor_loss);
    out["reynolds"] = numbers<double>(flows, [](const F& f) { return f.reynolds; });
    return out;
}

/// The end of every segment.
Columns node_columns(const Solved& s) {
    const auto& flows = s.solution.segments;
    using F = h::SegmentFlow;
    Columns out;
    out["name"] = texts(s.lay->segments, [](const auto& x) { return x.name; });
    out["elevation"] = numbers<double>(flows, [](const F& f) { return f.elevation.si(); });
    out["pressure"] = numbers<double>(flows, [](const F& f) { return f.outlet_pressure.si(); });
    out["flow"] = numbers<double>(flows, [](const F& f) { return f.flow.si(); });
    out["velocity"] = numbers<double>(flows, [](const F& f) { return f.velocity.si(); });
    return out;
}

std::string_view nozzle_state(const h::LayNozzle& nozzle, const h::NozzleFlow& flow) {
    return flow.too_high ? std::string_view("too_high")
                         : hose_lay_nozzle_states.at(static_cast<std::size_t>(nozzle.state));
}

Columns nozzle_columns(const Solved& s) {
    const auto& nozzles = s.lay->nozzles;
    const auto& flows = s.solution.nozzles;
    using F = h::NozzleFlow;
    const auto column = [&](auto member) {
        return numbers<double>(flows, [&](const F& f) { return (f.*member).si(); });
    };
    py::list states(nozzles.size());
    for (std::size_t i = 0; i < nozzles.size(); ++i) {
        states[i] = text(nozzle_state(nozzles[i], flows[i]));
    }
    Columns out;
    out["name"] = texts(nozzles, [](const auto& x) { return x.name; });
    out["at"] = texts(nozzles, [&](const auto& x) { return name_of(*s.lay, x.at); });
    out["state"] = states;
    out["flow"] = column(&F::flow);
    out["pressure"] = column(&F::pressure);
    out["jet_velocity"] = column(&F::jet_velocity);
    out["reaction"] = column(&F::reaction);
    out["power"] = column(&F::power);
    return out;
}

Columns pump_columns(const Solved& s) {
    const h::PumpFlow& p = s.solution.pump;
    Columns out;
    out["flow"] = py::float_(p.flow.si());
    out["pressure"] = py::float_(p.pressure.si());
    out["limit"] = text(limit_name(p.limit));
    out["bypass"] = py::float_(p.bypass.si());
    out["hydraulic_power"] = py::float_(p.hydraulic_power.si());
    out["shaft_power"] = py::float_(p.shaft_power.si());
    out["npsh_available"] = py::float_(p.npsh_available.si());
    return out;
}

Columns limit_columns(const Solved& s, const std::string& units) {
    const UnitSystem system = estimate::unit_system(units);
    const auto& limits = s.solution.limits;
    using L = h::LimitUse;
    const auto shown = [&](const L& l) { return h::lay_unit(l.dimension, system); };
    Columns out;
    out["limit"] = texts(limits, [](const L& l) { return limit_name(l.limit); });
    out["value"] = numbers<double>(limits, [&](const L& l) { return to_unit(l.value, shown(l)); });
    out["allowed"] =
        numbers<double>(limits, [&](const L& l) { return to_unit(l.allowed, shown(l)); });
    out["unit"] = texts(limits, [&](const L& l) { return shown(l).name; });
    out["holds"] = numbers<bool>(limits, [](const L& l) { return l.holds; });
    return out;
}

Columns warning_columns(const Solved& s, const std::string& units) {
    const UnitSystem system = estimate::unit_system(units);
    const auto& warnings = s.solution.warnings;
    using W = h::LayWarning;
    const auto shown = [&](const W& w) { return h::lay_unit(w.dimension, system); };
    Columns out;
    out["kind"] = texts(warnings, [](const W& w) {
        return h::lay_warning_names.at(static_cast<std::size_t>(w.kind));
    });
    out["where"] = texts(warnings, [](const W& w) { return w.where; });
    out["value"] =
        numbers<double>(warnings, [&](const W& w) { return to_unit(w.value, shown(w)); });
    out["limit"] =
        numbers<double>(warnings, [&](const W& w) { return to_unit(w.limit, shown(w)); });
    out["unit"] = texts(warnings, [&](const W& w) { return shown(w).name; });
    out["text"] = texts(warnings, [&](const W& w) { return h::warning_text(w, system); });
    return out;
}

Columns solve_many(const Lay& self, const std::vector<double>& pressures) {
    h::LaySweep sweep;
    {
        const py::gil_scoped_release free;
        sweep = h::solve_many(*self.lay, pressures);
    }
    const auto rows = static_cast<py::ssize_t>(pressures.size());
    const auto nozzles = static_cast<py::ssize_t>(self.lay->nozzles.size());
    Columns out;
    out["pump_flow"] = hand_over(std::move(sweep.pump_flow), {rows});
    out["pump_pressure"] = hand_over(std::move(sweep.pump_pressure), {rows});
    out["nozzle_flow"] = hand_over(std::move(sweep.nozzle_flow), {rows, nozzles});
    out["nozzle_pressure"] = hand_over(std::move(sweep.nozzle_pressure), {rows, nozzles});
    return out;
}

double pump_pressure_for(const Lay& self, const std::string& nozzle, double pressure) {
    const py::gil_scoped_release free;
    return h::pump_pressure_for(*self.lay, self.nozzle(nozzle), Pressure<>(pressure)).si();
}

double longest_hose(const Lay& self, const std::string& segment, const std::string& nozzle,
                    double pressure) {
    const py::gil_scoped_release free;
    return h::longest_hose(*self.lay, self.segment(segment), self.nozzle(nozzle),
                           Pressure<>(pressure))
        .si();
}

double greatest_lift(const Lay& self, const std::string& segment, const std::string& nozzle,
                     double pressure) {
    const py::gil_scoped_release free;
    return h::greatest_lift(*self.lay, self.segment(segment), self.nozzle(nozzle),
                            Pressure<>(pressure))
        .si();
}

double nozzle_bore_for(const Lay& self, const std::string& nozzle, double flow) {
    const py::gil_scoped_release free;
    return h::nozzle_bore_for(*self.lay, self.nozzle(nozzle), Flow<>(flow)).si();
}

std::size_t nozzle_count(const Lay& self, const std::string& nozzle, const std::string& leg,
                         double pressure) {
    const py::gil_scoped_release free;
    const std::size_t repeated = leg.empty() ? h::at_pump : self.segment(leg);
    return h::nozzle_count(*self.lay, self.nozzle(nozzle), repeated, Pressure<>(pressure));
}

double smallest_bore(const Lay& self, const std::string& segment, const std::string& nozzle,
                     double pressure, const std::optional<std::vector<double>>& bores) {
    const py::gil_scoped_release free;
    const std::size_t s = self.segment(segment);
    const std::size_t n = self.nozzle(nozzle);
    if (!bores) {
        return h::smallest_bore(*self.lay, s, n, Pressure<>(pressure)).si();
    }
    std::vector<Length<>> list;
    for (const double bore : *bores) {
        list.emplace_back(bore);
    }
    return h::smallest_bore(*self.lay, s, n, Pressure<>(pressure), list).si();
}

void bind_lay(py::module_& m) {
    using py::arg;
    py::class_<Lay>(m, "HoseLay", doc("hydraulics::HoseLay"))
        .def_static("read", &read_lay, doc("json::read_hose_lay"), arg("document"), arg("name"))
        .def(
            "write", [](const Lay& s) { return json::write_hose_lay(*s.lay); },
            doc("json::write_hose_lay"))
        .def_property_readonly(
            "name", [](const Lay& s) { return text(s.lay->name); },
            doc("hydraulics::HoseLay::name"))
        .def_property_readonly(
            "segments", [](const Lay& s) { return names_of(s.lay->segments); },
            doc("hydraulics::LaySegment::name"))
        .def_property_readonly(
            "nozzles", [](const Lay& s) { return names_of(s.lay->nozzles); },
            doc("hydraulics::LayNozzle::name"))
        .def("solve", &solve, doc("hydraulics::solve"))
        .def("solve_many", &solve_many, doc("hydraulics::solve_many"), arg("pressures"))
        .def("pump_pressure_for", &pump_pressure_for, doc("hydraulics::pump_pressure_for"),
             arg("nozzle"), arg("pressure"))
        .def("longest_hose", &longest_hose, doc("hydraulics::longest_hose"), arg("segment"),
             arg("nozzle"), arg("pressure"))
        .def("greatest_lift", &greatest_lift, doc("hydraulics::greatest_lift"), arg("segment"),
             arg("nozzle"), arg("pressure"))
        .def("nozzle_bore_for", &nozzle_bore_for, doc("hydraulics::nozzle_bore_for"), arg("nozzle"),
             arg("flow"))
        .def("nozzle_count", &nozzle_count, doc("hydraulics::nozzle_count"), arg("nozzle"),
             arg("leg"), arg("pressure"))
        .def("smallest_bore", &smallest_bore,
             doc("hydraulics::smallest_bore(lay, segment, nozzle, wanted)"), arg("segment"),
             arg("nozzle"), arg("pressure"), arg("bores"));
}

void bind_solution(py::module_& m) {
    using py::arg;
    py::class_<Solved>(m, "LaySolution", doc("hydraulics::LaySolution"))
        .def("pump", &pump_columns, doc("hydraulics::PumpFlow"))
        .def("segments", &segment_columns, doc("hydraulics::SegmentFlow"))
        .def("nodes", &node_columns, "Every segment's end: its wye or nozzle, in SI units.")
        .def("nozzles", &nozzle_columns, doc("hydraulics::NozzleFlow"))
        .def("limits", &limit_columns, doc("hydraulics::LimitUse"), arg("units"))
        .def("warnings", &warning_columns, doc("hydraulics::LayWarning"), arg("units"))
        .def_property_readonly(
            "time_to_empty",
            [](const Solved& s) -> std::optional<double> {
                if (!s.solution.time_to_empty) {
                    return std::nullopt;
                }
                return s.solution.time_to_empty->si();
            },
            doc("hydraulics::LaySolution::time_to_empty"))
        .def_property_readonly(
            "mass_residual", [](const Solved& s) { return s.solution.mass_residual; },
            doc("hydraulics::LaySolution::mass_residual"))
        .def_property_readonly(
            "energy_residual", [](const Solved& s) { return s.solution.energy_residual; },
            doc("hydraulics::LaySolution::energy_residual"))
        .def_property_readonly(
            "iterations", [](const Solved& s) { return s.solution.iterations; },
            doc("hydraulics::LaySolution::iterations"));
}

std::string lay_unit(const std::string& like, const std::string& units) {
    return h::lay_unit(parse_unit(like, "unit").dimension, estimate::unit_system(units)).name;
}

} // namespace

void bind_hose_lay(py::module_& m) {
    using py::arg;
    bind_solution(m);
    bind_lay(m);
    m.def("lay_unit", &lay_unit, doc("hydraulics::lay_unit"), arg("like"), arg("units"));
}

} // namespace scupper::python
