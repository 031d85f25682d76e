#include "context.hpp"

#include "scupper/error.hpp"
#include "scupper/unit/display.hpp"

namespace scupper::detail {

std::string quoted(std::string_view text) {
    return '"' + std::string(text) + '"';
}

void Context::fail(std::string_view word, std::string_view found, std::string_view advice) const {
    std::string allowed(advice);
    if (expected) {
        allowed += (allowed.empty() ? "" : "; ") + dimension_phrase(*expected);
    }
    if (allowed.empty()) {
        allowed = "a number and its unit, e.g. \"100 psi\"";
    }
    throw UnitError({"unit." + std::string(word), std::string(path), std::string(found), allowed});
}

} // namespace scupper::detail
