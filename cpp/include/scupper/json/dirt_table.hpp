#pragma once
// The dirt table as a document. Every dimensional value is text with its unit.

#include "scupper/rates.hpp"

#include <string>
#include <string_view>

namespace scupper::json {

/// Reads a dirt table.
///
/// @param text [text] a JSON document with `scupper_dirt`, `kinds`, `build_up`, `street_loads`
/// @param name [text] what to call the document in errors
/// @return [-] densities, slopes and build-ups, each value with its origin
/// Range: UTF-8; a kind may do without an angle of repose.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word`,
/// `schema.key` with the nearest; InputError `json.type`, `json.version`, `json.missing`,
/// `dirt.twice` for a kind or word used twice, `dirt.bounds` where a value cannot be; UnitError of
/// the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_dirt_table.cpp
DirtTable read_dirt_table(std::string_view text, std::string_view name);

/// The dirt table that ships with the library [-].
const DirtTable& shipped_dirt_table();

} // namespace scupper::json
