#include "scupper/hydraulics/jet.hpp"

#include "circle.hpp"
#include "require.hpp"
#include "scupper/traced.hpp"

#include <numbers>

namespace scupper::hydraulics {

using detail::not_negative;
using detail::positive;

namespace {

void require_angle(const char* name, double angle, double greatest, const char* allowed) {
    detail::require(angle < 0.0 || angle >= greatest, name, angle, allowed);
}
void require_angle(const char*, const Traced&, double, const char*) {}

void require_slower(double surface, double jet) {
    detail::require(surface > jet, "surface_speed", surface, "not above the velocity of the jet");
}
void require_slower(const Traced&, const Traced&) {}

} // namespace

template <class T>
Pressure<T> stagnation_pressure(const Speed<T>& velocity, const Density<T>& density) {
    not_negative("velocity", velocity);
    positive("density", density);
    return density * (velocity * velocity) / 2.0;
}

template <class T>
Force<T> jet_force(const Length<T>& bore, const Speed<T>& velocity, const Speed<T>& surface_speed,
                   const Angle<T>& angle, const Density<T>& density) {
    positive("bore", bore);
    not_negative("velocity", velocity);
    require_slower(surface_speed.si(), velocity.si());
    require_angle("angle", angle.si(), std::numbers::pi / 2.0, "0 to below pi / 2 (90 deg)");
    positive("density", density);
    const Speed<T> relative = velocity - surface_speed;
    return density * detail::circle(bore) * (relative * relative) * cos(angle);
}

template <class T>
Length<T> fan_width(const Length<T>& stand_off, const Angle<T>& spray_angle) {
    not_negative("stand_off", stand_off);
    require_angle("spray_angle", spray_angle.si(), std::numbers::pi, "0 to below pi (180 deg)");
    return 2.0 * stand_off * tan(spray_angle / 2.0);
}

template <class T>
Length<T> water_by_area(const Flow<T>& flow, const Length<T>& width, const Speed<T>& travel_speed) {
    not_negative("flow", flow);
    positive("width", width);
    positive("travel_speed", travel_speed);
    return flow / (width * travel_speed);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Pressure<T> stagnation_pressure(const Speed<T>&, const Density<T>&);                  \
    template Force<T> jet_force(const Length<T>&, const Speed<T>&, const Speed<T>&,                \
                                const Angle<T>&, const Density<T>&);                               \
    template Length<T> fan_width(const Length<T>&, const Angle<T>&);                               \
    template Length<T> water_by_area(const Flow<T>&, const Length<T>&, const Speed<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
