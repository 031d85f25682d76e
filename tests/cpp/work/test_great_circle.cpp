#include "catch.hpp"
#include "scupper/work/great_circle.hpp"

#include <cmath>
#include <limits>
#include <numbers>

using namespace scupper;

namespace {

work::Place place(double latitude, double longitude) {
    constexpr double degree = std::numbers::pi / 180.0;
    return {Angle<>(latitude * degree), Angle<>(longitude * degree)};
}

double km(const work::Place& a, const work::Place& b) {
    return work::great_circle(a, b).si() / 1000.0;
}

} // namespace

TEST_CASE("distances on a sphere") {
    // A minute of arc is a nautical mile: 1.852 km on the mean meridian, 1.8533 on this sphere.
    CHECK(km(place(40, -75), place(40.0 + 1.0 / 60.0, -75)) == Approx(1.8533).epsilon(1e-3));
    CHECK(km(place(0, 0), place(0, 90)) == Approx(std::numbers::pi / 2.0 * 6371.009));
    CHECK(km(place(60, 10), place(60, 11)) == Approx(0.5 * 111.195).epsilon(1e-3)); // cos 60 = 0.5
    CHECK(km(place(39.5, -75.5), place(39.5, -75.5)) == 0.0);
    CHECK(km(place(39, -75), place(38, -74)) == Approx(km(place(38, -74), place(39, -75))));
    CHECK(std::isnan(km(place(std::numeric_limits<double>::quiet_NaN(), 0), place(1, 1))));
}
