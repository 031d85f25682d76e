#pragma once
// The shifts of an outing minute by minute: travel, closures, the work of every party, the meal.

#include "scupper/quantity.hpp"
#include "scupper/work/outing.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::work {

/// What a stretch of a shift is spent on.
enum class Spent { travel, briefing, wait, set_up, work, standby, meal, removal, idle };

/// The words of `Spent`, in its order.
inline constexpr std::array<std::string_view, 9> spent_names{
    "travel", "briefing", "wait", "set_up", "work", "standby", "meal", "removal", "idle"};

/// A piece of work of a party.
struct Task {
    std::string what; ///< [text] operation
    Time<> time;      ///< [s] on the clock
};

/// What a party does at a site, one thing after the other.
struct PartyTasks {
    std::string party;       ///< [text] its name; empty where one party does all
    std::vector<Task> tasks; ///< [-, n] in the order of the work
};

/// A structure on the way of an outing.
struct Site {
    std::string name;                ///< [text] structure
    std::vector<PartyTasks> parties; ///< [-, n] side by side; the slowest keeps the site going
    Time<> set_up, removal;          ///< [s] of its closure; 0 without one
    Time<> move;                     ///< [s] from the site before, in the same shift
    bool closure_stands = false;     ///< [-] the closure of the site before covers it
};

/// A stretch of a party's shift.
struct Segment {
    std::size_t shift;       ///< [-] number of the shift, from 0
    std::string party;       ///< [text] its name
    Spent spent;             ///< [-] on what
    std::string what;        ///< [text] operation; empty where it is no work
    std::string site;        ///< [text] structure; empty away from any
    Time<> start, end;       ///< [s] from the beginning of the shift
    std::size_t site_number; ///< [-] position of the site in the outing; of no site, their number
};

/// Where the hours of a person go; they add up to the paid hours.
using SpentTimes = std::array<Time<>, spent_names.size()>;

/// The shifts of an outing.
struct ShiftLayout {
    std::vector<Segment> segments;  ///< [-, n] by shift, party and time
    std::vector<Time<>> paid;       ///< [s] of a person, by shift
    std::vector<Time<>> overtime;   ///< [s] of it beyond the shift's length, by shift
    std::vector<std::size_t> stops; ///< [-] number of sites served, by shift
};

/// Lays out the shifts of an outing: half the travel, half the briefing and pack-up, the wait for
/// the window, then site after site, the meal once half of the shift is over. A closure is set up
/// once a shift, or once for all sites that stand under it. A site that fits into one shift is not
/// split. Shifts are as few as the overtime limit allows, and no overtime is worked beyond what that
/// takes, evenly over the shifts.
///
/// @param sites [-, n] in the order of the way
/// @param rules [s] the shift; its closure is that of each site
/// @return [s] segments; those of a party fill every shift in which it has work
/// Range: times >= 0.
/// Errors: InputError `work.no_time` naming the first site whose closure leaves no time for work
/// Source: common practice
/// Verified by: tests/cpp/work/test_shift_layout.cpp
ShiftLayout lay_out_shifts(std::span<const Site> sites, const Shift<double>& rules);

/// What a party spends its shifts on.
///
/// @param layout [s] the shifts
/// @param party [text] its name
/// @return [s] by `Spent`; they add up to the paid hours of the shifts in which it has work
/// Range: any party; one without work spends nothing.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/work/test_shift_layout.cpp
SpentTimes spent_times(const ShiftLayout& layout, std::string_view party);

} // namespace scupper::work
