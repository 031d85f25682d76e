#pragma once
// Terms of a contract beside the price, and how often components are cleaned, read and written.

#include "rows.hpp"

namespace scupper::json::detail {

/// The member `terms`; none of them where it is not there.
Terms read_terms(const Json& doc, const std::string& path);
Json write_terms(const Terms& terms);

/// The member `frequency`: component to times a year.
std::map<std::string, double> read_frequency(const Json& doc, const std::string& path);

} // namespace scupper::json::detail
