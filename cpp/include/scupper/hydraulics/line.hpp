#pragma once
// A pump, its hose and one nozzle: how much water comes out, and how hard.

#include "scupper/hydraulics/trade_friction.hpp"
#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace scupper::hydraulics {

/// Which formula gives the friction of a segment.
enum class FrictionLaw {
    darcy_weisbach,  ///< from bore and roughness
    hazen_williams,  ///< from bore and the coefficient C
    hose_coefficient ///< from the hose coefficient alone
};

/// A length of hose, pipe or reel of one bore.
template <class T = double>
struct Segment {
    FrictionLaw law = FrictionLaw::darcy_weisbach; ///< which of the fields below count
    Length<T> bore;                                ///< [m] true inside diameter under pressure
    Length<T> length;                              ///< [m]
    Length<T> roughness;                           ///< [m] of the wall; darcy_weisbach only
    T coefficient = T(0.0); ///< [-] C of hazen_williams, or psi per 100 ft at (100 gpm)^2
    T minor_loss = T(0.0);  ///< [-] sum of K of couplings, bends and valves, referred to the bore
    HazenWilliamsForm form = HazenWilliamsForm::us_4_52_4_8655; ///< hazen_williams only
};

/// A smooth bore, or what a rated nozzle is likened to (see equivalent_bore).
template <class T = double>
struct Nozzle {
    Length<T> bore;                   ///< [m] inside diameter of the tip
    T discharge_coefficient = T(1.0); ///< [-]
};

/// A pump that holds a pressure at its outlet, hose segments in series, a rise and a nozzle.
template <class T = double>
struct Line {
    Pressure<T> pump_pressure;         ///< [Pa] gauge, held at the outlet while the flow allows it
    std::optional<Flow<T>> flow_limit; ///< [m3/s] the most that the pump delivers
    Fluid<T> fluid;                    ///< density [kg/m3] and kinematic viscosity [m2/s]
    std::vector<Segment<T>> hose;      ///< in the order of the flow; empty for no hose
    Length<T> rise;                    ///< [m] nozzle above the pump outlet, negative below
    Nozzle<T> nozzle;                  ///< what ends the line
};

/// What holds the flow of a line where it is.
enum class Governs {
    pump_pressure, ///< the pressure held at the outlet
    flow_limit,    ///< the most that the pump delivers; its pressure falls below the one set
    nothing        ///< no water flows
};

/// Where pump, hose and nozzle agree. Not-a-number throughout where no water flows.
template <class T = double>
struct OperatingPoint {
    Flow<T> flow;                       ///< [m3/s]
    Pressure<T> pump_pressure;          ///< [Pa] at the outlet: the sum of the next four
    Pressure<T> static_pressure;        ///< [Pa] taken by the rise, negative going down
    Pressure<T> friction_loss;          ///< [Pa] in the segments
    Pressure<T> minor_loss;             ///< [Pa] in couplings, bends and valves
    Pressure<T> tip_pressure;           ///< [Pa] left at the nozzle
    Force<T> reaction;                  ///< [N] on whoever holds the nozzle
    Governs governs = Governs::nothing; ///< what holds the flow
};

/// What the friction of one segment is at a flow.
///
/// Formula: by the law of the segment
/// @param segment [-] bore [m], length [m] and the fields that its law uses
/// @param flow [m3/s] volume flow, >= 0
/// @param fluid [-] density [kg/m3] and kinematic viscosity [m2/s]
/// @return [Pa] pressure loss without minor losses
/// Range: that of the law.
/// Errors: those of friction_loss, hazen_williams_loss or hose_coefficient_loss
/// Source: as the law
/// Verified by: tests/cpp/hydraulics/test_line.cpp
template <class T>
Pressure<T> segment_loss(const Segment<T>& segment, const Flow<T>& flow, const Fluid<T>& fluid);

/// How much water a line delivers, and how its pressure is spent.
///
/// Formula: pump pressure = rho g rise + sum of friction + sum of K rho V^2 / 2 + tip pressure
/// @param line [-] pump, hose, rise and nozzle
/// @return [-] the operating point, in SI units
/// Range: any line that check_line accepts. The demand of a line grows with the flow, without a
///        gap and without bound, so that there is exactly one answer, between no flow and the flow
///        without losses. Newton's method over the square of the flow, inside a bracket that is halved
///        where a step would leave it, always converges; the residual is below 1e-12 of the
///        pressure that is left for losses and tip. Where the bracket sits on the bridge between
///        laminar and turbulent flow, the answer is as uncertain as the bridge.
/// Errors: none; not-a-number where check_line refuses the line
/// Source: Bernoulli's equation with losses
/// Verified by: tests/cpp/hydraulics/test_line.cpp
template <class T>
OperatingPoint<T> operating_point(const Line<T>& line);

/// Refuses a line that has no operating point, and says why.
///
/// @param line [-] pump, hose, rise and nozzle
/// @param path [text] what the line is called in the message: "line" gives "line.hose[2].bore"
/// Range: any.
/// Errors: InputError `hydraulics.<field>` for a value out of range; `hydraulics.no_flow` where the
///         pump does not lift the water to the nozzle
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_line.cpp
void check_line(const Line<double>& line, std::string_view path = "line");

} // namespace scupper::hydraulics
