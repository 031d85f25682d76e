#pragma once
// The schema of what a job says of sites, surroundings, paces and alternatives.

#include "schema_forms.hpp"

namespace scupper::json::detail::forms {

/// A list of conditions.
Form conditions();
/// Structure number, or "every", to what is known of the site.
Form site();
Form charge();
Form pace();
Form surrounding();
Form alternative();

} // namespace scupper::json::detail::forms
