#pragma once
// The rules of inference as a table that people can read; the numbers in it are the ones used.

#include "scupper/uncertain.hpp"

#include <limits>
#include <span>
#include <string_view>

namespace scupper::takeoff {

/// The mark of a rule without a factor of its own.
inline constexpr double no_factor = std::numeric_limits<double>::quiet_NaN();

/// One rule: how one dimension, category or quantity follows.
struct Rule {
    std::string_view name;         ///< "girder.depth.steel_simple"
    std::string_view field;        ///< input key "girder.depth", slot "cap_area", or "shape.units"
    std::string_view formula;      ///< with low, likely and high as its factor
    std::string_view source;       ///< document and table, "common practice" or "from memory"
    std::string_view when;         ///< structures it is used on
    std::string_view missing;      ///< what happens where the record lacks it or says zero
    double low = no_factor;        ///< [SI unit of the field, or -] factor or value
    double likely = no_factor;     ///< [SI unit of the field, or -] factor or value
    double high = no_factor;       ///< [SI unit of the field, or -] factor or value
    Basis basis = Basis::inferred; ///< of a value that follows from it
};

/// Every rule, in the order of the input schema, the quantities, then the site [-, n].
std::span<const Rule> rules();

} // namespace scupper::takeoff
