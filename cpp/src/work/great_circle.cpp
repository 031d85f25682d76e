#include "scupper/work/great_circle.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::work {

Length<> great_circle(const Place& a, const Place& b) {
    constexpr double mean_radius = 6371009.0; // [m]
    const double half_north = std::sin(0.5 * (b.latitude.si() - a.latitude.si()));
    const double half_east = std::sin(0.5 * (b.longitude.si() - a.longitude.si()));
    const double chord = half_north * half_north + std::cos(a.latitude.si()) *
                                                       std::cos(b.latitude.si()) * half_east *
                                                       half_east;
    return Length<>(2.0 * mean_radius * std::asin(std::sqrt(std::min(chord, 1.0))));
}

} // namespace scupper::work
