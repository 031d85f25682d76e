#pragma once
// A season's programme: how often each component is cleaned, what a year of that takes, and whether
// the crews are enough.

#include "scupper/estimate/programme.hpp"

#include <map>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// How often components are cleaned, in times a year; one that is not named once.
using Frequency = std::map<std::string, double>;

/// Visits of one kind: they clean the same components.
struct Round {
    double per_year = 0.0;               ///< [-] visits to each structure in a year
    std::vector<std::string> components; ///< [text, n] cleaned in each of them
    Programme programme;                 ///< [-] one such visit to every structure
};

/// The rounds of a year: what is cleaned seldom is cleaned along with what is cleaned often.
///
/// Formula: of components cleaned f1 > f2 > ... > fm times a year, f1 - f2 visits clean the first
/// alone, f2 - f3 the first two, ..., fm all of them
/// @param job [-] the job; components that its service leaves out are in no round
/// @param frequency [-] times a year by component, > 0; 0.5 is every other year
/// @return [-, m] rounds without a programme, the one with fewest components first
/// Range: any frequencies; the visits of a year are f1.
/// Errors: UnknownNameError `season.component`; InputError `season.frequency` where it is not above
/// 0 and finite
/// Source: definition; seldom work along with frequent work is common practice
/// Verified by: tests/cpp/estimate/test_season.cpp
std::vector<Round> rounds_of(const Job& job, const Frequency& frequency);

/// The job of one round: its components at their service level, the others left out.
///
/// @param job [-] the job
/// @param round [-] one of its rounds
/// @return [-] the same job with less service
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_season.cpp
Job job_of(const Job& job, const Round& round);

/// A year of a programme.
struct Year {
    std::vector<Round> rounds;       ///< [-, m] by how much they clean
    std::vector<std::string> keys;   ///< figure of each column
    std::vector<double> totals;      ///< [SI unit of each figure] of a year, all structures
    std::vector<std::size_t> priced; ///< [-, n] positions that have a price in every round
    std::vector<double> table;       ///< [SI unit of each figure, n x keys] of a year, by row
};

/// What a year of cleaning takes, structure by structure.
///
/// Formula: sum over rounds of visits a year times the figures of a visit
/// @param structures [-, n] the records
/// @param job [-] the job
/// @param frequency [-] times a year by component
/// @param threads [-] how many; 0 for as many as the machine has
/// @param progress [-] told how far each round is; may be empty
/// @return [-] rounds and the sums of a year; the same bits for any number of threads
/// Range: structures without a price in one of the rounds are in no sum; each round's programme
/// names its own.
/// Errors: those of `rounds_of`, `make_plan` and `estimate_all`.
/// Source: definition
/// Verified by: tests/cpp/estimate/test_season.cpp
Year year_of(std::span<const Structure> structures, const Job& job, const Frequency& frequency,
             unsigned threads = 0, const RunProgress& progress = {});

/// How many days of work a calendar has.
///
/// @param calendar [-] weekdays, holidays, closed seasons; those with a condition count for all
/// @param first [-] the first day
/// @param last [-] the last day, in it
/// @return [each] days of work
/// Range: up to ten years.
/// Errors: InputError `calendar.season` where the last day lies before the first or beyond ten years
/// Source: definition
/// Verified by: tests/cpp/estimate/test_season.cpp
int days_of_work(const Calendar& calendar, Date first, Date last);

/// What crews can do in a season against what it takes.
struct SeasonLoad {
    int days = 0;               ///< [each] days of work
    double shifts_there = 0.0;  ///< [-] crew-shifts the crews have
    double shifts_needed = 0.0; ///< [-] crew-shifts that a year takes
    double hours_there = 0.0;   ///< [s] paid hours of a crew in those shifts
    double hours_needed = 0.0;  ///< [s] paid hours of a crew that a year takes
    double share = 0.0;         ///< [-] needed of what is there
};

/// Sets a year's work against the crews of a season.
///
/// Formula: there = crews x days less those that bad weather takes
/// @param year [-] the year
/// @param calendar [-] the days of work
/// @param first [-] the first day of the season
/// @param last [-] its last day
/// @param crews [each] how many, > 0
/// @param lost [-] share of days that weather takes, 0 to below 1
/// @param shift [s] paid length of a shift
/// @return [-] days, crew-shifts, crew-hours, and which share of them is needed
/// Range: one shift a day for each crew.
/// Errors: InputError `season.crews`, `season.lost`, `season.days` where there is no day of work;
/// those of `days_of_work`.
/// Source: definition
/// Verified by: tests/cpp/estimate/test_season.cpp
SeasonLoad season_load(const Year& year, const Calendar& calendar, Date first, Date last,
                       double crews, double lost, const Time<>& shift);

} // namespace scupper::estimate
