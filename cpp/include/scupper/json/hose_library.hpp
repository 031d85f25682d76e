#pragma once
// The hose library as a document. Every dimensional value is text with its unit.

#include "scupper/rates.hpp"

#include <string>
#include <string_view>

namespace scupper::json {

/// Reads a hose library.
///
/// @param text [text] a JSON document with `scupper_hoses`, `hoses`, `fittings`
/// @param name [text] what to call the document in errors
/// @return [-] hoses and fittings, each value with its origin
/// Range: UTF-8; a hose may do without coefficient and working pressure.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word` with
/// the nearest key or word; InputError `json.type`, `json.version`, `json.missing`, `hose.twice`
/// for a name used twice, `hose.bounds` where a value cannot be; UnitError of the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_hose_library.cpp
HoseLibrary read_hose_library(std::string_view text, std::string_view name);

/// Writes a hose library whole, every value in SI units with all its digits, so that reading it
/// back gives the same library.
///
/// @param library [-] hoses and fittings
/// @return [text] a JSON document
/// Range: any library.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_hose_library.cpp
std::string write_hose_library(const HoseLibrary& library);

/// The hoses and fittings that ship with the library [-].
const HoseLibrary& shipped_hose_library();

} // namespace scupper::json
