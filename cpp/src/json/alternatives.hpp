#pragma once
// Alternatives of a job's document: the shipped ones, changed or added to.

#include "rows.hpp"

namespace scupper::json::detail {

/// The shipped alternatives, each with what the document says of one of its name; then its own.
std::vector<Alternative> read_alternatives(const Json& doc, const Job& job,
                                           const std::string& path);
Json write_alternatives(const Job& job);

} // namespace scupper::json::detail
