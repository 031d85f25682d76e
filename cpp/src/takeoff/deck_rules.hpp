#pragma once
// Rules for what kind of structure it is, its deck, joints, drains and edges.

#include "scupper/takeoff/rules.hpp"
#include "words.hpp"

#include <array>

namespace scupper::takeoff::detail {

inline constexpr Basis recorded = Basis::recorded;
inline constexpr Basis inferred = Basis::inferred;
inline constexpr Basis assumed = Basis::assumed;

inline constexpr auto kind_rules = std::to_array<Rule>({
    {"verdict.culvert", "shape.washable", "not washed as a bridge", guide, "item 43B = 19", ""},
    {"verdict.tunnel", "shape.washable", "not washed as a bridge", guide, "item 43B = 18", ""},
    {"verdict.buried", "shape.washable", "not washed as a bridge; deck area still counts",
     "23 CFR 490.411(c)", "items 52 and 51 both zero", ""},
    {"verdict.no_dimensions", "shape.washable", "not priced, reported with this reason", guide,
     "no length, or no width in items 52, 51 and 32", ""},
    {"shape.spans", "shape.spans", "item 45 + item 46", guide, "every bridge",
     "length / longest span, rounded, at least 1; also where the mean span would be below the "
     "factor",
     2.0, 2.0, 2.0, recorded},
    {"shape.units.simple", "shape.units", "one for each span", "geometry of simple spans",
     "main or approach spans of simple material", "as simple spans"},
    {"shape.units.continuous", "shape.units",
     "one for every started length of the factor, at most one for each span", practice,
     "continuous material, frames, arches, suspension and stayed spans, segmental boxes", "", 200.0,
     200.0, 200.0},
    {"shape.piers", "shape.piers", "spans - 1", "geometry", "every bridge", ""},
    {"shape.gutters", "shape.gutters", "2", practice, "no median or a flush one (item 33)",
     "two gutters"},
    {"shape.gutters.median", "shape.gutters", "4", practice,
     "open median or closed with a barrier (item 33 = 1 or 3)", ""},
    {"shape.outline", "shape.outline", "by design and material of the main spans", guide,
     "items 43A and 43B; the approach spans' 44A and 44B where they make up more than half of the "
     "length",
     "steel beams, by material where that is known", no_factor, no_factor, no_factor, inferred},
    {"shape.absent", "", "no such component on this structure", "definition",
     "what kind of structure it is, or the record, leaves it out", "zero, exactly", 0.0, 0.0, 0.0,
     inferred},
});

inline constexpr auto deck_rules = std::to_array<Rule>({
    {"deck.length.recorded", "deck.length", "item 49", guide, "every structure",
     "verdict no_dimensions", no_factor, no_factor, no_factor, recorded},
    {"deck.width.recorded", "deck.width",
     "item 52; of a through structure the clear width between its trusses", guide,
     "item 52 above zero", "next rule", no_factor, no_factor, no_factor, recorded},
    {"deck.width.approach", "deck.width", "item 32", "23 CFR 490.411(c)", "item 52 = 0",
     "deck.width.from_roadway", no_factor, no_factor, no_factor, recorded},
    {"deck.width.from_roadway", "deck.width", "item 51 + factor", practice, "item 52 not recorded",
     "item 32, else verdict no_dimensions", 0.3, 1.0, 2.4},
    {"deck.roadway_width.recorded", "deck.roadway_width", "item 51, at most the deck width", guide,
     "item 51 above zero", "next rule", no_factor, no_factor, no_factor, recorded},
    {"deck.roadway_width.inferred", "deck.roadway_width", "factor x (deck width - walks)", practice,
     "item 51 zero or not recorded", "", 0.80, 0.90, 0.97},
    {"deck.walk_width.recorded", "deck.walk_width",
     "items 50A + 50B, each only where at least the factor wide; at most deck less roadway, except "
     "of through structures",
     "FHWA-PD-96-001 (1995); a narrower curb is no walk by common practice",
     "items 50A and 50B recorded", "zero is no walk", 0.6, 0.6, 0.6, recorded},
    {"deck.walk_width.missing", "deck.walk_width", "no walk", practice,
     "items 50A and 50B not recorded", "zero", 0.0, 0.0, 0.0, assumed},
    {"deck.skew.recorded", "deck.skew", "item 34", guide, "item 34 up to 75 degrees", "next rule",
     no_factor, no_factor, no_factor, recorded},
    {"deck.skew.assumed", "deck.skew", "factor", practice, "item 34 = 99 (varies) or not recorded",
     "", 0.0, 10.0 * factor::degree, 30.0 * factor::degree, assumed},
    {"deck.pocket_share", "deck.pocket_share", "factor", practice, "a sidewalk is recorded",
     "cannot be told from a record", 0.0, 0.0, 0.5, assumed},
    {"deck.median_width.barrier", "deck.median_width",
     "deck width - roadway - walks - factor (both edges together), not below zero",
     "FHWA-PD-96-001 (1995) item 51 leaves raised medians out (from memory); edges common practice",
     "closed median with a barrier (item 33 = 3)",
     "zero: no median, an open one, or one at roadway level, which is part of the roadway", 0.6,
     0.9, 1.2},
    {"span.longest.recorded", "span.longest", "item 48", guide, "item 48 above zero",
     "next rule; also where it exceeds the length", no_factor, no_factor, no_factor, recorded},
    {"span.longest.inferred", "span.longest", "factor x length / spans, at most the length",
     practice, "item 48 zero or not recorded", "", 1.0, 1.1, 1.6},
    {"joint.count.expansion", "joint.count", "2, units + 1, spans + 1", "geometry of deck joints",
     "other bridges", ""},
    {"joint.count.jointless_possible", "joint.count",
     "0 (integral abutments), units + 1, spans + 1", practice,
     "one span up to the low factor long; or up to the high factor long and built from 1980 on or "
     "of "
     "unknown year",
     "year unknown: possible", 30.0, 100.0, 100.0},
    {"joint.count.seldom", "joint.count", "0, 0, spans + 1", practice,
     "arches, rigid frames and timber", ""},
    {"drain.per_length.older", "drain.per_length", "factor", practice, "built before 1980",
     "year unknown: as older", 0.0, 1.0 / (45.0 * ft), 1.0 / (15.0 * ft), assumed},
    {"drain.per_length.newer", "drain.per_length", "factor", practice,
     "built or reconstructed from 1980 on", "", 0.0, 1.0 / (150.0 * ft), 1.0 / (45.0 * ft),
     assumed},
    {"drain.per_length.short", "drain.per_length", "factor", practice,
     "deck up to 30 m long, built before 1980", "", 0.0, 1.0 / (90.0 * ft), 1.0 / (30.0 * ft),
     assumed},
    {"drain.per_length.open_deck", "drain.per_length", "factor", practice,
     "open grating or timber deck (item 107 = 3 or 8)", "", 0.0, 0.0, 1.0 / (45.0 * ft), assumed},
    {"drain.clogged_share", "drain.clogged_share", "factor", practice, "every bridge",
     "cannot be told from a record", 0.0, 0.2, 0.6, assumed},
    {"drain.frozen_share", "drain.frozen_share", "factor", practice, "every bridge",
     "cannot be told from a record", 0.0, 0.05, 0.25, assumed},
    {"drain.box_share", "drain.box_share", "factor", practice, "every bridge",
     "cannot be told from a record", 0.0, 0.5, 1.0, assumed},
    {"drain.downspout_length", "drain.downspout_length",
     "0 (open below), girder depth + factor, girder depth + factor + height below the deck",
     "common practice: a pipe ends below the girders, over a road or railway often at the ground",
     "every bridge", "cannot be told from a record", 0.15, 0.15, 0.15, assumed},
    {"parapet.face_height", "parapet.face_height", "factor, measured along the face",
     "32 in and 42 in safety shapes: McDevitt, Public Roads (FHWA 2000), figure 1; low common "
     "practice",
     "every bridge", "", 0.70, 0.86, 1.15},
    {"parapet.share.older", "parapet.share", "factor", practice, "built before 1980",
     "year unknown: as older", 0.0, 0.5, 1.0, assumed},
    {"parapet.share.newer", "parapet.share", "factor", practice,
     "built or reconstructed from 1980 on", "", 0.0, 0.9, 1.0, assumed},
    {"parapet.share.rare", "parapet.share", "factor", practice,
     "timber bridges, through trusses and through arches", "", 0.0, 0.1, 1.0, assumed},
    {"rail.share.older", "rail.share", "factor", practice, "built before 1980",
     "year unknown: as older", 0.0, 0.5, 1.0, assumed},
    {"rail.share.newer", "rail.share", "factor", practice, "built or reconstructed from 1980 on",
     "", 0.0, 0.2, 1.0, assumed},
    {"rail.share.usual", "rail.share", "factor", practice,
     "timber bridges, through trusses and through arches", "", 0.0, 0.9, 1.0, assumed},
});

} // namespace scupper::takeoff::detail
