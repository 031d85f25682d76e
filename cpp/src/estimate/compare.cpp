#include "scupper/estimate/compare.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <unordered_map>

namespace scupper::estimate {

namespace {

constexpr double no_value = std::numeric_limits<double>::quiet_NaN();

bool agree(double here, double there, double tolerance) {
    if (!std::isfinite(here) || !std::isfinite(there)) {
        return std::isfinite(here) == std::isfinite(there);
    }
    return std::abs(here - there) <= tolerance * std::max(std::abs(here), std::abs(there));
}

bool agree(const Listed* here, const Listed* there) {
    return here == there ||
           (here != nullptr && there != nullptr && here->values() == there->values() &&
            here->weights() == there->weights());
}

bool agree(const Uncertain& here, const Uncertain& there) {
    const ThreePoint& a = here.guess;
    const ThreePoint& b = there.guess;
    const bool numbers =
        agree(a.low, b.low, 0.0) && agree(a.likely, b.likely, 0.0) && agree(a.high, b.high, 0.0);
    const bool spread = !is_certain(here) && std::isfinite(a.likely);
    return numbers && agree(a.listed, b.listed) &&
           (!spread || (a.family == b.family && a.meaning == b.meaning));
}

struct NamedInput {
    std::string key, label;
    Dimension dimension;
    Uncertain value;
};

std::vector<NamedInput> named_inputs(const Estimate& e) {
    std::vector<NamedInput> list;
    const auto& fields = e.plan->inputs.fields();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        list.push_back(
            {fields[i].key, fields[i].label, fields[i].dimension, e.resolved.uncertain[i]});
    }
    return list;
}

/// Rows of one list beside those of the other with the same key; `absent` where there is none.
template <class Changed, class Row, class Value, class Agree>
std::vector<Changed> differences(const std::vector<Row>& here, const std::vector<Row>& there,
                                 const Value& absent, Agree same) {
    std::unordered_map<std::string, const Row*> unmatched;
    for (const Row& row : there) {
        unmatched.emplace(row.key, &row);
    }
    std::vector<Changed> changed;
    for (const Row& row : here) {
        const auto match = unmatched.find(row.key);
        const Value& other = match == unmatched.end() ? absent : match->second->value;
        if (!same(row.value, other)) {
            changed.push_back({row.key, row.label, row.dimension, row.value, other});
        }
        if (match != unmatched.end()) {
            unmatched.erase(match);
        }
    }
    for (const Row& row : there) {
        if (unmatched.contains(row.key) && !same(absent, row.value)) {
            changed.push_back({row.key, row.label, row.dimension, absent, row.value});
        }
    }
    return changed;
}

} // namespace

std::vector<NamedFigure> named_figures(const Estimate& e) {
    std::vector<NamedFigure> list;
    const auto& fields = e.plan->figures.fields();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        list.push_back({fields[i].key, fields[i].label, fields[i].dimension, e.figures[i]});
    }
    return list;
}

std::vector<ChangedFigure> changed_figures(const std::vector<NamedFigure>& here,
                                           const std::vector<NamedFigure>& there,
                                           double tolerance) {
    return differences<ChangedFigure>(here, there, no_value,
                                      [=](double a, double b) { return agree(a, b, tolerance); });
}

std::vector<ChangedInput> changed_inputs(const Estimate& here, const Estimate& there) {
    return differences<ChangedInput>(
        named_inputs(here), named_inputs(there), certain(no_value, Basis::assumed),
        [](const Uncertain& a, const Uncertain& b) { return agree(a, b); });
}

} // namespace scupper::estimate
