// Friction and water over arrays of one shape, in SI.
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/schema.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

namespace h = hydraulics;
NumberArray friction_loss(const Array& flow, const Array& bore, const Array& length,
                          const Array& roughness, const Array& density, const Array& viscosity) {
    return elementwise(
        [](double q, double d, double l, double k, double rho, double nu) {
            const h::Fluid<> fluid{Density<>(rho), KinematicViscosity<>(nu)};
            return h::friction_loss(Flow<>(q), Length<>(d), Length<>(l), Length<>(k), fluid).si();
        },
        flow, bore, length, roughness, density, viscosity);
}

NumberArray coil_loss(const Array& flow, const Array& bore, const Array& length,
                      const Array& coil_diameter, const Array& roughness, const Array& density,
                      const Array& viscosity) {
    return elementwise(
        [](double q, double d, double l, double coil, double k, double rho, double nu) {
            const h::Fluid<> fluid{Density<>(rho), KinematicViscosity<>(nu)};
            return h::coil_loss(Flow<>(q), Length<>(d), Length<>(l), Length<>(coil), Length<>(k),
                                fluid)
                .si();
        },
        flow, bore, length, coil_diameter, roughness, density, viscosity);
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
            return h::hazen_williams_loss(which, Flow<>(q), Length<>(d), Length<>(l), c,
                                          Density<>(rho))
                .si();
        },
        flow, bore, length, coefficient, density);
}

} // namespace

void bind_hydraulics(py::module_& m) {
    using py::arg;
    m.def("pipe_velocity", over_arrays(&h::pipe_velocity<double>), doc("hydraulics::pipe_velocity"),
          arg("flow"), arg("bore"));
    m.def("velocity_pressure", over_arrays(&h::velocity_pressure<double>),
          doc("hydraulics::velocity_pressure"), arg("flow"), arg("bore"), arg("density"));
    m.def("reynolds", over_arrays(&h::reynolds<double>), doc("hydraulics::reynolds"), arg("flow"),
          arg("bore"), arg("kinematic_viscosity"));
    m.def("friction_factor", over_arrays(&h::friction_factor<double>),
          doc("hydraulics::friction_factor"), arg("reynolds_number"), arg("relative_roughness"));
    m.def("factor_loss", over_arrays(&h::factor_loss<double>), doc("hydraulics::factor_loss"),
          arg("factor"), arg("velocity"), arg("bore"), arg("length"), arg("density"));
    m.def("friction_loss", &friction_loss, doc("hydraulics::friction_loss"), arg("flow"),
          arg("bore"), arg("length"), arg("roughness"), arg("density"), arg("kinematic_viscosity"));
    m.def("hazen_williams_loss", &hazen_williams_loss, doc("hydraulics::hazen_williams_loss"),
          arg("form"), arg("flow"), arg("bore"), arg("length"), arg("coefficient"), arg("density"));
    m.def("hose_coefficient_loss", over_arrays(&h::hose_coefficient_loss<double>),
          doc("hydraulics::hose_coefficient_loss"), arg("flow"), arg("length"), arg("coefficient"));
    m.def("minor_loss", over_arrays(&h::minor_loss<double>), doc("hydraulics::minor_loss"),
          arg("flow"), arg("bore"), arg("loss_coefficient"), arg("density"));
    m.def("static_pressure", over_arrays(&h::static_pressure<double>),
          doc("hydraulics::static_pressure"), arg("rise"), arg("density"));
    m.def("head", over_arrays(&h::head<double>), doc("hydraulics::head"), arg("pressure"),
          arg("density"));
    m.def("coil_critical_reynolds", over_arrays(&h::coil_critical_reynolds),
          doc("hydraulics::coil_critical_reynolds"), arg("curvature"));
    m.def("coil_friction_factor", over_arrays(&h::coil_friction_factor),
          doc("hydraulics::coil_friction_factor"), arg("reynolds_number"), arg("curvature"),
          arg("relative_roughness"));
    m.def("coil_loss", &coil_loss, doc("hydraulics::coil_loss"), arg("flow"), arg("bore"),
          arg("length"), arg("coil_diameter"), arg("roughness"), arg("density"),
          arg("kinematic_viscosity"));
    m.def("water_density", over_arrays(&h::water_density<double>), doc("hydraulics::water_density"),
          arg("temperature"));
    m.def("water_viscosity", over_arrays(&h::water_dynamic_viscosity<double>),
          doc("hydraulics::water_dynamic_viscosity"), arg("temperature"));
    m.def("water_kinematic_viscosity", over_arrays(&h::water_kinematic_viscosity<double>),
          doc("hydraulics::water_kinematic_viscosity"), arg("temperature"));
    m.def("water_vapour_pressure", over_arrays(&h::water_vapour_pressure<double>),
          doc("hydraulics::water_vapour_pressure"), arg("temperature"));
    m.attr("bucket_reaction") = h::bucket_reaction;
    m.attr("one_person_reaction") = h::one_person_reaction;
    m.def("npsh_available",
          over_arrays<Length<>, const Pressure<>&, const Pressure<>&, const Length<>&,
                      const Length<>&, const Density<>&>(&h::npsh_available<double>),
          doc("hydraulics::npsh_available(surface_pressure, vapour_pressure, suction_lift, "
              "suction_loss, density)"),
          arg("surface_pressure"), arg("vapour_pressure"), arg("suction_lift"), arg("suction_loss"),
          arg("density"));
    m.def("standard_atmosphere", over_arrays(&h::standard_atmosphere<double>),
          doc("hydraulics::standard_atmosphere"), arg("altitude"));
    m.def("greatest_suction_lift", over_arrays(&h::greatest_suction_lift<double>),
          doc("hydraulics::greatest_suction_lift"), arg("surface_pressure"), arg("vapour_pressure"),
          arg("suction_loss"), arg("npsh_required"), arg("density"));
    m.def("shaft_power", over_arrays(&h::shaft_power<double>), doc("hydraulics::shaft_power"),
          arg("pressure"), arg("flow"), arg("efficiency"));
    m.def("affinity_flow", over_arrays(&h::affinity_flow<double>), doc("hydraulics::affinity_flow"),
          arg("flow"), arg("speed_ratio"), arg("diameter_ratio"));
    m.def("affinity_head", over_arrays(&h::affinity_head<double>), doc("hydraulics::affinity_head"),
          arg("head"), arg("speed_ratio"), arg("diameter_ratio"));
    m.def("affinity_power", over_arrays(&h::affinity_power<double>),
          doc("hydraulics::affinity_power"), arg("power"), arg("speed_ratio"),
          arg("diameter_ratio"));
    m.def(
        "hazen_williams_forms",
        [] {
            return std::vector(h::hazen_williams_form_names.begin(),
                               h::hazen_williams_form_names.end());
        },
        "The names of the Hazen-Williams forms [text, n].");
}

} // namespace scupper::python
