#include "scupper/closure/signs.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <array>
#include <limits>
#include <span>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr double no_limit = std::numeric_limits<double>::infinity();

// The urban classes of a state edition by their fastest traffic, slowest first.
struct UrbanStep {
    double top_mph;
    double spacing_ft;
    RoadClass road;
};

constexpr std::array<UrbanStep, 3> steps_2009{{{25.0, 100.0, RoadClass::urban_25_or_less},
                                               {40.0, 250.0, RoadClass::urban_over_25_to_40},
                                               {no_limit, 350.0, RoadClass::urban_over_40}}};
constexpr std::array<UrbanStep, 6> steps_2023{{{25.0, 100.0, RoadClass::urban_25_or_less},
                                               {30.0, 150.0, RoadClass::urban_30},
                                               {35.0, 200.0, RoadClass::urban_35},
                                               {40.0, 250.0, RoadClass::urban_40},
                                               {45.0, 300.0, RoadClass::urban_45},
                                               {no_limit, 350.0, RoadClass::urban_50_or_more}}};

std::span<const UrbanStep> steps(Edition edition) {
    return edition == Edition::manual_2009 ? std::span<const UrbanStep>(steps_2009) : steps_2023;
}

const UrbanStep& step_of(double mph, Edition edition) {
    const auto all = steps(edition);
    for (const UrbanStep& step : all) {
        if (mph <= step.top_mph * (1.0 + count_slack)) {
            return step;
        }
    }
    return all.back();
}

// The fastest traffic of an urban class, whatever edition names it.
double top_mph(RoadClass road) {
    for (const Edition edition : {Edition::manual_2009, Edition::manual_2023}) {
        for (const UrbanStep& step : steps(edition)) {
            if (step.road == road) {
                return step.top_mph;
            }
        }
    }
    return road == RoadClass::urban_low_speed ? steps_2009.front().top_mph : no_limit;
}

SignSpacing even(Length<> spacing) {
    return {spacing, spacing, spacing};
}

} // namespace

RoadClass urban_class(const Speed<>& speed, Edition edition) {
    detail::positive("speed", speed);
    return step_of(speed.in(1.0_mph), edition).road;
}

SignSpacing sign_spacing(RoadClass road, Edition edition) {
    if (road == RoadClass::freeway) {
        return {1000.0_ft, 1500.0_ft, 2640.0_ft};
    }
    if (road == RoadClass::rural) {
        return even(500.0_ft);
    }
    return even(step_of(top_mph(road), edition).spacing_ft * 1.0_ft);
}

Length<> advance_warning_length(const SignSpacing& spacing) {
    return spacing.a + spacing.b + spacing.c;
}

} // namespace scupper::closure
