#pragma once
// The keys of the documents people write: the job, the hose library and the hose lay.

#include <array>
#include <string_view>

namespace scupper {

/// Keys of a job document. `inputs` and every override hold schema keys; a value is text with its
/// unit, or {low, likely, high, source, date, note, shared_share, family, meaning}, or in place of
/// low, likely and high {values, weights} or {sample}.
inline constexpr std::array<std::string_view, 35> job_keys{
    "scupper_job",  // version of this form
    "name",         // what people call the job
    "note",         // free text
    "rate_books",   // name, version and date of the rate books it rests on, the first beneath
    "currency",     // three-letter code of every amount
    "units",        // "us", "metric" or "si": how results are shown
    "price_at",     // "mean" or "likely"
    "service",      // component name to service level
    "ways",         // component name to the way it is served, where operations offer several
    "closure",      // closure kind, or "by_record"
    "work_time",    // "day" or "night"
    "traffic",      // how traffic spreads over the day, and by what a closure's capacity is judged
    "sharing",      // how an outing's fixed time is shared
    "posting",      // what is done at a bridge too weak for the loaded water truck
    "stages",       // stages with their parties, where more than one crew works
    "operations",   // operations of the user's own, on top of the rate book's
    "labour",       // kinds of people: name and when they are needed
    "equipment",    // kinds of equipment: name and when they are needed
    "charges",      // amounts by the visit, such as screens or a permit: name and when
    "methods",      // ways to bring water to bear: name and hose segments
    "hoses",        // hose segment to a hose of the library, whose bore and roughness it has
    "hauls",        // trucks that haul debris: name, whose dirt they carry, when they dump
    "build_up",     // how long since the last cleaning, which says how much dirt lies there
    "wash_water",   // what may become of the wash water: "release", "collect" or "none"
    "notices",      // what is asked for days before the work: name, days, when
    "calendar",     // day of asking, weekdays, holidays, closed seasons, least air temperatures
    "inputs",       // schema key to value
    "overrides",    // structure number to {schema key to value}
    "correlations", // inputs that vary together: schema keys and their rank correlation
    "site",         // structure number, or "every", to what is known of the site: site_word_names
    "paces",        // what makes operations take longer: name, work, when, factor
    "surroundings", // what lies around and costs money: name, when, per, usual amounts
    "frequency",    // component to times a year, or "every 2 years"
    "terms",        // of the contract that stand beside the price: retainage, quantity variation
    "alternatives", // ways, means of access and closures to compare
};

/// Keys of one operation in `operations`.
inline constexpr std::array<std::string_view, 12> job_operation_keys{
    "name",      "component", "levels", "driver", "factor", "timing", "method", "way", "when",
    "crew",      // "deck", "underside" or "traffic"; a party may take all work of one
    "equipment", // names of what it needs; equipment that operations name is there only for them
    "note"};
/// Keys of one method in `methods`.
inline constexpr std::array<std::string_view, 4> job_method_keys{
    "name",
    "hose",  // names of its hose segments from pump to nozzle; methods may share segments
    "truck", // "on_deck" or "below"
    "note"};
/// Keys of one haul truck in `hauls`.
inline constexpr std::array<std::string_view, 4> job_haul_keys{
    "name",
    "components", // whose dirt it carries; left out, what no other truck carries
    "dump",       // "in_shift" or "after_shift"
    "note"};
/// Keys of one entry in `correlations`.
inline constexpr std::array<std::string_view, 2> job_correlation_keys{
    "inputs", // schema keys, two or more; every pair of them has the same correlation
    "rank"};  // Spearman's rank correlation, between -1 and 1
/// Keys of one notice in `notices`.
inline constexpr std::array<std::string_view, 5> job_notice_keys{
    "name",
    "days", // from asking to the first day of work: shortest, usual, longest
    "when", "source", "note"};
/// Keys of `calendar`.
inline constexpr std::array<std::string_view, 7> job_calendar_keys{
    "asked",    // the day on which every notice is given, as "2027-03-01"
    "weekdays", // days of work
    "holidays", // days as "2027-05-31"
    "closed",   // seasons without work, every year
    "daylight", // true: all work on site is done between sunrise and sunset
    "least_air_temperature",
    "least_falling_air_temperature"};
/// Keys of `terms`.
inline constexpr std::array<std::string_view, 10> job_terms_keys{
    "rates_of",          // the day whose prices the rates are, as "2027-01-15"
    "midpoint",          // the day halfway through the work: escalation.time follows from both
    "payment_interval",  // between two payments
    "retainage",         // share kept back of every payment
    "retainage_limit",   // most that is kept back, over the contract
    "retainage_release", // from the last day of work to the release
    "interest",          // of the money held, a year
    "variation_limit",   // change of a quantity that changes no price
    "price_over",        // renegotiated price above the limit, over the contract's
    "price_under"};      // renegotiated price below the limit, over the contract's
/// Keys of one season in `closed`.
inline constexpr std::array<std::string_view, 5> job_season_keys{"name", "from",
                                                                 "to", // as "04-01", both included
                                                                 "when", "source"};
/// The days of the week in the order of `Calendar::weekdays`.
inline constexpr std::array<std::string_view, 7> weekday_names{
    "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"};
/// Keys of one kind of people or equipment.
inline constexpr std::array<std::string_view, 5> job_resource_keys{
    "name", "when", "note",
    "party", // the party or stage it belongs to; none where it is there all the time
    "plan"}; // what of the closure's lay-out says how many; one of closure_count_names
/// Keys of `traffic`.
inline constexpr std::array<std::string_view, 2> job_traffic_keys{
    "hours",     // "by_record", one of hour_pattern_names, or 24 shares in percent from midnight
    "capacity"}; // one of capacity_method_names
/// Keys of one charge in `charges`.
inline constexpr std::array<std::string_view, 5> job_charge_keys{
    "name", "when", "note", "party",
    "per"}; // "visit" or "shift"; when and per left out: as the surroundings of its name have them
/// Keys of one pace in `paces`.
inline constexpr std::array<std::string_view, 6> job_pace_keys{
    "name",
    "work",   // operations, components or kinds of crew that it slows
    "when",   // conditions; any may hold
    "factor", // how many times as long: low, likely, high
    "source", "note"};
/// Keys of one entry in `surroundings`.
inline constexpr std::array<std::string_view, 7> job_surrounding_keys{
    "name", // a charge, a kind of people or of equipment of this name prices it
    "when",    "per",
    "usual", // amounts that have been seen: low, likely, high
    "caution", "source", "note"};
/// Keys of one alternative in `alternatives`.
inline constexpr std::array<std::string_view, 18> job_alternative_keys{
    "name",    "question",
    "ways",    // component to the way it is served
    "closure", // closure kind; left out, as the job has it
    "instead", // equipment to what comes in its place; "" for nothing
    "without", // operations that it does not have
    "labour",  "equipment", "charges",
    "paces",   // what it does faster or slower than the rates say
    "needs",   // condition to why nothing can be done without it
    "forbids", // condition or site word to why nothing can be done with it
    "limits",
    "misses",  // component to what it does not reach there
    "removes", // share of the dirt that one pass takes away, and which dirt
    "inputs",  // values of its people, equipment and charges
    "source",  "note"};
/// Keys of one limit of an alternative.
inline constexpr std::array<std::string_view, 4> job_limit_keys{
    "measure", // one of site_measure_names
    "least", "most", "reason"};
/// Keys of what an alternative removes.
inline constexpr std::array<std::string_view, 5> job_removal_keys{
    "share",  // of one pass: low, likely, high
    "passes", // "flusher" or "broom": as many as its rounds; "" for one
    "dirt",   // dirt_names
    "source", "note"};
/// Keys of one stage in `stages`.
inline constexpr std::array<std::string_view, 3> job_stage_keys{"name", "closure", "parties"};
/// Keys of one party of a stage.
inline constexpr std::array<std::string_view, 2> job_party_keys{
    "name", "work"}; // components, operations or kinds of crew whose work it does

/// Keys of one hose in a hose library.
inline constexpr std::array<std::string_view, 9> hose_kind_keys{
    "name",         // what documents call it
    "construction", // one of construction_names
    "nominal_bore", // what it is sold as
    "bore",         // true inside diameter under pressure: low, likely, high
    "roughness",    // of the lining: low, likely, high
    "coefficient",  // psi per 100 ft at (100 gpm)^2: low, likely, high
    "working_pressure",
    "published", // coefficients as printed: value, flow, source, date, basis, note
    "note"};
/// Keys of one published coefficient.
inline constexpr std::array<std::string_view, 6> published_coefficient_keys{
    "value", "flow", "source", "date", "basis", "note"};
/// Keys of one fitting in a hose library.
inline constexpr std::array<std::string_view, 3> fitting_kind_keys{"name", "loss_coefficient",
                                                                   "note"};

/// Keys of one kind of dirt in a dirt table.
inline constexpr std::array<std::string_view, 6> dirt_kind_keys{
    "material",  // "sand", "leaves"
    "moisture",  // one of moisture_names
    "density",   // in bulk: low, likely, high
    "repose",    // angle of a heap's slope: low, likely, high
    "published", // densities as printed: value, source, date, basis, note
    "note"};
/// Keys of one published figure: a density, or a mass by length.
inline constexpr std::array<std::string_view, 5> published_figure_keys{"value", "source", "date",
                                                                       "basis", "note"};
/// Keys of one build-up in a dirt table.
inline constexpr std::array<std::string_view, 3> build_up_keys{
    "since",  // one of build_up_names
    "inputs", // schema key to value: width, depth, volume in a drain
    "note"};
/// Keys of one street load in a dirt table.
inline constexpr std::array<std::string_view, 6> street_load_keys{
    "street", // where and when: "commercial, end of winter"
    "value",  // mass by length of curb
    "source", "date", "basis", "note"};
/// Keys of one standard section in a section library.
inline constexpr std::array<std::string_view, 7> section_keys{
    "name",    "kind",
    "outline", // pieces from the top: width above, width below, height
    "source",  // of the outline
    "date",
    "area", // as printed: value, source, date, basis, note
    "note"};
/// The key by which a survey or an override names a standard section; it stands for the dimensions
/// that follow from it.
inline constexpr std::string_view girder_section_key = "girder.section";

/// What a survey counts or measures because no record tells it, or tells it roughly: quantity slots
/// keys of the input schema, and the girders' section.
inline constexpr std::array<std::string_view, 21> survey_names{
    "drain_count",          "drain_free_count", "drain_clogged_count", "drain_frozen_count",
    "joint_count",          "column_count",     "pedestal_count",      "gutter_pocket_length",
    "soffit_overhang_area", "girder_count",     "deck.length",         "deck.width",
    "deck.roadway_width",   "deck.walk_width",  "girder.depth",        girder_section_key,
    "column.height",        "column.diameter",  "abutment.height",     "berm.width",
    "slope.height"};

/// Keys of a hose lay: one pump, segments that each start where another ends, nozzles at ends.
inline constexpr std::array<std::string_view, 6> hose_lay_keys{"name", "water",    "tank",
                                                               "pump", "segments", "nozzles"};
inline constexpr std::array<std::string_view, 13> hose_lay_pump_keys{
    "kind",       // one of hose_lay_pump_kinds
    "pressure",   // held at the outlet
    "flow_limit", // greatest flow; of a displacement pump its flow at rated speed without slip
    "curve",      // list of [flow, head] points
    "speed",      // share of the rated speed
    "power_limit",
    "suction_lift",
    "unloader_pressure",
    "volumetric_efficiency", // flow over displacement
    "efficiency",            // hydraulic power over shaft power
    "suction_loss",          // head lost in strainer and suction hose
    "altitude",
    "npsh_required"};
inline constexpr std::array<std::string_view, 13> hose_lay_segment_keys{
    "name",      "from",        "hose",     "bore",       "length",           "rise",
    "roughness", "coefficient", "fittings", "minor_loss", "working_pressure",
    "c",     // of Hazen-Williams
    "form"}; // of Hazen-Williams, named by its constants
/// Keys of a fitting that is given by its loss.
inline constexpr std::array<std::string_view, 2> hose_lay_fitting_keys{"name", "loss_coefficient"};
inline constexpr std::array<std::string_view, 8> hose_lay_nozzle_keys{
    "name", "at", "bore", "discharge_coefficient", "rated_flow", "rated_pressure", "state", "wear"};

/// How a pump gives its pressure.
inline constexpr std::array<std::string_view, 3> hose_lay_pump_kinds{
    "pressure",      // holds a pressure at its outlet
    "curve",         // centrifugal, by the points of its curve
    "displacement"}; // gives a flow whatever the pressure, up to the unloader
/// What is done with a nozzle.
inline constexpr std::array<std::string_view, 3> hose_lay_nozzle_states{
    "open", "closed", "worn"}; // worn: its bore has grown by `wear`
/// What holds the pressure of a pump where it is.
inline constexpr std::array<std::string_view, 6> hose_lay_limit_names{
    "pressure", "curve", "flow_limit", "power_limit", "unloader", "nothing"};

} // namespace scupper
