#pragma once
// What the axles of a truck may carry by federal law, from the distances between them.

#include "scupper/quantity.hpp"

#include <cstddef>
#include <vector>

namespace scupper::debris {

/// The weight that the bridge formula allows a group of axles, to the nearest 500 lb.
///
/// Formula: W = 500 (L N / (N - 1) + 12 N + 36), W in pounds, L in feet; a tie is rounded down
/// @param span [m] L, between the outer axles of the group, > 0
/// @param axles [-] N, axles of the group, 2 to 20
/// @return [kg] the formula alone; neither tandem nor gross limits are in it
/// Range: any span; L as measured, where enforcement takes whole feet. State tables round ties
/// either way: 3 axles over 9 ft are 42,500 lb in one and 43,000 lb in another.
/// Errors: InputError `debris.span` where not above 0, `debris.axles` where out of range
/// Source: 23 USC 127(a)(2); 23 CFR 658.17(e)
/// Verified by: tests/cpp/debris/test_axle_groups.cpp
Mass<> bridge_formula(const Length<>& span, int axles);

/// The weight that federal law allows a group of consecutive axles: as a single axle up to 40 in
/// from first to last, as a tandem up to 96 in, beyond that by the bridge formula; in no case more
/// than 20,000 lb an axle, nor than 80,000 lb.
///
/// Formula: 20,000 lb, 34,000 lb, or min(`bridge_formula`, N 20,000 lb, 80,000 lb)
/// @param span [m] between the outer axles of the group, >= 0
/// @param axles [-] axles of the group, 1 to 20
/// @return [kg] legal weight
/// Range: as `bridge_formula`. The exception for two tandems 36 ft apart is made by `legal_gross`.
/// Errors: InputError `debris.span` where below 0, or above 0 for one axle; `debris.axles`
/// Source: 23 USC 127(a)(2); 23 CFR 658.17(b) to (e); 23 CFR 658.5 for single and tandem axles
/// Verified by: tests/cpp/debris/test_axle_groups.cpp
Mass<> axle_group_limit(const Length<>& span, int axles);

/// A group of consecutive axles that limits a truck.
struct AxleGroup {
    std::size_t first = 1; ///< [-] number of its first axle, the front one 1
    std::size_t last = 1;  ///< [-] number of its last axle
    Mass<> limit;          ///< [kg] what federal law allows it
};

/// What a truck may weigh, and why no more.
struct LegalGross {
    Mass<> mass;                   ///< [kg] loaded
    std::vector<AxleGroup> limits; ///< [-, n] groups from front to back whose limits add up to it
};

/// The greatest weight a truck may have, loaded so that every group of its axles is legal.
///
/// Formula: the greatest sum of axle weights of which no group of consecutive axles exceeds
/// `axle_group_limit`; two consecutive tandems may carry 34,000 lb each where their outer axles are
/// 36 ft or more apart
/// @param spacings [m, n] from each axle to the next, front to back
/// @return [kg, -] weight, and the groups that limit it
/// Range: a load that can be placed as the axles would have it; tires, maker's ratings and the
/// state's own law may allow less, a permit more.
/// Errors: InputError `debris.spacing` where not above 0, `debris.axles` for more than 20
/// Source: 23 USC 127(a)(2); 23 CFR 658.17
/// Verified by: tests/cpp/debris/test_axle_groups.cpp
LegalGross legal_gross(const std::vector<Length<>>& spacings);

} // namespace scupper::debris
