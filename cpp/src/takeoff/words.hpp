#pragma once
// Sources that many rules share, and the foot.

#include "scupper/quantity/factors.hpp"

#include <string_view>

namespace scupper::takeoff::detail {

inline constexpr double ft = factor::foot;

inline constexpr std::string_view guide = "FHWA-PD-96-001 (1995)";
inline constexpr std::string_view snbi =
    "FHWA, Specifications for the National Bridge Inventory (2022)";
inline constexpr std::string_view practice = "common practice";
inline constexpr std::string_view timber_guide =
    "USDA Forest Service, Timber Bridges, EM 7700-8 (1990) (from memory)";
inline constexpr std::string_view depth_table =
    "AASHTO LRFD table 2.5.2.6.3-1 (from memory) for low; "
    "common practice for likely and high";

} // namespace scupper::takeoff::detail
