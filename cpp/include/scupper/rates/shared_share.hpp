#pragma once
// How much of an input's spread structures usually have in common.

#include <array>
#include <string_view>

namespace scupper {

/// The usual share of a group of inputs, or of one field of it.
struct SharedShare {
    std::string_view group; ///< [text] key of a group of the input schema
    std::string_view field; ///< [text] a field of it; empty: all that have no row of their own
    double share;           ///< [-] of the variance that is common to all structures, 0 to 1
};

/// What one crew, one fleet and one contract bring to every structure varies as one: prices, wages,
/// hire and equipment wholly; the shift mostly; the crew's pace by half, the rest being the
/// structure's; the age of the dirt partly. What the structure itself is, and where it lies, is its own: groups not named here.
/// Source: common practice, from memory
inline constexpr std::array<SharedShare, 41> shared_shares{{
    {"price", "", 1.0},
    {"labour", "", 1.0},
    {"equipment", "", 1.0},
    {"charge", "", 1.0},
    {"margin", "", 1.0},
    {"contract", "", 1.0},
    {"mobilization", "", 1.0},
    {"escalation", "", 1.0},
    {"night", "premium", 1.0},
    {"pump", "", 1.0},
    {"hose", "", 1.0},
    {"hose", "rise", 0.0},
    {"nozzle", "", 1.0},
    {"tank", "", 1.0},
    {"pass", "", 1.0},
    {"haul", "gross_limit", 1.0},
    {"haul", "empty_mass", 1.0},
    {"haul", "volume", 1.0},
    {"haul", "water_aboard", 1.0},
    {"haul", "water_share", 1.0},
    {"haul", "number", 1.0},
    {"haul", "people", 1.0},
    {"haul", "wage", 1.0},
    {"haul", "load_charge", 1.0},
    {"refill", "tankers", 1.0},
    {"refill", "connect_time", 0.5},
    {"haul", "dump_time", 0.5},
    {"haul", "decant_time", 0.5},
    {"operation", "", 0.5},
    {"closure", "", 0.5},
    {"bucket", "", 0.5},
    {"party", "", 0.5},
    {"pace", "", 0.5},
    {"night", "pace", 0.5},
    {"shift", "", 0.7},
    {"shift", "travel_time", 0.0},
    {"stage", "", 0.7},
    {"stage", "travel_time", 0.0},
    {"water", "", 0.7},
    {"dirt", "", 0.3},
    {"drain_dirt", "", 0.3},
}};

/// How much of an input's spread structures have in common where nobody says so.
///
/// @param key [text] key of the input schema: "labour[washer].wage"
/// @return [-] share of the variance, from `shared_shares`; 0 where it has no row
/// Range: any text.
/// Errors: none.
/// Source: common practice, from memory
/// Verified by: tests/cpp/rates/test_shared_share.cpp
double usual_shared_share(std::string_view key);

} // namespace scupper
