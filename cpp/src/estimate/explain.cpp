#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

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

/// A figure that follows from no input at all (a component that is absent) is a constant.
Traced recorded(const Traced& figure, const LayoutField& field, Recording& recording) {
    if (figure.recording() != nullptr) {
        return figure;
    }
    const std::int32_t label = recording.add_label({.name = field.label,
                                                    .key = field.key,
                                                    .dimension = field.dimension,
                                                    .basis = {},
                                                    .source = "not present or not in the scope"});
    return {figure.value(), &recording, recording.record(Op::constant, figure.value(), {}, label)};
}

} // namespace

Derivation explain(const Estimate& e, std::string_view key) {
    const std::size_t place = figure_place_of(*e.plan, key);
    Recording recording;
    const std::vector<Traced> inputs = leaves(e, recording);
    Workspace<Traced> workspace(*e.plan);
    price(e.resolved.model, Inputs<Traced>(e.plan->inputs, inputs.data()), workspace);
    const Traced figure =
        recorded(workspace.figures.at(place), e.plan->figures.fields()[place], recording);
    return derive(recording, figure.step_in(recording));
}

} // namespace scupper::estimate
