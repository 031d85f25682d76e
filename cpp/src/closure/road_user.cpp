#include "scupper/closure/road_user.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

namespace scupper::closure {
namespace {

void share(double value) {
    if (!(value >= 0.0 && value <= 1.0)) {
        detail::refuse("truck_share", value, "0 to 1");
    }
}
void share(const Traced&) {}

void within_cycle(const Time<double>& green, const Time<double>& cycle) {
    if (!(green <= cycle)) {
        detail::refuse("green", green.si(), "not above the cycle");
    }
}
void within_cycle(const Time<Traced>&, const Time<Traced>&) {}

} // namespace

template <class T>
AmountPerTime<T> time_value(const AmountPerTime<T>& car, const AmountPerTime<T>& truck,
                            const T& truck_share) {
    share(truck_share);
    return car * (1.0 - truck_share) + truck * truck_share;
}

template <class T>
Amount<T> delay_cost(const VehicleTime<T>& delay, const AmountPerTime<T>& value) {
    return delay / Count<T>(T(1.0)) * value;
}

template <class T>
VehicleTime<T> slowing_delay(const Count<T>& vehicles, const Length<T>& length,
                             const Speed<T>& usual, const Speed<T>& slow) {
    detail::not_negative("vehicles", vehicles);
    detail::not_negative("length", length);
    detail::positive("usual", usual);
    detail::positive("slow", slow);
    return vehicles * max_of(length / slow - length / usual, Time<T>(T(0.0)));
}

template <class T>
VehicleTime<T> turn_delay(const Count<T>& vehicles, const Time<T>& cycle, const Time<T>& green) {
    detail::not_negative("vehicles", vehicles);
    detail::positive("cycle", cycle);
    detail::positive("green", green);
    within_cycle(green, cycle);
    const Time<T> red = cycle - green;
    return vehicles * (red * red / (2.0 * cycle));
}

template <class T>
Amount<T> detour_cost(const Count<T>& vehicles, const Length<T>& detour, const Speed<T>& speed,
                      const AmountPerTime<T>& value,
                      const Quantity<dim::money / dim::length, T>& running) {
    detail::not_negative("vehicles", vehicles);
    detail::not_negative("detour", detour);
    detail::positive("speed", speed);
    return number(vehicles) * (detour / speed * value + detour * running);
}

template <class T>
Amount<T> bid_with_time(const Amount<T>& bid, const Time<T>& time,
                        const AmountPerTime<T>& daily_cost) {
    return bid + time * daily_cost;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template AmountPerTime<T> time_value(const AmountPerTime<T>&, const AmountPerTime<T>&,         \
                                         const T&);                                                \
    template Amount<T> delay_cost(const VehicleTime<T>&, const AmountPerTime<T>&);                 \
    template VehicleTime<T> slowing_delay(const Count<T>&, const Length<T>&, const Speed<T>&,      \
                                          const Speed<T>&);                                        \
    template VehicleTime<T> turn_delay(const Count<T>&, const Time<T>&, const Time<T>&);           \
    template Amount<T> detour_cost(const Count<T>&, const Length<T>&, const Speed<T>&,             \
                                   const AmountPerTime<T>&,                                        \
                                   const Quantity<dim::money / dim::length, T>&);                  \
    template Amount<T> bid_with_time(const Amount<T>&, const Time<T>&, const AmountPerTime<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
