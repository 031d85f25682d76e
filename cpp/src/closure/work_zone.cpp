#include "scupper/closure/work_zone.hpp"

#include "require.hpp"
#include "scupper/schema.hpp"
#include "scupper/traced.hpp"
#include "words.hpp"

#include <algorithm>
#include <array>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr TrafficFlow<> an_hour{1.0 / factor::hour};
constexpr double hcm_2000_base = 1600.0;  // passenger cars, as quoted in TPF-5(081)
constexpr double missouri_mean = 1199.0;  // passenger cars, TPF-5(081), 2011
constexpr double carolina_rural = 1200.0; // heavy work, Transportation Research Record 1529
constexpr double carolina_urban = 1500.0;
constexpr int most_lanes = 4;

// Highway Capacity Manual 2010, exhibit 10-14, by lanes before (2 to 4) and open (1 to 3).
constexpr std::array<std::array<double, 3>, 3> hcm_2010{
    {{1400.0, 0.0, 0.0}, {1450.0, 1450.0, 0.0}, {1350.0, 1450.0, 1500.0}}};

// Highway Capacity Manual, 7th edition, equation 10-10: the ratio of the limits is held there.
constexpr double least_ratio = 1.0;
constexpr double greatest_ratio = 1.2;

template <class T>
void share(const char* name, const T& value, double least, double below) {
    if constexpr (std::is_same_v<T, double>) {
        if (!(value >= least && value < below)) {
            detail::refuse(name, value, "a share");
        }
    }
}

double by_lanes(const LaneClosure& c) {
    const int lanes = std::min(c.lanes, most_lanes);
    const int open = std::min(c.open, most_lanes - 1);
    if (c.open >= c.lanes) {
        detail::refuse("open", c.open, "fewer than the lanes before: exhibit 10-14 has closures");
    }
    return hcm_2010.at(static_cast<std::size_t>(lanes - 2)).at(static_cast<std::size_t>(open - 1));
}

// Vehicles of one open lane.
TrafficFlow<> each_lane(const LaneClosure& c, CapacityMethod method) {
    const double heavy = heavy_vehicle_factor(c.truck_share, c.truck_equivalent);
    switch (method) {
    case CapacityMethod::hcm_2000:
        return (hcm_2000_base * an_hour + c.intensity) * heavy;
    case CapacityMethod::hcm_2010:
        return by_lanes(c) * an_hour;
    case CapacityMethod::hcm_7:
        return queue_discharge(c) * heavy;
    case CapacityMethod::missouri_2011:
        return missouri_mean * an_hour * heavy;
    case CapacityMethod::north_carolina_1996:
        break;
    }
    return (c.rural ? carolina_rural : carolina_urban) * an_hour;
}

} // namespace

CapacityMethod capacity_method_by_name(std::string_view word) {
    return static_cast<CapacityMethod>(
        detail::index_in(capacity_method_names, word, "capacity_method"));
}

double closure_severity(int lanes, int open) {
    if (lanes < 1) {
        detail::refuse("lanes", lanes, ">= 1");
    }
    if (open < 1 || open > lanes) {
        detail::refuse("open", open, "1 to the lanes before");
    }
    return static_cast<double>(lanes) / (static_cast<double>(open) * open);
}

TrafficFlow<> queue_discharge(const LaneClosure& c) {
    detail::not_negative("clearance", c.clearance);
    const double cars = 2093.0 - 154.0 * closure_severity(c.lanes, c.open) -
                        194.0 * (c.barrier ? 0.0 : 1.0) - 179.0 * (c.rural ? 1.0 : 0.0) +
                        9.0 * c.clearance.in(1.0_ft) - 59.0 * (c.night ? 1.0 : 0.0);
    return cars * an_hour;
}

template <class T>
TrafficFlow<T> capacity_before_queue(const TrafficFlow<T>& discharge, const T& drop) {
    detail::not_negative("discharge", discharge);
    share("drop", drop, 0.0, 1.0);
    return discharge / (1.0 - drop);
}

template <class T>
T heavy_vehicle_factor(const T& truck_share, const T& equivalent) {
    share("truck_share", truck_share, 0.0, 1.0 + count_slack);
    share("truck_equivalent", equivalent, 1.0, unbounded);
    return 1.0 / (1.0 + truck_share * (equivalent - 1.0));
}

TrafficFlow<> work_zone_capacity(const LaneClosure& c, CapacityMethod method) {
    closure_severity(c.lanes, c.open); // refuses lanes that cannot be
    return static_cast<double>(c.open) * each_lane(c, method);
}

Speed<> work_zone_speed(const LaneClosure& c, const Speed<>& limit, const Speed<>& zone_limit,
                        const Quantity<dim::count / dim::length>& ramps) {
    detail::positive("limit", limit);
    detail::positive("zone_limit", zone_limit);
    detail::not_negative("ramps", ramps);
    const double ratio = std::clamp(limit / zone_limit, least_ratio, greatest_ratio);
    const double mph = 9.95 + 33.49 * ratio + 0.53 * zone_limit.in(1.0_mph) -
                       5.60 * closure_severity(c.lanes, c.open) - 3.84 * (c.barrier ? 0.0 : 1.0) -
                       1.71 * (c.night ? 1.0 : 0.0) - 8.7 * number(Count<>(ramps * 1.0_mi));
    return min_of(limit, max_of(mph * 1.0_mph, 1.0_mph));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template TrafficFlow<T> capacity_before_queue(const TrafficFlow<T>&, const T&);                \
    template T heavy_vehicle_factor(const T&, const T&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
