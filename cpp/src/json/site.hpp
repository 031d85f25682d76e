#pragma once
// What a job says of sites, and of what slows work or costs money there.

#include "rows.hpp"

namespace scupper::json::detail {

/// A charge; without `when` and `per` of its own it has those of the surroundings of its name.
Resource read_charge(const Json& value, const std::string& path,
                     const std::vector<Surrounding>& surroundings);
/// Adds a charge for every surrounding that the document's values price and no charge names.
void add_priced_surroundings(const Json& doc, Job& job);
/// A pace with its factor.
Pace read_pace(const Json& value, const std::string& path, const std::string& source);
Json write_pace(const Pace& pace);
/// The shipped paces, the document's in place of those of the same name or after them.
std::vector<Pace> read_paces(const Json& doc, const std::string& path);
/// The shipped surroundings, the document's in place of those of the same name or after them.
std::vector<Surrounding> read_surroundings(const Json& doc, const std::string& path,
                                           const std::string& currency);
/// Structure number, or "every", to words.
std::map<std::string, std::vector<std::string>> read_site(const Json& doc, const std::string& path);
/// Paces, surroundings, site words and charges of a job into its document.
void write_site(const Job& job, Json& doc);

} // namespace scupper::json::detail
