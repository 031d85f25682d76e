#pragma once
// Which part of which site is worked in which shift. Internal to the part.

#include "scupper/work/shift_layout.hpp"

namespace scupper::work::detail {

/// A stretch of a site's work within one shift, its times in seconds.
struct Block {
    std::size_t shift;
    std::size_t site;
    double move;    ///< to get there
    double set_up;  ///< of the closure; 0 where it stands
    double from;    ///< of the site's work
    double to;      ///< of the site's work
    double removal; ///< of the closure; 0 where the next site stands under it
};

/// How long the slowest party works at a site.
double elapsed(const Site& site);

/// The blocks where a shift has so much time on site [s].
std::vector<Block> blocks_of(std::span<const Site> sites, double time_on_site);

/// Time on site that a shift's blocks take.
double time_of(const Block& block);

/// The least time on site that needs no more shifts than the most that a shift may have.
double time_on_site_needed(std::span<const Site> sites, double plain, double most);

} // namespace scupper::work::detail
