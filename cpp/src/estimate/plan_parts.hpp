#pragma once
// Steps of making a plan. Internal to the estimate.

#include "scupper/estimate/plan.hpp"
#include "scupper/takeoff.hpp"

#include <string>

namespace scupper::estimate::detail {

/// A value within the bounds of its field, or an error that names both.
Uncertain checked(const Uncertain& value, const LayoutField& field, const std::string& path);
/// Looks up the words of operations, people and equipment.
void plan_operations(Plan& plan);
/// Lists every cost line that can arise, and lays out the figures.
void plan_lines(Plan& plan);
/// Fills the plan's stages, parties and the crews that people and equipment belong to.
void plan_stages(Plan& plan);

} // namespace scupper::estimate::detail
