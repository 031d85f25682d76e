#include "scupper/estimate/estimate.hpp"

#include "posting.hpp"
#include "price_steps.hpp"
#include "scupper/error.hpp"
#include "scupper/work.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace scupper::estimate {

namespace {

/// The same shift on a road that may be closed at any hour.
work::Shift<double> without_window(work::Shift<double> shift) {
    shift.window = Time<>(unbounded);
    return shift;
}

/// A lay-out that could not be made counts nothing.
bool lacks_room(const Resolved& resolved, const Plan& plan) {
    return std::any_of(plan.planned_counts.begin(), plan.planned_counts.end(),
                       [&](const PlannedCount& c) { return std::isnan(resolved.values[c.place]); });
}

double total_of(const Plan& plan, const std::vector<double>& figures) {
    return figures[plan.figures.place(figure_place("cost.total"), 0)];
}

} // namespace

double Estimate::figure(std::string_view key) const {
    return figures[figure_place_of(*plan, key)];
}

Outcome outcome_of(const Resolved& resolved, const std::vector<double>& figures, const Plan& plan) {
    if (!resolved.model.shape.washable) {
        return Outcome::not_washable;
    }
    if (detail::stops_work(resolved.model.posting)) {
        return Outcome::posting;
    }
    const Inputs<double> in(plan.inputs, resolved.values.data());
    for (std::size_t stage = 0; stage < plan.stages.size(); ++stage) {
        const auto shift = detail::stage_shift(resolved.model, stage, in);
        if (!(work::work_time(shift) > Time<>(0.0))) {
            return resolved.model.window_by_traffic &&
                           work::work_time(without_window(shift)) > Time<>(0.0)
                       ? Outcome::no_window
                       : Outcome::no_work_time;
        }
    }
    if (std::isfinite(total_of(plan, figures))) {
        return Outcome::priced;
    }
    if (lacks_room(resolved, plan)) {
        return Outcome::no_room;
    }
    for (std::size_t row = 0; row < plan.hauls.size(); ++row) {
        if (!(figures[plan.figures.place(figure_place("haul.payload"), row)] > 0.0)) {
            return Outcome::no_payload;
        }
    }
    for (std::size_t row = 0; row < plan.methods.size(); ++row) {
        if (!std::isfinite(figures[plan.figures.place(figure_place("nozzle.flow"), row)])) {
            return Outcome::no_flow;
        }
    }
    return Outcome::no_number;
}

std::string outcome_reason(Outcome outcome, const Resolved& resolved) {
    switch (outcome) {
    case Outcome::priced:
        return "priced";
    case Outcome::not_washable:
        return std::string(takeoff::verdict_reason(resolved.verdict));
    case Outcome::no_flow:
        return "no water reaches the nozzle: the pump's pressure is below the lift";
    case Outcome::no_work_time:
        return "travel, briefing, meal and closure take the whole shift";
    case Outcome::no_payload:
        return "a haul truck may carry nothing: empty, with the water aboard, it weighs its whole "
               "gross limit";
    case Outcome::no_window:
        return "traffic leaves no hours in which the road may be closed within the limits of queue "
               "and delay";
    case Outcome::no_room:
        return "the road leaves no room for the closure";
    case Outcome::posting:
        return detail::posting_reason(resolved);
    case Outcome::no_number:
        break;
    }
    return "the total is not a number";
}

std::size_t figure_place_of(const Plan& plan, std::string_view key) {
    const std::string name(key);
    for (const std::string& candidate :
         {name, "takeoff[" + name + "].quantity", "operation[" + name + "].time", name + ".volume",
          name + ".total"}) {
        if (const auto place = plan.figures.find(candidate)) {
            return *place;
        }
    }
    return plan.figures.at(key, "explain");
}

Estimate estimate(const Structure& structure, std::shared_ptr<const Plan> plan) {
    Estimate e;
    e.plan = std::move(plan);
    e.structure = structure;
    resolve(structure, *e.plan, e.resolved);
    Workspace<double> workspace(*e.plan);
    price(e.resolved.model, Inputs<double>(e.plan->inputs, e.resolved.values.data()), workspace);
    e.figures = workspace.figures.values();
    const Outcome outcome = outcome_of(e.resolved, e.figures, *e.plan);
    if (outcome != Outcome::priced) {
        throw InputError({"estimate.unpriced", structure_key(structure),
                          outcome_reason(outcome, e.resolved),
                          "a structure that is washed as a bridge, and a job that reaches it"});
    }
    return e;
}

std::vector<PricedLine> cost_lines(const Estimate& e) {
    std::vector<PricedLine> lines;
    for (std::size_t row = 0; row < e.plan->lines.size(); ++row) {
        const CostLine& line = e.plan->lines[row];
        const double amount = e.figures[e.plan->figures.place(figure_place("line.cost"), row)];
        if (amount != 0.0) {
            lines.push_back({line.component, line.operation_name, line.resource_name, amount});
        }
    }
    return lines;
}

std::vector<Caution> cautions(const Estimate& e) {
    std::vector<Caution> apply;
    for (std::size_t i = 0; i < e.plan->cautions.size(); ++i) {
        if (holds(e.plan->cautions[i], e.resolved.model)) {
            apply.push_back(e.plan->job.cautions[i]);
        }
    }
    return apply;
}

} // namespace scupper::estimate
