#pragma once
// A structure's record as JSON: everything it says, so that reading it back gives the same record.

#include "scupper/structure.hpp"

#include <string>
#include <string_view>

namespace scupper::json {

/// Writes the record of a structure whole.
///
/// Dimensions are text with their SI unit and all digits, codes are numbers, what the record does
/// not give is null. Of measured values the origin is left out.
/// @param structure [-] a record
/// @return [text] a JSON document
/// Range: text in UTF-8; measured values of dimensions and quantities.
/// Errors: InputError `json.text` for text that is no UTF-8; UnknownNameError `schema.key` for a
/// measured value of another key.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure.cpp
std::string write_structure(const Structure& structure);

/// Reads the record of a structure.
///
/// @param text [text] a JSON document as `write_structure` gives it
/// @param name [text] what to call the document in errors
/// @return [-] the record, to the bit
/// Range: UTF-8; a key that is left out is not recorded.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key` with the nearest
/// key; InputError `json.type`, `json.word`; UnitError of the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_structure.cpp
Structure read_structure(std::string_view text, std::string_view name);

} // namespace scupper::json
