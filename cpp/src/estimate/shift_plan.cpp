#include "scupper/estimate/shift_plan.hpp"

#include "price_steps.hpp"

namespace scupper::estimate {

namespace {

Inputs<double> inputs_of(const Estimate& e) {
    return {e.plan->inputs, e.resolved.values.data()};
}

double figure_of(const Estimate& e, std::string_view field, std::size_t row) {
    return e.figures[e.plan->figures.at(
        "operation[" + e.plan->operations[row].name + "]." + std::string(field), "shift_plan")];
}

/// Whether an operation is done at the structure rather than made of the shift.
bool is_done_on_site(const PlannedOperation& op) {
    return op.timing != Timing::closure && op.timing != Timing::lost;
}

work::PartyTasks tasks_of(const Estimate& e, std::size_t party, const Time<>& change_sides) {
    const Model& model = e.resolved.model;
    work::PartyTasks tasks{e.plan->parties[party].name, {}};
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        const PlannedOperation& op = e.plan->operations[row];
        if (!model.active[row] || !is_done_on_site(op) || op.party != party) {
            continue;
        }
        const Time<> time(figure_of(e, "time", row));
        if (time > Time<>(0.0)) {
            tasks.tasks.push_back({op.name, time});
        }
    }
    const std::size_t wait = e.plan->parties[party].wait_place;
    if (!tasks.tasks.empty() && wait != no_place) {
        const Time<> time(e.resolved.values[wait]);
        tasks.tasks.insert(tasks.tasks.begin(), {"wait", time});
    }
    if (!tasks.tasks.empty() && change_sides > Time<>(0.0)) {
        tasks.tasks.push_back({"closure_change_sides", change_sides});
    }
    return tasks;
}

} // namespace

work::Site site_of(const Estimate& e, std::size_t stage) {
    const auto closure = detail::closure_times(e.resolved.model, stage, inputs_of(e));
    work::Site site;
    site.name = e.structure.id;
    site.set_up = closure.set_up;
    site.removal = closure.removal;
    for (const std::size_t party : e.plan->stages[stage].parties) {
        work::PartyTasks tasks = tasks_of(e, party, closure.change_sides);
        if (!tasks.tasks.empty()) {
            site.parties.push_back(std::move(tasks));
        }
    }
    return site;
}

work::Shift<double> shift_rules(const Estimate& e, std::size_t stage) {
    work::Shift<double> rules = detail::stage_shift(e.resolved.model, stage, inputs_of(e));
    if (e.plan->job.sharing != Sharing::own_shifts) {
        rules.overtime = Time<>(0.0);
    }
    return rules;
}

std::vector<StageShifts> shift_plan(const Estimate& e) {
    std::vector<StageShifts> stages;
    for (std::size_t stage = 0; stage < e.plan->stages.size(); ++stage) {
        const std::vector<work::Site> sites{site_of(e, stage)};
        stages.push_back(
            {e.plan->stages[stage].name, work::lay_out_shifts(sites, shift_rules(e, stage))});
    }
    return stages;
}

} // namespace scupper::estimate
