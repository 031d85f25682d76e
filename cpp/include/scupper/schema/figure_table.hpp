#pragma once
// The figure schema: every number that a price yields, by group and field, like the inputs.

#include "scupper/quantity.hpp"
#include "scupper/schema/input_table.hpp"

#include <array>
#include <string_view>

namespace scupper {

/// One figure.
struct FigureField {
    std::string_view group;               ///< [text] key of its group in `figure_groups`
    std::string_view field;               ///< [text] key within the group
    Dimension dimension;                  ///< times the driver's where per_driver is yes
    std::string_view label;               ///< [text] what people call it
    PerDriver per_driver = PerDriver::no; ///< [-] yes: measured in the unit of its row's driver
};

inline constexpr std::array<InputGroup, 12> figure_groups{{
    {"nozzle", true, "nozzles by method"},
    {"operation", true, "operations"},
    {"water", false, "water"},
    {"debris", false, "debris"},
    {"haul", true, "haul trucks"},
    {"hours", false, "hours"},
    {"shift", false, "shifts"},
    {"cost", false, "cost"},
    {"line", true, "cost lines, component/operation/resource"},
    {"takeoff", true, "quantities"},
    {"truck", true, "trucks on the bridge"},
    {"crew", true, "stages and parties"},
}};

inline constexpr std::array<FigureField, 50> figure_table{{
    {"nozzle", "flow", dim::flow, "flow at the nozzle"},
    {"nozzle", "pressure", dim::pressure, "pressure at the nozzle"},
    {"nozzle", "reaction", dim::force, "nozzle reaction"},
    {"operation", "quantity", dim::none, "quantity worked", PerDriver::yes},
    {"operation", "productive_time", dim::time, "productive time"},
    {"operation", "time", dim::time, "time on the clock"},
    {"operation", "water", dim::volume, "water"},
    {"water", "volume", dim::volume, "water used"},
    {"water", "refills", dim::count, "tank refills"},
    {"water", "picked_up", dim::volume, "water picked up"},
    {"debris", "volume", dim::volume, "debris, volume"},
    {"debris", "mass", dim::mass, "debris, mass"},
    {"debris", "loads", dim::count, "debris loads"},
    {"haul", "payload", dim::mass, "debris it may carry"},
    {"haul", "water", dim::volume, "water it picks up"},
    {"haul", "hauled_volume", dim::volume, "debris and water hauled, volume"},
    {"haul", "hauled_mass", dim::mass, "debris and water hauled, mass"},
    {"haul", "loads", dim::count, "loads"},
    {"haul", "labour", dim::count* dim::time, "labour-hours of dump runs after the shift"},
    {"hours", "productive", dim::time, "productive hours"},
    {"hours", "on_site", dim::time, "hours on site"},
    {"hours", "lost", dim::time, "travel, briefing and meal hours"},
    {"hours", "paid", dim::time, "paid hours of each person"},
    {"hours", "overtime", dim::time, "overtime of each person"},
    {"hours", "labour", dim::count* dim::time, "labour-hours"},
    {"hours", "show_up", dim::time, "show-up pay of each person, expected hours"},
    {"hours", "closed", dim::time, "hours the road is closed"},
    {"shift", "count", dim::none, "crew-shifts"},
    {"crew", "work", dim::time, "work on the clock"},
    {"crew", "shifts", dim::none, "shifts"},
    {"crew", "paid", dim::time, "paid hours of each person"},
    {"cost", "labour", dim::money, "labour cost"},
    {"cost", "equipment", dim::money, "equipment cost"},
    {"cost", "materials", dim::money, "water and disposal cost"},
    {"cost", "charges", dim::money, "charges by the visit or shift"},
    {"cost", "contract", dim::money, "lane occupancy and damages"},
    {"cost", "show_up", dim::money, "show-up pay, expected"},
    {"cost", "moving", dim::money, "mobilization by distance"},
    {"cost", "escalation", dim::money, "escalation"},
    {"cost", "direct", dim::money, "direct cost"},
    {"cost", "overhead", dim::money, "overhead"},
    {"cost", "profit", dim::money, "profit"},
    {"cost", "bond", dim::money, "bond"},
    {"cost", "mobilization", dim::money, "mobilization"},
    {"cost", "contingency", dim::money, "contingency"},
    {"cost", "total", dim::money, "total cost"},
    {"line", "cost", dim::money, "cost line"},
    {"takeoff", "quantity", dim::none, "quantity", PerDriver::yes},
    {"truck", "fill", dim::volume, "tank as filled"},
    {"truck", "loaded_mass", dim::mass, "mass as filled"},
}};

} // namespace scupper
