#include "scupper/estimate/price.hpp"

#include "price_steps.hpp"

namespace scupper::estimate {

template <class T>
Workspace<T>::Workspace(const Plan& plan) : figures(plan.figures) {
    crews.resize(1 + plan.stages.size() + plan.parties.size());
    picked_up.resize(plan.hauls.size());
    loads.resize(plan.hauls.size());
    lines.resize(plan.methods.size());
    slowing.resize(plan.methods.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        lines[i].hose.resize(plan.methods[i].hose.size());
    }
}

template <class T>
void price(const Model& model, const Inputs<T>& inputs, Workspace<T>& workspace) {
    workspace.figures.clear();
    detail::price_quantities(model, inputs, workspace);
    detail::price_truck(model, inputs, workspace);
    detail::price_nozzle(model, inputs, workspace);
    detail::price_debris(model, inputs, workspace);
    detail::price_operations(model, inputs, workspace);
    detail::price_hours(model, inputs, workspace);
    detail::price_cost(model, inputs, workspace);
}

template struct Workspace<double>;
template struct Workspace<Traced>;
SCUPPER_INSTANTIATE_STEP(price);

} // namespace scupper::estimate
