#include "plan_parts.hpp"

#include <algorithm>
#include <iterator>

namespace scupper::estimate {

Condition condition_of(const std::vector<std::string>& words) {
    Condition condition;
    condition.always = words.empty();
    for (const std::string& word : words) {
        const int closure = index_of(closure_kind_names, word);
        if (closure >= 0) {
            condition.closures |= 1u << closure;
        } else if (word == "any_closure") {
            condition.closures |= ~1u; // bit 0 is "no closure"
        }
        condition.always |= word == "always";
        condition.over_water |= word == "over_water";
        condition.not_over_water |= word == "not_over_water";
        condition.navigable |= word == "navigable";
        condition.over_road |= word == "over_road";
        condition.over_rail |= word == "over_rail";
        condition.underside |= word == "underside";
        condition.steel_underside |= word == "steel_underside";
        condition.dry_removal |= word == "dry_removal";
        condition.wet_removal |= word == "wet_removal";
        condition.posted |= word == "posted";
        condition.night |= word == "night";
        condition.underside_over_road |= word == "underside_over_road";
        condition.underside_over_water |= word == "underside_over_water";
        condition.ground_below |= word == "ground_below";
        condition.build_ups |= detail::bit_of(build_up_names, word);
        condition.site |= detail::bit_of(site_word_names, word);
    }
    return condition;
}

namespace detail {

namespace {

std::size_t method_row(const Job& job, const std::string& name) {
    for (std::size_t i = 0; i < job.methods.size(); ++i) {
        if (job.methods[i].name == name) {
            return i;
        }
    }
    return no_method;
}

PlannedMethod planned(const WashMethod& method, const std::vector<std::string>& segments) {
    PlannedMethod result{method.name, {}, method.truck == TruckPlace::below, false};
    for (const std::string& name : method.hose) {
        const auto found = std::find(segments.begin(), segments.end(), name);
        result.hose.push_back(static_cast<std::size_t>(found - segments.begin()));
    }
    return result;
}

bool washes_the_underside_only(const std::string& method, const Job& job) {
    return std::all_of(job.operations.begin(), job.operations.end(), [&](const Operation& op) {
        return op.method != method || !in_scope(job, op) ||
               index_of(underside_names, op.component) >= 0;
    });
}

std::vector<std::size_t> paces_of(const Job& job, const Operation& op) {
    std::vector<std::size_t> rows;
    for (std::size_t row = 0; row < job.paces.size(); ++row) {
        if (slows(job.paces[row], op)) {
            rows.push_back(row);
        }
    }
    return rows;
}

std::vector<std::size_t> users_of(const std::string& equipment, const Job& job) {
    std::vector<std::size_t> users;
    for (std::size_t row = 0; row < job.operations.size(); ++row) {
        const std::vector<std::string>& needs = job.operations[row].equipment;
        if (std::find(needs.begin(), needs.end(), equipment) != needs.end()) {
            users.push_back(row);
        }
    }
    return users;
}

std::string cost_label(std::string name) {
    std::replace(name.begin(), name.end(), '_', ' ');
    return name + ", cost";
}

std::string row_name(const CostLine& line) {
    return line.component + "/" + line.operation_name + "/" + line.resource_name;
}

void add_line(Plan& plan, std::size_t operation, Charge charge, std::size_t resource,
              const std::string& resource_name) {
    const PlannedOperation& op = plan.operations[operation];
    plan.lines.push_back({operation, charge, resource, op.component, op.name, resource_name});
}

Layout figure_layout(const Plan& plan) {
    std::vector<LayoutRow> operations;
    for (const PlannedOperation& op : plan.operations) {
        operations.push_back({op.name, slot_table[op.driver].dimension, {}});
    }
    std::vector<LayoutRow> methods;
    const std::vector<std::string> used = plan.inputs.rows_in_use("nozzle");
    for (const PlannedMethod& method : plan.methods) {
        const bool in_use = std::find(used.begin(), used.end(), method.name) != used.end();
        methods.push_back({method.name, {}, {}, in_use});
    }
    std::vector<LayoutRow> hauls;
    for (const PlannedHaul& haul : plan.hauls) {
        hauls.push_back({haul.name, {}, {}});
    }
    std::vector<LayoutRow> lines;
    for (const CostLine& line : plan.lines) {
        lines.push_back({row_name(line), {}, {}});
    }
    std::vector<LayoutRow> crews;
    for (const std::string& name : crew_names(plan.job)) {
        crews.push_back({name, {}, {}});
    }
    return Layout(Schema::figures, {{"nozzle", methods},
                                    {"crew", crews},
                                    {"operation", operations},
                                    {"haul", hauls},
                                    {"line", lines},
                                    {"takeoff", slot_layout_rows()},
                                    {"truck", {{"water", {}, "water truck"}}}});
}

} // namespace

void plan_operations(Plan& plan) {
    const std::vector<std::string> segments = hose_segments(plan.job);
    for (const WashMethod& method : plan.job.methods) {
        plan.methods.push_back(planned(method, segments));
        plan.methods.back().underside = washes_the_underside_only(method.name, plan.job);
        plan.lifts_from_below |= plan.methods.back().from_below;
    }
    std::size_t input_row = 0;
    for (const Operation& op : plan.job.operations) {
        plan.operations.push_back({op.name, op.component, op.driver, op.factor, op.timing,
                                   method_row(plan.job, op.method), in_scope(plan.job, op),
                                   condition_of(op.when), party_of(plan.job, op),
                                   is_rated(op.timing) ? input_row++ : 0, paces_of(plan.job, op)});
    }
    for (const Resource& r : plan.job.labour) {
        plan.labour.push_back(condition_of(r.when));
        plan.labour_labels.push_back(cost_label(r.name));
    }
    plan_site(plan);
    for (const Resource& r : plan.job.charges) {
        plan.charges.push_back(condition_of(r.when));
        plan.charge_labels.push_back(cost_label(r.name));
    }
    for (const Caution& c : plan.job.cautions) {
        plan.cautions.push_back(condition_of(c.when));
    }
    for (const JetLimit& limit : plan.job.jets.limits) {
        plan.jet_limits.push_back(condition_of(limit.when));
    }
    for (const Notice& n : plan.job.notices) {
        plan.notices.push_back(condition_of(n.when));
    }
    for (const ClosedSeason& season : plan.job.calendar.closed) {
        plan.seasons.push_back(condition_of(season.when));
    }
    for (const Resource& r : plan.job.equipment) {
        plan.equipment.push_back(condition_of(r.when));
        plan.equipment_labels.push_back(cost_label(r.name));
        plan.equipment_users.push_back(users_of(r.name, plan.job));
    }
}

namespace {

void plan_counts_of(const std::vector<Resource>& resources, const std::vector<std::size_t>& crews,
                    const FieldPlace& field, Plan& plan) {
    for (std::size_t row = 0; row < resources.size(); ++row) {
        const int what = index_of(closure_count_names, resources[row].plan);
        if (what >= 0) {
            plan.planned_counts.push_back(
                {plan.inputs.place(field, row), static_cast<std::size_t>(what), crews[row]});
        }
    }
}

} // namespace

void plan_counts(Plan& plan) {
    plan_counts_of(plan.job.labour, plan.labour_crews, input_place("labour.people"), plan);
    plan_counts_of(plan.job.equipment, plan.equipment_crews, input_place("equipment.number"), plan);
}

void plan_lines(Plan& plan) {
    for (std::size_t row = 0; row < plan.operations.size(); ++row) {
        if (!plan.operations[row].in_scope) {
            continue;
        }
        const bool premium = plan.operations[row].name == "overtime";
        for (std::size_t r = 0; r < plan.job.labour.size(); ++r) {
            add_line(plan, row, premium ? Charge::overtime : Charge::labour, r,
                     plan.job.labour[r].name);
        }
        if (premium) {
            continue; // its hours, and the equipment for them, stand with the work
        }
        for (std::size_t r = 0; r < plan.job.equipment.size(); ++r) {
            add_line(plan, row, Charge::equipment, r, plan.job.equipment[r].name);
        }
        add_line(plan, row, Charge::water, 0, "water");
    }
    plan.lines.push_back({0, Charge::disposal, 0, "disposal", "dump", "disposal"});
    plan.lines.push_back({0, Charge::dump_run, 0, "disposal", "dump", "dump run"});
    plan.lines.push_back({0, Charge::load_charge, 0, "disposal", "dump", "load charge"});
    plan.lines.push_back({0, Charge::wash_water, 0, "disposal", "dump", "wash water"});
    for (std::size_t r = 0; r < plan.job.charges.size(); ++r) {
        plan.lines.push_back({0, Charge::fixed, r, "visit", "charge", plan.job.charges[r].name});
    }
    plan.lines.push_back(
        {0, Charge::occupancy, 0, "traffic_control", "contract", "lane occupancy"});
    for (std::size_t r = 0; r < plan.job.labour.size(); ++r) {
        plan.lines.push_back({0, Charge::show_up, r, "visit", "show_up", plan.job.labour[r].name});
    }
    plan.lines.push_back({0, Charge::moving, 0, "visit", "mobilization", "hauling by distance"});
    plan.lines.push_back({0, Charge::escalation, 0, "visit", "escalation", "escalation"});
    plan.lines.push_back({0, Charge::damages, 0, "visit", "contract", "liquidated damages"});
    const char* const margins[] = {"overhead", "profit", "bond", "mobilization", "contingency"};
    for (std::size_t which = 0; which < std::size(margins); ++which) {
        plan.lines.push_back({0, Charge::margin, which, "indirect", "margin", margins[which]});
    }
    plan.figures = figure_layout(plan);
}

} // namespace detail

} // namespace scupper::estimate
