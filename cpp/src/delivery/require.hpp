#pragma once
// Refusals of the part: errors `delivery.<name>`.

#include <span>
#include <string>
#include <string_view>

namespace scupper::delivery::detail {

/// Throws InputError `delivery.<name>` with what was found and what is allowed.
[[noreturn]] void refuse(const std::string& name, const std::string& found,
                         const std::string& allowed);

inline void require(bool right, const std::string& name, const std::string& found,
                    const std::string& allowed) {
    if (!right) {
        refuse(name, found, allowed);
    }
}

/// Throws UnknownNameError `delivery.<name>` with the nearest of the words there are.
[[noreturn]] void unknown(const std::string& name, std::string_view word,
                          std::span<const std::string_view> known);

/// Throws InputError `delivery.<name>` with the number that was found.
[[noreturn]] void refuse(const std::string& name, double found, const std::string& allowed);

inline void require(bool right, const std::string& name, double found, const std::string& allowed) {
    if (!right) {
        refuse(name, found, allowed);
    }
}

} // namespace scupper::delivery::detail
