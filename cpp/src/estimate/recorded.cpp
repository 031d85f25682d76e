#include "recorded.hpp"

#include "scupper/cost.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::estimate::detail {

namespace {

/// How a value came to be that is no three-point guess.
std::string words_of(const Listed& list) {
    const std::string number = std::to_string(list.values().size());
    return list.family() == Family::empirical ? "a sample of " + number
                                              : "one of " + number + " by weight";
}

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
    if (const Listed* list = value.guess.listed) {
        label.source += (label.source.empty() ? "" : "; ") + words_of(*list);
    }
    return label;
}

using Parts = std::vector<cost::NamedPart<Traced>>;

/// Makes the inputs of a recording: leaves, and rates that are built up from leaves of their own.
class Leaves {
  public:
    Leaves(const Estimate& e, Recording& recording) : e_(e), recording_(recording) {}

    std::vector<Traced> run() {
        std::vector<Traced> inputs;
        inputs.reserve(e_.resolved.values.size());
        for (std::size_t i = 0; i < e_.resolved.values.size(); ++i) {
            inputs.push_back(input(e_.plan->inputs.fields()[i], e_.resolved.uncertain[i],
                                   e_.resolved.values[i]));
        }
        return inputs;
    }

  private:
    Traced input(const LayoutField& field, const Uncertain& known, double value) {
        const cost::BuiltUp kind = cost::built_up_of(field.key);
        if (kind == cost::BuiltUp::none || known.origin == nullptr || known.origin->parts.empty()) {
            return leaf(value, label_of(field, known));
        }
        const Traced rate = cost::built_up_rate<Traced>(kind, parts(kind, field, known));
        return named(field.label, priced(rate, field, known, value), field.dimension, field.key);
    }

    /// A rate whose parts have a range may be priced at its mean, which lies beside the rate of the
    /// likely parts.
    Traced priced(const Traced& rate, const LayoutField& field, const Uncertain& known,
                  double value) {
        if (value == rate.value()) {
            return rate;
        }
        Label label = label_of(field, known);
        label.name = named_after(field.label, "what it is priced at over its likely value");
        label.key += ".mean";
        const Traced beside = leaf(value - rate.value(), label);
        return rate + beside;
    }

    Traced leaf(double value, const Label& label) {
        return {value, &recording_, recording_.leaf(value, label)};
    }

    /// What a wage and its overtime are built up from stands there once.
    const Parts& parts(cost::BuiltUp kind, const LayoutField& field, const Uncertain& known) {
        Parts& parts = parts_[known.origin];
        if (parts.empty()) {
            for (const PartValue& part : known.origin->parts) {
                const cost::RatePart& row = cost::rate_part(kind, part.name, field.key);
                Label label = label_of(field, known);
                label.name = named_after(field.label, row.label);
                label.key += "." + part.name;
                label.dimension = row.dimension;
                parts.push_back({part.name, leaf(part.value, label)});
            }
        }
        return parts;
    }

    /// "wash crew, pay in cash" for the label "wash crew, cost of one person".
    static std::string named_after(const std::string& label, std::string_view part) {
        return label.substr(0, label.find(',')) + ", " + std::string(part);
    }

    const Estimate& e_;
    Recording& recording_;
    std::map<const Provenance*, Parts> parts_;
};

} // namespace

Recorded::Recorded(const Estimate& e)
    : estimate(&e), inputs(Leaves(e, recording).run()), workspace(*e.plan) {
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
