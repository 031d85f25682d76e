#pragma once
// Rules for what stands around the bridge: its weight posting, and the road on it.

#include "scupper/takeoff/rules.hpp"
#include "words.hpp"

#include <array>

namespace scupper::takeoff::detail {

inline constexpr double mph = factor::mile / factor::hour;
inline constexpr double short_ton = factor::short_ton;
inline constexpr std::string_view by_evaluation =
    "FHWA-PD-96-001 (1995), items 41 and 70; the truck of 25 short ton: AASHTO type 3 unit (from "
    "memory)";
inline constexpr std::string_view type_3 =
    "25 short ton, the legal truck of three axles, less the shortfall of item 70";
inline constexpr std::string_view given_speed =
    "the posted limit, where somebody gives it, is used";

inline constexpr auto site_rules = std::to_array<Rule>({
    {"posting.limit.none", "posting.limit", "no limit", guide,
     "item 41 = A, D, E, G, R, or not recorded", "no limit"},
    {"posting.limit.closed", "posting.limit", "not priced, reported with this reason", guide,
     "item 41 = K, and no limit given", ""},
    {"posting.limit.shortfall_4", "posting.limit", type_3, by_evaluation,
     "item 41 = P or B, item 70 = 4", "", 25.0 * short_ton * 0.901, 25.0 * short_ton * 0.95,
     25.0 * short_ton * 0.999, Basis::assumed},
    {"posting.limit.shortfall_3", "posting.limit", type_3, by_evaluation,
     "item 41 = P or B, item 70 = 3", "", 25.0 * short_ton * 0.801, 25.0 * short_ton * 0.85,
     25.0 * short_ton * 0.9, Basis::assumed},
    {"posting.limit.shortfall_2", "posting.limit", type_3, by_evaluation,
     "item 41 = P or B, item 70 = 2", "", 25.0 * short_ton * 0.701, 25.0 * short_ton * 0.75,
     25.0 * short_ton * 0.8, Basis::assumed},
    {"posting.limit.shortfall_1", "posting.limit", type_3, by_evaluation,
     "item 41 = P or B, item 70 = 1", "", 25.0 * short_ton * 0.601, 25.0 * short_ton * 0.65,
     25.0 * short_ton * 0.7, Basis::assumed},
    {"posting.limit.shortfall_0", "posting.limit",
     "25 short ton less 40 % at most; at 3 short ton a bridge is closed",
     "FHWA-PD-96-001 (1995), items 41 and 70; 3 short ton: AASHTO Manual for Bridge Evaluation "
     "(from memory); likely: common practice",
     "item 41 = P or B, item 70 = 0", "", 3.0 * short_ton, 10.0 * short_ton, 15.0 * short_ton,
     Basis::assumed},
    {"posting.limit.assumed", "posting.limit", "the factor", practice,
     "item 41 = P or B, item 70 = 5 or not recorded", "", 3.0 * short_ton, 15.0 * short_ton,
     20.0 * short_ton, Basis::assumed},

    {"site.clearance.traffic", "site.clearance", "factor x item 54B",
     "FHWA-PD-96-001 (1995): the least clearance; more beside it by common practice",
     "a road or railway below (item 54A = H or R)", "next rule", 1.0, 1.05, 1.4},
    {"site.clearance.navigation", "site.clearance", "factor x item 39",
     "FHWA-PD-96-001 (1995); more or less with the water by common practice",
     "navigation clearance recorded", "next rule", 0.8, 1.1, 1.5},
    {"site.clearance.height", "site.clearance", "factor x B.G.13, which reaches up to the deck",
     "FHWA, Specifications for the National Bridge Inventory (2022); common practice",
     "B.G.13 recorded", "next rule", 0.4, 0.75, 0.95},
    {"site.clearance.assumed", "site.clearance", "factor", practice, "no clearance recorded",
     "cannot be told from a record", 1.5, 4.5, 12.0, Basis::assumed},

    {"road.speed.rural_freeway", "road.speed", "the factor", practice, "item 26 = 01", given_speed,
     60.0 * mph, 65.0 * mph, 75.0 * mph, Basis::assumed},
    {"road.speed.urban_freeway", "road.speed", "the factor", practice, "item 26 = 11 or 12",
     given_speed, 50.0 * mph, 60.0 * mph, 70.0 * mph, Basis::assumed},
    {"road.speed.rural_arterial", "road.speed", "the factor", practice, "item 26 = 02 or 06",
     given_speed, 45.0 * mph, 55.0 * mph, 65.0 * mph, Basis::assumed},
    {"road.speed.rural_collector", "road.speed", "the factor", practice, "item 26 = 07 or 08",
     given_speed, 35.0 * mph, 45.0 * mph, 55.0 * mph, Basis::assumed},
    {"road.speed.rural_local", "road.speed", "the factor", practice, "item 26 = 09", given_speed,
     25.0 * mph, 35.0 * mph, 55.0 * mph, Basis::assumed},
    {"road.speed.urban_arterial", "road.speed", "the factor", practice, "item 26 = 14 or 16",
     given_speed, 30.0 * mph, 40.0 * mph, 50.0 * mph, Basis::assumed},
    {"road.speed.urban_collector", "road.speed", "the factor", practice, "item 26 = 17",
     given_speed, 25.0 * mph, 30.0 * mph, 40.0 * mph, Basis::assumed},
    {"road.speed.urban_local", "road.speed", "the factor", practice, "item 26 = 19", given_speed,
     20.0 * mph, 25.0 * mph, 35.0 * mph, Basis::assumed},
    {"road.speed.narrow", "road.speed", "the factor", practice,
     "rural collector or local road, two lanes, roadway on the bridge below 20 ft (item 51)",
     given_speed, 20.0 * mph, 30.0 * mph, 45.0 * mph, Basis::assumed},
    {"road.speed.unknown", "road.speed", "the factor", practice, "item 26 not recorded",
     given_speed, 25.0 * mph, 45.0 * mph, 65.0 * mph, Basis::assumed},
    {"road.lane_width.freeway", "road.lane_width", "the factor", practice, "item 26 = 01, 11 or 12",
     "", 11.0 * ft, 12.0 * ft, 12.0 * ft, Basis::assumed},
    {"road.lane_width.by_roadway", "road.lane_width",
     "roadway over lanes (items 51, 28A), from 8 to 12 ft; low 1 ft less, high 12 ft", practice,
     "other roads", "the rule without a roadway", 8.0 * ft, 12.0 * ft, 12.0 * ft, Basis::inferred},
    {"road.lane_width.unknown", "road.lane_width", "the factor", practice,
     "no roadway or no lanes recorded", "", 9.0 * ft, 11.0 * ft, 12.0 * ft, Basis::assumed},
    {"road.shoulder_width.rest", "road.shoulder_width",
     "(roadway - lanes x lane width) x the factor (items 51, 28A)", practice,
     "every road; a one-way road has the wider shoulder on its right", "no shoulder", 0.25, 0.5,
     0.75, Basis::inferred},
    {"road.shoulder_width.unknown", "road.shoulder_width", "the factor", practice,
     "no roadway or no lanes recorded", "", 0.0, 2.0 * ft, 8.0 * ft, Basis::assumed},
});

} // namespace scupper::takeoff::detail
