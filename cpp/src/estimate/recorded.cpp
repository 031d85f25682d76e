#include "recorded.hpp"

#include <string>

namespace scupper::estimate::detail {

namespace {

Label label_of(const LayoutField& field, const Uncertain& value) {
    Label label{.name = field.label,
                .key = field.key,
                .dimension = field.dimension,
                .basis = std::string(basis_name(value.basis)),
                .source = {}};
    if (value.origin != nullptr) {
        label.source = value.origin->source;
        if (!value.origin->date.empty()) {
            label.source += ", " + value.origin->date;
        }
    }
    return label;
}

std::vector<Traced> leaves(const Estimate& e, Recording& recording) {
    std::vector<Traced> inputs;
    inputs.reserve(e.resolved.values.size());
    for (std::size_t i = 0; i < e.resolved.values.size(); ++i) {
        const Label label = label_of(e.plan->inputs.fields()[i], e.resolved.uncertain[i]);
        const double value = e.resolved.values[i];
        inputs.emplace_back(value, &recording, recording.leaf(value, label));
    }
    return inputs;
}

} // namespace

Recorded::Recorded(const Estimate& e)
    : estimate(&e), inputs(leaves(e, recording)), workspace(*e.plan) {
    price(e.resolved.model, Inputs<Traced>(e.plan->inputs, inputs.data()), workspace);
}

Step Recorded::figure(std::size_t place) {
    const Traced& figure = workspace.figures.at(place);
    if (figure.recording() != nullptr) {
        return figure.step_in(recording);
    }
    const LayoutField& field = estimate->plan->figures.fields()[place];
    const std::int32_t label = recording.add_label({.name = field.label,
                                                    .key = field.key,
                                                    .dimension = field.dimension,
                                                    .basis = {},
                                                    .source = "not present or not in the scope"});
    return recording.record(Op::constant, figure.value(), {}, label);
}

} // namespace scupper::estimate::detail
