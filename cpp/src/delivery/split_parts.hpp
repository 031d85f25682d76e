#pragma once
// Where the unknowns of a split stand. Internal to the part.

#include "scupper/delivery/split.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace scupper::delivery::detail {

/// By how much the share of all personnel cost exceeds the most that has to be saved in a year; 0 or
/// less where no contract reaches that most.
double excess(const std::vector<SplitItem>& items, const SavingRule& rule);

/// Units, contracts and places of the unknowns: x[u, k] row by row, then y, z, w and r.
class SplitLayout {
  public:
    SplitLayout(const std::vector<SplitItem>& items, const SplitRules& rules);

    std::size_t units() const { return units_; }
    std::size_t contracts() const { return regions_of_contracts_.size(); }
    std::size_t unit_of(std::size_t item) const { return unit_of_[item]; }
    const std::vector<std::size_t>& unit_of() const { return unit_of_; }
    std::size_t place(std::size_t unit, std::size_t k) const {
        return unit * (contracts() + 1) + k;
    }
    std::size_t kept() const { return units_ * (contracts() + 1); }
    std::size_t let(std::size_t contract) const { return kept() + contract; }
    /// Contracts, or all of them as one, whose least saving may reach its most.
    std::size_t groups() const { return groups_; }
    std::size_t reached(std::size_t group) const { return let(contracts()) + 1 + group; }
    std::size_t rebate(std::size_t group) const { return reached(groups_) + group; }
    std::size_t unknowns() const { return rebate(groups_); }
    /// Whether an item may go to a contract, numbered from 1, by its region.
    bool may_go(const SplitItem& item, std::size_t contract) const {
        const std::string& region = regions_of_contracts_[contract - 1];
        return !within_regions_ || region == item.region;
    }
    /// Whether a contract and the one before it are of the same region: they are let in order.
    bool follows(std::size_t contract) const {
        return contract > 1 &&
               (regions_of_contracts_[contract - 1] == regions_of_contracts_[contract - 2]);
    }

  private:
    std::vector<std::size_t> unit_of_{};
    std::vector<std::string> regions_of_contracts_{}; ///< empty text where any region will do
    std::size_t units_ = 0;
    std::size_t groups_ = 0;
    bool within_regions_ = false;
};

} // namespace scupper::delivery::detail
