#pragma once
// Steps of making a plan. Internal to the estimate.

#include "scupper/estimate/plan.hpp"
#include "scupper/takeoff.hpp"

#include <string>

namespace scupper::estimate::detail {

/// A value within the bounds of its field, or an error that names both.
Uncertain checked(const Uncertain& value, const LayoutField& field, const std::string& path);
/// The bit of a word in its vocabulary; none where it is another's.
template <std::size_t N>
std::uint32_t bit_of(const std::array<std::string_view, N>& words, std::string_view word) {
    const int index = index_of(words, word);
    return index < 0 ? 0u : 1u << static_cast<unsigned>(index);
}
/// Looks up what the job says of sites, paces and surroundings.
void plan_site(Plan& plan);
/// Looks up the words of operations, people and equipment.
void plan_operations(Plan& plan);
/// Looks up which people and pieces the closure's lay-out counts.
void plan_counts(Plan& plan);
/// Looks up which dirt and whose water every haul truck takes.
void plan_hauls(Plan& plan);
/// Refuses a haul truck that may carry nothing.
void require_payload(const Plan& plan);
/// Refuses water stated for what follows from the water of all the others.
void require_dry_trips(const Plan& plan);
/// Whether a job has a use for an input of a haul truck or of the wash water.
bool haul_needs(const Job& job, const std::string& key);
/// Works the rank correlations of the job into weights of normal scores; refuses what cannot be.
void plan_correlations(Plan& plan);
/// Lists every cost line that can arise, and lays out the figures.
void plan_lines(Plan& plan);
/// Fills the plan's stages, parties and the crews that people and equipment belong to.
void plan_stages(Plan& plan);

} // namespace scupper::estimate::detail
