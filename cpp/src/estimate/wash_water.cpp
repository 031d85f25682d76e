#include "resolve_parts.hpp"
#include "scupper/estimate/estimate.hpp"

namespace scupper::estimate {

namespace {

bool uses_water(const Plan& plan, const PlannedOperation& op, const Resolved& r) {
    if (op.method != no_method) {
        return true;
    }
    const std::size_t place =
        plan.inputs.place(input_place("operation.water_per_unit"), op.input_row);
    return is_rated(op.timing) && r.uncertain[place].guess.high > 0.0;
}

} // namespace

namespace detail {

void refuse_wash_water(const Plan& plan, Resolved& r) {
    r.model.refused.assign(plan.operations.size(), 0);
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const PlannedOperation& op = plan.operations[i];
        r.model.refused[i] =
            plan.job.wash_water == WashWater::none && op.in_scope && uses_water(plan, op, r);
    }
}

} // namespace detail

std::vector<std::string> refused_operations(const Estimate& e) {
    const Model& model = e.resolved.model;
    std::vector<std::string> names;
    for (std::size_t i = 0; i < model.refused.size(); ++i) {
        const PlannedOperation& op = e.plan->operations[i];
        if (model.refused[i] && holds(op.when, model)) {
            names.push_back(op.name);
        }
    }
    return names;
}

} // namespace scupper::estimate
