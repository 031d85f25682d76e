#include "scupper/closure/windows.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <limits>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr double unlimited = std::numeric_limits<double>::infinity();

bool is_within(const Queue& q, const QueueLimits& limits) {
    return q.longest <= limits.waiting * (1.0 + count_slack) &&
           q.longest_delay <= limits.delay * (1.0 + count_slack);
}

bool never_queues(const TrafficDay& day) {
    return std::all_of(day.demand.begin(), day.demand.end(),
                       [&](const TrafficFlow<>& hour) { return hour <= day.closed; });
}

/// The most hours from one on, by halving: n hours are within the limits, n + 1 are not.
std::size_t hours_from(std::size_t first, const TrafficDay& day, const QueueLimits& limits) {
    std::size_t good = 0;
    std::size_t bad = hours_a_day + 1;
    while (bad - good > 1) {
        const std::size_t middle = (good + bad) / 2;
        (is_within(closure_queue(day, first, static_cast<double>(middle) * 1.0_h), limits) ? good
                                                                                           : bad) =
            middle;
    }
    return good;
}

void require_limit(const char* name, double limit) {
    if (!(limit >= 0.0)) {
        detail::refuse(name, limit, ">= 0");
    }
}

} // namespace

QueueLimits no_limits() {
    return {Count<>(unlimited), Time<>(unlimited)};
}

std::vector<Period> closure_periods(const TrafficDay& day, std::size_t first,
                                    const Time<>& closed) {
    const double whole = closed.in(1.0_h);
    if (first >= hours_a_day) {
        detail::refuse("first", static_cast<double>(first), "an hour from 0 to 23");
    }
    if (!(whole >= 0.0 && whole <= hours_a_day * (1.0 + count_slack))) {
        detail::refuse("closed", whole, "0 to 24 h");
    }
    std::vector<Period> periods;
    periods.reserve(hours_a_day + 1);
    for (std::size_t i = 0; i < hours_a_day; ++i) {
        const TrafficFlow<> demand = day.demand.at((first + i) % hours_a_day);
        const double share = std::clamp(whole - static_cast<double>(i), 0.0, 1.0);
        if (share > 0.0) {
            periods.push_back({share * 1.0_h, demand, day.closed});
        }
        if (share < 1.0) {
            periods.push_back({(1.0 - share) * 1.0_h, demand, day.open});
        }
    }
    return periods;
}

Queue closure_queue(const TrafficDay& day, std::size_t first, const Time<>& closed) {
    return queue(closure_periods(day, first, closed));
}

std::array<std::size_t, hours_a_day> permitted_hours(const TrafficDay& day,
                                                     const QueueLimits& limits) {
    require_limit("queue_limit", limits.waiting.si());
    require_limit("delay_limit", limits.delay.si());
    std::array<std::size_t, hours_a_day> permitted{};
    permitted.fill(hours_a_day);
    if (never_queues(day)) {
        return permitted;
    }
    for (std::size_t first = 0; first < hours_a_day; ++first) {
        permitted.at(first) = hours_from(first, day, limits);
    }
    return permitted;
}

HourSpan longest_window(const std::array<std::size_t, hours_a_day>& permitted,
                        const HourSpan& within) {
    HourSpan longest{within.first, 0};
    const bool whole_day = within.hours == hours_a_day;
    for (std::size_t i = 0; i < within.hours; ++i) {
        const std::size_t first = (within.first + i) % hours_a_day;
        const std::size_t room = whole_day ? hours_a_day : within.hours - i;
        const std::size_t hours = std::min(permitted.at(first), room);
        if (hours > longest.hours) {
            longest = {first, hours};
        }
    }
    return longest;
}

} // namespace scupper::closure
