#pragma once
// Keys of figures, and which inputs have a range. Internal to the estimate.

#include "scupper/estimate/plan.hpp"

#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

namespace scupper::estimate::detail {

/// The key of a quantity among the figures: "takeoff[drain_count].quantity".
inline std::string quantity_key(Slot s) {
    return "takeoff[" + std::string(slot_table[s].key) + "].quantity";
}

/// The keys of all figures whose group has no rows.
inline std::vector<std::string> single_figure_keys() {
    std::vector<std::string> keys;
    for (const FigureField& f : figure_table) {
        for (const InputGroup& g : figure_groups) {
            if (g.key == f.group && !g.has_rows) {
                keys.push_back(std::string(f.group) + "." + std::string(f.field));
            }
        }
    }
    return keys;
}

/// The places of a programme's figures by their full keys.
inline std::vector<std::size_t> figure_places(const Plan& plan,
                                              const std::vector<std::string>& keys) {
    std::vector<std::size_t> places;
    for (const std::string& key : keys) {
        places.push_back(plan.figures.at(key, "programme"));
    }
    return places;
}

/// Whether an input has a value that may lie elsewhere.
inline bool has_range(const Uncertain& input) {
    return !std::isnan(input.guess.likely) && !is_certain(input);
}

} // namespace scupper::estimate::detail
