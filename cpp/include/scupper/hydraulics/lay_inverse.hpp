#pragma once
// Hose lays asked backwards: which pump, hose, lift or nozzle gives what is wanted at a tip.
//
// Everything else about the lay stays as it is, its other nozzles, its pump's curve and limits
// included. Each question is a search over one number in which the answer is monotone, bracketed
// throughout. One that has no answer raises SolveError `hydraulics.no_answer`, which says what the
// best is.

#include "scupper/hydraulics/lay.hpp"

#include <vector>

namespace scupper::hydraulics {

/// Which pump pressure gives a nozzle its pressure.
///
/// Formula: pressure(pump pressure) = wanted, by a bracketed search over solve
/// @param lay [-] the lay; its pump counts as one that holds whatever pressure is asked
/// @param nozzle [-] index of the nozzle
/// @param wanted [Pa] gauge, before the tip, > 0
/// @return [Pa] gauge, at the pump's outlet
/// Range: up to 1 GPa; flow limit, power and unloader of the pump are set aside: solve the lay with
///        the answer to see whether the pump can.
/// Errors: those of check_lay; InputError `hydraulics.pressure` where wanted <= 0; SolveError
///         `hydraulics.no_answer` where the fall of the lay alone gives more
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Pressure<> pump_pressure_for(const HoseLay& lay, std::size_t nozzle, const Pressure<>& wanted);

/// How long a segment may be for a nozzle to keep its pressure.
///
/// Formula: pressure(length) = wanted, by a bracketed search over solve
/// @param lay [-] the lay
/// @param segment [-] index of a segment between pump and nozzle; its rise stays
/// @param nozzle [-] index of the nozzle
/// @param wanted [Pa] gauge, before the tip, > 0
/// @return [m] greatest length
/// Range: up to 100 km.
/// Errors: those of check_lay; InputError `hydraulics.pressure`, `hydraulics.segment` for one that
///         the nozzle's water does not pass; SolveError `hydraulics.no_answer` where no length
///         suffices or any does
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Length<> longest_hose(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                      const Pressure<>& wanted);

/// How far a segment may rise for a nozzle to keep its pressure.
///
/// Formula: pressure(rise) = wanted, by a bracketed search over solve
/// @param lay [-] the lay
/// @param segment [-] index of a segment between pump and nozzle; its length stays
/// @param nozzle [-] index of the nozzle
/// @param wanted [Pa] gauge, before the tip, > 0
/// @return [m] greatest rise of the segment; negative where it has to fall
/// Range: 100 km up or down.
/// Errors: as longest_hose
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Length<> greatest_lift(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted);

/// Which bore gives a nozzle its flow.
///
/// Formula: flow(bore) = wanted, by a bracketed search over solve
/// @param lay [-] the lay; the nozzle counts as open and new
/// @param nozzle [-] index of the nozzle
/// @param wanted [m3/s] flow, > 0
/// @return [m] inside diameter of the tip, at the nozzle's discharge coefficient
/// Range: up to the bore of the hose that it ends (0.3 m at the pump's outlet).
/// Errors: those of check_lay; InputError `hydraulics.flow` where wanted <= 0; SolveError
///         `hydraulics.no_answer` where the open hose gives less
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Length<> nozzle_bore_for(const HoseLay& lay, std::size_t nozzle, const Flow<>& wanted);

/// How many equal nozzles keep their pressure.
///
/// Formula: greatest n with pressure(n) >= wanted, by doubling and halving
/// @param lay [-] the lay
/// @param nozzle [-] index of the nozzle
/// @param leg [-] index of a segment between pump and nozzle: it is repeated from its start, with
///        all that hangs on it; at_pump: the nozzle alone is repeated where it is
/// @param wanted [Pa] gauge, before each tip, > 0
/// @return [-] how many, counting the one there is
/// Range: up to 10,000.
/// Errors: as longest_hose; SolveError `hydraulics.no_answer` where one is too many, or 10,000 are
///         not
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
std::size_t nozzle_count(const HoseLay& lay, std::size_t nozzle, std::size_t leg,
                         const Pressure<>& wanted);

/// Which bore a segment needs at least for a nozzle to have its pressure.
///
/// Formula: pressure(bore) = wanted, by a bracketed search over solve
/// @param lay [-] the lay
/// @param segment [-] index of a segment between pump and nozzle; roughness or C and K stay
/// @param nozzle [-] index of the nozzle
/// @param wanted [Pa] gauge, before the tip, > 0
/// @return [m] smallest inside diameter
/// Range: 1 mm, or 20 times the roughness, to 1 m.
/// Errors: as longest_hose; InputError `hydraulics.law` for a segment with a hose coefficient, which
///         holds for one bore only; SolveError `hydraulics.no_answer` where 1 m is too little
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Length<> smallest_bore(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted);

/// The smallest bore of a list with which a nozzle has its pressure.
///
/// @param lay [-] the lay
/// @param segment [-] index of a segment between pump and nozzle; roughness or C and K stay
/// @param nozzle [-] index of the nozzle
/// @param wanted [Pa] gauge, before the tip, > 0
/// @param bores [m, n] those to be had, in any order
/// @return [m] one of them
/// Range: as the other form.
/// Errors: as the other form; SolveError `hydraulics.no_answer` where none suffices
/// Source: solve
/// Verified by: tests/cpp/hydraulics/test_lay_inverse.cpp
Length<> smallest_bore(const HoseLay& lay, std::size_t segment, std::size_t nozzle,
                       const Pressure<>& wanted, const std::vector<Length<>>& bores);

} // namespace scupper::hydraulics
