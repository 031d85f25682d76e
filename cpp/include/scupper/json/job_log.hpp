#pragma once
// Logs of finished jobs as tables and CSV text.

#include "scupper/simulate/job_log.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// Columns of a log. A number stands in the unit of its header ("water [gal]") or has its own.
inline constexpr std::array<std::string_view, 12> log_columns{
    "date",         // of the work, as 2026-05-18
    "structure_id", // structure number, or "state:number"
    "operation",    // name of the operation; empty for the whole visit
    "crew",         // who did it
    "agency",       // for whom
    "quantity",     // what was worked; without it the take-off of the structure counts
    "unit",         // of a quantity that is a bare number
    "hours",        // of the crew on the clock, at work on site; bare numbers are hours
    "water",        // used by the operation
    "debris",       // of the whole visit, by volume or weight
    "loads",        // of the whole visit
    "note",         // free text, not used
};

/// One row of a log.
struct LogCells {
    std::uint64_t line = 0;         ///< [-] line of its file, from 1
    std::vector<std::string> cells; ///< [text, n] by column; an empty one says nothing
};

/// Reads a log of finished jobs.
///
/// @param name [text] what to call the log in errors
/// @param headers [text, n] some of `log_columns`, with a unit in brackets where one is due
/// @param rows [-, m] by header
/// @return [-] the log; a cell that cannot be read is a fault with line and column, a row that has too
/// many or too few cells a fault with its line
/// Range: UTF-8; numbers as `parse_quantity` takes them. A bound ("> 4") is no amount.
/// Errors: FileError `log.header` for a column that is unknown, stands twice or has the wrong unit,
/// and where there are neither structures nor operations, or no amounts.
/// Source: own convention
/// Verified by: tests/python/test_learning.py
simulate::JobLog read_job_log(std::string_view name, const std::vector<std::string>& headers,
                              const std::vector<LogCells>& rows);

/// Reads a log of finished jobs from CSV text with a header row.
///
/// @param text [text] as RFC 4180 has it
/// @param name [text] what to call the log in errors
/// @return [-] as `read_job_log`; blank lines are passed over
/// Range: UTF-8.
/// Errors: as `read_job_log`; FileError `structures.csv` for a quote that is never closed.
/// Source: own convention; RFC 4180 (2005)
/// Verified by: tests/python/test_learning.py
simulate::JobLog read_job_log_csv(std::string_view text, std::string_view name);

} // namespace scupper::json
