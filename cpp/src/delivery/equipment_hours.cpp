#include "scupper/delivery/equipment_hours.hpp"

#include <limits>

namespace scupper::delivery {

std::vector<std::vector<double>> equipment_times(std::span<const Structure> structures,
                                                 const estimate::Plan& plan, unsigned threads) {
    const std::size_t kinds = plan.job.equipment.size();
    const std::vector<double> unpriced(structures.size(), std::numeric_limits<double>::quiet_NaN());
    std::vector<std::vector<double>> times(kinds, unpriced);
    const auto block = [&](std::size_t first, std::size_t last) {
        estimate::Resolved resolved;
        estimate::Workspace<double> workspace(plan);
        for (std::size_t i = first; i < last; ++i) {
            estimate::resolve(structures[i], plan, resolved);
            const estimate::Inputs<double> in(plan.inputs, resolved.values.data());
            estimate::price(resolved.model, in, workspace);
            if (estimate::outcome_of(resolved, workspace.figures.values(), plan) !=
                estimate::Outcome::priced) {
                continue;
            }
            for (std::size_t row = 0; row < kinds; ++row) {
                const auto& crew = workspace.crews[plan.equipment_crews[row]];
                times[row][i] = resolved.model.active_equipment[row]
                                    ? (crew.outing.paid * in.get<"equipment.number">(row)).si()
                                    : 0.0;
            }
        }
    };
    estimate::run_blocks(structures.size(), threads, block, {});
    return times;
}

} // namespace scupper::delivery
