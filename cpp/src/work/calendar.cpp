#include "scupper/work/calendar.hpp"

#include "scupper/error.hpp"
#include "scupper/work/daylight.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>

namespace scupper::work {

namespace {

using std::chrono::month_day;
using std::chrono::year_month_day;

constexpr std::chrono::days furthest = std::chrono::days(3 * 366);

bool is_within(const ClosedSeason& season, Date date) {
    const year_month_day ymd(date);
    const month_day today(ymd.month(), ymd.day());
    const bool begun = today >= season.first;
    const bool not_over = today <= season.last;
    return season.first <= season.last ? begun && not_over : begun || not_over;
}

bool is_weekday_of_work(const Calendar& calendar, Date date) {
    return (calendar.weekdays >> std::chrono::weekday(date).c_encoding() & 1U) != 0;
}

bool is_holiday(const Calendar& calendar, Date date) {
    return std::find(calendar.holidays.begin(), calendar.holidays.end(), date) !=
           calendar.holidays.end();
}

const ClosedSeason* season_on(const Calendar& calendar, Date date) {
    const auto found =
        std::find_if(calendar.closed.begin(), calendar.closed.end(),
                     [&](const ClosedSeason& season) { return is_within(season, date); });
    return found == calendar.closed.end() ? nullptr : &*found;
}

DayUse use_in_air(const Calendar& calendar, const Air& air) {
    if (air.lowest < calendar.least_air) {
        return DayUse::too_cold;
    }
    const bool freezing_soon = air.falling && air.lowest < calendar.least_falling_air;
    return freezing_soon ? DayUse::falling_air : DayUse::work;
}

[[noreturn]] void refuse_date(std::string_view text, std::string_view path, const char* allowed) {
    throw InputError(
        {"calendar.date", std::string(path), "\"" + std::string(text) + "\"", allowed});
}

/// Whole numbers of two or four digits between dashes; nothing where the text is anything else.
template <std::size_t N>
std::optional<std::array<int, N>> numbers_of(std::string_view text,
                                             const std::array<std::size_t, N>& lengths) {
    std::array<int, N> numbers{};
    for (std::size_t i = 0; i < N; ++i) {
        if (i > 0) {
            if (text.empty() || text.front() != '-') {
                return std::nullopt;
            }
            text.remove_prefix(1);
        }
        if (text.size() < lengths[i]) {
            return std::nullopt;
        }
        const char* end = text.data() + lengths[i];
        const auto [stop, error] = std::from_chars(text.data(), end, numbers[i]);
        if (error != std::errc{} || stop != end || text.front() == '-') {
            return std::nullopt;
        }
        text.remove_prefix(lengths[i]);
    }
    return text.empty() ? std::optional(numbers) : std::nullopt;
}

} // namespace

PlannedDay use_of_day(const Calendar& calendar, Date earliest, Date day, const AirByDay& air,
                      const std::optional<Light>& light) {
    PlannedDay planned{day, DayUse::work, {}, std::nullopt};
    const auto known = air.find(day);
    if (known != air.end()) {
        planned.air = known->second;
    }
    if (day < earliest) {
        planned.use = DayUse::before_notice;
    } else if (!is_weekday_of_work(calendar, day)) {
        planned.use = DayUse::weekday;
    } else if (is_holiday(calendar, day)) {
        planned.use = DayUse::holiday;
    } else if (const ClosedSeason* season = season_on(calendar, day)) {
        planned.use = DayUse::closed_season;
        planned.season = season->name;
    } else if (planned.air) {
        planned.use = use_in_air(calendar, *planned.air);
    }
    if (planned.use == DayUse::work && light && day_length(light->latitude, day) < light->needed) {
        planned.use = DayUse::too_dark;
    }
    return planned;
}

std::vector<PlannedDay> plan_days(const Calendar& calendar, Date earliest, int shifts,
                                  const AirByDay& air, const std::optional<Light>& light) {
    std::vector<PlannedDay> planned;
    for (Date day = earliest; shifts > 0; day += std::chrono::days(1)) {
        if (day - earliest > furthest) {
            throw InputError({"calendar.closed", "job.calendar",
                              std::to_string(shifts) + " shifts left after three years",
                              "a calendar with enough days of work"});
        }
        planned.push_back(use_of_day(calendar, earliest, day, air, light));
        shifts -= planned.back().use == DayUse::work ? 1 : 0;
    }
    return planned;
}

std::string date_text(Date day) {
    const year_month_day ymd(day);
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(ymd.year()),
                  static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()));
    return text.data();
}

Date parse_date(std::string_view text, std::string_view path) {
    const auto numbers = numbers_of<3>(text, {4, 2, 2});
    if (numbers) {
        const auto& [year, month, day] = *numbers;
        const year_month_day ymd(std::chrono::year(year),
                                 std::chrono::month(static_cast<unsigned>(month)),
                                 std::chrono::day(static_cast<unsigned>(day)));
        if (ymd.ok()) {
            return Date(ymd);
        }
    }
    refuse_date(text, path, "a day such as 2027-03-01");
}

month_day parse_month_day(std::string_view text, std::string_view path) {
    const auto numbers = numbers_of<2>(text, {2, 2});
    if (numbers) {
        const month_day day(std::chrono::month(static_cast<unsigned>((*numbers)[0])),
                            std::chrono::day(static_cast<unsigned>((*numbers)[1])));
        if (day.ok()) {
            return day;
        }
    }
    refuse_date(text, path, "month and day such as 04-01");
}

} // namespace scupper::work
