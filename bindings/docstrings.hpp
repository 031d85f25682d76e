#pragma once
// The comments of the public headers as text for Python, from a source that docstrings.py writes: a
// changed comment compiles that one anew, not every binding.

#include <string_view>

namespace scupper {

/// The text of a public declaration's comment; where there is none, the module does not load.
const char* doc(std::string_view name);

} // namespace scupper
