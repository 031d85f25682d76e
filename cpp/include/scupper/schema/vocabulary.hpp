#pragma once
// The words that jobs, tables and files share. Each word is written once, here.

#include <array>
#include <string_view>

namespace scupper {

/// What is cleaned, the deck first; then what belongs to the visit and to no component.
inline constexpr std::array<std::string_view, 29> component_names{
    "deck_top",        "sidewalk",  "median",    "gutter",   "gutter_pocket", "soffit_overhang",
    "parapet",         "rail",      "joint",     "drain",    "girder",        "diaphragm",
    "bearing",         "cap",       "seat",      "column",   "wall_pier",     "footing",
    "abutment_stem",   "back_wall", "wing_wall", "pedestal", "berm",          "slope_protection",
    "traffic_control", "supply",    "disposal",  "visit",    "indirect"};

/// How thoroughly a component is cleaned.
inline constexpr std::array<std::string_view, 4> service_level_names{
    "none",        // not in this job
    "rinse",       // hand line or flusher, dirt picked up, drains opened
    "full_clean",  // the same and girder ends, bearings, caps, seats, joints, rails washed
    "full_length", // of girders: their whole length, not only the ends near joints
};

/// Road classes of temporary traffic control.
/// Source: Manual on Uniform Traffic Control Devices, 2009 edition, table 6C-1.
inline constexpr std::array<std::string_view, 4> road_class_names{
    "urban_low_speed", "urban_high_speed", "rural", "freeway"};

/// How the road is narrowed or closed while the crew works.
inline constexpr std::array<std::string_view, 8> closure_kind_names{
    "none",         "shoulder",     "one_lane_two_way",
    "rural_lane",   "freeway_lane", "two_freeway_lanes",
    "full_closure", "off_road"}; // beyond the shoulder: a sign at most

/// What of a closure's lay-out may say how many people or pieces of equipment there are.
inline constexpr std::array<std::string_view, 5> closure_count_names{
    "advance_signs", "devices", "arrow_boards", "shadow_vehicles", "flaggers"};

/// When the crew works.
inline constexpr std::array<std::string_view, 2> work_time_names{"day", "night"};

/// How traffic spreads over the hours of a day.
inline constexpr std::array<std::string_view, 2> hour_pattern_names{"rural", "urban"};

/// By what the capacity of a lane closure is judged.
inline constexpr std::array<std::string_view, 5> capacity_method_names{
    "hcm_2000",             // a base for short-term work, adjusted for its intensity
    "hcm_2010",             // by lanes before and during
    "hcm_7",                // queue discharge by severity, barrier, area, clearance, light
    "missouri_2011",        // mean discharge measured at work zones
    "north_carolina_1996"}; // heavy work, two lanes to one

/// The operations of the trade in their order on site. A job may add its own.
inline constexpr std::array<std::string_view, 65> operation_names{
    "closure_set_up",
    "drain_cover",
    "dry_pick_up_gutter",
    "drain_free",
    "drain_clogged",
    "drain_frozen",
    "drain_box_flush",
    "downspout_flush",
    "deck_hand_line",
    "flush_pass",
    "flush_turn",
    "loosen_parapet",
    "broom_pass",
    "broom_turn",
    "sweeper_pick_up",
    "sidewalk_hand_line",
    "median_hand_line",
    "gutter_pocket_flush",
    "closure_change_sides",
    "windrow_pick_up",
    "joint_flushing",
    "joint_wand",
    "rail_wash",
    "rail_wand",
    "parapet_wash",
    "parapet_wand",
    "bucket_set_up",
    "loose_concrete",
    "dry_pick_up_cap",
    "dry_pick_up_seat",
    "soffit_wash",
    "girder_end_wash",
    "girder_end_wand",
    "girder_length_wash",
    "girder_length_wand",
    "diaphragm_wash",
    "bearing_wash",
    "bearing_wand",
    "cap_wash",
    "cap_wand",
    "seat_wash",
    "seat_wand",
    "back_wall_wash",
    "back_wall_wand",
    "abutment_stem_wash",
    "wing_wall_wash",
    "column_wash",
    "column_wand",
    "wall_pier_wash",
    "footing_wash",
    "pedestal_wash",
    "berm_hand_clean",
    "slope_hand_clean",
    "walk_through",
    "carry_dirt",         // to a haul truck that stays on the approach
    "wash_water_pick_up", // where all wash water is collected
    "hose_lay",           // from the approach of a bridge too weak for the loaded truck
    "refill",
    "dump",
    "closure_removal",
    "travel", // paid, and off site or without work: the last five; of overtime the premium alone
    "briefing",
    "meal",
    "idle",
    "overtime"};

/// How water is brought to bear, each with its own pump, hose and nozzle. A job may add its own.
inline constexpr std::array<std::string_view, 5> method_names{
    "hand_line",  // low pressure, high flow, on the deck
    "under_line", // the same from a bucket or platform
    "wand",       // high pressure, low flow
    "flusher",    // bar of a flusher truck
    "jetter"};    // bar or gun of a combination truck

/// Where the pump of a method stands.
inline constexpr std::array<std::string_view, 2> truck_place_names{
    "on_deck", // the rise is that of its hose alone
    "below"};  // the hose is longer and rises by the height of the deck, or of the girders

/// How the time of an operation follows.
inline constexpr std::array<std::string_view, 6> timing_names{
    "rate",       // quantity x time per unit, in productive time
    "clock_rate", // quantity x time per unit, in time on the clock
    "closure",    // from the set-up, change and removal times of the closure kind
    "refill",     // the cycle of a tank refill
    "dump",       // the cycle of a dump trip
    "lost"};      // travel, briefing, meal, idle: paid but no work

/// When an operation, a person, a piece of equipment or a caution applies, besides any closure
/// kind.
inline constexpr std::array<std::string_view, 25> condition_names{
    "always",
    "over_water",
    "not_over_water",
    "navigable",
    "over_road",
    "over_rail",
    "any_closure",
    "underside",
    "posted",
    "steel_underside",      // steel, painted or once painted, is reached from below
    "dry_removal",          // dirt comes up dry: over water, or where no wash water may run
    "wet_removal",          // everywhere else
    "night",                // the crew works by night
    "underside_over_road",  // something is reached from below, above a road
    "underside_over_water", // the same above water
    "ground_below",         // a truck or people find ground below to stand on
    "some_years",           // since the last cleaning, as the job's build_up says
    "neglected",            // the same, longer
    "lead_paint",
    "nesting",
    "overhead_line",
    "confined_space",
    "obstructed",
    "high",
    "edge_blocked"}; // these seven as site_word_names have them

/// What a person says of a site because no record tells it.
inline constexpr std::array<std::string_view, 11> site_word_names{
    "lead_paint",       // paint that holds lead; presumed of old steel that is reached from below
    "no_lead_paint",    // tested, or stripped: nothing is presumed
    "nesting",          // nests in use, or a nesting season that the work falls into
    "overhead_line",    // within reach of a boom, a wand or a signboard
    "confined_space",   // a box, chamber or shaft that somebody enters
    "obstructed",       // utilities, bracing, parked vehicles in the way of the work
    "high",             // so far up that hoses, tools and people are slow to get there
    "edge_blocked",     // a fence, a tall barrier or lamps keep a unit from reaching over the edge
    "ground_access",    // a truck can stand below although the record says water
    "no_ground_access", // none can, whatever the record says
    "no_boat"};         // too shallow, too fast, or not allowed

/// What a charge is counted by.
inline constexpr std::array<std::string_view, 2> charge_per_names{"visit", "shift"};

/// The questions that alternatives answer.
inline constexpr std::array<std::string_view, 3> question_names{
    "deck",      // by which way the deck is cleaned
    "underside", // from where the underside is reached
    "closure"};  // how the road is closed

/// What a site measures that an alternative has a limit for.
inline constexpr std::array<std::string_view, 5> site_measure_names{
    "reach_height",  // from ground or water to the bearings: clearance and girder depth
    "walk_width",    // of the wider sidewalk
    "daily_traffic", // vehicles a day on the road
    "detour",        // how much longer the way around is
    "posted_limit"}; // what the bridge is posted for

/// What alternatives are compared by.
inline constexpr std::array<std::string_view, 7> criterion_names{
    "cost",      "labour",  // labour-hours
    "elapsed",              // hours on site
    "water",     "closure", // hours for which the road is closed
    "dirt_left",            // share of the dirt
    "road_users"};          // money of those who drive past or round

/// Components that are reached from below: from a bucket, a platform, the ground or a boat.
inline constexpr std::array<std::string_view, 13> underside_names{
    "soffit_overhang", "girder",        "diaphragm", "bearing",   "cap",      "seat",   "column",
    "wall_pier",       "abutment_stem", "back_wall", "wing_wall", "pedestal", "footing"};

/// Kinds of crew that operations belong to; a party may take all work of one.
inline constexpr std::array<std::string_view, 3> crew_kind_names{"deck", "underside", "traffic"};

/// How an outing's fixed time is shared between the structures it serves.
inline constexpr std::array<std::string_view, 5> sharing_names{
    "own_shifts",    // every structure pays whole shifts
    "pro_rata",      // by its on-site hours
    "count_a_shift", // so many structures in a shift
    "one_closure",   // twins under one closure
    "by_the_hour"};  // the hours worked, fixed time shared by so many structures

/// Components whose dirt is hauled away.
inline constexpr std::array<std::string_view, 5> dirt_names{"gutter", "joint", "cap", "seat",
                                                            "drain"};

/// How long since the last cleaning: how much dirt has built up.
inline constexpr std::array<std::string_view, 3> build_up_names{
    "washed_last_year",
    "some_years", // two to five
    "neglected"}; // longer, or nobody knows

/// How wet dirt is.
inline constexpr std::array<std::string_view, 4> moisture_names{"dry", "moist", "wet",
                                                                "unstated"}; // nobody said

/// Kinds of standard girder section.
inline constexpr std::array<std::string_view, 4> section_kind_names{
    "prestressed_i", "bulb_tee",
    "box_beam", // side by side: its sides are hidden but for the two fascias
    "rolled_shape"};

/// When a haul truck makes its dump trips.
inline constexpr std::array<std::string_view, 3> dump_names{
    "in_shift",    // the crew waits
    "after_shift", // its people are paid for the run, the crew is not
    "each_shift"}; // the same, and no load is left aboard between shifts

/// What may become of the wash water.
inline constexpr std::array<std::string_view, 3> wash_water_names{
    "release", // it may run off, by permit
    "collect", // all of it is vacuumed and hauled
    "none"};   // no water may be used: dirt is removed dry, nothing is washed

/// The name of a job's haul truck where the job names none; in a document, what stands in its row
/// holds for every truck that has no value of its own.
inline constexpr std::string_view any_haul_name = "truck";
/// What is done at a bridge that is posted for less than the loaded water truck weighs.
inline constexpr std::array<std::string_view, 3> posting_names{
    "approach",  // the truck stays on the approach, the hose is longer
    "half_fill", // the tank is filled to what the limit leaves: more refills
    "refuse"};   // the bridge is not priced

/// How a hose is built.
inline constexpr std::array<std::string_view, 5> construction_names{
    "rubber_lined", // woven jacket with a rubber lining, laid flat when empty
    "booster",      // rubber-covered, round, on a reel
    "wire_braided", // rubber with braids of wire, for a wand
    "jetting",      // thermoplastic, for sewer jetting
    "suction"};     // does not collapse under suction

/// How a published figure was come by.
inline constexpr std::array<std::string_view, 3> published_basis_names{
    "seen",     // the printed figure was read
    "computed", // own arithmetic or a general-purpose library, named
    "memory"};  // nobody could look it up

/// Whether a name is one of a list of words.
///
/// @param words [text, n] a vocabulary, for example component_names
/// @param word [text] the word to look up
/// @return [-] its index, or -1
/// Range: any text.
/// Errors: none.
/// Source: definition
template <std::size_t N>
constexpr int index_of(const std::array<std::string_view, N>& words, std::string_view word) {
    for (std::size_t i = 0; i < N; ++i) {
        if (words[i] == word) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

} // namespace scupper
