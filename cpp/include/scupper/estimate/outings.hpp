#pragma once
// Several structures in one outing: neighbours in a shift, twins under one closure, weeks of shifts.

#include "scupper/estimate/estimate.hpp"
#include "scupper/work/calendar.hpp"
#include "scupper/work/overtime.hpp"
#include "scupper/work/shift_layout.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// Structures that are served together, in this order.
struct OutingGroup {
    std::string name;                    ///< [text] what people call it
    std::vector<std::string> structures; ///< [text, n] structure numbers or "state:number"
    bool one_closure = false;            ///< [-] one closure covers all of them
};

/// How structures are put together, and what a season's shifts cost besides their work.
struct OutingRules {
    std::vector<OutingGroup> groups; ///< [-, n] put together by hand; no structure in two
    Length<> within{0.0};            ///< [m] neighbours as the crow flies; 0: nobody is one
    std::size_t most = 0;            ///< [-] neighbours in one outing; 0: what fits a shift
    Length<> twins{0.0};             ///< [m] farthest a twin may lie; 0: twins are not looked for
    bool twins_one_closure = false;  ///< [-] one closure covers both twins
    double detour = 1.3;             ///< [-] way by road to the way of a crow
    Speed<> speed{13.4112};          ///< [m/s] between structures; 30 mph
    Time<> move{900.0};              ///< [s] from one to the next where a place is not recorded
    work::OvertimeLimits limits{};   ///< [s] plain hours of a day and of a week
    std::optional<double>
        cancelled{}; ///< [-] shifts called off for each one worked; else the job's
    std::optional<Time<>>
        show_up{};               ///< [s] paid for one; else the job's, else 3 h (2 to 4 are usual)
    std::optional<Date> first{}; ///< the first day; else the day of asking, else no days
    bool daylight = false;       ///< [-] all work on site by daylight, as the job may ask too
    work::AirByDay air{};        ///< [K] of the days on which it is known
};

/// What people and equipment of an outing, or of all of them, cost.
struct OutingCost {
    double labour = 0.0;    ///< [currency] paid hours at the plain wage
    double overtime = 0.0;  ///< [currency] what overtime costs beyond it
    double show_up = 0.0;   ///< [currency] expected pay for shifts called off
    double equipment = 0.0; ///< [currency]
};

/// Structures served together, with their shifts.
struct Outing {
    std::string name;                   ///< [text] of its group, or of its first structure
    std::string stage;                  ///< [text] empty where there is one for all
    std::size_t stage_row = 0;          ///< [-] row of the stage
    std::vector<std::size_t> members;   ///< [-, n] positions among the structures
    work::ShiftLayout layout;           ///< [s] shift by shift
    std::vector<Date> days;             ///< [-, n] of its shifts; empty where no first day is known
    std::vector<work::PlannedDay> lost; ///< [-, n] days before them without a shift, each with why
    std::vector<Time<>> overtime;       ///< [s] of each person, by shift
    double labour_hours = 0.0;          ///< [each s] paid
    OutingCost cost;                    ///< [currency] of its shifts
};

/// A list of structures as outings of one crew.
struct OutingPlan {
    std::shared_ptr<const Plan> plan; ///< [-] the job
    std::vector<Outing> outings;      ///< [-, n] one after the other
    OutingCost cost;                  ///< [currency] of all outings
    OutingCost alone;                 ///< [currency] had every structure shifts of its own
    double visits = 0.0;              ///< [currency] water, disposal, dump runs, charges, hauling
    double price = 0.0;               ///< [currency] all of it with the job's margins
    double price_alone = 0.0;         ///< [currency] had every structure shifts of its own
    double price_shared = 0.0;        ///< [currency] as each is estimated, by the job's sharing
    std::vector<std::pair<std::size_t, std::string>> unpriced; ///< [-, n] positions and reasons
};

/// Puts structures together and lays out the shifts of one crew that serves them one outing after
/// the other.
///
/// Groups come first, as they are listed, then twins: two structures over the same thing, near each
/// other, of which the records call one the right and one the left of a pair. Of the rest, in the order of their numbers, each takes the
/// nearest of its neighbours as long as all of them fit into one shift. People and equipment are
/// paid for whole shifts; those that only some structures need, as flaggers, for the shifts that
/// serve one of them.
/// @param structures [-, n] the records
/// @param plan [-] the job made ready
/// @param rules [-] how structures are put together
/// @return [-] the outings with hours and cost
/// Range: lists of a season: the search for neighbours takes time with the square of their number.
/// No outing begins before the notices of its structures allow, counted from the day of asking.
/// Errors: UnknownNameError `outing.structure` for a number that is not on the list; InputError
/// `outing.twice`, `outing.rules`, `calendar.closed`; those of `lay_out_shifts`.
/// Source: common practice
/// Verified by: tests/cpp/estimate/test_outings.cpp
OutingPlan plan_outings(std::span<const Structure> structures, std::shared_ptr<const Plan> plan,
                        const OutingRules& rules);

} // namespace scupper::estimate
