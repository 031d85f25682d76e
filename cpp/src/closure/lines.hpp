#pragma once
// Where the lines of devices of a lay-out run. Internal to the closure.

#include "scupper/closure/plan.hpp"

namespace scupper::closure::detail {

/// Whether a stretch is the one that the signs ahead of the closure stand in.
bool is_warning(const Element& e);
/// Station of the first stretch after the advance warning.
Length<> first_line(const Plan& plan);
/// Station of the first arrow board: the start of the first merging taper.
Length<> first_board(const Plan& plan);
/// Station of a shadow vehicle: its roll-ahead room before the work space.
Length<> shadow_station(const Plan& plan);

} // namespace scupper::closure::detail
