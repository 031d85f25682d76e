#pragma once
// From dimensions to quantities: the take-off itself, the same for double and Traced.

#include "scupper/schema.hpp"
#include "scupper/takeoff/dimensions.hpp"
#include "scupper/takeoff/shape.hpp"

#include <array>
#include <bitset>

namespace scupper::takeoff {

/// Quantities by slot in SI units; slots that no take-off fills are zero.
template <class T>
struct Quantities {
    std::array<T, slot_table.size()> by_slot{}; ///< [SI unit of the slot]

    /// The quantity of a slot [SI unit of the slot].
    const T& operator[](Slot slot) const { return by_slot[slot]; }
};

/// Quantities that somebody counted or measured; each stands in for the computed one wherever
/// that is used, so that counted girders also reach the bearings.
template <class T>
struct Given {
    std::bitset<slot_table.size()> is_given;  ///< [-] by slot
    std::array<T, slot_table.size()> value{}; ///< [SI unit of the slot]

    /// States a quantity.
    ///
    /// @param slot [-] index in slot_table
    /// @param si [SI unit of the slot] the counted or measured quantity
    /// Range: slot < slot_table.size().
    /// Errors: none.
    /// Source: definition
    void set(Slot slot, const T& si) {
        is_given.set(slot);
        value[slot] = si;
    }
};

/// What there is to wash of every component.
///
/// Formula: the rules named quantity.* of `rules()`, one for each slot
/// @param shape [-] categories, from `infer`
/// @param dimensions [SI] of the structure
/// @param given [SI unit of each slot] quantities counted or measured, used instead
/// @return [SI unit of each slot] quantities; of a structure that is not washed only
///         deck_total_area
/// Range: dimensions within the bounds of the input schema; skew below a right angle.
/// Errors: none.
/// Source: geometry; choices that could be otherwise are common practice, named in `rules()`
/// Verified by: tests/cpp/takeoff/test_take_off.cpp, test_worked.cpp, test_properties.cpp
template <class T>
Quantities<T> take_off(const Shape& shape, const Dimensions<T>& dimensions,
                       const Given<T>& given = {});

} // namespace scupper::takeoff
