#include "require.hpp"

#include "scupper/error.hpp"

#include <array>
#include <cstdio>
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

std::string number(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.9g", value);
    return text.data();
}

} // namespace scupper::delivery::detail
