#pragma once
// The record of a structure as part of a document.

#include "scupper/structure.hpp"
#include "values.hpp"

namespace scupper::json::detail {

/// What somebody may measure at a structure whatever the job.
Layout measurable();
/// The document of a record.
Json structure_document(const Structure& structure);
/// A record from its document.
Structure read_structure_document(const Json& doc, const std::string& path);
/// The document of what was measured at a structure.
Json given_document(const std::vector<GivenValue>& given);
/// What was measured, from its document.
std::vector<GivenValue> read_given(const Json& object, const std::string& path);
/// Throws where a listed structure has no number, a state that is none, or a measured value that
/// cannot be.
void check_listed(const Structure& structure, const std::string& path);
/// The text of a document; throws where some of its text is no UTF-8.
std::string utf8_dump(const Json& doc, const std::string& path);

} // namespace scupper::json::detail
