#include "scupper/takeoff/drainage.hpp"

#include "scupper/error.hpp"

#include <cmath>
#include <string>

namespace scupper::takeoff {

namespace {

void require(bool right, const std::string& name, double found, const char* allowed) {
    if (!right) {
        throw InputError(
            {"takeoff." + name, name, std::to_string(found) + " (SI)", std::string(allowed)});
    }
}

} // namespace

Flow<> gutter_flow(const Gutter& gutter) {
    const double spread = gutter.spread.si();
    for (const double value : {gutter.roughness, gutter.cross_slope, gutter.fall, spread}) {
        require(value > 0.0, "gutter", value, "> 0");
    }
    constexpr double triangle = 0.376; // Manning's equation over a triangle, metre and second
    return Flow<>(triangle / gutter.roughness * std::pow(gutter.cross_slope, 5.0 / 3.0) *
                  std::sqrt(gutter.fall) * std::pow(spread, 8.0 / 3.0));
}

Length<> undrained_length(const Gutter& gutter, double runoff, const Speed<>& rain,
                          const Length<>& width) {
    require(runoff > 0.0 && runoff <= 1.0, "runoff", runoff, "above 0, at most 1");
    require(rain.si() > 0.0, "rain", rain.si(), "> 0");
    require(width.si() > 0.0, "width", width.si(), "> 0");
    return gutter_flow(gutter) / (runoff * rain * width);
}

} // namespace scupper::takeoff
