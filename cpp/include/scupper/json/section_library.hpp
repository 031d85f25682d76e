#pragma once
// The section library as a document. Every dimensional value is text with its unit.

#include "scupper/rates.hpp"
#include "scupper/takeoff.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// Reads a section library.
///
/// @param text [text] a JSON document with `scupper_sections`, `sections`
/// @param name [text] what to call the document in errors
/// @return [-] sections with their outlines
/// Range: UTF-8; a section may do without a printed area.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word` with
/// the nearest; InputError `json.type`, `json.version`, `json.missing`, `section.twice` for a name
/// used twice, `section.bounds` where a length cannot be; UnitError of the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_section_library.cpp
takeoff::SectionLibrary read_section_library(std::string_view text, std::string_view name);

/// The sections that ship with the library [-].
const takeoff::SectionLibrary& shipped_sections();

/// What a survey says that names the section of a structure's girders.
///
/// @param name [text] name of a shipped section
/// @param source [text] who named it, for the origin of the values
/// @param path [text] where the name was written, for the error
/// @return [SI unit of each, n] measured values by key of the input schema
/// Range: any text.
/// Errors: UnknownNameError `girder.section` naming the nearest known section.
/// Source: `takeoff::dimensions_of`
/// Verified by: tests/cpp/json/test_section_library.cpp
std::vector<Setting> section_settings(std::string_view name, const std::string& source,
                                      const std::string& path);

} // namespace scupper::json
