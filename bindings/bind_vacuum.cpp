// Vacuum hoses over arrays of one shape, in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/hydraulics.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

namespace h = hydraulics;

/// The arguments of one lay, in the order of the arrays.
struct Lay {
    h::Blower blower;
    h::VacuumHose hose;
    h::Ambient ambient;
};

constexpr std::size_t lay_arguments = 9;
constexpr std::size_t dirt_arguments = 4;

Lay lay_of(const std::array<double, lay_arguments>& x) {
    return {{Flow<>(x[0]), Pressure<>(x[1])},
            {Length<>(x[2]), Length<>(x[3]), Length<>(x[4]), Length<>(x[5]), x[6]},
            {Pressure<>(x[7]), Temperature<>(x[8])}};
}

h::LooseDirt dirt_of(const std::array<double, dirt_arguments>& x) {
    return {Length<>(x[0]), Density<>(x[1]), h::MassFlow(x[2]), Speed<>(x[3])};
}

template <std::size_t N>
std::array<const double*, N> pointers(const std::vector<Array>& arrays, std::size_t first) {
    std::array<const double*, N> out{};
    for (std::size_t i = 0; i < N; ++i) {
        if (arrays.at(first + i).size() != arrays.front().size()) {
            throw py::value_error("arrays of different size");
        }
        out[i] = arrays[first + i].data();
    }
    return out;
}

template <std::size_t N>
std::array<double, N> at(const std::array<const double*, N>& pointers, std::size_t row) {
    std::array<double, N> out{};
    for (std::size_t i = 0; i < N; ++i) {
        out[i] = pointers[i][row];
    }
    return out;
}

void put_air(Columns& columns, const std::vector<h::AirFlow>& air) {
    using A = const h::AirFlow&;
    columns["vacuum"] = numbers<double>(air, [](A a) { return a.vacuum.si(); });
    columns["end_velocity"] = numbers<double>(air, [](A a) { return a.end_velocity.si(); });
    columns["inlet_velocity"] = numbers<double>(air, [](A a) { return a.inlet_velocity.si(); });
    columns["free_flow"] = numbers<double>(air, [](A a) { return a.free_flow.si(); });
    columns["relief_open"] = numbers<bool>(air, [](A a) { return a.relief_open; });
}

Columns air_flow(const std::vector<Array>& lay) {
    const auto in = pointers<lay_arguments>(lay, 0);
    std::vector<h::AirFlow> air(static_cast<std::size_t>(lay.front().size()));
    {
        const py::gil_scoped_release free;
        for (std::size_t row = 0; row < air.size(); ++row) {
            const Lay l = lay_of(at(in, row));
            air[row] = h::vacuum_air_flow(l.blower, l.hose, l.ambient);
        }
    }
    Columns columns;
    put_air(columns, air);
    return columns;
}

Columns pick_up(const std::vector<Array>& arguments) {
    const auto lay = pointers<lay_arguments>(arguments, 0);
    const auto dirt = pointers<dirt_arguments>(arguments, lay_arguments);
    std::vector<h::PickUp> all(static_cast<std::size_t>(arguments.front().size()));
    {
        const py::gil_scoped_release free;
        for (std::size_t row = 0; row < all.size(); ++row) {
            const Lay l = lay_of(at(lay, row));
            all[row] = h::vacuum_pick_up(l.blower, l.hose, l.ambient, dirt_of(at(dirt, row)));
        }
    }
    using P = const h::PickUp&;
    std::vector<h::AirFlow> air;
    for (P p : all) {
        air.push_back(p.air);
    }
    Columns columns;
    put_air(columns, air);
    const auto add = [&](const char* name, auto get) { columns[name] = numbers<double>(all, get); };
    add("dirt_vacuum", [](P p) { return p.dirt_vacuum.si(); });
    add("pick_up_velocity", [](P p) { return p.pick_up_velocity.si(); });
    add("saltation_velocity", [](P p) { return p.saltation_velocity.si(); });
    add("rise_velocity", [](P p) { return p.rise_velocity.si(); });
    add("water_lift", [](P p) { return p.water_lift.si(); });
    add("margin", [](P p) { return p.margin; });
    columns["hinders"] =
        texts(all, [](P p) { return h::hinders_names.at(static_cast<std::size_t>(p.hinders)); });
    return columns;
}

Columns transport_columns() {
    using T = const h::TransportVelocity&;
    const auto& rows = h::transport_velocities;
    Columns columns;
    columns["dust"] = texts(rows, [](T t) { return t.dust; });
    columns["low"] = numbers<double>(rows, [](T t) { return t.low; });
    columns["high"] = numbers<double>(rows, [](T t) { return t.high; });
    columns["source"] = texts(rows, [](T t) { return t.source; });
    return columns;
}

} // namespace

void bind_vacuum(py::module_& m) {
    using py::arg;
    m.def("air_density", over_arrays(&h::air_density), doc("hydraulics::air_density"),
          arg("pressure"), arg("temperature"));
    m.def("air_viscosity", over_arrays(&h::air_viscosity), doc("hydraulics::air_viscosity"),
          arg("temperature"));
    m.def("terminal_velocity", over_arrays(&h::terminal_velocity),
          doc("hydraulics::terminal_velocity"), arg("size"), arg("grain_density"), arg("density"),
          arg("viscosity"));
    m.def("saltation_velocity", over_arrays(&h::saltation_velocity),
          doc("hydraulics::saltation_velocity"), arg("solids"), arg("size"), arg("density"),
          arg("bore"));
    m.def("pick_up_velocity", over_arrays(&h::pick_up_velocity),
          doc("hydraulics::pick_up_velocity"), arg("size"), arg("grain_density"), arg("density"),
          arg("viscosity"), arg("bore"));
    m.def("vacuum_air_flow", &air_flow, doc("hydraulics::vacuum_air_flow"), arg("arguments"));
    m.def("vacuum_pick_up", &pick_up, doc("hydraulics::vacuum_pick_up"), arg("arguments"));
    m.def("transport_velocities", &transport_columns, doc("hydraulics::TransportVelocity"));
}

} // namespace scupper::python
