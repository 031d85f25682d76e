#pragma once
// A job made ready: words looked up, values laid out, rows numbered. Made once, used for every
// structure.

#include "scupper/closure.hpp"
#include "scupper/job.hpp"
#include "scupper/schema.hpp"
#include "scupper/uncertain.hpp"

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace scupper::estimate {

/// When something is needed, looked up once.
struct Condition {
    bool always = false;               ///< [-] no word given, or the word "always"
    bool over_water = false;           ///< [-] needed where there is water below
    bool not_over_water = false;       ///< [-] needed where there is none, or none is recorded
    bool navigable = false;            ///< [-] needed over a waterway under navigation control
    bool over_road = false;            ///< [-] needed over a road
    bool over_rail = false;            ///< [-] needed over a railway
    bool underside = false;            ///< [-] needed where something is reached from below
    bool steel_underside = false;      ///< [-] needed where steel is reached from below
    bool dry_removal = false;          ///< [-] needed where dirt comes up dry
    bool wet_removal = false;          ///< [-] needed where it need not
    bool posted = false;               ///< [-] needed where the bridge has a weight limit
    bool night = false;                ///< [-] needed where the crew works by night
    std::uint32_t closures = 0;        ///< bit k: needed under closure kind k
    bool underside_over_road = false;  ///< [-] needed where something above a road is reached
    bool underside_over_water = false; ///< [-] needed where something above water is reached
    bool ground_below = false;         ///< [-] needed where there is ground below to stand on
    std::uint32_t build_ups = 0;       ///< bit k: needed where build_up_names[k] holds
    std::uint32_t site = 0;            ///< bit k: needed where site_word_names[k] holds
};

/// The mark of an operation without a nozzle.
inline constexpr std::size_t no_method = static_cast<std::size_t>(-1);

/// A way to bring water to bear, looked up once.
struct PlannedMethod {
    std::string name;              ///< [text] its name
    std::vector<std::size_t> hose; ///< [-, n] rows of its segments, from pump to nozzle
    bool from_below = false;       ///< [-] its truck stands on the ground below the bridge
    bool underside = false;        ///< [-] it washes nothing but what is reached from below
};

/// Places of the inputs that a stage's shift is made of: its own where it has them, else the job's.
struct ShiftPlaces {
    std::size_t length;           ///< [-] of the paid shift
    std::size_t travel;           ///< [-] of travel
    std::size_t briefing;         ///< [-] of briefing and pack-up
    std::size_t meal;             ///< [-] of the meal
    std::size_t window;           ///< [-] of the closure's window
    std::size_t productive_share; ///< [-] of productive minutes in a clock hour
};

/// The row of everyone among the crews of a plan; stages follow, then parties.
inline constexpr std::size_t everyone = 0;

/// A party of a stage, looked up once.
struct PlannedParty {
    std::string name;       ///< [text] its name; empty where one party does all
    std::size_t stage;      ///< [-] row of its stage
    std::size_t crew;       ///< [-] its row among the crews
    std::size_t wait_place; ///< [-] of its wait in the inputs, or no_place
};

/// A stage of the work, looked up once.
struct PlannedStage {
    std::string name;                 ///< [text] its name; empty where there is one for all
    std::string closure;              ///< [text] closure kind, or "by_record"
    ShiftPlaces shift;                ///< [-] where its shift's inputs stand
    std::size_t crew;                 ///< [-] its row among the crews
    std::vector<std::size_t> parties; ///< [-, n] rows of its parties
};

/// The mark of an input that a plan does not hold.
inline constexpr std::size_t no_place = static_cast<std::size_t>(-1);

/// One operation of a job, looked up once.
struct PlannedOperation {
    std::string name;      ///< [text] word of the trade, or the user's own
    std::string component; ///< [text] one of component_names
    Slot driver;           ///< [-] quantity slot that drives it
    double factor;         ///< [-]
    Timing timing;         ///< [-] how its time follows
    std::size_t method;    ///< [-] row of its method, or no_method
    bool in_scope;         ///< whether the service level of its component calls for it
    Condition when;        ///< [-] on which structures it is needed
    std::size_t party;     ///< [-] row of the party that does it
    std::size_t input_row; ///< row in group `operation` of the inputs; for timing rate, clock_rate
    std::vector<std::size_t> paces{}; ///< [-, n] rows of what may make it take longer
};

/// One haul truck of a job, looked up once.
struct PlannedHaul {
    std::string name;                              ///< [text] its name
    std::array<bool, dirt_names.size()> carries{}; ///< by place in dirt_names
    std::vector<char> picks_up;                    ///< by operation: a share of its water
    bool after_shift = false;                      ///< [-] its dump trips do not lengthen the day
    bool each_shift = false;                       ///< [-] it dumps after every shift it works in
    std::vector<std::size_t> stages;               ///< [-, n] rows of the stages it works in
};

/// An input whose value the closure's lay-out says.
struct PlannedCount {
    std::size_t place; ///< [-] of the input
    std::size_t what;  ///< [-] place in closure_count_names
    std::size_t crew;  ///< [-] row of the crew whose closures count
};

/// What a cost line charges.
enum class Charge {
    labour,
    overtime,
    equipment,
    water,
    disposal,
    dump_run,
    load_charge,
    wash_water,
    occupancy,
    damages,
    show_up,
    moving,
    escalation,
    fixed,
    margin
};

/// One line of the cost: an operation's share of a resource.
struct CostLine {
    std::size_t operation;                                ///< row of the operation
    Charge charge;                                        ///< [-] what it charges for
    std::size_t resource;                                 ///< row of the labour or equipment
    std::string component, operation_name, resource_name; ///< [text] parts of the line's name
};

/// One independent score within a correlated one.
struct ScoreTerm {
    std::size_t place; ///< [-] of the input whose score it is
    double weight;     ///< [-] squares of all weights add up to one
};

/// An input that varies together with inputs before it.
struct CorrelatedInput {
    std::size_t place;            ///< [-] of the input
    std::vector<ScoreTerm> terms; ///< [-, n] what its normal score is made of, its own at the end
};

/// Values of one structure that differ from the job's.
using Overrides = std::vector<std::pair<std::size_t, Uncertain>>;

/// A job made ready.
struct Plan {
    Job job;        ///< [-] own copy, with travel, briefing, meal and idle as operations
    Layout inputs;  ///< [-] where every input stands
    Layout figures; ///< [-] where every figure stands
    std::vector<Uncertain> base;       ///< by input place; the structure's own dimensions are blank
    std::vector<double> base_values;   ///< [SI] of `base`, at the mean or likely value
    std::vector<std::uint64_t> hashes; ///< of every input key, for draws
    std::vector<CorrelatedInput> correlated;  ///< [-, n] rising by place
    std::vector<PlannedMethod> methods;       ///< [-, n] ways to bring water to bear
    std::vector<PlannedStage> stages;         ///< [-, n] one after the other
    std::vector<PlannedParty> parties;        ///< [-, n] of all stages
    std::vector<std::size_t> labour_crews;    ///< [-, n] by row: the crew the people belong to
    std::vector<std::size_t> equipment_crews; ///< [-, n] by row: the crew that has the equipment
    std::vector<PlannedOperation> operations; ///< [-, n] in the order of job.operations
    std::vector<PlannedHaul> hauls;           ///< [-, n] in the order of haul_trucks
    std::size_t collecting_haul = 0;          ///< [-] row that takes collected wash water
    bool lifts_from_below = false;            ///< [-] a method's truck stands below the bridge
    std::vector<Condition> labour;            ///< [-, n] by row: when the people are needed
    std::vector<Condition> equipment;         ///< [-, n] by row: when the equipment is needed
    std::vector<std::vector<std::size_t>> equipment_users; ///< [-, n] operations that name it
    std::vector<Condition> charges;            ///< [-, n] by row: when the charge arises
    std::vector<std::string> labour_labels;    ///< "wash crew, cost"
    std::vector<std::string> equipment_labels; ///< "water truck, cost"
    std::vector<std::string> charge_labels;    ///< "screens, cost"
    std::vector<Condition> cautions;           ///< [-] when each caution of the job applies
    std::vector<Condition> jet_limits;         ///< [-] when each pressure limit counts
    std::vector<Condition> notices;            ///< [-] when each notice of the job is needed
    std::vector<PlannedCount> planned_counts;  ///< [-, n] people and pieces that the closure says
    std::vector<Condition> seasons;            ///< [-] when each closed season of the job counts
    std::vector<CostLine> lines;               ///< [-, n] of operations in scope, then disposal
    std::vector<Condition> paces;              ///< [-, n] by row: when it makes work take longer
    std::vector<Condition> surroundings;       ///< [-, n] by row: when it is there
    std::uint32_t build_up = 0;                ///< bit k: build_up_names[k] is the job's
    std::uint32_t site = 0;                    ///< bit k: site_word_names[k] holds everywhere
    std::unordered_map<std::string, std::uint32_t> sites; ///< [-] by structure id or "state:id"
    std::unordered_map<std::string, Overrides> overrides; ///< [-] by structure id or "state:id"
};

/// Looks the words of a condition up.
///
/// @param words [text, n] condition_names, site_word_names or closure_kind_names
/// @return [-] the condition; without words it always holds
/// Range: any words; those that are not known hold nowhere.
/// Errors: none.
/// Source: own convention
Condition condition_of(const std::vector<std::string>& words);

/// What the score of an input is made of, where it varies together with inputs before it.
///
/// @param plan [-] the job made ready
/// @param place [-] of the input
/// @return [-] null where its score is its own
/// Range: any place.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_correlations.cpp
const CorrelatedInput* correlated_at(const Plan& plan, std::size_t place);

/// Makes a job ready: checks words, keys, bounds and that every value is there.
///
/// @param job [-] the job
/// @return [-] the plan; it keeps its own copy of the job
/// Range: any job.
/// Errors: UnknownNameError `schema.key` or `job.word`; InputError `job.missing` naming a value
/// that no rate book or job gives, `job.bounds`, `job.scope`, those of a three-point guess.
/// Source: own convention
std::shared_ptr<const Plan> make_plan(const Job& job);

/// A plan without a job: enough to resolve structures and take them off at likely dimensions [-].
Plan take_off_plan();

/// The value an input is priced at.
///
/// @param value [SI unit of its field] low, likely, high
/// @param at [-] mean or likely
/// @return [SI unit of its field] the value; without spread, exactly it
/// Range: a guess that was checked.
/// Errors: none.
/// Source: definition
double price_value(const Uncertain& value, PriceAt at);

/// Turns the short names people use for a quantity into its key: "drains", "drain_count" and
/// "quantity[drain_count].given" are the same.
///
/// @param name [text] slot name, its plural without the last word, or a full key
/// @return [text] a full key, or the name unchanged
/// Range: any text.
/// Errors: none.
/// Source: own convention
std::string full_key(std::string_view name);

} // namespace scupper::estimate
