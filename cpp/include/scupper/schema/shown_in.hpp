#pragma once
// In which unit the trade writes a field, where that is not the usual unit of its dimension.

#include <array>
#include <string_view>

namespace scupper {

/// One field and its customary units.
struct ShownIn {
    std::string_view key;    ///< "group.field", rows left out
    std::string_view us;     ///< US customary unit; "currency" stands for the job's
    std::string_view metric; ///< [text] metric unit of everyday use
};

inline constexpr std::array<ShownIn, 35> shown_in_table{{
    {"girder.flange_width", "in", "mm"},
    {"dirt.depth", "in", "mm"},
    {"drain_dirt.volume", "ft3/each", "L/each"},
    {"debris.volume", "yd3", "m3"},
    {"debris.part", "ft3", "m3"},
    {"hose.bore", "in", "mm"},
    {"hose.roughness", "in", "mm"},
    {"nozzle.bore", "in", "mm"},
    {"shift.overtime_limit", "min", "min"},
    {"refill.distance", "mi", "km"},
    {"haul.distance", "mi", "km"},
    {"haul.payload", "lb", "kg"},
    {"haul.gross_limit", "lb", "kg"},
    {"haul.empty_mass", "lb", "kg"},
    {"haul.hauled_mass", "lb", "kg"},
    {"haul.volume", "yd3", "m3"},
    {"haul.hauled_volume", "yd3", "m3"},
    {"tank.empty_mass", "lb", "kg"},
    {"truck.loaded_mass", "short ton", "t"},
    {"posting.limit", "short ton", "t"},
    {"refill.connect_time", "min", "min"},
    {"haul.dump_time", "min", "min"},
    {"haul.decant_time", "min", "min"},
    {"shift.briefing_time", "min", "min"},
    {"shift.meal_time", "min", "min"},
    {"traffic.green_time", "s", "s"},
    {"traffic.delay_limit", "min", "min"},
    {"traffic.queue_limit", "mi", "km"},
    {"traffic.detour", "mi", "km"},
    {"traffic.running_cost", "currency/mi", "currency/km"},
    {"traffic.vehicle_spacing", "ft/each", "m/each"},
    {"contract.late_time", "day", "day"},
    {"contract.damages", "currency/day", "currency/day"},
    {"equipment.life", "year", "year"},
    {"equipment.fuel_price", "currency/gal", "currency/L"},
}};

/// Groups of times that the trade counts in minutes.
inline constexpr std::string_view minutes_group = "closure";

/// The field of a full key: "hose[2].bore" is "hose.bore".
///
/// @param key [text] a full key, or any other text
/// @return [text, 2] group and field; the field is empty where there is none
/// Range: any text.
/// Errors: none.
/// Source: own convention
constexpr std::array<std::string_view, 2> split_key(std::string_view key) {
    const std::size_t bracket = key.find('[');
    const std::size_t dot = key.rfind('.');
    if (dot == key.npos) {
        return {key, {}};
    }
    return {key.substr(0, bracket < dot ? bracket : dot), key.substr(dot + 1)};
}

/// The units the trade writes a field in, where its dimension alone would pick odd ones.
///
/// @param key [text] a full key, "hose[2].bore"
/// @return [-] the row of `shown_in_table`; null where the usual units of its dimension serve
/// Range: any text.
/// Errors: none.
/// Source: common practice
constexpr const ShownIn* shown_in(std::string_view key) {
    const auto [group, field] = split_key(key);
    for (const ShownIn& row : shown_in_table) {
        const auto [row_group, row_field] = split_key(row.key);
        if (row_group == group && row_field == field) {
            return &row;
        }
    }
    return nullptr;
}

} // namespace scupper
