#pragma once
// Records as columns: one a field, for files that hold columns and for other processes.

#include "scupper/structure.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace scupper::json {

/// A field of every record.
struct StructureColumn {
    std::string name; ///< [text] what tables call the field, with its SI unit: "length_m"
    /// Numbers, NaN where not recorded; whole numbers, no_code where not recorded; text [SI, n].
    std::variant<std::vector<double>, std::vector<std::int64_t>, std::vector<std::string>> values;
};

/// Every field of some records as columns; what was measured beyond a record is a document of its
/// own in the last, `given`.
///
/// @param structures [-, n] records
/// @return [SI, m] a column a field, also without records
/// Range: records that `write_structure` accepts.
/// Errors: as `write_structure`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_columns.cpp
std::vector<StructureColumn> structure_columns(std::span<const Structure> structures);

/// The records that columns hold.
///
/// @param columns [SI, m] as `structure_columns` gives them, in any order; a field that is left out
/// is not recorded
/// @return [-, n] the records, to the bit
/// Range: a column `structure_id`; columns of one length.
/// Errors: UnknownNameError `structures.column` for a name that is none; InputError
/// `structures.column` for a column of another kind, of another length, twice, or none of the
/// numbers; `structures.cell` for a value that cannot be; those of `read_structures`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_columns.cpp
std::vector<Structure> structures_of(std::span<const StructureColumn> columns);

} // namespace scupper::json
