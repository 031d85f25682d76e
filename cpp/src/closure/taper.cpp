#include "scupper/closure/taper.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr const char* devices_manual = "Manual on Uniform Traffic Control Devices, 11th ed., table 6B-4";
constexpr NamedConstant low_speed_divisor{60.0, dim::none, "divisor of the taper formula", devices_manual};
constexpr NamedConstant low_speed_end{40.0, dim::none, "end of the low-speed formula, mph", devices_manual};
constexpr NamedConstant high_speed_start{45.0, dim::none, "start of the high-speed formula, mph",
                                         devices_manual};

// A change of unit must not turn 40 mph into more.
template <class T>
T end_of_low_speed() {
    return constant<T>(low_speed_end) * (1.0 + count_slack);
}

// L / W.
template <class T>
T merging_length_per_offset(const Speed<T>& speed) {
    const T s = speed.in(1.0_mph);
    return choose(s <= end_of_low_speed<T>(), s * s / constant<T>(low_speed_divisor), s);
}

} // namespace

bool taper_formula_exists(const Speed<>& speed) {
    const double s = speed.in(1.0_mph);
    return s <= end_of_low_speed<double>() || s >= high_speed_start.value * (1.0 - count_slack);
}

template <class T>
Length<T> taper_length(const Speed<T>& speed, const Length<T>& offset, TaperKind kind) {
    detail::positive("speed", speed);
    detail::not_negative("offset", offset);
    if (kind == TaperKind::one_lane_two_way || kind == TaperKind::downstream) {
        return longest_short_taper;
    }
    const Length<T> merging = offset * merging_length_per_offset(speed);
    if (kind == TaperKind::shifting) {
        return merging / 2.0;
    }
    return kind == TaperKind::shoulder ? merging / 3.0 : merging;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Length<T> taper_length(const Speed<T>&, const Length<T>&, TaperKind);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
