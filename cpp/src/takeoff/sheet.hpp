#pragma once
// Where inferred dimensions are entered, each with the rule it follows from.

#include "record.hpp"
#include "rule_table.hpp"
#include "scupper/takeoff/infer.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::takeoff::detail {

/// A rule errs alike on the structures it is used on, so a part of its spread does not average
/// out over a programme. Common practice, from memory.
inline constexpr double rule_shared_share = 0.3;

/// The dimensions of one structure while they are inferred.
class Sheet {
  public:
    Sheet(Inferred& out, const Measured& measured)
        : out_(out), measured_(measured), origins_(provenances().data()) {}

    /// A value without spread.
    void exact(std::size_t index, RuleId rule, double value) {
        enter(index, rule, value, value, value);
    }
    /// The rule's own low, likely and high times a base, none above a cap.
    void scaled(std::size_t index, RuleId rule, double base = 1.0,
                double cap = std::numeric_limits<double>::infinity()) {
        enter(index, rule, std::min(rule->low * base, cap), std::min(rule->likely * base, cap),
              std::min(rule->high * base, cap));
    }
    /// Limits that the rule states in words.
    void range(std::size_t index, RuleId rule, double low, double likely, double high) {
        enter(index, rule, low, likely, high);
    }
    /// A dimension of a component that is not there.
    void absent(std::size_t index) { exact(index, "shape.absent", 0.0); }
    /// A dimension already entered.
    const ThreePoint& guess(std::size_t index) const { return out_.dimensions[index].guess; }
    /// The likely value of a dimension already entered.
    double likely(std::size_t index) const { return out_.dimensions[index].guess.likely; }

  private:
    void enter(std::size_t index, RuleId rule, double low, double likely, double high) {
        const InputField& field = input_table[index];
        if (const double known = measured_.dimensions[index]; !std::isnan(known)) {
            low = likely = high = known;
        }
        Uncertain& u = out_.dimensions[index];
        u.guess.low = std::clamp(low, field.least, field.greatest);
        u.guess.likely = std::clamp(likely, field.least, field.greatest);
        u.guess.high = std::clamp(high, field.least, field.greatest);
        const bool fixed = u.guess.low == u.guess.high;
        u.guess.family = fixed ? Family::fixed : Family::pert;
        u.shared_share = fixed ? 0.0 : rule_shared_share;
        u.basis = rule->basis;
        u.origin = origins_ + rule.index;
    }

    Inferred& out_;
    const Measured& measured_;
    const Provenance* origins_;
};

void infer_deck(const Record& record, const Shape& shape, Sheet& sheet);
void infer_girders(const Record& record, const Shape& shape, Sheet& sheet);
void infer_piers(const Record& record, const Shape& shape, Sheet& sheet);
void infer_abutments(const Record& record, const Shape& shape, Sheet& sheet);
/// Length and width alone, which the inventory's own deck area rests on.
void infer_extent(const Record& record, Sheet& sheet);

} // namespace scupper::takeoff::detail
