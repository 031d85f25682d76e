#pragma once
// The quantity slots: what a structure holds of each component, and what a visit makes of it.
// Every operation is driven by one of them.

#include "scupper/quantity.hpp"

#include <array>
#include <cstddef>
#include <string_view>

namespace scupper {

/// One quantity slot.
struct SlotInfo {
    std::string_view key;   ///< word of the trade, without unit
    Dimension dimension;    ///< of the quantity
    bool column;            ///< whether the take-off table has a column of it
    std::string_view label; ///< what people call it
};

/// All slots; the columns of the take-off table first, in their order.
inline constexpr std::array<SlotInfo, 56> slot_table{{
    {"deck_top_area", dim::area, true, "deck top area"},
    {"deck_total_area", dim::area, true, "deck area, out to out"},
    {"sidewalk_area", dim::area, true, "sidewalk area"},
    {"gutter_pocket_length", dim::length, true, "gutter pocket beneath a walk's edge"},
    {"soffit_overhang_area", dim::area, true, "soffit of the deck overhangs"},
    {"parapet_area", dim::area, true, "parapet faces"},
    {"rail_length", dim::length, true, "metal rail"},
    {"joint_length", dim::length, true, "deck joints, length"},
    {"joint_count", dim::count, true, "deck joints"},
    {"drain_count", dim::count, true, "drains"},
    {"gutter_length", dim::length, true, "gutters"},
    {"girder_count", dim::count, true, "girder lines"},
    {"girder_area", dim::area, true, "girder surface, whole"},
    {"girder_end_area", dim::area, true, "girder surface, ends near joints"},
    {"bearing_count", dim::count, true, "bearings"},
    {"cap_count", dim::count, true, "bent caps"},
    {"cap_area", dim::area, true, "bent cap surface"},
    {"column_count", dim::count, true, "columns"},
    {"column_area", dim::area, true, "column surface"},
    {"abutment_area", dim::area, true, "abutment faces"},
    {"pedestal_count", dim::count, true, "pedestals"},
    {"berm_area", dim::area, true, "abutment benches"},
    {"slope_protection_area", dim::area, true, "slope protection"},
    {"wash_area_total", dim::area, true, "washable area, all components"},
    {"median_area", dim::area, false, "raised median, top"},
    {"parapet_length", dim::length, false, "parapet faces, length"},
    {"drain_box_count", dim::count, false, "drain boxes"},
    {"downspout_length", dim::length, false, "downspouts, length"},
    {"girder_end_count", dim::count, false, "girder ends at joints"},
    {"diaphragm_area", dim::area, false, "diaphragms and cross frames"},
    {"cap_top_area", dim::area, false, "tops of caps"},
    {"seat_area", dim::area, false, "tops of abutment seats"},
    {"wall_pier_area", dim::area, false, "pier wall faces"},
    {"footing_area", dim::area, false, "tops of exposed footings"},
    {"abutment_stem_area", dim::area, false, "abutment stem faces"},
    {"back_wall_area", dim::area, false, "back wall faces"},
    {"wing_wall_area", dim::area, false, "wing wall faces"},
    {"support_line_length", dim::length, false, "bent and abutment faces, length"},
    {"drain_free_count", dim::count, false, "drains, free"},
    {"drain_clogged_count", dim::count, false, "drains, clogged"},
    {"drain_frozen_count", dim::count, false, "drains, grate frozen"},
    {"flush_pass_count", dim::count, false, "flushing passes"},
    {"flush_length", dim::length, false, "flushing passes, length"},
    {"broom_pass_count", dim::count, false, "broom passes"},
    {"broom_length", dim::length, false, "broom passes, length"},
    {"bucket_position_count", dim::count, false, "bucket or platform positions"},
    {"cap_dirt_volume", dim::volume, false, "dirt on caps"},
    {"seat_dirt_volume", dim::volume, false, "dirt on seats"},
    {"approach_hose_length", dim::length, false, "more hose from the approach"},
    {"carried_dirt_volume", dim::volume, false, "dirt carried to the approach"},
    {"collected_water_volume", dim::volume, false, "wash water vacuumed up"},
    {"closure_count", dim::count, false, "closures"},
    {"side_change_count", dim::count, false, "changes of the closure to the other side"},
    {"refill_count", dim::count, false, "tank refills"},
    {"dump_count", dim::count, false, "dump trips"},
    {"visit_count", dim::count, false, "visits"},
}};

/// Index of a slot in the table.
using Slot = std::size_t;

/// The slot of a name that people or documents give.
///
/// @param key [text] "drain_count"
/// @return [-] index into `slot_table`; slot_table.size() where there is no such slot
/// Range: any text.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/schema/test_keys.cpp
constexpr Slot find_slot(std::string_view key) {
    for (Slot i = 0; i < slot_table.size(); ++i) {
        if (slot_table[i].key == key) {
            return i;
        }
    }
    return slot_table.size();
}

/// The slot of a name written in code.
///
/// @param key [text] "drain_count"
/// @return [-] index into `slot_table`
/// Range: keys of `slot_table`.
/// Errors: none when running; a misspelt name does not compile.
/// Source: own convention
/// Verified by: tests/cpp/schema/test_keys.cpp
consteval Slot slot(std::string_view key) {
    const Slot found = find_slot(key);
    if (found == slot_table.size()) {
        throw "no such quantity slot";
    }
    return found;
}

/// Whether a quantity follows from the water of all operations, so that it cannot cause any.
///
/// @param driver [-] a slot
/// @return [-] true for refills, dump trips and collected wash water
/// Range: any slot.
/// Errors: none.
/// Source: own convention
constexpr bool follows_from_water(Slot driver) {
    return driver == slot("refill_count") || driver == slot("dump_count") ||
           driver == slot("collected_water_volume");
}

/// Whether a quantity follows from the work, so that nobody can give it beforehand.
///
/// @param s [-] a slot
/// @return [-] true for closures, refills, dump trips, visits, dirt and collected water
/// Range: any slot.
/// Errors: none.
/// Source: own convention
constexpr bool follows_from_work(Slot s) {
    return follows_from_water(s) || s == slot("closure_count") || s == slot("side_change_count") ||
           s == slot("visit_count") || s == slot("carried_dirt_volume") ||
           s == slot("cap_dirt_volume") || s == slot("seat_dirt_volume");
}

/// How many slots are columns of the take-off table [-].
consteval std::size_t column_count() {
    std::size_t n = 0;
    while (n < slot_table.size() && slot_table[n].column) {
        ++n;
    }
    return n;
}

} // namespace scupper
