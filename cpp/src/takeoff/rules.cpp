#include "rule_table.hpp"

namespace scupper::takeoff {

std::span<const Rule> rules() {
    return detail::rule_table;
}

namespace detail {

const std::array<Provenance, rule_table.size()>& provenances() {
    static const auto all = [] {
        std::array<Provenance, rule_table.size()> out;
        std::transform(rule_table.begin(), rule_table.end(), out.begin(), [](const Rule& rule) {
            return Provenance{.source = std::string(rule.name) + ": " + std::string(rule.source),
                              .date = {},
                              .note = std::string(rule.formula)};
        });
        return out;
    }();
    return all;
}

} // namespace detail

} // namespace scupper::takeoff
