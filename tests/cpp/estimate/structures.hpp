#pragma once
// Structures and plans that the estimate's tests share.

#include <memory>

#include "scupper/estimate.hpp"
#include "scupper/json.hpp"
#include "scupper/quantity.hpp"

namespace made_up {

using namespace scupper;

/// The record of an invented three-span steel overpass, 61 m long, built 1968.
inline Structure overpass() {
    Structure s;
    s.state = "99";
    s.id = "Y1";
    s.number = "Y1";
    s.dimensions.length = Length<>(61.0);
    s.dimensions.longest_span = Length<>(20.3);
    s.dimensions.deck_width = Length<>(11.0);
    s.dimensions.roadway_width = Length<>(9.75);
    s.dimensions.approach_width = Length<>(9.75);
    s.dimensions.left_walk_width = Length<>(0.0);
    s.dimensions.right_walk_width = Length<>(0.0);
    s.dimensions.skew = Angle<>(0.0);
    s.dimensions.clearance_under = Length<>(5.0);
    s.codes.material = Material::steel;
    s.codes.design = Design::multi_beam;
    s.codes.below = Below::highway;
    s.codes.main_spans = 3;
    s.codes.approach_spans = 0;
    s.codes.lanes_on = 2;
    s.codes.lanes_under = 2;
    s.codes.daily_traffic = 4000;
    s.codes.year_built = 1968;
    s.codes.service_on = 1;
    s.codes.service_under = 1;
    s.codes.functional_class = 7;
    s.codes.traffic_direction = 2;
    return s;
}

/// The same with its four drains counted: three free, one clogged.
inline Structure counted_overpass() {
    Structure s = overpass();
    s.given = {{"drain_count", certain(4.0, Basis::measured)},
               {"drain_free_count", certain(3.0, Basis::measured)},
               {"drain_clogged_count", certain(1.0, Basis::measured)},
               {"drain_frozen_count", certain(0.0, Basis::measured)}};
    return s;
}

/// An invented creek bridge, 18.3 m, one span.
inline Structure creek_bridge() {
    Structure s = overpass();
    s.id = s.number = "C1";
    s.dimensions.length = Length<>(18.3);
    s.dimensions.longest_span = Length<>(18.0);
    s.dimensions.deck_width = Length<>(9.4);
    s.dimensions.roadway_width = Length<>(8.5);
    s.dimensions.clearance_under = Length<>(not_recorded);
    s.codes.below = Below::neither;
    s.codes.main_spans = 1;
    s.codes.service_under = 5;
    s.codes.year_built = 1975;
    return s;
}

inline Structure culvert() {
    Structure s = creek_bridge();
    s.id = s.number = "P1";
    s.codes.design = Design::culvert;
    return s;
}

inline std::shared_ptr<const estimate::Plan> demo_plan() {
    static const auto plan = estimate::make_plan(json::demo_job());
    return plan;
}

/// The demo job with every range taken away.
inline Job without_ranges() {
    Job job = json::demo_job();
    for (Setting& s : job.settings) {
        const double value = estimate::price_value(s.value, PriceAt::mean);
        s.value.guess = {.low = value, .likely = value, .high = value, .family = Family::fixed};
    }
    return job;
}

/// The demo's job with every component of a bridge cleaned as thoroughly as the rates offer.
inline Job full_job() {
    Job job = json::demo_job();
    for (const std::string_view component : component_names) {
        for (const Operation& op : job.operations) {
            if (op.component == component && !op.levels.empty()) {
                job.service[op.component] = op.levels.back();
            }
        }
    }
    return job;
}

} // namespace made_up
