#pragma once
// A job made ready: words looked up, values laid out, rows numbered. Made once, used for every
// structure.

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "scupper/closure.hpp"
#include "scupper/job.hpp"
#include "scupper/schema.hpp"
#include "scupper/uncertain.hpp"

namespace scupper::estimate {

/// When something is needed, looked up once.
struct Condition {
    bool always = false;
    bool over_water = false;
    bool not_over_water = false;
    bool over_road = false;      ///< [-] needed over a road
    bool over_rail = false;      ///< [-] needed over a railway
    std::uint32_t closures = 0; ///< bit k: needed under closure kind k
};

/// One operation of a job, looked up once.
struct PlannedOperation {
    std::string name;
    std::string component;
    Slot driver;
    double factor;         ///< [-]
    Timing timing;
    bool wet;
    bool in_scope;         ///< whether the service level of its component calls for it
    Condition when;
    std::size_t input_row; ///< row in group `operation` of the inputs; for timing rate, clock_rate
};

/// What a cost line charges.
enum class Charge { labour, equipment, water, disposal };

/// One line of the cost: an operation's share of a resource.
struct CostLine {
    std::size_t operation; ///< row of the operation
    Charge charge;
    std::size_t resource;  ///< row of the labour or equipment
    std::string component, operation_name, resource_name;
};

/// Values of one structure that differ from the job's.
using Overrides = std::vector<std::pair<std::size_t, Uncertain>>;

/// A job made ready.
struct Plan {
    Job job;
    Layout inputs;
    Layout figures;
    std::vector<Uncertain> base;       ///< by input place; the structure's own dimensions are blank
    std::vector<double> base_values;   ///< [SI] of `base`, at the mean or likely value
    std::vector<std::uint64_t> hashes; ///< of every input key, for draws
    std::vector<PlannedOperation> operations;
    std::vector<Condition> labour;
    std::vector<Condition> equipment;
    std::vector<std::string> labour_labels;    ///< "wash crew, cost"
    std::vector<std::string> equipment_labels; ///< "water truck, cost"
    std::vector<Condition> cautions;           ///< [-] when each caution of the job applies
    std::vector<CostLine> lines;
    std::unordered_map<std::string, Overrides> overrides;
};

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
