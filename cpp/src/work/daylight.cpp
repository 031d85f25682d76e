#include "scupper/work/daylight.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace scupper::work {

namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double full_day = 86400.0; // [s]

/// The sun's angle above the equator.
double declination(Date day) {
    const std::chrono::year_month_day ymd(day);
    const auto new_year = Date(ymd.year() / std::chrono::January / 1);
    const auto day_of_year = static_cast<double>((day - new_year).count() + 1);
    return 23.45 * degree * std::sin(360.0 * degree * (284.0 + day_of_year) / 365.0);
}

} // namespace

Time<> day_length(const Angle<>& latitude, Date day) {
    const double phi = latitude.si();
    if (!(std::abs(phi) <= 90.0 * degree)) {
        throw InputError({"calendar.latitude", "latitude", std::to_string(phi / degree) + " deg",
                          "-90 deg to 90 deg"});
    }
    const double delta = declination(day);
    const double sunrise = std::sin(-0.833 * degree); // refraction and half the sun's disc
    const double cosine =
        (sunrise - std::sin(phi) * std::sin(delta)) / (std::cos(phi) * std::cos(delta));
    return Time<>(full_day / std::numbers::pi * std::acos(std::clamp(cosine, -1.0, 1.0)));
}

} // namespace scupper::work
