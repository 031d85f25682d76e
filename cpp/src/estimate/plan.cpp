#include "scupper/estimate/plan.hpp"

#include "plan_parts.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

namespace scupper::estimate {

namespace {

/// The job with the kinds of lost time that every job has.
Job with_lost_time(Job job) {
    for (const char* name : {"travel", "briefing", "meal", "idle", "overtime"}) {
        Operation op;
        op.name = name;
        op.component = "visit";
        op.driver = slot("visit_count");
        op.timing = Timing::lost;
        job.operations.push_back(std::move(op));
    }
    return job;
}

void blank_values(Plan& plan) {
    const std::size_t n = plan.inputs.size();
    plan.base.assign(n, certain(std::numeric_limits<double>::quiet_NaN(), Basis::assumed));
    plan.base_values.assign(n, std::numeric_limits<double>::quiet_NaN());
    plan.hashes.clear();
    for (const LayoutField& field : plan.inputs.fields()) {
        plan.hashes.push_back(hash_text(field.key));
    }
}

/// The share of a wage on which an overtime premium rests: what its build-up says, else all of it.
Uncertain overtime_share_of(const Uncertain& wage) {
    static const Provenance whole{
        "the whole cost, where no build-up of the wage says less", {}, {}};
    if (wage.origin == nullptr || wage.origin->parts.empty()) {
        return certain(1.0, Basis::given, &whole);
    }
    const double share = cost::built_up_rate(cost::BuiltUp::overtime_share, wage.origin->parts);
    return certain(share, wage.basis, wage.origin);
}

void fill_overtime_shares(Plan& plan) {
    const std::size_t rows = plan.inputs.row_names("labour").size();
    for (std::size_t row = 0; row < rows; ++row) {
        Uncertain& share = plan.base[plan.inputs.place(input_place("labour.overtime_share"), row)];
        if (std::isnan(share.guess.likely)) {
            share =
                overtime_share_of(plan.base[plan.inputs.place(input_place("labour.wage"), row)]);
        }
    }
}

bool has_value(const Plan& plan, const char* key) {
    return !std::isnan(plan.base[plan.inputs.at(key, "job.inputs")].guess.likely);
}

/// From the date of the rates to the midpoint of the work, where the terms say both.
void fill_escalation_time(Plan& plan) {
    static const Provenance dates{"from the date of the rates to the midpoint of the work, by the "
                                  "job's terms",
                                  {},
                                  {}};
    const Terms& terms = plan.job.terms;
    Uncertain& time = plan.base[plan.inputs.at("escalation.time", "job.terms")];
    if (std::isnan(time.guess.likely) && terms.rates_of && terms.midpoint &&
        has_value(plan, "escalation.rate")) {
        const auto days = static_cast<double>((*terms.midpoint - *terms.rates_of).count());
        time = certain(days * factor::day, Basis::given, &dates);
    }
}

void set_values(Plan& plan) {
    for (const Setting& setting : plan.job.settings) {
        const std::size_t place = plan.inputs.at(setting.key, "job.inputs");
        plan.base[place] =
            detail::checked(setting.value, plan.inputs.fields()[place], "job.inputs");
    }
    fill_overtime_shares(plan);
    fill_escalation_time(plan);
    for (const Pace& pace : plan.job.paces) {
        const std::size_t place = plan.inputs.at("pace[" + pace.name + "].factor", "job.paces");
        if (std::isnan(plan.base[place].guess.likely)) {
            plan.base[place] =
                detail::checked(pace.factor.value, plan.inputs.fields()[place], "job.paces");
        }
    }
    for (std::size_t i = 0; i < plan.base.size(); ++i) {
        plan.base_values[i] = price_value(plan.base[i], plan.job.price_at);
    }
}

/// The group and row of "hose[supply].bore"; both empty where the key names no row.
std::pair<std::string, std::string> group_and_row(const std::string& key) {
    const std::size_t open = key.find('[');
    const std::size_t close = key.find(']');
    return open == key.npos
               ? std::pair<std::string, std::string>{}
               : std::pair{key.substr(0, open), key.substr(open + 1, close - open - 1)};
}

/// Nobody need describe the hose of a method that the scope does not use.
bool is_in_use(const Plan& plan, const std::string& key) {
    const auto [group, row] = group_and_row(key);
    if (group != "pump" && group != "nozzle" && group != "hose") {
        return true;
    }
    const std::vector<std::string> used = plan.inputs.rows_in_use(group);
    return std::find(used.begin(), used.end(), row) != used.end();
}

/// Terms that the contract does not name cost nothing; damages need chance, time and amount.
bool contract_needs(const Plan& plan, const std::string& key) {
    const bool late = has_value(plan, "contract.late_chance") ||
                      has_value(plan, "contract.late_time") || has_value(plan, "contract.damages");
    return late && key != "contract.occupancy_charge";
}

/// Values that say something only together, and nothing where a job has none of them.
constexpr std::array<std::array<const char*, 5>, 4> together{{
    {"shift.unpaid_meal_share"},
    {"shift.cancelled", "shift.show_up_time"},
    {"escalation.rate", "escalation.time"},
    {"mobilization.pieces", "mobilization.distance", "mobilization.price", "mobilization.fixed",
     "mobilization.structures"},
}};

/// Whether a value is one of several that are optional together, and then whether it is needed.
std::optional<bool> optional_together(const Plan& plan, const std::string& key) {
    for (const auto& keys : together) {
        if (std::none_of(keys.begin(), keys.end(),
                         [&](const char* k) { return k != nullptr && key == k; })) {
            continue;
        }
        return std::any_of(keys.begin(), keys.end(),
                           [&](const char* k) { return k != nullptr && has_value(plan, k); });
    }
    return std::nullopt;
}

/// How many there are is known from the closure where the job says so.
bool is_counted_by_closure(const Job& job, const std::string& key) {
    const auto counted = [&](const std::vector<Resource>& rows, const std::string& group,
                             const std::string& field) {
        return std::any_of(rows.begin(), rows.end(), [&](const Resource& r) {
            return !r.plan.empty() && key == group + "[" + r.name + "]." + field;
        });
    };
    return counted(job.labour, "labour", "people") || counted(job.equipment, "equipment", "number");
}

/// An operation with a method takes its water from the nozzle, any other states it.
bool is_needed(const Plan& plan, const std::string& key) {
    const bool of_stages = key.starts_with("stage[") || key.starts_with("party[");
    if (of_stages || !is_in_use(plan, key) || !detail::haul_needs(plan.job, key)) {
        return false; // a stage without values of its own has the job's
    }
    if (key.starts_with("contract.")) {
        return contract_needs(plan, key);
    }
    if (const auto needed = optional_together(plan, key)) {
        return *needed;
    }
    if (is_counted_by_closure(plan.job, key)) {
        return false;
    }
    if (key == "dirt[cap].width" || key == "dirt[seat].width") {
        return false; // these lie on an area, not along a strip
    }
    for (const Operation& op : plan.job.operations) {
        const std::string row = "operation[" + op.name + "].";
        if (key == row + (!op.method.empty() ? "water_per_unit" : "trigger_share")) {
            return false;
        }
    }
    return true;
}

/// Given quantities come from a survey; posted limit, clearance, road and traffic from the record,
/// and nobody need limit a queue or value an hour.
bool follows_from_structure(const std::string& key) {
    static constexpr std::array<std::string_view, 13> of_the_road{
        "road.speed",          "road.lane_width",        "road.shoulder_width",
        "traffic.daily",       "traffic.truck_share",    "traffic.green_time",
        "traffic.zone_speed",  "traffic.queue_limit",    "traffic.delay_limit",
        "traffic.detour",      "traffic.car_time_value", "traffic.truck_time_value",
        "traffic.running_cost"};
    const bool road = std::find(of_the_road.begin(), of_the_road.end(), key) != of_the_road.end();
    return road || key.starts_with("quantity[") || key == "posting.limit" ||
           key == "site.clearance";
}

/// Dimensions follow from the record; what does not follow from the structure must be there.
void require_complete(const Plan& plan) {
    for (std::size_t i = takeoff::dimension_count; i < plan.base.size(); ++i) {
        const LayoutField& field = plan.inputs.fields()[i];
        if (!follows_from_structure(field.key) && std::isnan(plan.base[i].guess.likely) &&
            is_needed(plan, field.key)) {
            throw InputError({"job.missing", "job.inputs", "no value for \"" + field.key + "\"",
                              "a value with its unit in the job or its rate book"});
        }
    }
}

/// A wage of its own brings its own share; one that is stated after it wins.
void add_override(Plan& plan, Overrides& list, std::size_t place, const Uncertain& value) {
    list.emplace_back(place, value);
    const FieldPlace wage = input_place("labour.wage");
    for (std::size_t row = 0; row < plan.inputs.row_names("labour").size(); ++row) {
        if (place == plan.inputs.place(wage, row)) {
            list.emplace_back(plan.inputs.place(input_place("labour.overtime_share"), row),
                              overtime_share_of(value));
        }
    }
}

void set_overrides(Plan& plan) {
    for (const auto& [id, settings] : plan.job.overrides) {
        Overrides& list = plan.overrides[id];
        for (const Setting& setting : settings) {
            const std::string path = "job.overrides." + id;
            const std::size_t place = plan.inputs.at(full_key(setting.key), path);
            add_override(plan, list, place,
                         detail::checked(setting.value, plan.inputs.fields()[place], path));
        }
    }
}

} // namespace

namespace detail {

namespace {

void require_not_worked(std::string_view key, const std::string& where) {
    for (Slot s = 0; key.starts_with("quantity[") && s < slot_table.size(); ++s) {
        if (follows_from_work(s) &&
            key == "quantity[" + std::string(slot_table[s].key) + "].given") {
            throw InputError({"job.given", where, "a value for what follows from the work",
                              "values of the work itself: rates, dirt, tanks, trucks, shifts"});
        }
    }
}

} // namespace

Uncertain checked(const Uncertain& value, const LayoutField& field, const std::string& path) {
    const std::string where = path + "." + field.key;
    require_not_worked(field.key, where);
    check(value.guess, where);
    if (value.guess.low < field.least || value.guess.high > field.greatest) {
        throw InputError(
            {"job.bounds", where,
             std::to_string(value.guess.low) + " to " + std::to_string(value.guess.high) + " (SI)",
             std::to_string(field.least) + " to " + std::to_string(field.greatest) + " (SI)"});
    }
    return value;
}

} // namespace detail

Plan take_off_plan() {
    Plan plan;
    plan.job.price_at = PriceAt::likely;
    plan.inputs = Layout(Schema::inputs, {{"quantity", slot_layout_rows()}});
    blank_values(plan);
    return plan;
}

double price_value(const Uncertain& value, PriceAt at) {
    if (is_certain(value) || at == PriceAt::likely) {
        return value.guess.likely;
    }
    return value.guess.mean();
}

std::string full_key(std::string_view name) {
    const std::string singular(name.ends_with('s') ? name.substr(0, name.size() - 1) : name);
    for (const std::string& slot_name : {std::string(name), singular + "_count"}) {
        if (find_slot(slot_name) != slot_table.size()) {
            return "quantity[" + slot_name + "].given";
        }
    }
    return std::string(name);
}

std::shared_ptr<const Plan> make_plan(const Job& job) {
    check_job(job);
    auto plan = std::make_shared<Plan>();
    plan->job = with_lost_time(job);
    plan->inputs = input_layout(plan->job);
    blank_values(*plan);
    set_values(*plan);
    require_complete(*plan);
    detail::plan_correlations(*plan);
    detail::plan_stages(*plan);
    detail::plan_operations(*plan);
    detail::plan_counts(*plan);
    detail::plan_hauls(*plan);
    detail::require_payload(*plan);
    detail::require_dry_trips(*plan);
    detail::plan_lines(*plan);
    set_overrides(*plan);
    return plan;
}

} // namespace scupper::estimate
