#include "scupper/closure/capacity.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <algorithm>

namespace scupper::closure {

namespace {

using namespace scupper::literals;

constexpr std::size_t hours_of_a_day = 24;

void share(const char* name, double value) {
    if (!(value >= 0.0 && value <= 1.0)) {
        detail::refuse(name, value, "0 to 1");
    }
}
void share(const char*, const Traced&) {}

/// Hours from one on, side by side, whose demand fits; no more than there are.
std::size_t run_from(std::size_t first, std::span<const TrafficFlow<>> demand,
                     const TrafficFlow<>& capacity) {
    const bool whole_day = demand.size() == hours_of_a_day;
    const std::size_t last = whole_day ? first + demand.size() : demand.size();
    std::size_t hour = first;
    while (hour < last && demand[hour % demand.size()] <= capacity * (1.0 + count_slack)) {
        ++hour;
    }
    return hour - first;
}

} // namespace

template <class T>
Time<T> one_lane_cycle(const Length<T>& length, const Speed<T>& speed, const Time<T>& green) {
    detail::not_negative("length", length);
    detail::positive("speed", speed);
    detail::positive("green", green);
    return 2.0 * (green + named("time to clear the lane", length / speed));
}

template <class T>
TrafficFlow<T> one_lane_capacity(const Length<T>& length, const Speed<T>& speed,
                                 const Time<T>& green, const TrafficFlow<T>& saturation) {
    detail::positive("saturation", saturation);
    return saturation * (green / named("cycle", one_lane_cycle(length, speed, green)));
}

template <class T>
TrafficFlow<T> hourly_demand(const Count<T>& daily, const T& hourly_share,
                             const T& directional_share) {
    detail::not_negative("daily", daily);
    share("hourly_share", hourly_share);
    share("directional_share", directional_share);
    return daily * hourly_share * directional_share / Time<T>(1.0_h);
}

Window window(std::span<const TrafficFlow<>> demand, const TrafficFlow<>& capacity) {
    detail::not_negative("capacity", capacity);
    for (const TrafficFlow<>& hour : demand) {
        detail::not_negative("demand", hour);
    }
    Window longest;
    for (std::size_t first = 0; first < demand.size(); ++first) {
        const std::size_t hours = run_from(first, demand, capacity);
        if (hours > longest.hours) {
            longest = {first, hours};
        }
    }
    return longest;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Time<T> one_lane_cycle(const Length<T>&, const Speed<T>&, const Time<T>&);            \
    template TrafficFlow<T> one_lane_capacity(const Length<T>&, const Speed<T>&, const Time<T>&,   \
                                              const TrafficFlow<T>&);                              \
    template TrafficFlow<T> hourly_demand(const Count<T>&, const T&, const T&)

SCUPPER_INSTANTIATE(double);
SCUPPER_INSTANTIATE(Traced);

#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
