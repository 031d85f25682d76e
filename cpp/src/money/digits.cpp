#include "scupper/money/digits.hpp"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <system_error>

namespace scupper::detail {

namespace {
bool all_digits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}
} // namespace

std::optional<std::string> ungrouped(std::string_view whole) {
    std::size_t comma = whole.find(',');
    const std::string_view head = whole.substr(0, comma);
    if (!all_digits(head)) {
        return std::nullopt;
    }
    std::string digits(head);
    // "0,123" is nearly always a decimal comma, so a group never follows a leading zero.
    if (comma != std::string_view::npos && (head.size() > 3 || head.front() == '0')) {
        return std::nullopt;
    }
    while (comma != std::string_view::npos) {
        const std::size_t next = whole.find(',', comma + 1);
        const std::string_view group =
            whole.substr(comma + 1, next == std::string_view::npos ? next : next - comma - 1);
        if (group.size() != 3 || !all_digits(group)) {
            return std::nullopt;
        }
        digits += group;
        comma = next;
    }
    return digits;
}

std::string grouped(std::string_view digits) {
    std::string text;
    for (std::size_t i = 0; i < digits.size(); ++i) {
        if (i > 0 && (digits.size() - i) % 3 == 0) {
            text += ',';
        }
        text += digits[i];
    }
    return text;
}

std::string comma_advice(std::string_view number) {
    if (std::count(number.begin(), number.end(), ',') != 1) {
        return "thousands in groups of three, \"1,234.5\", or no commas, \"1234.5\"";
    }
    std::string point;
    for (const char c : number) {
        if (c != '.') {
            point += c == ',' ? '.' : c;
        }
    }
    return "a decimal point, \"" + point + "\"; a comma only groups thousands, \"1,200\"";
}

std::optional<double> nearest_double(std::string_view plain) {
    double value = 0.0;
    const char* end = plain.data() + plain.size();
    const auto [rest, error] = std::from_chars(plain.data(), end, value);
    if (error != std::errc{} || rest != end) {
        return std::nullopt;
    }
    return value;
}

} // namespace scupper::detail
