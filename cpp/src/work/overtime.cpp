#include "scupper/work/overtime.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <string>

namespace scupper::work {

std::vector<Time<>> overtime_of_week(std::span<const Time<>> paid, const OvertimeLimits& limits) {
    const double by_day = limits.day.si();
    const double by_week = limits.week.si();
    if (!(by_day > 0.0) || !(by_week > 0.0)) {
        throw InputError({"work.overtime_limit", "limits",
                          std::to_string(std::min(by_day, by_week)) + " s", "above 0"});
    }
    std::vector<Time<>> overtime;
    double plain = 0.0;
    for (const Time<>& shift : paid) {
        const double daily = std::max(shift.si() - by_day, 0.0);
        const double rest = shift.si() - daily;
        const double weekly = std::clamp(plain + rest - by_week, 0.0, rest);
        plain += rest;
        overtime.emplace_back(daily + weekly);
    }
    return overtime;
}

template <class T>
Time<T> expected_show_up(const T& shifts, const T& cancelled, const Time<T>& show_up) {
    return shifts * cancelled * show_up;
}

template Time<double> expected_show_up(const double&, const double&, const Time<double>&);
template Time<Traced> expected_show_up(const Traced&, const Traced&, const Time<Traced>&);

} // namespace scupper::work
