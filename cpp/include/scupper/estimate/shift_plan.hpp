#pragma once
// The shifts of one structure: who does what when.

#include "scupper/estimate/estimate.hpp"
#include "scupper/work/shift_layout.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace scupper::estimate {

/// What a stage has to do at a structure: its parties with their operations, its closure.
///
/// @param estimate [-] an estimate
/// @param stage [-] row of the stage
/// @return [s] tasks in the order of the job's operations; no way to it, no closure shared
/// Range: stage < number of stages.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_shift_plan.cpp
work::Site site_of(const Estimate& estimate, std::size_t stage);

/// The shift of a stage at the values that are priced.
///
/// @param estimate [-] an estimate
/// @param stage [-] row of the stage
/// @return [s] its length and what it loses, overtime before another shift
/// Range: stage < number of stages. Only where structures have shifts of their own is there overtime.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_shift_plan.cpp
work::Shift<double> shift_rules(const Estimate& estimate, std::size_t stage);

/// The shifts of one stage.
struct StageShifts {
    std::string stage;        ///< [text] its name; empty where there is one for all
    work::ShiftLayout layout; ///< [s] shift by shift
};

/// The shifts of one structure, stage after stage, as if it shared them with no other. With shifts
/// of its own these are the shifts that are priced; where shifts are shared, their idle rest is what
/// is left for other structures.
///
/// @param estimate [-] an estimate
/// @return [-, n] by stage
/// Range: any estimate.
/// Errors: those of `lay_out_shifts`.
/// Source: common practice
/// Verified by: tests/cpp/estimate/test_shift_plan.cpp
std::vector<StageShifts> shift_plan(const Estimate& estimate);

} // namespace scupper::estimate
