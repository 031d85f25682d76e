#include "scupper/estimate/schedule.hpp"

#include <algorithm>

namespace scupper::estimate {

namespace {

using std::chrono::days;

/// Shifts that share no day with another structure.
int whole_shifts(const Estimate& e) {
    if (e.plan->job.stages.empty()) {
        return static_cast<int>(count_up(e.figure("shift.count")));
    }
    double shifts = 0.0;
    for (const PlannedStage& stage : e.plan->stages) {
        shifts += count_up(e.figure("crew[" + stage.name + "].shifts"));
    }
    return static_cast<int>(shifts);
}

std::vector<NoticeGiven> notices_for(const Estimate& e) {
    std::vector<NoticeGiven> given;
    const std::optional<Date>& asked = e.plan->job.calendar.asked;
    for (std::size_t i = 0; i < e.plan->notices.size(); ++i) {
        if (!holds(e.plan->notices[i], e.resolved.model)) {
            continue;
        }
        const Notice& notice = e.plan->job.notices[i];
        given.push_back({notice, {}, {}});
        if (asked) {
            given.back().usual = *asked + days(notice.usual);
            given.back().longest = *asked + days(notice.longest);
        }
    }
    return given;
}

/// The calendar with the closed seasons that this structure has.
Calendar calendar_for(const Estimate& e) {
    Calendar calendar = e.plan->job.calendar;
    calendar.closed.clear();
    for (std::size_t i = 0; i < e.plan->seasons.size(); ++i) {
        if (holds(e.plan->seasons[i], e.resolved.model)) {
            calendar.closed.push_back(e.plan->job.calendar.closed[i]);
        }
    }
    return calendar;
}

} // namespace

Schedule schedule(const Estimate& e, const work::AirByDay& air) {
    Schedule plan;
    plan.notices = notices_for(e);
    plan.shifts = whole_shifts(e);
    plan.earliest = e.plan->job.calendar.asked;
    if (!plan.earliest) {
        return plan;
    }
    for (const NoticeGiven& given : plan.notices) {
        plan.earliest = std::max(*plan.earliest, *given.usual);
    }
    plan.days = work::plan_days(calendar_for(e), *plan.earliest, plan.shifts, air);
    return plan;
}

} // namespace scupper::estimate
