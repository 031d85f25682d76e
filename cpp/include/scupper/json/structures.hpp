#pragma once
// Measured structures in the project's own forms: a JSON document, a table, a CSV text. Any field
// of a record may be given, and whatever else a job may be told of a structure; that is measured
// and beats what would be inferred.

#include "scupper/inventory.hpp"
#include "scupper/structure.hpp"
#include "scupper/unit.hpp"

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// One row of a table of structures.
struct StructureRow {
    std::uint64_t line = 0;         ///< [-] line of its file, from 1
    std::vector<std::string> cells; ///< [text, n] by column; an empty one says nothing
};

/// Reads a list of structures.
///
/// @param text [text] a JSON document with `scupper_structures` and `structures`, each a record as
/// `write_structure` gives it; what is measured beyond the record stands in its `given`
/// @param name [text] what to call the document in errors
/// @return [-] the structures; what cannot be is a doubt and not recorded, a second structure of
/// the same state and number is rejected
/// Range: UTF-8; a key that is left out is not recorded.
/// Errors: as `read_structure`; InputError `json.version`, `json.missing` for a structure without a
/// number, `structures.state` for a state that is none, `structures.bounds` for a measured value
/// that cannot be.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structures.cpp
inventory::Inventory read_structures(std::string_view text, std::string_view name);

/// Writes a list of structures whole.
///
/// @param structures [-, n] records
/// @return [text] a JSON document that `read_structures` reads back to the bit
/// Range: records that `write_structure` accepts.
/// Errors: as `write_structure`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structures.cpp
std::string write_structures(std::span<const Structure> structures);

/// Reads a table of structures.
///
/// @param name [text] what to call the table in errors
/// @param headers [text, n] `structure_id`, `state` and any field of a record, with its unit:
/// `length_m`, `length_ft` or `length [ft]`; and any key or short name of an input:
/// `column.height [ft]`, `drain_count`
/// @param rows [-, m] numbers in the unit of the header, or text with a unit of its own
/// @return [-] the structures; rows that are none are rejected, cells that cannot be used are
/// doubts, both with line and reason
/// Range: UTF-8; numbers as `parse_quantity` takes them.
/// Errors: FileError `structures.header` without a column `structure_id`, or with one twice;
/// UnknownNameError `schema.key` for a header, with the nearest key; UnitError of the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_table.cpp
inventory::Inventory read_structure_table(std::string_view name,
                                          const std::vector<std::string>& headers,
                                          const std::vector<StructureRow>& rows);

/// Reads a table of structures from CSV text.
///
/// @param text [text] commas, CRLF or LF, double quotes around cells with commas, quotes or lines
/// @param name [text] what to call it in errors
/// @return [-] as `read_structure_table`
/// Range: UTF-8, with or without mark.
/// Errors: as `read_structure_table`; FileError `structures.csv` for a quote that is never closed.
/// Source: RFC 4180 (2005), section 2
/// Verified by: tests/cpp/json/test_structure_table.cpp
inventory::Inventory read_structure_csv(std::string_view text, std::string_view name);

/// The headers of a table to fill in: who a structure is, its dimensions and codes, and what no
/// record tells.
///
/// @param units [-] the units that stand in the headers
/// @return [text, n] headers that `read_structure_table` reads
/// Range: every system.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_table.cpp
std::vector<std::string> structure_headers(UnitSystem units);

/// What stands above a column of measured values: the key of an input and its unit.
///
/// @param key [text] key or short name of an input
/// @param units [-] the units that stand in the header
/// @return [text] "column.height [ft]"; a plain number has no unit
/// Range: inputs that may be measured at a structure.
/// Errors: UnknownNameError `schema.key` naming the nearest key.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_table.cpp
std::string measured_header(std::string_view key, UnitSystem units);

/// A document of one structure to fill in: every key with null.
///
/// @return [text] a JSON document that `read_structures` reads once the number is filled in
/// Range: the values state their unit.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structures.cpp
std::string structures_form();

/// The JSON Schema of a list of structures, built from the tables of keys that the reader uses.
///
/// @return [text] a JSON Schema, draft 2020-12
/// Range: it checks keys, words and the shape of values; units and bounds are checked where a
/// document is read.
/// Errors: none.
/// Source: JSON Schema, draft 2020-12, json-schema.org/draft/2020-12
/// Verified by: tests/cpp/json/test_structures.cpp, tests/python/test_structures.py
std::string structures_schema();

/// Reads an inventory in whatever form its first bytes show: a list of structures (JSON), a table
/// of structures (a header with `structure_id`), or the national inventory, old or of 2022 (JSON).
///
/// @param path [text] the file
/// @param progress [-] told how far the reading of a national inventory is; may be empty
/// @return [-] structures, rejected records and doubts
/// Range: as of each form.
/// Errors: as of each form; FileError `inventory.open` where the file cannot be read.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure_table.cpp
inventory::Inventory read_any_inventory(const std::filesystem::path& path,
                                        const inventory::Progress& progress = {});

} // namespace scupper::json
