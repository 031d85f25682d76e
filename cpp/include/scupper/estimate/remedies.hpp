#pragma once
// Where a nozzle falls short of what cleans, what mends it, and where it is too strong.

#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// One change that gives a method enough at the tip, and what the work then costs.
struct Remedy {
    std::string what;    ///< [text] "hose supply of 2 in instead of 1.5 in"
    Flow<> flow;         ///< [m3/s] at the nozzle with it
    Pressure<> pressure; ///< [Pa] at the tip with it
    double total;        ///< [currency] of the whole estimate; hire or purchase of it is not in it
};

/// A method whose nozzle has too little.
struct Shortfall {
    std::string method;           ///< [text] its name
    Flow<> flow;                  ///< [m3/s] at the nozzle
    Pressure<> pressure;          ///< [Pa] at the tip
    JetNeed need;                 ///< [-] what it needs, and by which source
    std::vector<Remedy> remedies; ///< [-, n] changes that suffice, the cheapest first
};

/// The methods at work whose nozzle has less flow or pressure than cleans, with what mends it: a
/// larger hose, a shorter lay, another tip, a higher pump pressure, the truck on the deck. Every
/// remedy is one change alone, priced with the rest as it is.
///
/// @param estimate [-] an estimate
/// @return [-, n] none where every method at work has enough
/// Range: methods with a need in the job; hoses of the trade's bores up to 3 in; half, a quarter and
/// three quarters of the lay; pump pressures up to twice the one given.
/// Errors: none.
/// Source: each need names its own; own convention
/// Verified by: tests/cpp/estimate/test_remedies.cpp
std::vector<Shortfall> shortfalls(const Estimate& estimate);

/// A method whose jet is stronger than a surface may bear.
struct TooStrong {
    std::string method;  ///< [text] its name
    Pressure<> pressure; ///< [Pa] at the tip
    JetLimit limit;      ///< [Pa] what the surface bears, and by which source
};

/// The methods at work whose tip pressure passes what a surface they wash bears.
///
/// @param estimate [-] an estimate
/// @return [-, n] one for each method and surface; none where all are within the limits
/// Range: pressures at the tip; what reaches the surface falls with the stand-off, by no law that
/// could be found.
/// Errors: none.
/// Source: each limit names its own
/// Verified by: tests/cpp/estimate/test_remedies.cpp
std::vector<TooStrong> too_strong(const Estimate& estimate);

/// A hand-held nozzle that pushes harder than where it is used allows.
struct HardToHold {
    std::string method; ///< [text] its name
    Force<> reaction;   ///< [N] of the jet on who holds it
    Force<> limit;      ///< [N] what it passes
    bool from_bucket;   ///< [-] true: the limit of a bucket; false: of one person on the ground
};

/// The hand-held methods at work whose jet one person cannot hold, or cannot from a bucket; that
/// limit counts for methods that wash something reached from below.
///
/// Formula: reaction > limit
/// @param estimate [-] an estimate
/// @return [-, n] at most one for each method, the ground's limit before the bucket's
/// Range: any estimate.
/// Errors: none.
/// Source: one_person_reaction, bucket_reaction (common practice)
/// Verified by: tests/cpp/estimate/test_remedies.cpp
std::vector<HardToHold> hard_to_hold(const Estimate& estimate);

} // namespace scupper::estimate
