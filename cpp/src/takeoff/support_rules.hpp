#pragma once
// Rules for caps, columns, abutments, pedestals, benches and slopes; and the quantities' formulas.

#include "scupper/takeoff/rules.hpp"
#include "words.hpp"

#include <array>

namespace scupper::takeoff::detail {

inline constexpr auto support_rules = std::to_array<Rule>({
    {"cap.width", "cap.width", "factor", practice, "bridges with piers", "", 0.75, 1.0, 1.5},
    {"cap.depth", "cap.depth", "factor", practice, "bridges with piers", "", 0.75, 1.1, 1.8},
    {"column.spacing", "column.spacing", "factor", practice, "bents of concrete or steel",
     "cannot be told from a record", 3.0, 5.0, 8.0, Basis::assumed},
    {"column.spacing.timber", "column.spacing", "factor", practice, "timber bents",
     "cannot be told from a record", 1.2, 1.8, 2.5, Basis::assumed},
    {"column.diameter", "column.diameter", "factor", practice, "bents of concrete or steel",
     "cannot be told from a record", 0.6, 0.9, 1.2, Basis::assumed},
    {"column.diameter.timber", "column.diameter", "factor", practice, "timber bents",
     "cannot be told from a record", 0.25, 0.30, 0.40, Basis::assumed},
    {"column.height.clearance", "column.height", "factor x item 54B",
     "FHWA-PD-96-001 (1995); allowance for cap and footing common practice",
     "a road or railway below (item 54A = H or R)", "next rule", 0.7, 1.0, 1.4},
    {"column.height.navigation", "column.height", "factor x item 39",
     "FHWA-PD-96-001 (1995); common practice", "navigation clearance recorded", "next rule", 0.3,
     0.9, 1.3, Basis::assumed},
    {"column.height.assumed", "column.height", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 1.5, 4.5, 10.0, Basis::assumed},
    {"abutment.height", "abutment.height",
     "exposed stem, seat and back wall, measured around the corner", practice, "every bridge", "",
     1.0, 1.8, 4.5},
    {"pedestal.per_bearing", "pedestal.per_bearing", "factor", practice, "bridges with bearings",
     "cannot be told from a record", 0.0, 0.5, 1.0, Basis::assumed},
    {"berm.width.clearance", "berm.width", "factor", practice, "a road or railway below",
     "next rule", 0.0, 0.9, 1.8},
    {"berm.width.assumed", "berm.width", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 0.0, 0.6, 1.8, Basis::assumed},
    {"slope.height.clearance", "slope.height", "factor x item 54B (0: full-height abutments)",
     "FHWA-PD-96-001 (1995); common practice", "a road or railway below", "next rule", 0.0, 0.7,
     1.0},
    {"slope.height.assumed", "slope.height", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 0.0, 1.0, 4.0, Basis::assumed},
    {"slope.run", "slope.run", "factor", practice, "every bridge", "", 1.0, 1.5, 2.0},
});

inline constexpr std::string_view geometry = "geometry";

inline constexpr auto quantity_rules = std::to_array<Rule>({
    {"quantity.deck_top_area", "deck_top_area", "length x roadway width", geometry, "bridges",
     "absent: 0"},
    {"quantity.deck_total_area", "deck_total_area", "length x width out to out",
     "23 CFR 490.411(c)", "every structure", "no width: cannot be told"},
    {"quantity.sidewalk_area", "sidewalk_area", "length x width of the walks", geometry, "bridges",
     "no walk: 0"},
    {"quantity.gutter_pocket_length", "gutter_pocket_length", "walks x length x pocket share",
     geometry, "bridges", "no walk: 0; else cannot be told"},
    {"quantity.soffit_overhang_area", "soffit_overhang_area", "2 x length x overhang", geometry,
     "girders and boxes with an overhang", "slab or arch: 0; else cannot be told"},
    {"quantity.parapet_area", "parapet_area", "2 x length x share x face height", geometry,
     "bridges", ""},
    {"quantity.rail_length", "rail_length", "2 x length x share", geometry, "bridges", ""},
    {"quantity.joint_length", "joint_length", "joints x roadway width / cos(skew)", geometry,
     "bridges", ""},
    {"quantity.joint_count", "joint_count", "the dimension joint.count", geometry, "bridges", ""},
    {"quantity.drain_count", "drain_count", "drains along the deck x length", geometry, "bridges",
     "cannot be told"},
    {"quantity.gutter_length", "gutter_length", "gutters x length", geometry, "bridges", ""},
    {"quantity.girder_count", "girder_count",
     "beams: (width - 2 overhangs) / spacing, rounded up, + 1; side by side and boxes: width / "
     "spacing, rounded up; trusses, floorbeam and cable spans: 2",
     geometry, "bridges", "slab or arch: 0"},
    {"quantity.girder_area", "girder_area",
     "length x girders x (2 x depth x face factor + faces x flange width); slab or arch: length x "
     "width x face factor",
     geometry, "bridges", ""},
    {"quantity.girder_end_area", "girder_end_area",
     "as girder_area, with ends at joints x end length, at most the deck length", geometry,
     "bridges", ""},
    {"quantity.bearing_count", "bearing_count", "girders x bearings in a line", geometry, "bridges",
     "slab, arch, frame and timber: 0"},
    {"quantity.cap_count", "cap_count", "piers", geometry, "bridges", "one span, arch or frame: 0"},
    {"quantity.cap_area", "cap_area",
     "caps x (2 L d + 2 w d + L w), L = width / cos(skew); the last face is the top, the soffit is "
     "not washed",
     geometry, "bridges", "no caps: 0"},
    {"quantity.column_count", "column_count", "caps x (cap length / spacing, rounded up)", geometry,
     "bridges", "no caps: 0; else cannot be told"},
    {"quantity.column_area", "column_area", "columns x pi x diameter x height", geometry, "bridges",
     "no caps: 0; else cannot be told"},
    {"quantity.abutment_area", "abutment_area", "2 x width / cos(skew) x height", geometry,
     "bridges", ""},
    {"quantity.pedestal_count", "pedestal_count", "bearings x pedestals for each", geometry,
     "bridges", "no bearings: 0; else cannot be told"},
    {"quantity.berm_area", "berm_area", "2 x width / cos(skew) x bench width", geometry, "bridges",
     "no clearance: cannot be told"},
    {"quantity.slope_protection_area", "slope_protection_area",
     "2 x width / cos(skew) x height x sqrt(1 + run^2)", geometry, "bridges",
     "no clearance: cannot be told"},
    {"quantity.wash_area_total", "wash_area_total",
     "deck top + sidewalk + soffit of overhangs + parapets + girders whole + caps + columns + "
     "abutments + benches + slope protection",
     "definition", "bridges",
     "a part that cannot be told counts with its assumed value, and the basis says assumed"},
    {"quantity.drain_clogged_count", "drain_clogged_count", "drains x clogged share", geometry,
     "bridges", "cannot be told"},
    {"quantity.drain_frozen_count", "drain_frozen_count",
     "drains x frozen share, at most those not clogged", geometry, "bridges", "cannot be told"},
    {"quantity.drain_free_count", "drain_free_count", "drains - clogged - frozen", geometry,
     "bridges", "cannot be told"},
});

} // namespace scupper::takeoff::detail
