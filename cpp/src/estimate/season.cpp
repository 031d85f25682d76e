#include "scupper/estimate/season.hpp"

#include "scupper/error.hpp"
#include "scupper/estimate/fixed_total.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <set>
#include <string_view>

namespace scupper::estimate {

namespace {

constexpr std::chrono::days ten_years = std::chrono::days(3653);

double times_a_year(const Frequency& frequency, const std::string& component) {
    const auto found = frequency.find(component);
    return found == frequency.end() ? 1.0 : found->second;
}

void check(const Frequency& frequency) {
    for (const auto& [component, times] : frequency) {
        if (index_of(component_names, component) < 0) {
            throw UnknownNameError({"season.component", "frequency", "\"" + component + "\"",
                                    "\"" + nearest_name(component, component_names) + "\"?"});
        }
        if (!(times > 0.0) || !std::isfinite(times)) {
            throw InputError({"season.frequency", "frequency." + component, std::to_string(times),
                              "times a year, above 0"});
        }
    }
}

/// The components a job cleans, in the order of the vocabulary.
std::vector<std::string> cleaned(const Job& job) {
    std::vector<std::string> components;
    for (const std::string_view name : component_names) {
        if (service_level(job, std::string(name)) != "none") {
            components.emplace_back(name);
        }
    }
    return components;
}

/// The position among a programme's rows by position among the structures.
std::vector<std::optional<std::size_t>> rows_of(const Programme& programme, std::size_t size) {
    std::vector<std::optional<std::size_t>> rows(size);
    for (std::size_t row = 0; row < programme.priced.size(); ++row) {
        const std::size_t position = programme.priced[row];
        rows[position] = row;
    }
    return rows;
}

/// The sums of one structure over the rounds; none where a round has no price for it.
std::optional<std::vector<double>>
row_of_year(const std::vector<Round>& rounds,
            const std::vector<std::vector<std::optional<std::size_t>>>& rows, std::size_t i,
            std::size_t width) {
    std::vector<double> sums(width, 0.0);
    for (std::size_t r = 0; r < rounds.size(); ++r) {
        if (!rows[r][i]) {
            return std::nullopt;
        }
        const std::vector<double>& table = rounds[r].programme.table;
        for (std::size_t k = 0; k < width; ++k) {
            sums[k] += rounds[r].per_year * table[*rows[r][i] * width + k];
        }
    }
    return sums;
}

void sum_up(Year& year, std::size_t structures) {
    year.keys = programme_keys();
    const std::size_t width = year.keys.size();
    std::vector<std::vector<std::optional<std::size_t>>> rows;
    for (const Round& round : year.rounds) {
        rows.push_back(rows_of(round.programme, structures));
    }
    std::vector<FixedTotal> totals(width);
    for (std::size_t i = 0; i < structures; ++i) {
        const auto sums = row_of_year(year.rounds, rows, i, width);
        if (!sums) {
            continue;
        }
        year.priced.push_back(i);
        for (std::size_t k = 0; k < width; ++k) {
            year.table.push_back((*sums)[k]);
            totals[k].add((*sums)[k]);
        }
    }
    for (const FixedTotal& total : totals) {
        year.totals.push_back(total.value());
    }
}

double total_of(const Year& year, std::string_view key) {
    const auto found = std::find(year.keys.begin(), year.keys.end(), key);
    return year.totals[static_cast<std::size_t>(found - year.keys.begin())];
}

} // namespace

std::vector<Round> rounds_of(const Job& job, const Frequency& frequency) {
    check(frequency);
    const std::vector<std::string> components = cleaned(job);
    std::set<double, std::greater<>> rates;
    for (const std::string& c : components) {
        rates.insert(times_a_year(frequency, c));
    }
    std::vector<Round> rounds;
    for (auto rate = rates.begin(); rate != rates.end(); ++rate) {
        const auto next = std::next(rate);
        Round round{*rate - (next == rates.end() ? 0.0 : *next), {}, {}};
        for (const std::string& c : components) {
            if (times_a_year(frequency, c) >= *rate) {
                round.components.push_back(c);
            }
        }
        rounds.push_back(std::move(round));
    }
    return rounds;
}

Job job_of(const Job& job, const Round& round) {
    Job due = job;
    for (auto& [component, level] : due.service) {
        const auto& in = round.components;
        if (std::find(in.begin(), in.end(), component) == in.end()) {
            level = "none";
        }
    }
    return due;
}

Year year_of(std::span<const Structure> structures, const Job& job, const Frequency& frequency,
             unsigned threads, const RunProgress& progress) {
    Year year;
    year.rounds = rounds_of(job, frequency);
    for (Round& round : year.rounds) {
        round.programme =
            estimate_all(structures, make_plan(job_of(job, round)), threads, progress);
    }
    sum_up(year, structures.size());
    return year;
}

int days_of_work(const Calendar& calendar, Date first, Date last) {
    if (last < first || last - first > ten_years) {
        throw InputError({"calendar.season", "season",
                          work::date_text(first) + " to " + work::date_text(last),
                          "a last day after the first, within ten years"});
    }
    int days = 0;
    for (Date day = first; day <= last; day += std::chrono::days(1)) {
        days += work::use_of_day(calendar, first, day, {}).use == work::DayUse::work ? 1 : 0;
    }
    return days;
}

SeasonLoad season_load(const Year& year, const Calendar& calendar, Date first, Date last,
                       double crews, double lost, const Time<>& shift) {
    if (!(crews > 0.0) || !std::isfinite(crews)) {
        throw InputError({"season.crews", "crews", std::to_string(crews), "above 0"});
    }
    if (!(lost >= 0.0 && lost < 1.0)) {
        throw InputError({"season.lost", "lost", std::to_string(lost), "0 to below 1"});
    }
    SeasonLoad load;
    load.days = days_of_work(calendar, first, last);
    load.shifts_there = crews * load.days * (1.0 - lost);
    load.shifts_needed = total_of(year, "shift.count");
    load.hours_there = load.shifts_there * shift.si();
    load.hours_needed = total_of(year, "hours.paid");
    if (load.days == 0) {
        throw InputError(
            {"season.days", "season",
             work::date_text(first) + " to " + work::date_text(last) + " without a day of work",
             "a season with days of work"});
    }
    load.share = load.hours_needed / load.hours_there;
    return load;
}

} // namespace scupper::estimate
