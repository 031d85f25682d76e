#pragma once
// What stands beside the values of a job, read and written: terms of the contract, how often
// components are cleaned, which inputs vary together.

#include "rows.hpp"

namespace scupper::json::detail {

/// The member `terms`; none of them where it is not there.
Terms read_terms(const Json& doc, const std::string& path);
Json write_terms(const Terms& terms);

/// The member `frequency`: component to times a year.
std::map<std::string, double> read_frequency(const Json& doc, const std::string& path);

/// The member `correlations`: inputs that vary together.
std::vector<Correlation> read_correlations(const Json& doc, const std::string& name);
Json write_correlations(const std::vector<Correlation>& correlations);

} // namespace scupper::json::detail
