#pragma once
// Values that a library has for a job.

#include "scupper/job/job.hpp"

namespace scupper::detail {

/// Gives a job a value where it has none of its own.
void fill_value(Job& job, const Setting& value);
/// Takes it away again; a value that is not the library's stays.
void clear_value(Job& job, const Setting& value);

} // namespace scupper::detail
