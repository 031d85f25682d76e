#pragma once
// What to mind about a solved hose lay, each with its number and the limit it passes.

#include "scupper/quantity.hpp"
#include "scupper/unit.hpp"

#include <array>
#include <string>
#include <string_view>

namespace scupper::hydraulics {

/// Kinds of warning; the words are lay_warning_names, in this order.
enum class LayWarningKind {
    working_pressure, ///< a hose is above the pressure its maker allows
    sub_atmospheric,  ///< the pressure at a point is below that of the air
    boiling,          ///< the pressure at a point is below that at which water boils
    off_curve,        ///< the pump runs outside the points of its curve
    unloader_open,    ///< water goes back through the unloader
    velocity,         ///< water runs faster through a hose than practice has it
    transition,       ///< a flow between laminar and turbulent: its friction is uncertain
    reaction_bucket,  ///< a nozzle pushes harder than one holds from a bucket
    reaction_one,     ///< a nozzle pushes harder than one person holds on the ground
    reaction_two,     ///< a nozzle pushes harder than two people hold
    too_high,         ///< the pressure does not lift water to an open nozzle
    npsh,             ///< less head at the pump's inlet than it needs
    drafting          ///< water is drawn from below the pump
};

/// The words of the kinds [text, 13].
inline constexpr std::array<std::string_view, 13> lay_warning_names{
    "working_pressure", "sub_atmospheric", "boiling",    "off_curve",
    "unloader_open",    "velocity",        "transition", "reaction_bucket",
    "reaction_one",     "reaction_two",    "too_high",   "npsh",
    "drafting"};

/// Velocity in a hose above which practice looks for a larger one [m/s]: 33 ft/s, where water
/// hammer and wear begin to matter; common practice.
inline constexpr double brisk_velocity = 10.0;
/// Reaction that one person holds from a bucket [N]: 25 lbf; common practice.
inline constexpr double bucket_reaction = 25.0 * factor::pound_force;
/// Reaction that one person holds on the ground [N]: 60 lbf; common practice.
inline constexpr double one_person_reaction = 60.0 * factor::pound_force;
/// Reaction that two people hold on the ground [N]: twice that of one; common practice.
inline constexpr double two_person_reaction = 2.0 * one_person_reaction;

/// One thing to mind.
struct LayWarning {
    LayWarningKind kind = LayWarningKind::working_pressure; ///< what about
    std::string where;   ///< [text] "pump", or the name of a segment or nozzle
    double value = 0.0;  ///< [SI] what is found there
    double limit = 0.0;  ///< [SI] what it passes
    Dimension dimension; ///< of both
};

/// The unit in which a figure of a hose lay is shown.
///
/// @param dimension [-] of the figure
/// @param units [-] how quantities are shown
/// @return [-] the usual unit of the dimension; for speeds ft/s or m/s, since nobody gauges a hose
///         in miles an hour
/// Range: any.
/// Errors: none
/// Source: common practice
/// Verified by: tests/cpp/hydraulics/test_lay_warnings.cpp
Unit lay_unit(const Dimension& dimension, UnitSystem units);

/// A warning in words, with its numbers.
///
/// @param warning [-] one of a solution
/// @param units [-] how quantities are shown
/// @return [text] one sentence; limits of common practice say so
/// Range: any.
/// Errors: none
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_lay_warnings.cpp
std::string warning_text(const LayWarning& warning, UnitSystem units);

} // namespace scupper::hydraulics
