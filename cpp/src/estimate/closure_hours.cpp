// The hours in which the road may be closed, where the job limits queue or delay.

#include "resolve_parts.hpp"
#include "traffic_facts.hpp"

#include <algorithm>

namespace scupper::estimate::detail {

namespace {

using namespace scupper::literals;

const Provenance& window_origin() {
    static const Provenance origin{"limits of queue and delay, deterministic queue", "",
                                   "longest run of permitted hours in the part of the day in which "
                                   "the crew works"};
    return origin;
}

/// The longest permitted run that begins in the part of the day; where all of it is permitted, the
/// hours after it count too.
Time<> hours_in_a_row(const std::array<std::size_t, closure::hours_a_day>& permitted,
                      const closure::HourSpan& part) {
    const closure::HourSpan window = closure::longest_window(permitted, part);
    const std::size_t hours =
        window.hours == part.hours ? permitted.at(window.first) : window.hours;
    return static_cast<double>(hours) * 1.0_h;
}

void shorten_window(std::size_t place, const Time<>& permitted, Resolved& r) {
    const double given = r.uncertain[place].guess.likely;
    if (permitted.si() < given) {
        r.uncertain[place] = certain(permitted.si(), Basis::inferred, &window_origin());
        r.values[place] = permitted.si();
        r.model.window_by_traffic = true;
    }
}

} // namespace

void put_window(const Structure& structure, Resolved& r) {
    r.model.window_by_traffic = false;
    if (!limits_traffic(r)) {
        return;
    }
    const Plan& plan = *r.model.plan;
    for (std::size_t row = 0; row < plan.stages.size(); ++row) {
        const closure::Kind kind = r.model.closures[row];
        if (!queues_at(kind)) {
            continue;
        }
        if (const auto facts = traffic_facts(structure, r, kind)) {
            const auto permitted =
                closure::permitted_hours(facts->day, queue_limits(r, facts->lanes));
            shorten_window(plan.stages[row].shift.window,
                           hours_in_a_row(permitted, part_of_day(plan.job)), r);
        }
    }
}

} // namespace scupper::estimate::detail
