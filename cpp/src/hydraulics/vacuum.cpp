#include "scupper/hydraulics/vacuum.hpp"

#include "bracketed.hpp"
#include "circle.hpp"
#include "require.hpp"
#include "scupper/hydraulics/friction.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::hydraulics {

using detail::not_negative;
using detail::positive;

namespace {

/// Air in a hose: the pressure that a mass flow leaves at the blower's end, and back.
class Duct {
  public:
    Duct(const VacuumHose& hose, const Ambient& ambient)
        : bore_(hose.bore.si()), length_(hose.length.si()),
          roughness_(hose.roughness.si() / hose.bore.si()), minor_(hose.minor_loss),
          outside_(ambient.pressure.si()), viscosity_(air_viscosity(ambient.temperature).si()),
          volume_by_mass_(outside_ / air_density(ambient.pressure, ambient.temperature).si()) {}

    /// Zero where the mass flux is what pressure outside and inside drive through the hose; grows
    /// with the flux and with the pressure inside.
    double residual(double inside, double flux) const {
        const double factor =
            flux > 0.0 ? friction_factor(flux * bore_ / viscosity_, roughness_) : 0.0;
        const double losses =
            factor * length_ / bore_ + minor_ + 1.0 + 2.0 * std::log(outside_ / inside);
        const double taken = losses * flux * flux * volume_by_mass_;
        return (taken + inside * inside) / (outside_ * outside_) - 1.0;
    }
    /// R T: pressure times volume by mass.
    double pressure_volume() const { return volume_by_mass_; }
    double outside() const { return outside_; }

  private:
    double bore_, length_, roughness_, minor_, outside_, viscosity_, volume_by_mass_;
};

void check_blower(const Blower& blower, const Ambient& ambient) {
    positive("blower_flow", blower.flow);
    positive("relief_vacuum", blower.relief_vacuum);
    detail::require(blower.relief_vacuum >= ambient.pressure, "relief_vacuum",
                    blower.relief_vacuum.si(), "below the pressure of the air around");
}

void check_hose(const VacuumHose& hose) {
    positive("bore", hose.bore);
    not_negative("length", hose.length);
    not_negative("roughness", hose.roughness);
    not_negative("minor_loss", hose.minor_loss);
    const double relative = hose.roughness / hose.bore;
    detail::require(relative > roughest, "relative_roughness", relative, "0 to 0.05");
}

/// Pressure before the blower where its relief valve stays shut.
double shut_pressure(const Duct& duct, double speed) {
    const auto excess = [&](double inside) {
        return duct.residual(inside, speed * inside / duct.pressure_volume());
    };
    const double low = 1e-6 * duct.outside();
    const double high = duct.outside();
    return detail::bracketed_root(excess, {low, excess(low)}, {high, excess(high)}, 0.9 * high,
                                  1e-13)
        .x;
}

/// Mass flux where the relief valve holds the pressure before the blower.
double relieved_flux(const Duct& duct, double inside, double greatest) {
    const auto excess = [&](double flux) { return duct.residual(inside, flux); };
    return detail::bracketed_root(excess, {0.0, excess(0.0)}, {greatest, excess(greatest)},
                                  0.5 * greatest, 1e-13)
        .x;
}

} // namespace

AirFlow vacuum_air_flow(const Blower& blower, const VacuumHose& hose, const Ambient& ambient) {
    check_hose(hose);
    const Duct duct(hose, ambient);
    check_blower(blower, ambient);
    const Area<> area = detail::circle(hose.bore);
    const double speed = (blower.flow / area).si();
    const double outside = ambient.pressure.si();
    const double relief = outside - blower.relief_vacuum.si();
    const double shut = shut_pressure(duct, speed);
    const bool open = shut < relief;
    const double inside = open ? relief : shut;
    const double pumped = speed * inside / duct.pressure_volume();
    const double flux = open ? relieved_flux(duct, inside, pumped) : pumped;
    const Speed<> end(flux * duct.pressure_volume() / outside);
    return {Pressure<>(outside - inside), end, Speed<>(flux * duct.pressure_volume() / inside),
            end * area, open};
}

PickUp vacuum_pick_up(const Blower& blower, const VacuumHose& hose, const Ambient& ambient,
                      const LooseDirt& dirt) {
    not_negative("transport_least", dirt.transport_least);
    positive("rate", dirt.rate);
    PickUp result;
    result.air = vacuum_air_flow(blower, hose, ambient);
    const Density<> rho = air_density(ambient.pressure, ambient.temperature);
    const DynamicViscosity<> mu = air_viscosity(ambient.temperature);
    result.pick_up_velocity = pick_up_velocity(dirt.size, dirt.density, rho, mu, hose.bore);
    result.saltation_velocity = saltation_velocity(dirt.rate, dirt.size, rho, hose.bore);
    const bool rises = hose.lift.si() > 0.0;
    const Speed<> falls = terminal_velocity(dirt.size, dirt.density, rho, mu);
    result.rise_velocity = rises ? 2.0 * falls : Speed<>();
    constexpr Acceleration<> gravity(factor::standard_gravity);
    constexpr Density<> water(1000.0);
    result.water_lift = blower.relief_vacuum / (water * gravity);
    const Speed<> v = result.air.end_velocity;
    const auto flux = dirt.rate / detail::circle(hose.bore);
    const Length<> lift = rises ? hose.lift : Length<>();
    result.dirt_vacuum = flux * v + flux * gravity * lift / v;
    const Speed<> needed = std::max({result.pick_up_velocity, result.saltation_velocity,
                                     result.rise_velocity, dirt.transport_least});
    result.margin = v / needed;
    const bool too_heavy = result.air.vacuum + result.dirt_vacuum > blower.relief_vacuum;
    result.hinders = v < result.pick_up_velocity     ? Hinders::pick_up
                     : v < result.saltation_velocity ? Hinders::saltation
                     : v < result.rise_velocity      ? Hinders::fall_back
                     : v < dirt.transport_least      ? Hinders::transport
                     : too_heavy                     ? Hinders::vacuum
                                                     : Hinders::nothing;
    return result;
}

} // namespace scupper::hydraulics
