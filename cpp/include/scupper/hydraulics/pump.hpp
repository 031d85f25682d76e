#pragma once
// Pumps: what pressure each kind gives at a flow, and what holds it back.

#include "scupper/hydraulics/pump_curve.hpp"
#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"

#include <optional>
#include <string_view>

namespace scupper::hydraulics {

/// How a pump gives its pressure; the words are hose_lay_pump_kinds, in this order.
enum class PumpKind {
    pressure,    ///< holds a pressure at its outlet: a governed pump, a hydrant, a truck's relief
    curve,       ///< centrifugal, by the points of its curve
    displacement ///< gives a flow whatever the pressure, up to the unloader
};

/// A pump and what it draws from. A limit that is not given does not hold.
struct Pump {
    PumpKind kind = PumpKind::pressure; ///< how it gives its pressure
    Pressure<> pressure;                ///< [Pa] gauge, held at the outlet; kind pressure only
    PumpCurve curve;                    ///< flow and head at rated speed; kind curve only
    /// [m3/s] the most that leaves the pump; of a displacement pump its flow at rated speed without
    /// slip.
    std::optional<Flow<>> flow_limit;
    double speed = 1.0;                          ///< [-] of the rated one; curve and displacement
    double volumetric_efficiency = 1.0;          ///< [-] flow over displacement
    std::optional<Pressure<>> unloader_pressure; ///< [Pa] gauge, at which it lets water back
    std::optional<Power<>> power_limit;          ///< [W] at the pump's shaft
    double efficiency = 1.0;                     ///< [-] hydraulic power over shaft power
    Length<> suction_lift;                       ///< [m] inlet above the water drawn from
    Length<> suction_loss;                       ///< [m] in strainer and suction hose
    Length<> altitude;                           ///< [m] above sea level
    std::optional<Length<>> npsh_required;       ///< [m] at the flow, by the pump's maker
};

/// What holds the pressure of a pump where it is; the words are hose_lay_limit_names, in this
/// order.
enum class PumpLimit {
    pressure,    ///< the pressure held at the outlet
    curve,       ///< the pump's curve
    flow_limit,  ///< the most that leaves the pump; the pressure is what the lay then needs
    power_limit, ///< the drive
    unloader,    ///< the set pressure; what the lay does not take goes back
    nothing      ///< no water flows
};

/// The pressure of a pump at a flow, how fast it falls, and why it is no higher.
struct PumpPoint {
    Pressure<> pressure;                   ///< [Pa] gauge, at the outlet
    double slope = 0.0;                    ///< [Pa s/m3] fall of the pressure with flow, >= 0
    PumpLimit limit = PumpLimit::pressure; ///< the least of the pressures below the limits
};

/// Which pressure a pump gives at a flow below its greatest.
///
/// Formula: least of: pressure held, or curve less suction lift and loss; unloader pressure;
///          efficiency x power / flow (a displacement pump moves its whole flow at the pressure)
/// @param pump [-] the pump
/// @param flow [m3/s] leaving the outlet; below zero as at zero
/// @param fluid [-] density [kg/m3] of the water
/// @return [-] pressure [Pa], slope and what holds it
/// Range: a pump that check_pump accepts. The pressure never grows with the flow. Unloaders that
///        let water back at no pressure need less power than assumed here.
/// Errors: none
/// Source: definitions
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
PumpPoint pump_point(const Pump& pump, const Flow<>& flow, const Fluid<>& fluid);

/// The most that leaves a pump.
///
/// Formula: flow limit; x speed x volumetric efficiency of a displacement pump
/// @param pump [-] the pump
/// @return [m3/s] flow, infinite where there is no limit
/// Range: any pump.
/// Errors: none
/// Source: definition of the volumetric efficiency
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
Flow<> greatest_flow(const Pump& pump);

/// What head is available at a pump's inlet.
///
/// Formula: npsh_available under the standard atmosphere of the pump's altitude
/// @param pump [-] its altitude [m], suction lift [m] and loss [m]
/// @param temperature [K] of the water
/// @return [m] net positive suction head available
/// Range: water of 0 to 50 degC drawn from an open surface.
/// Errors: those of standard_atmosphere, water_vapour_pressure and npsh_available
/// Source: npsh_available
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
Length<> npsh_available(const Pump& pump, const Temperature<>& temperature);

/// Refuses a pump that cannot be, and says why.
///
/// @param pump [-] the pump
/// @param temperature [K] of the water
/// @param path [text] what the pump is called in the message: "pump" gives "pump.speed"
/// Range: any.
/// Errors: InputError `hydraulics.<field>` for a value out of range; `hydraulics.unloader_pressure`
///         for a displacement pump without one, whose pressure would have no bound;
///         `hydraulics.suction_lift` for one higher than the air pushes
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
void check_pump(const Pump& pump, const Temperature<>& temperature, std::string_view path = "pump");

/// What a pump does to the water.
///
/// Formula: P = p Q
/// @param pressure [Pa] gained between inlet and outlet
/// @param flow [m3/s] volume flow
/// @return [W] hydraulic power
/// Range: any; velocities at inlet and outlet alike.
/// Errors: none
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Power<T> hydraulic_power(const Pressure<T>& pressure, const Flow<T>& flow);

/// What a drive has to give for it.
///
/// Formula: P = p Q / efficiency
/// @param pressure [Pa] gained between inlet and outlet
/// @param flow [m3/s] volume flow
/// @param efficiency [-] hydraulic power over shaft power, > 0
/// @return [W] shaft power
/// Range: efficiency above 0, at most 1.
/// Errors: InputError `hydraulics.efficiency` where it is not above 0
/// Source: definition
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Power<T> shaft_power(const Pressure<T>& pressure, const Flow<T>& flow, const T& efficiency);

} // namespace scupper::hydraulics
