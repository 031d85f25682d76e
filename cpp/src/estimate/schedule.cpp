#include "scupper/estimate/schedule.hpp"

#include "scupper/estimate/shift_plan.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

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

/// The longest shift by daylight; nothing where the job may work in the dark.
std::optional<work::Light> light_of(const Estimate& e) {
    std::optional<work::Light> longest;
    if (!e.plan->job.calendar.daylight) {
        return longest;
    }
    for (const StageShifts& stage : shift_plan(e)) {
        for (std::size_t s = 0; s < stage.layout.paid.size(); ++s) {
            const auto light = light_for(e.structure, stage.layout, s);
            if (light && (!longest || longest->needed < light->needed)) {
                longest = light;
            }
        }
    }
    return longest;
}

} // namespace

std::optional<work::Light> light_for(const Structure& structure, const work::ShiftLayout& layout,
                                     std::size_t shift) {
    if (!std::isfinite(structure.latitude)) {
        return std::nullopt;
    }
    Time<> first = layout.paid[shift];
    Time<> last(0.0);
    for (const work::Segment& s : layout.segments) {
        if (s.shift == shift && !s.site.empty()) {
            first = std::min(first, s.start);
            last = std::max(last, s.end);
        }
    }
    const Angle<> latitude(structure.latitude * std::numbers::pi / 180.0);
    return work::Light{latitude, std::max(last - first, Time<>(0.0))};
}

std::optional<Date> earliest_day(const Estimate& e) {
    std::optional<Date> earliest = e.plan->job.calendar.asked;
    for (const NoticeGiven& given : notices_for(e)) {
        if (given.usual) {
            earliest = std::max(*earliest, *given.usual);
        }
    }
    return earliest;
}

Schedule schedule(const Estimate& e, const work::AirByDay& air) {
    Schedule plan;
    plan.notices = notices_for(e);
    plan.shifts = whole_shifts(e);
    plan.earliest = earliest_day(e);
    if (plan.earliest) {
        plan.days = work::plan_days(calendar_for(e), *plan.earliest, plan.shifts, air, light_of(e));
    }
    return plan;
}

} // namespace scupper::estimate
