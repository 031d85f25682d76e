#pragma once
// What flows where in a hose lay.

#include "scupper/hydraulics/lay.hpp"
#include "scupper/hydraulics/lay_warning.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace scupper::hydraulics {

/// What runs through one segment.
struct SegmentFlow {
    Flow<> flow;                ///< [m3/s]
    Speed<> velocity;           ///< [m/s] mean
    double reynolds = 0.0;      ///< [-]
    Pressure<> inlet_pressure;  ///< [Pa] gauge, at its start
    Pressure<> outlet_pressure; ///< [Pa] gauge, at its end, after fittings
    Pressure<> static_pressure; ///< [Pa] taken by the rise, negative going down
    Pressure<> friction_loss;   ///< [Pa] in the hose
    Pressure<> minor_loss;      ///< [Pa] in its fittings
    Length<> elevation;         ///< [m] of its end above the pump outlet
};

/// What leaves one nozzle.
struct NozzleFlow {
    Flow<> flow;           ///< [m3/s]; zero where it is closed or too high
    Pressure<> pressure;   ///< [Pa] gauge, before the tip; below zero where it is too high
    Speed<> jet_velocity;  ///< [m/s]
    Force<> reaction;      ///< [N] on whoever holds it
    Power<> power;         ///< [W] hydraulic, of the jet
    bool too_high = false; ///< [-] open, and the pressure does not lift water to it
};

/// What the pump does.
struct PumpFlow {
    Flow<> flow;                          ///< [m3/s] into the lay
    Pressure<> pressure;                  ///< [Pa] gauge, at the outlet
    PumpLimit limit = PumpLimit::nothing; ///< what holds the pressure where it is
    Flow<> bypass;                        ///< [m3/s] that a displacement pump's unloader lets back
    Power<> hydraulic_power;              ///< [W] gained by the water that the pump moves
    Power<> shaft_power;                  ///< [W] the same over the efficiency
    Length<> npsh_available;              ///< [m] at the inlet
};

/// One limit of the pump, and how much of it the lay takes.
struct LimitUse {
    PumpLimit limit = PumpLimit::nothing; ///< which
    double value = 0.0;                   ///< [SI] what the lay takes
    double allowed = 0.0;                 ///< [SI] the most there is
    Dimension dimension;                  ///< of both
    bool holds = false;                   ///< [-] whether it is what keeps the pressure where it is
};

/// Where a lay settles. Segments and nozzles stand in the order of the lay.
struct LaySolution {
    PumpFlow pump;                       ///< what the pump does
    std::vector<SegmentFlow> segments;   ///< [-, n] in the order of the lay
    std::vector<NozzleFlow> nozzles;     ///< [-, n] in the order of the lay
    std::optional<Time<>> time_to_empty; ///< [s] the full tank; none without tank or flow
    std::vector<LimitUse> limits;        ///< those that the pump has
    std::vector<LayWarning> warnings;    ///< what to mind, by pump, segment, nozzle
    double mass_residual = 0.0;          ///< [-] imbalance of flows over the pump's flow
    double energy_residual = 0.0;        ///< [-] worst imbalance of a nozzle's pressure, over the
                                         ///< greatest pressure of the lay without flow
    int iterations = 0;                  ///< [-] Newton steps
};

/// Flow, pressure and velocity everywhere in a hose lay.
///
/// Formula: for each segment: pressure at its start = pressure at its end + rho g rise + friction
///          + K rho V^2 / 2; at each end: flow in = flows out; nozzle and pump by their formulas
/// @param lay [-] pump, segments, nozzles
/// @return [-] the solution, in SI units
/// Range: any lay that check_lay accepts has one answer, and it is found. Losses and tip pressures
///        grow with the flow and the pump's pressure never does, so that the flows are the one
///        minimum of a strictly convex function (the sum of their integrals). Newton's direction on
///        it goes down, a search along it never passes the minimum by more than it has gained, and
///        so the steps converge from anywhere; in a tree each costs time in proportion to the
///        segments. Nozzles that would draw in air are shut, like a check valve, and the rest is
///        solved again: shutting one only lowers pressures, so that none has to be opened again.
///        A flow above the pump's greatest is held there and the pump's pressure follows. Mass
///        balances by construction, to rounding; the energy residual is below 1e-10.
///        With no nozzle open the shut-off pressure stands everywhere and nothing flows.
///        Velocity pressure at the nodes is neglected, as in the tables of hose lays.
/// Errors: those of check_lay; SolveError `hydraulics.not_converged`, which no valid lay gives
/// Source: G. Birkhoff, J. B. Diaz, Q. Appl. Math. 13 (1956) 431 on the variational principle (from
///         memory); Newton's method with line search, common practice
/// Verified by: tests/cpp/hydraulics/test_lay.cpp, tests/python/test_hose_lay_epanet.py
LaySolution solve(const HoseLay& lay);

/// What leaves the nozzles at each of many pump pressures.
struct LaySweep {
    std::vector<double> pump_flow;       ///< [m3/s, n]
    std::vector<double> pump_pressure;   ///< [Pa, n]
    std::vector<double> nozzle_flow;     ///< [m3/s, n x nozzles]
    std::vector<double> nozzle_pressure; ///< [Pa, n x nozzles]
};

/// A lay made ready once, to be solved at many pump pressures or again and again.
class LaySolver {
  public:
    /// Checks the lay and lays its values out flat.
    ///
    /// @param lay [-] the lay
    /// @param path [text] what the lay is called in errors
    /// Range: any.
    /// Errors: those of check_lay
    /// Source: own convention
    explicit LaySolver(const HoseLay& lay, std::string_view path = "lay");
    ~LaySolver();
    LaySolver(LaySolver&&) noexcept;
    LaySolver& operator=(LaySolver&&) noexcept;

    /// The pressure that the pump holds, for the next solve.
    ///
    /// @param pressure [Pa] gauge; the set pressure of a displacement pump's unloader
    /// Range: above zero; not for a pump with a curve.
    /// Errors: InputError `hydraulics.pressure` where out of range
    /// Source: own convention
    void set_pressure(const Pressure<>& pressure);

    /// Finds the flows; the figures below are of the last call.
    ///
    /// @return [m3/s] flow of the pump
    /// Range: as solve.
    /// Errors: SolveError `hydraulics.not_converged`
    /// Source: as solve
    Flow<> run();

    /// Pressure at the pump's outlet [Pa].
    Pressure<> pump_pressure() const;
    /// Flow of a nozzle.
    ///
    /// @param nozzle [-] its index in the lay
    /// @return [m3/s] flow, zero where it is closed or too high
    /// Range: indices of the lay.
    /// Errors: none
    /// Source: as solve
    Flow<> nozzle_flow(std::size_t nozzle) const;
    /// Pressure before a nozzle.
    ///
    /// @param nozzle [-] its index in the lay
    /// @return [Pa] gauge
    /// Range: indices of the lay.
    /// Errors: none
    /// Source: as solve
    Pressure<> nozzle_pressure(std::size_t nozzle) const;
    /// Everything about the last run [-].
    LaySolution solution() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// What a lay gives at each of many pump pressures.
///
/// Formula: as solve
/// @param lay [-] the lay; its pump holds a pressure or has an unloader
/// @param pressures [Pa, n] gauge, each > 0
/// @return [-] flows and pressures, nozzle by nozzle in each row
/// Range: as solve.
/// Errors: as solve; InputError `hydraulics.pressure` for a pressure that is not above zero or a
///         pump with a curve
/// Source: as solve
/// Verified by: tests/python/test_hose_lay.py
LaySweep solve_many(const HoseLay& lay, const std::vector<double>& pressures);

} // namespace scupper::hydraulics
