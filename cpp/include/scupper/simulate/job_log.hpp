#pragma once
// A log of finished jobs, and what each row of it says of the inputs of a price.

#include "scupper/estimate.hpp"
#include "scupper/inventory.hpp"
#include "scupper/simulate/shrinkage.hpp"

#include <cstdint>
#include <limits>
#include <map>
#include <string>
#include <vector>

namespace scupper::simulate {

/// The mark of a number that a row of a log does not hold.
inline constexpr double not_logged = std::numeric_limits<double>::quiet_NaN();

/// One row of a log: an operation at a structure, or the whole visit where no operation is named.
struct LogRow {
    std::uint64_t line = 0;            ///< [-] of the file, from 1
    std::string date;                  ///< [text] ISO 8601
    std::string structure;             ///< [text] structure number, or "state:number"
    std::string operation;             ///< [text] name of the operation; empty: the whole visit
    std::string crew;                  ///< [text] who did it; may be empty
    std::string agency;                ///< [text] for whom; may be empty
    double quantity = not_logged;      ///< [SI unit of its dimension] what was worked
    Dimension quantity_dimension{};    ///< of `quantity`
    double hours = not_logged;         ///< [s] of the crew on the clock, at work on site
    double water = not_logged;         ///< [m3] used
    double debris_volume = not_logged; ///< [m3] picked up, as loaded
    double debris_mass = not_logged;   ///< [kg] picked up, as weighed
    double loads = not_logged;         ///< [each] hauled
};

/// Something of a log that is not used, and why.
struct LogFault {
    std::uint64_t line = 0; ///< [-] of the file, from 1
    std::string column;     ///< [text] name of the column; empty: the whole row
    std::string found;      ///< [text] what stands there
    std::string reason;     ///< [text] why it is not used, or what would be right
};

/// A log as it was read: every row is in `rows` or has a fault without a column.
struct JobLog {
    std::string name;             ///< [text] what the log is called: its file
    std::uint64_t lines = 0;      ///< [-] rows that say anything, below the header
    std::vector<LogRow> rows;     ///< [-, n] that could be read
    std::vector<LogFault> faults; ///< [-, n] what could not
};

/// The key under which what is learned of the pace of all operations together stands.
inline constexpr std::string_view pace_key = "pace";
/// The key under which what is learned of the amount of dirt stands.
inline constexpr std::string_view debris_key = "debris";

/// Observations by the input they tell of.
struct Observations {
    std::map<std::string, std::vector<Observed>>
        by_key;                   ///< [-] key of an input, "pace" or "debris"
    std::vector<LogFault> faults; ///< [-, n] what says nothing, and why
    std::size_t used = 0;         ///< [-] rows that say something
};

/// What each row of a log says of the inputs of a job.
///
/// An hour of the log is one of the crew on the clock at the operation; pauses between come off by
/// the productive share, and what slowed the work at that structure comes off as the job prices it.
/// A row without a quantity has that of the structure's take-off under the job. Water of an operation
/// with a nozzle tells how long its trigger was open. A row without an operation is a whole visit:
/// its hours, without trips for water and to the dump, tell a pace common to all operations; its
/// debris, or else its loads, how much dirt there was.
/// Formula: time per unit = hours / (quantity hours by unit of time per unit); water per unit =
/// water / quantity; trigger share = water / (flow productive time); pace = (hours - trips) /
/// (predicted - trips); debris = seen / predicted
/// @param log [-] the log
/// @param plan [-] the job made ready
/// @param inventory [-] the structures it names; may lack those whose rows have a quantity
/// @return [-] logarithms by key; a fault for what says nothing
/// Range: any log; a row without an effect is a fault, never a zero.
/// Errors: those of `resolve`.
/// Source: definition
/// Verified by: tests/cpp/simulate/test_learning.cpp
Observations observe(const JobLog& log, const estimate::Plan& plan,
                     const inventory::Inventory& inventory);

} // namespace scupper::simulate
