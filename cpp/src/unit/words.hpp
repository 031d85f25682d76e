#pragma once
// How each dimension of the trade is called and shown.

#include "scupper/quantity/dimension.hpp"

#include <string_view>

namespace scupper::detail {

/// The name of a dimension, its unit in each system, and a valid example.
struct DimensionWords {
    Dimension dimension;
    std::string_view noun;
    std::string_view si;
    std::string_view us;
    std::string_view metric;
    std::string_view example;
};

/// The words for a dimension, or null where it has none of its own.
const DimensionWords* words_for(Dimension dimension);

} // namespace scupper::detail
