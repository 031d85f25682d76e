#pragma once
// The closure of an estimate, laid out on its road: signs, taper, buffer, devices.

#include "scupper/closure.hpp"
#include "scupper/estimate/estimate.hpp"
#include "scupper/takeoff.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// The road on a structure: what the job or a survey gives, the rest by the record.
///
/// @param estimate [-] an estimate
/// @return [SI unit of each] speed, lane width, shoulder width with low, likely, high and origin
/// Range: any estimate.
/// Errors: none.
/// Source: rules `road.*` in `takeoff::rules()`: common practice
/// Verified by: tests/cpp/estimate/test_site_closure.cpp
takeoff::Road road_of(const Estimate& estimate);

/// The class of sign spacing that a road probably has.
///
/// @param functional_class [-] code of item 26
/// @param speed [m/s] of the traffic
/// @return [-] freeway for 01, 11, 12; rural for other rural roads and where it is not recorded;
///   in town low speed up to 40 mph, else high speed
/// Range: any code. The agency draws the line between low and high speed.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 26; the line at 40 mph: common practice
/// Verified by: tests/cpp/estimate/test_site_closure.cpp
closure::RoadClass road_class_by_record(int functional_class, const Speed<>& speed);

/// Where, and how, the road of a structure is narrowed.
///
/// Formula: work space = deck length + what is closed beyond the deck, and, where the water truck
/// stays on the approach, its set-back; divided where item 102 says one way or item 33 a median
/// @param estimate [-] an estimate
/// @return [m, m/s, -] the site at likely values
/// Range: any estimate; without grade, one direction of traffic.
/// Errors: none.
/// Source: common practice; FHWA-PD-96-001 (1995), items 26, 28A, 33, 51, 102
/// Verified by: tests/cpp/estimate/test_site_closure.cpp
closure::Site closure_site(const Estimate& estimate);

/// The lay-out of the closure: what stands on the road, and what it rests on as cautions.
///
/// @param estimate [-] an estimate
/// @return [m, each, -] as `closure::plan`; what was assumed of the road is among the cautions
/// Range: any estimate; of kind none it is empty. Its devices are not priced one by one.
/// Errors: those of `closure::plan`, as where a shoulder closure finds no shoulder.
/// Source: `closure::plan`
/// Verified by: tests/cpp/estimate/test_site_closure.cpp
closure::Plan closure_plan(const Estimate& estimate);

/// The closure of one stage.
struct StagePlan {
    std::string stage;  ///< [text] its name; empty where there is one stage for all
    closure::Plan plan; ///< [-] its lay-out
};

/// The lay-outs of all stages that have a closure, as `closure_plan` gives that of the first.
///
/// @param estimate [-] an estimate
/// @return [-, n] in the order of the stages
/// Range: any estimate; none without a closure.
/// Errors: those of `closure::plan`, as where a shoulder closure finds no shoulder.
/// Source: `closure::plan`
/// Verified by: tests/cpp/estimate/test_site_closure.cpp
std::vector<StagePlan> closure_plans(const Estimate& estimate);

} // namespace scupper::estimate
