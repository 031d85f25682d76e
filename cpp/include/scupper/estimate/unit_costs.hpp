#pragma once
// What a component costs by the unit of its quantity, indirect costs shared out.

#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// The cost of one component, or of the structure as a whole.
struct UnitCost {
    std::string component;    ///< [text] one of component_names, or "structure"
    Slot slot = 0;            ///< [-] the quantity it is counted by
    double quantity = 0.0;    ///< [SI unit of the slot] how much of it there is
    double direct = 0.0;      ///< [currency] lines of the component itself
    double distributed = 0.0; ///< [currency] its part of closure, travel, supply, disposal
    double margins = 0.0;     ///< [currency] its part of overhead, profit, bond and the like
    double total = 0.0;       ///< [currency] all three
    double per_unit = 0.0;    ///< [currency over the SI unit] total for one unit; NaN for none
};

/// The cost of every component with its unit cost; the structure as a whole stands last, by the
/// area of its deck.
///
/// Formula: distributed = indirect x direct / sum of direct; per unit = total / quantity
/// @param estimate [-] an estimate
/// @return [currency, n] in the order of component_names; the components' totals add up to the
/// structure's
/// Range: any estimate; without any direct cost all of it stands in the structure's row.
/// Errors: none.
/// Source: common practice: indirect costs in proportion to direct ones
/// Verified by: tests/cpp/estimate/test_unit_costs.cpp
std::vector<UnitCost> unit_costs(const Estimate& estimate);

} // namespace scupper::estimate
