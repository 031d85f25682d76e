#include "scupper/estimate/plan.hpp"

#include "plan_parts.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

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

void set_values(Plan& plan) {
    for (const Setting& setting : plan.job.settings) {
        const std::size_t place = plan.inputs.at(setting.key, "job.inputs");
        plan.base[place] =
            detail::checked(setting.value, plan.inputs.fields()[place], "job.inputs");
    }
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

/// An operation with a method takes its water from the nozzle, any other states it.
bool is_needed(const Plan& plan, const std::string& key) {
    const bool of_stages = key.starts_with("stage[") || key.starts_with("party[");
    if (of_stages || !is_in_use(plan, key) || !detail::haul_needs(plan.job, key)) {
        return false; // a stage without values of its own has the job's
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

/// Given quantities come from a survey; posted limit, clearance and road from the record.
bool follows_from_structure(const std::string& key) {
    const bool road =
        key == "road.speed" || key == "road.lane_width" || key == "road.shoulder_width";
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

void set_overrides(Plan& plan) {
    for (const auto& [id, settings] : plan.job.overrides) {
        Overrides& list = plan.overrides[id];
        for (const Setting& setting : settings) {
            const std::string path = "job.overrides." + id;
            const std::size_t place = plan.inputs.at(full_key(setting.key), path);
            list.emplace_back(place,
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
    detail::plan_stages(*plan);
    detail::plan_operations(*plan);
    detail::plan_hauls(*plan);
    detail::require_payload(*plan);
    detail::require_dry_trips(*plan);
    detail::plan_lines(*plan);
    set_overrides(*plan);
    return plan;
}

} // namespace scupper::estimate
