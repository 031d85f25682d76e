#pragma once
// Which item has which cost line. Internal to pay items.

#include "scupper/bid/item_list.hpp"
#include "scupper/estimate.hpp"

#include <array>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace scupper::bid::detail {

/// Who has a cost line: the place of an item, or one of these.
inline constexpr std::size_t nobody = static_cast<std::size_t>(-1);
inline constexpr std::size_t spread_out = static_cast<std::size_t>(-2);

/// The cost of one structure as lines.
using Lines = std::vector<estimate::PricedLine>;

/// Finds who has each line, and what nobody or two have.
class Claims {
  public:
    explicit Claims(const ItemScheme& list) : list_(&list) {}

    /// The place of the item that has a line, `spread_out`, or `nobody`; two that name it equally
    /// closely are noted.
    std::size_t owner(const estimate::PricedLine& line);
    /// Throws where lines were claimed twice.
    void require_single() const;
    /// Notes a line that nobody has.
    void leave(const estimate::PricedLine& line);
    /// Throws where lines were left over.
    void require_none_left() const;

  private:
    const ItemScheme* list_;
    std::vector<std::string> twice_;
    std::vector<std::string> left_;
};

/// A list of lines in which those of one name are one.
class LineSums {
  public:
    void add(const estimate::PricedLine& line);
    Lines take() { return std::move(lines_); }

  private:
    Lines lines_;
    std::map<std::array<std::string, 3>, std::size_t> places_;
};

} // namespace scupper::bid::detail
