// Nozzles, bars and jets over arrays of one shape, in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"

namespace scupper::python {

namespace {

namespace h = hydraulics;

std::vector<h::Nozzle<>> bar_of(const Array& bores, const Array& coefficients) {
    if (bores.size() != coefficients.size()) {
        throw InputError({"arguments.shape", "discharge_coefficient",
                          std::to_string(coefficients.size()) + " values",
                          "one for each of " + std::to_string(bores.size()) + " nozzles"});
    }
    std::vector<h::Nozzle<>> nozzles;
    for (py::ssize_t i = 0; i < bores.size(); ++i) {
        nozzles.push_back({Length<>(bores.data()[i]), coefficients.data()[i]});
    }
    return nozzles;
}

NumberArray bar_flow(const Array& bores, const Array& coefficients, const Array& pressure,
                     const Array& density) {
    const std::vector<h::Nozzle<>> bar = bar_of(bores, coefficients);
    return elementwise(
        [&](double p, double rho) { return h::bar_flow(bar, Pressure<>(p), Density<>(rho)).si(); },
        pressure, density);
}

NumberArray bar_pressure(const Array& bores, const Array& coefficients, const Array& flow,
                         const Array& density) {
    const std::vector<h::Nozzle<>> bar = bar_of(bores, coefficients);
    return elementwise(
        [&](double q, double rho) { return h::bar_pressure(bar, Flow<>(q), Density<>(rho)).si(); },
        flow, density);
}

void bind_jets(py::module_& m) {
    using py::arg;
    m.def("jet_velocity", over_arrays(&h::jet_velocity<double>), doc("hydraulics::jet_velocity"),
          arg("pressure"), arg("density"));
    m.def("stagnation_pressure", over_arrays(&h::stagnation_pressure<double>),
          doc("hydraulics::stagnation_pressure"), arg("velocity"), arg("density"));
    m.def("jet_force", over_arrays(&h::jet_force<double>), doc("hydraulics::jet_force"),
          arg("bore"), arg("velocity"), arg("surface_speed"), arg("angle"), arg("density"));
    m.def("hydraulic_power", over_arrays(&h::hydraulic_power<double>),
          doc("hydraulics::hydraulic_power"), arg("pressure"), arg("flow"));
    m.def("fan_width", over_arrays(&h::fan_width<double>), doc("hydraulics::fan_width"),
          arg("stand_off"), arg("spray_angle"));
    m.def("water_by_area", over_arrays(&h::water_by_area<double>), doc("hydraulics::water_by_area"),
          arg("flow"), arg("width"), arg("travel_speed"));
}

} // namespace

void bind_nozzles(py::module_& m) {
    using py::arg;
    m.def("nozzle_flow", over_arrays(&h::nozzle_flow<double>), doc("hydraulics::nozzle_flow"),
          arg("bore"), arg("pressure"), arg("discharge_coefficient"), arg("density"));
    m.def("nozzle_pressure", over_arrays(&h::nozzle_pressure<double>),
          doc("hydraulics::nozzle_pressure"), arg("bore"), arg("flow"),
          arg("discharge_coefficient"), arg("density"));
    m.def("rated_nozzle_flow", over_arrays(&h::rated_nozzle_flow<double>),
          doc("hydraulics::rated_nozzle_flow"), arg("rated_flow"), arg("rated_pressure"),
          arg("pressure"));
    m.def("equivalent_bore", over_arrays(&h::equivalent_bore<double>),
          doc("hydraulics::equivalent_bore"), arg("rated_flow"), arg("rated_pressure"),
          arg("discharge_coefficient"), arg("density"));
    m.def("nozzle_reaction", over_arrays(&h::nozzle_reaction<double>),
          doc("hydraulics::nozzle_reaction"), arg("flow"), arg("pressure"), arg("density"));
    m.def("smooth_bore_reaction", over_arrays(&h::smooth_bore_reaction<double>),
          doc("hydraulics::smooth_bore_reaction"), arg("bore"), arg("pressure"),
          arg("discharge_coefficient"));
    m.def("worn_bore", over_arrays(&h::worn_bore<double>), doc("hydraulics::worn_bore"),
          arg("bore"), arg("wear"));
    m.def("nozzle_wear", over_arrays(&h::nozzle_wear<double>), doc("hydraulics::nozzle_wear"),
          arg("flow"), arg("new_flow"));
    m.def("bar_flow", &bar_flow, doc("hydraulics::bar_flow"), arg("bores"), arg("coefficients"),
          arg("pressure"), arg("density"));
    m.def("bar_pressure", &bar_pressure, doc("hydraulics::bar_pressure"), arg("bores"),
          arg("coefficients"), arg("flow"), arg("density"));
    bind_jets(m);
}

} // namespace scupper::python
