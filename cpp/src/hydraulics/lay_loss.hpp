#pragma once
// The loss of one segment over its flow, and its slope, for the solver. Plain SI numbers.
//
// Every law goes with the flow times constants of the segment; those are asked of the public
// formulas at one cubic metre a second, so that each formula stands in one place.

#include "scupper/hydraulics/line.hpp"

namespace scupper::hydraulics::detail {

/// A segment, reduced to what its loss needs.
struct SegmentLaw {
    FrictionLaw law;
    double friction;      ///< loss at 1 m3/s, divided by the friction factor where Darcy's
    double minor;         ///< loss in fittings at 1 m3/s
    double power;         ///< of the flow; Hazen-Williams only
    double reynolds;      ///< at 1 m3/s
    double rel_roughness; ///< Darcy only
};

/// Loss and its slope at a flow.
struct Loss {
    double pressure; ///< Pa, of the sign of the flow
    double slope;    ///< Pa s/m3, >= 0
};

/// Loss over the square of the flow, about: at a friction factor of 0.02, or a flow of 100 L/min.
double usual_resistance(const SegmentLaw& law);

SegmentLaw law_of(const Segment<>& segment, const Fluid<>& fluid);

/// `root` holds 1 / sqrt(f) of the last call, or 0, and is where Colebrook's equation starts.
Loss loss_at(const SegmentLaw& law, double flow, double& root);

} // namespace scupper::hydraulics::detail
