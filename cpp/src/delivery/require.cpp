#include "require.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"

#include <cmath>
#include <vector>

namespace scupper::delivery::detail {

void refuse(const std::string& name, const std::string& found, const std::string& allowed) {
    throw InputError({"delivery." + name, name, found, allowed});
}

void unknown(const std::string& name, std::string_view word,
             std::span<const std::string_view> known) {
    const std::string near =
        nearest_name(word, std::vector<std::string_view>(known.begin(), known.end()));
    std::string all;
    for (const std::string_view k : known) {
        all += (all.empty() ? "" : ", ") + std::string(k);
    }
    throw UnknownNameError({"delivery." + name, name, "\"" + std::string(word) + "\"",
                            near.empty() ? all : "\"" + near + "\"?"});
}

void refuse(const std::string& name, double found, const std::string& allowed) {
    refuse(name, std::isfinite(found) ? format_number(found, 9) : "no finite number", allowed);
}

} // namespace scupper::delivery::detail
