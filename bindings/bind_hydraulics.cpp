// Nozzles, friction and water over arrays of one shape, in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/schema.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

namespace h = hydraulics;
using Rho = Density<>;

NumberArray nozzle_flow(const Array& bore, const Array& pressure, const Array& c,
                        const Array& density) {
    return elementwise(
        [](double d, double p, double k, double rho) {
            return h::nozzle_flow(Length<>(d), Pressure<>(p), k, Rho(rho)).si();
        },
        bore, pressure, c, density);
}

NumberArray nozzle_pressure(const Array& bore, const Array& flow, const Array& c,
                            const Array& density) {
    return elementwise(
        [](double d, double q, double k, double rho) {
            return h::nozzle_pressure(Length<>(d), Flow<>(q), k, Rho(rho)).si();
        },
        bore, flow, c, density);
}

NumberArray rated_nozzle_flow(const Array& rated_flow, const Array& rated_pressure,
                              const Array& pressure) {
    return elementwise(
        [](double q, double pr, double p) {
            return h::rated_nozzle_flow(Flow<>(q), Pressure<>(pr), Pressure<>(p)).si();
        },
        rated_flow, rated_pressure, pressure);
}

NumberArray nozzle_reaction(const Array& flow, const Array& pressure, const Array& density) {
    return elementwise(
        [](double q, double p, double rho) {
            return h::nozzle_reaction(Flow<>(q), Pressure<>(p), Rho(rho)).si();
        },
        flow, pressure, density);
}

NumberArray friction_factor(const Array& reynolds_number, const Array& relative_roughness) {
    return elementwise([](double re, double k) { return h::friction_factor(re, k); },
                       reynolds_number, relative_roughness);
}

NumberArray friction_loss(const Array& flow, const Array& bore, const Array& length,
                          const Array& roughness, const Array& temperature) {
    return elementwise(
        [](double q, double d, double l, double k, double t) {
            const h::Fluid<double> water = h::water(Temperature<>(t));
            return h::friction_loss(Flow<>(q), Length<>(d), Length<>(l), Length<>(k), water).si();
        },
        flow, bore, length, roughness, temperature);
}

NumberArray hazen_williams_loss(const std::string& form, const Array& flow, const Array& bore,
                                const Array& length, const Array& coefficient,
                                const Array& density) {
    const int index = index_of(h::hazen_williams_form_names, form);
    if (index < 0) {
        throw UnknownNameError(
            {"hydraulics.form", "form", "\"" + form + "\"", "one of hazen_williams_forms()"});
    }
    const auto which = static_cast<h::HazenWilliamsForm>(index);
    return elementwise(
        [which](double q, double d, double l, double c, double rho) {
            return h::hazen_williams_loss(which, Flow<>(q), Length<>(d), Length<>(l), c, Rho(rho))
                .si();
        },
        flow, bore, length, coefficient, density);
}

NumberArray hose_coefficient_loss(const Array& flow, const Array& length,
                                  const Array& coefficient) {
    return elementwise(
        [](double q, double l, double c) {
            return h::hose_coefficient_loss(Flow<>(q), Length<>(l), c).si();
        },
        flow, length, coefficient);
}

NumberArray water_density(const Array& temperature) {
    return elementwise([](double t) { return h::water_density(Temperature<>(t)).si(); },
                       temperature);
}

NumberArray water_viscosity(const Array& temperature) {
    return elementwise([](double t) { return h::water_dynamic_viscosity(Temperature<>(t)).si(); },
                       temperature);
}

} // namespace

void bind_hydraulics(py::module_& m) {
    using py::arg;
    m.def("nozzle_flow", &nozzle_flow, doc("hydraulics::nozzle_flow"), arg("bore"), arg("pressure"),
          arg("discharge_coefficient"), arg("density"));
    m.def("nozzle_pressure", &nozzle_pressure, doc("hydraulics::nozzle_pressure"), arg("bore"),
          arg("flow"), arg("discharge_coefficient"), arg("density"));
    m.def("rated_nozzle_flow", &rated_nozzle_flow, doc("hydraulics::rated_nozzle_flow"),
          arg("rated_flow"), arg("rated_pressure"), arg("pressure"));
    m.def("nozzle_reaction", &nozzle_reaction, doc("hydraulics::nozzle_reaction"), arg("flow"),
          arg("pressure"), arg("density"));
    m.def("friction_factor", &friction_factor, doc("hydraulics::friction_factor"),
          arg("reynolds_number"), arg("relative_roughness"));
    m.def("friction_loss", &friction_loss, doc("hydraulics::friction_loss"), arg("flow"),
          arg("bore"), arg("length"), arg("roughness"), arg("temperature"));
    m.def("hazen_williams_loss", &hazen_williams_loss, doc("hydraulics::hazen_williams_loss"),
          arg("form"), arg("flow"), arg("bore"), arg("length"), arg("coefficient"), arg("density"));
    m.def("hose_coefficient_loss", &hose_coefficient_loss, doc("hydraulics::hose_coefficient_loss"),
          arg("flow"), arg("length"), arg("coefficient"));
    m.def("water_density", &water_density, doc("hydraulics::water_density"), arg("temperature"));
    m.def("water_viscosity", &water_viscosity, doc("hydraulics::water_dynamic_viscosity"),
          arg("temperature"));
    m.def(
        "hazen_williams_forms",
        [] {
            return std::vector(h::hazen_williams_form_names.begin(),
                               h::hazen_williams_form_names.end());
        },
        "The names of the Hazen-Williams forms [text, n].");
}

} // namespace scupper::python
