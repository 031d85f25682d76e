#pragma once
// How traffic meets a closure, in a job's document. Internal to documents.

#include "rows.hpp"

namespace scupper::json::detail {

/// The `traffic` of a job; as the record says where it is absent.
Traffic read_traffic(const Json& doc, const std::string& path);
/// The same as a document; shares in percent.
Json write_traffic(const Traffic& traffic);

} // namespace scupper::json::detail
