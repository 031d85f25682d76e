#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/work/phases.hpp"

#include <vector>

using namespace scupper;

namespace {

std::vector<double> feet_washed(double roadway, const std::vector<double>& open) {
    constexpr double foot = 0.3048;
    std::vector<Length<>> widths;
    for (const double w : open) {
        widths.emplace_back(w * foot);
    }
    std::vector<double> washed;
    for (const Length<>& w : work::washed_widths(Length<>(roadway * foot), widths)) {
        washed.push_back(w.si() / foot);
    }
    return washed;
}

} // namespace

TEST_CASE("two lanes and a shoulder at a time: the lane in the middle is washed once") {
    // An invented overpass of 56 ft between curbs, 34 ft closed in either phase: 34 + 22.
    const auto washed = feet_washed(56.0, {34.0, 34.0});
    CHECK(washed[0] == Approx(34.0));
    CHECK(washed[1] == Approx(22.0));
}

TEST_CASE("phases add up to the roadway") {
    CHECK(feet_washed(30.0, {15.0, 15.0}) == std::vector<double>{15.0, 15.0});
    const auto whole = feet_washed(30.0, {30.0, 15.0});
    CHECK(whole[0] == Approx(30.0));
    CHECK(whole[1] == Approx(0.0).margin(1e-9));
    CHECK_THROWS_AS(feet_washed(30.0, {14.0, 15.0}), InputError);
    CHECK_THROWS_AS(feet_washed(30.0, {-1.0, 31.0}), InputError);
    CHECK_THROWS_AS(feet_washed(30.0, {}), InputError);
}
