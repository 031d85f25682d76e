// The days on which outings take place, and the overtime of their weeks.

#include "outing_parts.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/schedule.hpp"

#include <algorithm>
#include <bit>
#include <map>
#include <optional>

namespace scupper::estimate::detail {

namespace {

constexpr std::chrono::days furthest = std::chrono::days(3 * 366);

/// The calendar with every closed season that one of the structures has.
Calendar calendar_for(const Priced& priced, const Outing& outing) {
    const Plan& plan = *priced[outing.members.front()]->plan;
    Calendar calendar = plan.job.calendar;
    calendar.closed.clear();
    for (std::size_t s = 0; s < plan.seasons.size(); ++s) {
        const bool any =
            std::any_of(outing.members.begin(), outing.members.end(), [&](std::size_t i) {
                return holds(plan.seasons[s], priced[i]->resolved.model);
            });
        if (any) {
            calendar.closed.push_back(plan.job.calendar.closed[s]);
        }
    }
    return calendar;
}

/// The first day that the notices of all structures of an outing allow.
Date earliest_of(const Priced& priced, const Outing& outing, Date from) {
    for (const std::size_t i : outing.members) {
        if (const auto day = earliest_day(*priced[i])) {
            from = std::max(from, *day);
        }
    }
    return from;
}

/// Finds the day of a shift; the days before it are lost, each with its reason.
void put_day(const Priced& priced, const OutingRules& rules, const Calendar& calendar,
             std::size_t shift, Date from, Outing& outing) {
    const Estimate& first = *priced[outing.members.front()];
    const std::optional<work::Light> light = rules.daylight || calendar.daylight
                                                 ? light_for(first.structure, outing.layout, shift)
                                                 : std::nullopt;
    const Date earliest = earliest_of(priced, outing, from);
    for (Date day = from; day - from <= furthest; day += std::chrono::days(1)) {
        work::PlannedDay planned = work::use_of_day(calendar, earliest, day, rules.air, light);
        if (planned.use == work::DayUse::work) {
            outing.days.push_back(day);
            return;
        }
        outing.lost.push_back(std::move(planned));
    }
    throw InputError({"calendar.closed", outing.name, "no day of work in three years",
                      "a calendar with enough days of work, and of daylight where it is asked"});
}

/// Weeks begin on Monday; without days as many shifts make one as the calendar has days of work.
long week_of(const Outing& outing, std::size_t shift, std::size_t number, std::size_t days) {
    if (outing.days.empty()) {
        return static_cast<long>(number / days);
    }
    const long since_thursday = outing.days[shift].time_since_epoch().count(); // 1 January 1970
    return (since_thursday + 3) / 7;
}

} // namespace

void put_days(const Priced& priced, const OutingRules& rules, std::vector<Outing>& outings) {
    if (outings.empty()) {
        return;
    }
    const Plan& plan = *priced[outings.front().members.front()]->plan;
    std::optional<Date> next = rules.first ? rules.first : plan.job.calendar.asked;
    for (Outing& outing : outings) {
        const Calendar calendar = calendar_for(priced, outing);
        for (std::size_t s = 0; next && s < outing.layout.paid.size(); ++s) {
            put_day(priced, rules, calendar, s, *next, outing);
            next = outing.days.back() + std::chrono::days(1);
        }
    }
}

void put_overtime(const Plan& plan, const OutingRules& rules, std::vector<Outing>& outings) {
    std::map<long, std::vector<std::pair<Outing*, std::size_t>>> weeks;
    std::size_t number = 0;
    const auto days = static_cast<std::size_t>(std::popcount(plan.job.calendar.weekdays));
    for (Outing& outing : outings) {
        outing.overtime.resize(outing.layout.paid.size());
        for (std::size_t s = 0; s < outing.layout.paid.size(); ++s) {
            weeks[week_of(outing, s, number++, days)].emplace_back(&outing, s);
        }
    }
    for (const auto& [week, shifts] : weeks) {
        std::vector<Time<>> paid;
        for (const auto& [outing, s] : shifts) {
            paid.push_back(outing->layout.paid[s]);
        }
        const std::vector<Time<>> beyond = work::overtime_of_week(paid, rules.limits);
        for (std::size_t k = 0; k < shifts.size(); ++k) {
            const auto& [outing, s] = shifts[k];
            outing->overtime[s] = std::max(beyond[k], outing->layout.overtime[s]);
        }
    }
}

} // namespace scupper::estimate::detail
