#include "scupper/closure/devices.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr Length<> short_taper_spacing = 20.0_ft;
constexpr Speed<> shadow_vehicle_speed = 45.0_mph;

bool on_freeway(Kind kind) {
    return kind == Kind::freeway_lane || kind == Kind::two_freeway_lanes;
}

void require_lanes(int lanes) {
    if (lanes < 0) {
        detail::refuse("lanes_closed", lanes, ">= 0");
    }
}

} // namespace

template <class T>
Length<T> taper_device_spacing(const Speed<T>& speed, TaperKind kind) {
    detail::positive("speed", speed);
    if (kind == TaperKind::one_lane_two_way || kind == TaperKind::downstream) {
        return short_taper_spacing;
    }
    return speed.in(1.0_mph) * Length<T>(1.0_ft);
}

template <class T>
Length<T> tangent_device_spacing(const Speed<T>& speed) {
    return 2.0 * taper_device_spacing(speed);
}

template <class T>
Count<T> device_count(const Length<T>& length, const Length<T>& spacing) {
    detail::not_negative("length", length);
    detail::positive("spacing", spacing);
    return Count<T>(count_up(length / spacing) + 1.0);
}

int lanes_closed(Kind kind) {
    switch (kind) {
    case Kind::two_freeway_lanes:
        return 2;
    case Kind::one_lane_two_way:
    case Kind::rural_lane:
    case Kind::freeway_lane:
        return 1;
    case Kind::none:
    case Kind::shoulder:
    case Kind::full_closure:
    case Kind::off_road:
        break;
    }
    return 0;
}

int arrow_board_count(Kind kind, int lanes) {
    require_lanes(lanes);
    return on_freeway(kind) || kind == Kind::rural_lane ? lanes : 0;
}

int shadow_vehicle_count(Kind kind, const Speed<>& speed, int lanes) {
    detail::positive("speed", speed);
    require_lanes(lanes);
    if (on_freeway(kind)) {
        return lanes;
    }
    if (speed < shadow_vehicle_speed * (1.0 - count_slack)) {
        return 0;
    }
    return kind == Kind::shoulder ? 1 : kind == Kind::rural_lane ? lanes : 0;
}

int flagger_count(Kind kind) {
    return kind == Kind::one_lane_two_way || kind == Kind::full_closure ? 2 : 0;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Length<T> taper_device_spacing(const Speed<T>&, TaperKind);                           \
    template Length<T> tangent_device_spacing(const Speed<T>&);                                    \
    template Count<T> device_count(const Length<T>&, const Length<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
