#include "scupper/traced/derivation.hpp"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

#include "expression.hpp"

namespace scupper {

namespace {

DerivedKind kind_of(Op op) {
    switch (op) {
    case Op::leaf:
        return DerivedKind::input;
    case Op::constant:
        return DerivedKind::constant;
    case Op::choose:
        return DerivedKind::choice;
    case Op::opaque:
        return DerivedKind::solve;
    default:
        return DerivedKind::result;
    }
}

/// Walks a recording from one step down and collects what a reader sees, each step once.
class Deriver {
  public:
    explicit Deriver(const Recording& recording) : recording_(recording), names_(recording) {}

    Derivation run(Step root) {
        visit(root);
        return std::move(result_);
    }

  private:
    std::size_t visit(Step step) {
        const auto known = index_.find(step);
        if (known != index_.end()) {
            return known->second;
        }
        const std::size_t index = result_.steps.size();
        index_.emplace(step, index);
        result_.steps.emplace_back();
        DerivedStep filled = describe(step);
        result_.steps[index] = std::move(filled);
        return index;
    }

    DerivedStep describe(Step step) {
        const Step body = names_.body_of(step);
        DerivedStep d;
        d.kind = kind_of(recording_.steps()[body].op);
        d.name = names_.name(step);
        d.value = recording_.steps()[step].value;
        label(d, step);
        label(d, body);
        if (d.kind == DerivedKind::choice) {
            fill_choice(d, body);
        } else if (d.kind == DerivedKind::solve) {
            fill_solve(d, body);
        } else if (d.kind == DerivedKind::result) {
            d.expression = names_.expression(body);
            d.parts = visit_all(names_.parts(body));
        }
        return d;
    }

    void label(DerivedStep& d, Step step) const {
        const Label* l = recording_.label(step);
        if (l == nullptr) {
            return;
        }
        if (d.key.empty()) {
            d.key = l->key;
        }
        if (d.dimension == dim::none) {
            d.dimension = l->dimension;
        }
        if (!l->basis.empty()) {
            d.basis = l->basis;
        }
        if (!l->source.empty()) {
            d.source = l->source;
        }
        d.residual = std::max(d.residual, l->residual);
    }

    void fill_choice(DerivedStep& d, Step body) {
        const auto args = recording_.arguments(body);
        d.condition = names_.inner(args[0]);
        d.taken_first = recording_.steps()[args[0]].value != 0.0;
        d.parts = visit_all(names_.parts_within(args[0]));
        for (std::size_t arm = 0; arm < 2; ++arm) {
            d.arms[arm] = names_.inner(args[arm + 1]);
            d.arm_parts[arm] = visit_all(names_.parts_within(args[arm + 1]));
        }
        d.expression = d.arms[d.taken_first ? 0 : 1];
    }

    void fill_solve(DerivedStep& d, Step body) {
        for (const Step input : recording_.arguments(body)) {
            const auto parts = visit_all(names_.parts_within(input));
            d.parts.insert(d.parts.end(), parts.begin(), parts.end());
        }
    }

    std::vector<std::size_t> visit_all(const std::vector<Step>& steps) {
        std::vector<std::size_t> indexes;
        for (const Step step : steps) {
            indexes.push_back(visit(step));
        }
        return indexes;
    }

    const Recording& recording_;
    detail::Expressions names_;
    std::map<Step, std::size_t> index_;
    Derivation result_;
};

} // namespace

Derivation derive(const Recording& recording, Step step) {
    return Deriver(recording).run(step);
}

} // namespace scupper
