#pragma once
// Rules for caps, columns, pier walls, footings, abutments, pedestals, benches and slopes.

#include "scupper/takeoff/rules.hpp"
#include "words.hpp"

#include <array>

namespace scupper::takeoff::detail {

inline constexpr std::string_view element_records =
    "common practice; all four bridges with piers in a sample of FHWA element submissions (2023, "
    "AL, "
    "AZ, IA) report pier walls, three of them beside columns";

inline constexpr auto support_rules = std::to_array<Rule>({
    {"cap.width", "cap.width", "factor", practice, "bridges with piers", "", 0.75, 1.0, 1.5},
    {"cap.width.long", "cap.width", "factor", practice, "spans above 45 m", "", 0.9, 1.5, 2.5},
    {"cap.depth", "cap.depth", "factor", practice, "bridges with piers", "", 0.75, 1.1, 1.8},
    {"cap.depth.long", "cap.depth", "factor", practice, "spans above 45 m", "", 1.0, 1.5, 2.5},
    {"seat.width", "seat.width", "factor", practice, "girders on bearings", "", 0.45, 0.85, 1.4},
    {"seat.width.integral_possible", "seat.width", "factor (0: integral abutments)", practice,
     "as joint.count.jointless_possible", "", 0.0, 0.75, 1.4},
    {"seat.width.timber", "seat.width", "factor: what the stringers leave of the sill", practice,
     "timber stringers", "", 0.0, 0.25, 0.5},
    {"seat.width.slab", "seat.width", "factor: the slab covers its seat", practice, "slabs", "",
     0.0, 0.0, 0.6},
    {"column.spacing", "column.spacing", "factor", practice, "bents of concrete or steel",
     "cannot be told from a record", 3.0, 5.0, 8.0, Basis::assumed},
    {"column.spacing.timber", "column.spacing", "factor", practice, "timber bents",
     "cannot be told from a record", 1.2, 1.8, 2.5, Basis::assumed},
    {"column.diameter", "column.diameter", "factor", practice, "bents of concrete or steel",
     "cannot be told from a record", 0.6, 0.9, 1.2, Basis::assumed},
    {"column.diameter.timber", "column.diameter", "factor", practice, "timber bents",
     "cannot be told from a record", 0.25, 0.30, 0.40, Basis::assumed},
    {"column.height.clearance", "column.height", "factor x item 54B, or x the clearance measured",
     "FHWA-PD-96-001 (1995); allowance for cap and footing common practice",
     "a road or railway below (item 54A = H or R)", "next rule", 0.7, 1.0, 1.4},
    {"column.height.height", "column.height",
     "factor x (B.G.13 - likely girder depth - likely cap depth): the height is the greatest",
     "FHWA, Specifications for the National Bridge Inventory (2022); what the height is measured "
     "from and to is from memory",
     "B.G.13 recorded", "next rule", 0.4, 0.8, 1.0},
    {"column.height.navigation", "column.height", "factor x item 39",
     "FHWA-PD-96-001 (1995); common practice", "navigation clearance recorded", "next rule", 0.3,
     0.9, 1.3, Basis::assumed},
    {"column.height.assumed", "column.height", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 1.5, 4.5, 10.0, Basis::assumed},
    {"pier.wall_share.probable", "pier.wall_share", "factor", element_records,
     "slabs; over water, built before 1950 or with spans up to 15 m", "", 0.0, 0.7, 1.0},
    {"pier.wall_share.possible", "pier.wall_share", "factor", element_records,
     "other piers over water, or over something not recorded", "", 0.0, 0.3, 1.0},
    {"pier.wall_share.seldom", "pier.wall_share", "factor", practice,
     "a road or railway below and no water", "", 0.0, 0.1, 1.0},
    {"pier.wall_share.vault", "pier.wall_share", "factor", practice,
     "vaults and rigid frames of concrete or masonry", "", 1.0, 1.0, 1.0},
    {"pier.wall_thickness", "pier.wall_thickness", "factor", practice, "piers not of timber", "",
     0.45, 0.75, 1.2},
    {"footing.projection", "footing.projection", "factor", practice, "piers not of timber",
     "cannot be told from a record", 0.3, 0.5, 1.0, Basis::assumed},
    {"footing.exposed_share", "footing.exposed_share", "factor", practice, "piers not of timber",
     "cannot be told from a record", 0.0, 0.05, 0.5, Basis::assumed},
    {"abutment.height", "abutment.height", "exposed stem, from the ground to the seat", practice,
     "every bridge", "", 0.2, 0.9, 4.5},
    {"abutment.back_wall_height.beams", "abutment.back_wall_height",
     "girder depth (low, likely, high) + factor for bearing and deck", practice,
     "beams, tees, channels, boxes and stringers", "", 0.0, 0.25, 0.6},
    {"abutment.back_wall_height.integral_possible", "abutment.back_wall_height",
     "0 (integral abutments), else girder depth (likely, high) + factor", practice,
     "as joint.count.jointless_possible", "", 0.0, 0.25, 0.6},
    {"abutment.back_wall_height.floor", "abutment.back_wall_height",
     "factor: depth of the floor system", practice,
     "floorbeam girders, trusses, steel arches, suspension and stayed spans", "", 0.6, 1.2, 2.5},
    {"abutment.back_wall_height.slab", "abutment.back_wall_height",
     "factor: the slab reaches over the abutment", practice, "slabs", "", 0.0, 0.0, 0.5},
    {"abutment.wing_length", "abutment.wing_length", "factor, each of four", practice,
     "every bridge", "", 0.0, 2.5, 6.0},
    {"pedestal.per_bearing", "pedestal.per_bearing", "factor", practice, "bridges with bearings",
     "cannot be told from a record", 0.0, 0.5, 1.0, Basis::assumed},
    {"berm.width.clearance", "berm.width", "factor", practice,
     "how high the deck stands is recorded", "next rule", 0.0, 0.9, 1.8},
    {"berm.width.assumed", "berm.width", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 0.0, 0.6, 1.8, Basis::assumed},
    {"slope.height.clearance", "slope.height",
     "factor x item 54B, or x the clearance measured (0: full-height abutments)",
     "FHWA-PD-96-001 (1995); common practice", "a road or railway below", "next rule", 0.0, 0.7,
     1.0},
    {"slope.height.height", "slope.height", "factor x B.G.13 (0: full-height abutments)",
     "FHWA, Specifications for the National Bridge Inventory (2022); common practice",
     "B.G.13 recorded", "next rule", 0.0, 0.6, 0.9},
    {"slope.height.assumed", "slope.height", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 0.0, 1.0, 4.0, Basis::assumed},
    {"slope.run", "slope.run", "factor", practice, "every bridge", "", 1.0, 1.5, 2.0},
});

} // namespace scupper::takeoff::detail
