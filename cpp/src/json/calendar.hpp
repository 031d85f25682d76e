#pragma once
// Notices and the calendar of a job, read and written.

#include "rows.hpp"

namespace scupper::json::detail {

/// The notices of a job on top of the shipped ones: one of the same name takes its place.
std::vector<Notice> read_notices(const Json& doc, const std::string& path);
Json write_notices(const std::vector<Notice>& notices);

/// The member `calendar`; the usual calendar where there is none.
Calendar read_calendar(const Json& doc, const std::string& path);
Json write_calendar(const Calendar& calendar);

} // namespace scupper::json::detail
