#include "reach.hpp"

namespace scupper::simulate::detail {

Reach::Reach(const estimate::Plan& plan) : plan_(plan), workspace_(plan) {}

void Reach::visit(Step step) {
    if (!seen_[step]) {
        seen_[step] = 1;
        open_.push_back(step);
    }
}

const std::vector<char>& Reach::of(const estimate::Resolved& resolved,
                                   const std::vector<std::size_t>& figures) {
    recording_.clear();
    inputs_.clear();
    for (const double value : resolved.values) {
        inputs_.emplace_back(value, &recording_, recording_.leaf(value, {}));
    }
    price(resolved.model, estimate::Inputs<Traced>(plan_.inputs, inputs_.data()), workspace_);
    std::vector<Step> ends;
    for (const std::size_t place : figures) {
        ends.push_back(workspace_.figures.at(place).step_in(recording_));
    }
    seen_.assign(recording_.steps().size(), 0);
    for (const Step end : ends) {
        visit(end);
    }
    moves_.assign(inputs_.size(), 0);
    while (!open_.empty()) {
        const Step step = open_.back();
        open_.pop_back();
        if (step < moves_.size()) {
            moves_[step] = 1; // leaves were written first, in the order of the layout
        }
        for (const Step argument : recording_.arguments(step)) {
            visit(argument);
        }
    }
    return moves_;
}

} // namespace scupper::simulate::detail
