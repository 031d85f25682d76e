#include "scupper/closure/queue.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::closure {
namespace {

/// A corner of the lines of arrivals and departures.
struct Corner {
    double time;
    double arrived;
    double served;
};

/// A queue shorter than this share of what came is a rounding of none.
constexpr double none_waiting = 1e-12;

/// What one stretch does to the vehicles that wait at its beginning; all in SI.
struct Stretch {
    double length, demand, capacity, waiting;

    double grows() const { return demand - capacity; }
    /// When the queue is gone, not after the end.
    double until_gone() const {
        return grows() < 0.0 ? std::min(length, waiting / -grows()) : length;
    }
    double at_end() const {
        const double left = waiting + grows() * length;
        return left > none_waiting * (waiting + demand * length) ? left : 0.0;
    }
    bool ends_within() const { return waiting > 0.0 && grows() < 0.0 && until_gone() < length; }
    bool queues() const { return waiting > 0.0 || grows() > 0.0; }
    double delay() const {
        if (ends_within()) {
            return 0.5 * waiting * until_gone();
        }
        return queues() ? 0.5 * (waiting + at_end()) * length : 0.0;
    }
    /// Vehicles that come while others wait, or find no room.
    double delayed() const {
        return queues() ? demand * (ends_within() ? until_gone() : length) : 0.0;
    }
};

void require(const Period& p) {
    detail::positive("period", p.length);
    detail::not_negative("demand", p.demand);
    detail::not_negative("capacity", p.capacity);
}

using CornerTime = double Corner::*;

/// When a line of corners reaches a number of vehicles: the first time, or the last.
double time_at(const std::vector<Corner>& corners, CornerTime line, double vehicles, bool last) {
    const auto below = [&](const Corner& c) {
        return last ? c.*line <= vehicles : c.*line < vehicles;
    };
    const auto after = std::partition_point(corners.begin(), corners.end(), below);
    if (after == corners.end()) {
        return corners.back().time;
    }
    if (after == corners.begin()) {
        return after->time;
    }
    const Corner& from = *(after - 1);
    const double rise = (*after).*line - from.*line;
    return from.time + (vehicles - from.*line) / rise * (after->time - from.time);
}

/// The greatest time between the two lines at one number of vehicles; it lies at a corner.
double longest_delay(const std::vector<Corner>& corners) {
    double longest = 0.0;
    const double all = corners.back().arrived;
    for (const Corner& corner : corners) {
        for (const double vehicles : {corner.arrived, corner.served}) {
            for (const bool last : {false, true}) {
                if (last && vehicles >= all) {
                    continue; // nobody comes after the last
                }
                const double came = time_at(corners, &Corner::arrived, vehicles, last);
                const double passed = time_at(corners, &Corner::served, vehicles, last);
                longest = std::max(longest, passed - came);
            }
        }
    }
    return longest;
}

/// Adds one stretch to the queue and its corners.
void add(const Stretch& s, std::vector<Corner>& corners, Queue& q) {
    const Corner from = corners.back();
    const double arrived = from.arrived + s.demand * s.length;
    const double end = from.time + s.length;
    if (s.ends_within()) {
        const double came = from.arrived + s.demand * s.until_gone();
        corners.push_back({from.time + s.until_gone(), came, came});
    }
    corners.push_back({end, arrived, arrived - s.at_end()});
    if (s.waiting > 0.0 && s.at_end() == 0.0) {
        q.cleared = Time<>(from.time + s.until_gone());
    }
    const double longest = std::max(s.waiting, s.at_end());
    if (longest > q.longest.si()) {
        q.longest = Count<>(longest);
        q.longest_at = Time<>(s.waiting >= s.at_end() ? from.time : end);
    }
    q.delay += VehicleTime<>(s.delay());
    q.delayed += Count<>(s.delayed());
    q.arrived = Count<>(arrived);
    q.left = Count<>(s.at_end());
    q.steps.push_back(
        {Time<>(end), Count<>(s.at_end()), Count<>(longest), VehicleTime<>(s.delay())});
}

} // namespace

Queue queue(std::span<const Period> periods) {
    Queue q;
    std::vector<Corner> corners{{0.0, 0.0, 0.0}};
    for (const Period& p : periods) {
        require(p);
        add({p.length.si(), p.demand.si(), p.capacity.si(), q.left.si()}, corners, q);
    }
    if (q.left > Count<>(0.0)) {
        q.cleared.reset();
    }
    q.longest_delay = Time<>(longest_delay(corners));
    return q;
}

template <class T>
Length<T> queue_length(const Count<T>& waiting,
                       const Quantity<dim::length / dim::count, T>& spacing, const T& lanes) {
    detail::not_negative("waiting", waiting);
    detail::positive("spacing", spacing);
    detail::positive("lanes", lanes);
    return waiting * spacing / lanes;
}

template Length<double> queue_length(const Count<double>&,
                                     const Quantity<dim::length / dim::count, double>&,
                                     const double&);
template Length<Traced> queue_length(const Count<Traced>&,
                                     const Quantity<dim::length / dim::count, Traced>&,
                                     const Traced&);

} // namespace scupper::closure
