#include "scupper/unit/format.hpp"

#include "scupper/error.hpp"
#include "scupper/money/digits.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace scupper {

namespace {
template <class... Format>
std::string chars_of(double value, Format... format) {
    std::array<char, 400> buffer{};
    const auto result =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format...);
    return {buffer.data(), result.ptr};
}

/// The digits of a number rounded to so many significant ones.
std::string rounded_digits(double value, int significant_digits) {
    std::string scientific = chars_of(value, std::chars_format::scientific, significant_digits - 1);
    const double near = *detail::nearest_double(scientific);
    const bool plain = near == 0.0 || (std::abs(near) >= 1e-5 && std::abs(near) < 1e15);
    return chars_of(near, plain ? std::chars_format::fixed : std::chars_format::scientific);
}

std::string grouped_number(const std::string& digits) {
    const std::size_t sign = digits.starts_with('-') ? 1 : 0;
    const std::size_t end = std::min(digits.find_first_of(".e"), digits.size());
    return digits.substr(0, sign) + detail::grouped(digits.substr(sign, end - sign)) +
           digits.substr(end);
}
} // namespace

std::string format_number(double value, int significant_digits) {
    if (significant_digits < 1 || significant_digits > 15) {
        throw UnitError(
            {"unit.digits", "significant_digits", std::to_string(significant_digits), "1 to 15"});
    }
    if (!std::isfinite(value)) {
        throw UnitError({"unit.number", "", std::to_string(value), "a finite number to show"});
    }
    const double positive_zero = value == 0.0 ? 0.0 : value;
    return grouped_number(rounded_digits(positive_zero, significant_digits));
}

std::string format_quantity(double si, const Unit& unit, int significant_digits) {
    const std::string number = format_number(to_unit(si, unit), significant_digits);
    return unit.name == "1" ? number : number + ' ' + unit.name;
}

std::string format_quantity(double si, std::string_view unit_text, int significant_digits) {
    return format_quantity(si, parse_unit(unit_text, "unit"), significant_digits);
}

} // namespace scupper
