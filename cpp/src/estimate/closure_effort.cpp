#include "price_steps.hpp"
#include "scupper/estimate/road_users.hpp"

namespace scupper::estimate {

std::vector<ClosureEffort> closure_effort(const Estimate& e) {
    const Plan& plan = *e.plan;
    const Model& model = e.resolved.model;
    const Inputs<double> in(plan.inputs, e.resolved.values.data());
    Workspace<double> ws(plan);
    price(model, in, ws);
    std::vector<ClosureEffort> rows;
    for (std::size_t row = 0; row < plan.operations.size(); ++row) {
        const PlannedOperation& op = plan.operations[row];
        for (std::size_t who = 0; who < plan.job.labour.size(); ++who) {
            const Time<> time = detail::shift_time(op, ws.crews[plan.labour_crews[who]]);
            const bool works = model.active[row] && model.active_labour[who];
            if (op.timing == Timing::closure && works && time > Time<>(0.0)) {
                const Count<> people = in.get<"labour.people">(who);
                rows.push_back({op.name, plan.job.labour[who].name, people, time, people * time});
            }
        }
    }
    return rows;
}

} // namespace scupper::estimate
