#include "scupper/closure/buffer.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <cmath>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr const char* policy = "AASHTO, A Policy on Geometric Design, 2001, exhibit 3-1";
constexpr NamedConstant reaction_time{2.5, dim::time, "perception and reaction time", policy};
constexpr NamedConstant deceleration{11.2 * factor::foot, dim::acceleration,
                                     "deceleration while braking", policy};
constexpr NamedConstant gravity{factor::standard_gravity, dim::acceleration, "standard gravity",
                                "3rd CGPM (1901)"};
constexpr double steepest = 0.3;

void require_road(double downgrade) {
    if (!(std::abs(downgrade) < steepest)) {
        detail::refuse("downgrade", downgrade, "-0.3 to 0.3, fall over run");
    }
}
void require_road(const Traced&) {}

template <class T>
Length<T> up_to(const Length<T>& step, const Length<T>& length) {
    return count_up(length / step) * step;
}

} // namespace

template <class T>
Length<T> stopping_distance(const Speed<T>& speed, const std::type_identity_t<T>& downgrade) {
    detail::positive("speed", speed);
    require_road(downgrade);
    const Acceleration<T> braking(constant<T>(deceleration) - constant<T>(gravity) * downgrade);
    return speed * Time<T>(constant<T>(reaction_time)) + speed * speed / (2.0 * braking);
}

template <class T>
Length<T> buffer_length(const Speed<T>& speed, const std::type_identity_t<T>& downgrade) {
    const Length<T> level = up_to<T>(5.0_ft, stopping_distance(speed));
    return max_of(level, up_to<T>(1.0_ft, stopping_distance(speed, downgrade)));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Length<T> stopping_distance(const Speed<T>&, const std::type_identity_t<T>&);         \
    template Length<T> buffer_length(const Speed<T>&, const std::type_identity_t<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
