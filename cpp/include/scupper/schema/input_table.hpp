#pragma once
// The input schema: every number that a price depends on, by group and field.
// A key reads "deck.length" or, in a group with rows, "operation[joint_flushing].time_per_unit".

#include "scupper/quantity.hpp"

#include <array>
#include <limits>
#include <string_view>

namespace scupper {

/// Whether a field is per unit of the quantity that drives its row.
enum class PerDriver { no, yes };

/// One input field.
struct InputField {
    std::string_view group;               ///< [text] key of its group in `input_groups`
    std::string_view field;               ///< [text] key within the group
    Dimension dimension;                  ///< of the value; where per_driver is yes, see there
    double least;                         ///< smallest possible value, SI
    double greatest;                      ///< greatest possible value, SI
    std::string_view label;               ///< [text] what people call it
    PerDriver per_driver = PerDriver::no; ///< [-] yes: per unit of the driver, or in its unit
};

/// A group of fields.
struct InputGroup {
    std::string_view key;   ///< [text] what stands before the dot of a key
    bool has_rows;          ///< rows are named when a job is resolved
    std::string_view label; ///< [text] what people call it
};

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

inline constexpr std::array<InputGroup, 43> input_groups{{
    {"deck", false, "deck"},
    {"span", false, "spans"},
    {"joint", false, "deck joints"},
    {"drain", false, "drains"},
    {"parapet", false, "parapets"},
    {"rail", false, "metal rails"},
    {"girder", false, "girders, boxes, slabs, trusses"},
    {"diaphragm", false, "diaphragms and cross frames"},
    {"bearing", false, "bearings"},
    {"cap", false, "bent caps"},
    {"seat", false, "abutment seats"},
    {"column", false, "columns"},
    {"pier", false, "pier walls"},
    {"footing", false, "footings"},
    {"abutment", false, "abutments"},
    {"pedestal", false, "pedestals"},
    {"berm", false, "abutment benches"},
    {"slope", false, "slope protection"},
    {"quantity", true, "quantities given outright"},
    {"dirt", true, "build-up of dirt"},
    {"drain_dirt", true, "dirt in a drain"},
    {"water", false, "water"},
    {"pump", true, "pumps by method"},
    {"hose", true, "hose segments"},
    {"nozzle", true, "nozzles by method"},
    {"tank", false, "water tank"},
    {"refill", false, "tank refills"},
    {"haul", true, "haul trucks"},
    {"operation", true, "operations"},
    {"closure", true, "closures"},
    {"shift", false, "shift"},
    {"labour", true, "people"},
    {"equipment", true, "equipment"},
    {"price", false, "prices"},
    {"outing", false, "outing"},
    {"pass", true, "passes along the deck"},
    {"bucket", false, "bucket or platform"},
    {"margin", false, "margins of a contract"},
    {"charge", true, "charges by the visit"},
    {"posting", false, "weight posting of the bridge"},
    {"road", false, "road on the bridge"},
    {"stage", true, "stages, where they differ"},
    {"party", true, "parties"},
}};

inline constexpr std::array<InputField, 128> input_table{{
    {"deck", "length", dim::length, 0.0, 1e5, "deck length"},
    {"deck", "width", dim::length, 0.0, 200.0, "deck width, out to out"},
    {"deck", "roadway_width", dim::length, 0.0, 200.0, "roadway width, curb to curb"},
    {"deck", "walk_width", dim::length, 0.0, 50.0, "width of the sidewalks together"},
    {"deck", "skew", dim::angle, 0.0, 1.5, "skew"},
    {"deck", "overhang_width", dim::length, 0.0, 5.0, "overhang beyond the outer girder"},
    {"deck", "pocket_share", dim::none, 0.0, 1.0, "share of walk edge with a gutter pocket"},
    {"deck", "median_width", dim::length, 0.0, 50.0, "width of a raised median"},
    {"span", "longest", dim::length, 0.0, 5e3, "longest span"},
    {"joint", "count", dim::count, 0.0, 1e4, "number of deck joints"},
    {"drain", "per_length", dim::count / dim::length, 0.0, 1.0, "drains along the deck"},
    {"drain", "clogged_share", dim::none, 0.0, 1.0, "share of drains clogged"},
    {"drain", "frozen_share", dim::none, 0.0, 1.0, "share of drains with a frozen grate"},
    {"drain", "box_share", dim::none, 0.0, 1.0, "share of drains with a box"},
    {"drain", "downspout_length", dim::length, 0.0, 300.0, "downspout below a drain box"},
    {"parapet", "face_height", dim::length, 0.0, 3.0, "height of a parapet's traffic face"},
    {"parapet", "share", dim::none, 0.0, 1.0, "share of the edges with a parapet"},
    {"rail", "share", dim::none, 0.0, 1.0, "share of the edges with a metal rail"},
    {"girder", "spacing", dim::length, 0.1, 50.0, "girder spacing"},
    {"girder", "depth", dim::length, 0.0, 60.0, "girder depth"},
    {"girder", "face_factor", dim::none, 0.0, 10.0, "surface per side over its outline"},
    {"girder", "floor_factor", dim::none, 0.0, 10.0, "floor system's surface over deck area"},
    {"girder", "flange_width", dim::length, 0.0, 30.0, "girder flange width"},
    {"girder", "end_length", dim::length, 0.0, 50.0, "washed length at a girder end"},
    {"diaphragm", "spacing", dim::length, 0.5, 100.0, "spacing of diaphragms along the deck"},
    {"diaphragm", "depth", dim::length, 0.0, 20.0, "depth of a diaphragm if it were solid"},
    {"bearing", "per_line", dim::count, 0.0, 1e4, "bearings along one girder line"},
    {"cap", "width", dim::length, 0.0, 20.0, "cap width"},
    {"cap", "depth", dim::length, 0.0, 20.0, "cap depth"},
    {"seat", "width", dim::length, 0.0, 20.0, "open width of an abutment seat"},
    {"column", "spacing", dim::length, 0.1, 100.0, "column spacing"},
    {"column", "diameter", dim::length, 0.0, 30.0, "column diameter"},
    {"column", "height", dim::length, 0.0, 300.0, "column height"},
    {"pier", "wall_share", dim::none, 0.0, 1.0, "share of piers that are walls"},
    {"pier", "wall_thickness", dim::length, 0.0, 20.0, "thickness of a pier wall"},
    {"footing", "projection", dim::length, 0.0, 10.0, "footing beyond its column or wall"},
    {"footing", "exposed_share", dim::none, 0.0, 1.0, "share of footings exposed"},
    {"abutment", "height", dim::length, 0.0, 50.0, "exposed abutment height, up to the seat"},
    {"abutment", "back_wall_height", dim::length, 0.0, 20.0, "back wall height above the seat"},
    {"abutment", "wing_length", dim::length, 0.0, 50.0, "length of a wing wall"},
    {"pedestal", "per_bearing", dim::none, 0.0, 2.0, "pedestals for each bearing"},
    {"berm", "width", dim::length, 0.0, 50.0, "width of an abutment bench"},
    {"slope", "height", dim::length, 0.0, 100.0, "height of the slope protection"},
    {"slope", "run", dim::none, 0.0, 10.0, "slope, horizontal to one vertical"},
    {"quantity", "given", dim::none, 0.0, unbounded, "given outright", PerDriver::yes},
    {"dirt", "width", dim::length, 0.0, 20.0, "width of the build-up"},
    {"dirt", "depth", dim::length, 0.0, 1.0, "depth of the build-up"},
    {"dirt", "density", dim::density, 50.0, 4e3, "bulk density of the dirt"},
    {"drain_dirt", "volume", dim::volume_each, 0.0, 10.0, "dirt in each drain"},
    {"drain_dirt", "density", dim::density, 50.0, 4e3, "bulk density of drain dirt"},
    {"water", "temperature", dim::temperature, 273.15, 323.15, "water temperature"},
    {"water", "loss_share", dim::none, 0.0, 1.0, "share of wash water that dries or soaks in"},
    {"pump", "pressure", dim::pressure, 0.0, 1e8, "pressure held at the pump outlet"},
    {"pump", "flow_limit", dim::flow, 0.0, 10.0, "greatest flow of the pump"},
    {"hose", "bore", dim::length, 1e-3, 1.0, "bore"},
    {"hose", "length", dim::length, 0.0, 1e5, "length"},
    {"hose", "roughness", dim::length, 0.0, 0.01, "roughness of the lining"},
    {"hose", "minor_loss", dim::none, 0.0, 1e4, "sum of fitting loss coefficients"},
    {"hose", "rise", dim::length, -500.0, 500.0, "rise along the segment"},
    {"nozzle", "bore", dim::length, 1e-4, 0.5, "nozzle bore"},
    {"nozzle", "discharge_coefficient", dim::none, 0.1, 1.0, "discharge coefficient"},
    {"tank", "volume", dim::volume, 1e-3, 1e3, "usable tank volume"},
    {"tank", "empty_mass", dim::mass, 0.0, 1e5, "water truck with an empty tank"},
    {"refill", "distance", dim::length, 0.0, 1e6, "distance to the water, one way"},
    {"refill", "speed", dim::speed, 0.1, 50.0, "speed on the way to the water"},
    {"refill", "connect_time", dim::time, 0.0, 86400.0, "time to connect and disconnect"},
    {"refill", "overlap_time", dim::time, 0.0, 86400.0, "refill time that other work overlaps"},
    {"refill", "fill_flow", dim::flow, 1e-5, 10.0, "flow while filling"},
    {"haul", "distance", dim::length, 0.0, 1e6, "distance to the dump, one way"},
    {"haul", "speed", dim::speed, 0.1, 50.0, "speed on the way to the dump"},
    {"haul", "dump_time", dim::time, 0.0, 86400.0, "time to weigh and dump"},
    {"haul", "decant_time", dim::time, 0.0, 86400.0, "time to let a wet load drain"},
    {"haul", "gross_limit", dim::mass, 1.0, 1e5, "legal weight, loaded"},
    {"haul", "empty_mass", dim::mass, 0.0, 1e5, "weight, empty"},
    {"haul", "water_aboard", dim::volume, 0.0, 100.0, "fresh water left aboard when dumping"},
    {"haul", "volume", dim::volume, 1e-3, 100.0, "usable room for debris"},
    {"haul", "water_share", dim::none, 0.0, 1.0, "share of the water it picks up"},
    {"haul", "load_charge", dim::money, 0.0, 1e6, "charge for each load"},
    {"haul", "people", dim::count, 0.0, 100.0, "people on a dump run after the shift"},
    {"haul", "wage", dim::money_per_time, 0.0, 1e3, "pay of one person on a dump run"},
    {"operation", "time_per_unit", dim::time, 0.0, unbounded, "time per unit", PerDriver::yes},
    {"operation", "trigger_share", dim::none, 0.0, 1.0, "share of the time the trigger is open"},
    {"operation", "water_per_unit", dim::volume, 0.0, unbounded, "stated water per unit",
     PerDriver::yes},
    {"closure", "set_up_time", dim::time, 0.0, 86400.0, "set-up time"},
    {"closure", "removal_time", dim::time, 0.0, 86400.0, "removal time"},
    {"closure", "change_sides_time", dim::time, 0.0, 86400.0, "time to change sides"},
    {"shift", "length", dim::time, 3600.0, 86400.0, "paid shift"},
    {"shift", "travel_time", dim::time, 0.0, 86400.0, "travel a shift, there and back"},
    {"shift", "briefing_time", dim::time, 0.0, 86400.0, "briefing and pack-up a shift"},
    {"shift", "meal_time", dim::time, 0.0, 86400.0, "meal time a shift"},
    {"shift", "overtime_limit", dim::time, 0.0, 43200.0, "overtime before another shift"},
    {"shift", "overtime_factor", dim::none, 1.0, 5.0, "pay of an overtime hour to a plain one"},
    {"shift", "window_time", dim::time, 0.0, 86400.0, "how long the road may be closed a shift"},
    {"shift", "productive_share", dim::none, 0.05, 1.0, "productive share of a clock hour"},
    {"labour", "people", dim::count, 0.0, 1e3, "people"},
    {"labour", "wage", dim::money_per_time, 0.0, 1e3, "cost of one person"},
    {"equipment", "number", dim::count, 0.0, 1e3, "pieces"},
    {"equipment", "rate", dim::money_per_time, 0.0, 1e3, "cost of one piece"},
    {"price", "water", dim::money_per_volume, 0.0, 1e6, "price of water"},
    {"price", "disposal", dim::money_per_mass, 0.0, 1e3, "price of disposal"},
    {"price", "wash_water", dim::money_per_volume, 0.0, 1e6, "price of getting rid of wash water"},
    {"outing", "structures_a_shift", dim::count, 1.0, 1e3, "structures served in one shift"},
    {"outing", "structures_a_closure", dim::count, 1.0, 1e3, "structures under one closure"},
    {"pass", "effective_width", dim::length, 0.1, 20.0, "width of one pass"},
    {"pass", "overlap", dim::none, 0.0, 0.9, "share of a pass on its neighbour"},
    {"pass", "rounds", dim::count, 0.0, 20.0, "times the deck is covered"},
    {"bucket", "reach", dim::length, 0.5, 100.0, "support line served from one position"},
    {"charge", "amount", dim::money, 0.0, 1e9, "amount a visit"},
    {"stage", "length", dim::time, 3600.0, 86400.0, "paid shift"},
    {"stage", "travel_time", dim::time, 0.0, 86400.0, "travel a shift, there and back"},
    {"stage", "briefing_time", dim::time, 0.0, 86400.0, "briefing and pack-up a shift"},
    {"stage", "meal_time", dim::time, 0.0, 86400.0, "meal time a shift"},
    {"stage", "window_time", dim::time, 0.0, 86400.0, "how long the road may be closed a shift"},
    {"stage", "productive_share", dim::none, 0.05, 1.0, "productive share of a clock hour"},
    {"party", "wait_time", dim::time, 0.0, unbounded, "wait for another party"},
    {"margin", "overhead", dim::none, 0.0, 5.0, "overhead on direct cost"},
    {"margin", "profit", dim::none, 0.0, 5.0, "profit on cost and overhead"},
    {"margin", "bond", dim::none, 0.0, 1.0, "bond on all before"},
    {"margin", "mobilization", dim::none, 0.0, 5.0, "mobilization on all before"},
    {"margin", "contingency", dim::none, 0.0, 5.0, "contingency on all before"},
    {"posting", "limit", dim::mass, 0.0, 1e6, "posted weight limit of the bridge"},
    {"posting", "set_back", dim::length, 0.0, 1e3, "truck on the approach to the deck's end"},
    {"posting", "deck_share", dim::none, 0.0, 1.0, "share of the deck that the longer hose spans"},
    {"posting", "least_fill", dim::none, 0.01, 1.0, "smallest tank filling worth fetching"},
    {"road", "speed", dim::speed, 1.0, 50.0, "speed of the traffic"},
    {"road", "lane_width", dim::length, 1.5, 10.0, "lane width"},
    {"road", "shoulder_width", dim::length, 0.0, 10.0, "shoulder beside the right lane"},
    {"road", "work_margin", dim::length, 0.0, 1e4, "closed road beyond the deck, both ends"},
}};

} // namespace scupper
