// Dirt, windrows, tanks and axles over arrays of one shape, in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/debris.hpp"
#include "scupper/work.hpp"

#include <cmath>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using Pair = std::tuple<NumberArray, NumberArray>;

debris::Lean lean_of(bool against_parapet) {
    return against_parapet ? debris::Lean::parapet : debris::Lean::none;
}

std::tuple<NumberArray, NumberArray, NumberArray>
windrow(const Array& volume, const Array& length, const Array& repose, bool against_parapet) {
    const auto part = [&](auto get) {
        return elementwise(
            [&](double v, double l, double r) {
                return get(debris::windrow(Volume<>(v), Length<>(l), Angle<>(r),
                                           lean_of(against_parapet)));
            },
            volume, length, repose);
    };
    return {part([](const debris::Windrow<>& w) { return w.section.si(); }),
            part([](const debris::Windrow<>& w) { return w.width.si(); }),
            part([](const debris::Windrow<>& w) { return w.height.si(); })};
}

NumberArray blocks_shoulder(const Array& shoulder, const Array& width) {
    return elementwise(
        [](double s, double w) {
            return debris::blocks_shoulder(Length<>(s), Length<>(w)) ? 1.0 : 0.0;
        },
        shoulder, width);
}

/// Volume and mass of what a function of arrays gives.
template <class F, class... Arrays>
Pair bulk(F f, const Arrays&... arrays) {
    return {elementwise([&](auto... p) { return f(p...).volume.si(); }, arrays...),
            elementwise([&](auto... p) { return f(p...).mass.si(); }, arrays...)};
}

debris::Bulk<> bulk_of(double volume, double mass) {
    return {Volume<>(volume), Mass<>(mass)};
}

Pair tank_fill(const Array& room, const Array& payload, const Array& density) {
    return bulk([](double v, double m,
                   double rho) { return debris::tank_fill(bulk_of(v, m), Density<>(rho)); },
                room, payload, density);
}

Pair decanted(const Array& volume, const Array& mass, const Array& free_share,
              const Array& water_density) {
    return bulk([](double v, double m, double f,
                   double rho) { return debris::decanted(bulk_of(v, m), f, Density<>(rho)); },
                volume, mass, free_share, water_density);
}

NumberArray weight_governs(const Array& room, const Array& payload, const Array& density) {
    return elementwise(
        [](double v, double m, double rho) {
            return debris::weight_governs(bulk_of(v, m), Density<>(rho)) ? 1.0 : 0.0;
        },
        room, payload, density);
}

NumberArray balanced_density(const Array& room, const Array& payload) {
    return elementwise(
        [](double v, double m) { return debris::balanced_density(bulk_of(v, m)).si(); }, room,
        payload);
}

NumberArray truck_loads(const Array& volume, const Array& mass, const Array& room,
                        const Array& payload, bool shared) {
    return elementwise(
        [shared](double v, double m, double r, double p) {
            return number(debris::truck_loads(bulk_of(v, m), bulk_of(r, p), shared));
        },
        volume, mass, room, payload);
}

/// Axles are counted; what is no whole number of them is none at all.
int whole(double axles) {
    return axles == std::floor(axles) && std::abs(axles) < 1e6 ? static_cast<int>(axles) : -1;
}

NumberArray by_group(Mass<> (*weight)(const Length<>&, int), const Array& span,
                     const Array& axles) {
    return elementwise([weight](double s, double n) { return weight(Length<>(s), whole(n)).si(); },
                       span, axles);
}

NumberArray bridge_formula(const Array& span, const Array& axles) {
    return by_group(&debris::bridge_formula, span, axles);
}

NumberArray axle_group_limit(const Array& span, const Array& axles) {
    return by_group(&debris::axle_group_limit, span, axles);
}

using Group = std::tuple<std::size_t, std::size_t, double>;

std::pair<double, std::vector<Group>> legal_gross(const std::vector<double>& spacings) {
    std::vector<Length<>> lengths(spacings.begin(), spacings.end());
    const debris::LegalGross truck = debris::legal_gross(lengths);
    std::vector<Group> groups;
    for (const debris::AxleGroup& g : truck.limits) {
        groups.emplace_back(g.first, g.last, g.limit.si());
    }
    return {truck.mass.si(), groups};
}

void bind_dirt(py::module_& m) {
    using py::arg;
    m.def("strip_volume", over_arrays(&debris::strip_volume<double>), doc("debris::strip_volume"),
          arg("length"), arg("width"), arg("depth"));
    m.def("strip_mass", over_arrays(&debris::strip_mass<double>), doc("debris::strip_mass"),
          arg("length"), arg("line_mass"));
    m.def("build_up_depth", over_arrays(&debris::build_up_depth<double>),
          doc("debris::build_up_depth"), arg("line_mass"), arg("width"), arg("density"));
    m.def("drain_volume", over_arrays(&debris::drain_volume<double>), doc("debris::drain_volume"),
          arg("drains"), arg("volume_each"));
    m.def("box_volume", over_arrays(&debris::box_volume<double>), doc("debris::box_volume"),
          arg("length"), arg("width"), arg("depth"));
    m.def("round_pit_volume", over_arrays(&debris::round_pit_volume<double>),
          doc("debris::round_pit_volume"), arg("diameter"), arg("depth"));
    m.def("loose_volume", over_arrays(&debris::loose_volume<double>), doc("debris::loose_volume"),
          arg("volume"), arg("swell"));
    m.def("load_factor", over_arrays(&debris::load_factor<double>), doc("debris::load_factor"),
          arg("swell"));
    m.def("swell_voids", over_arrays(&debris::swell_voids<double>), doc("debris::swell_voids"),
          arg("swell"));
    m.def("wet_density", over_arrays(&debris::wet_density<double>), doc("debris::wet_density"),
          arg("dry"), arg("gain"));
    m.def("windrow", &windrow, doc("debris::windrow"), arg("volume"), arg("length"), arg("repose"),
          arg("against_parapet"));
    m.def("clear_shoulder", over_arrays(&debris::clear_shoulder<double>),
          doc("debris::clear_shoulder"), arg("shoulder"), arg("width"));
    m.def("blocks_shoulder", &blocks_shoulder, doc("debris::blocks_shoulder"), arg("shoulder"),
          arg("width"));
}

void bind_trucks(py::module_& m) {
    using py::arg;
    m.def("payload", over_arrays(&debris::payload<double>), doc("debris::payload"),
          arg("gross_limit"), arg("empty_mass"), arg("water_aboard"), arg("water_density"));
    m.def("tank_fill", &tank_fill, doc("debris::tank_fill"), arg("room"), arg("payload"),
          arg("density"));
    m.def("weight_governs", &weight_governs, doc("debris::weight_governs"), arg("room"),
          arg("payload"), arg("density"));
    m.def("balanced_density", &balanced_density, doc("debris::balanced_density"), arg("room"),
          arg("payload"));
    m.def("decanted", &decanted, doc("debris::decanted"), arg("volume"), arg("mass"),
          arg("free_share"), arg("water_density"));
    m.def("truck_loads", &truck_loads, doc("debris::truck_loads"), arg("volume"), arg("mass"),
          arg("room"), arg("payload"), arg("shared"));
    m.def("trip_time", over_arrays(&work::trip_time<double>), doc("work::trip_time"),
          arg("distance"), arg("speed"), arg("stop"));
    m.def("bridge_formula", &bridge_formula, doc("debris::bridge_formula"), arg("span"),
          arg("axles"));
    m.def("axle_group_limit", &axle_group_limit, doc("debris::axle_group_limit"), arg("span"),
          arg("axles"));
    m.def("legal_gross", &legal_gross, doc("debris::legal_gross"), arg("spacings"));
}

} // namespace

void bind_debris(py::module_& m) {
    bind_dirt(m);
    bind_trucks(m);
}

} // namespace scupper::python
