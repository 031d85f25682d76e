#include "text.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>

namespace scupper::inventory::detail {

namespace {

/// Whether a text has nothing to decode: eight bytes at a time.
bool is_plain(std::string_view text) {
    const auto odd = [](std::uint64_t word) {
        const bool beyond_ascii = (word & eight_of(static_cast<char>(0x80))) != 0;
        return beyond_ascii || any_is(word, '&') || any_is(word, '\'');
    };
    std::size_t at = 0;
    for (; at + 8 <= text.size(); at += 8) {
        if (odd(word_of(text.data() + at))) {
            return false;
        }
    }
    const std::size_t rest = text.size() - at; // read again with what stands before it
    const std::size_t from = text.size() >= 8 ? text.size() - 8 : 0;
    return rest == 0 || !odd(word_of(text.data() + from, text.size() - from));
}

/// The least code point a UTF-8 sequence of that many bytes may hold; less is an overlong form.
constexpr std::array<std::uint32_t, 5> least_code{0, 0, 0x80, 0x800, 0x10000};

bool is_scalar(std::uint32_t code) {
    return code <= 0x10FFFF && (code < 0xD800 || code > 0xDFFF);
}

/// How many bytes at `at` form one valid UTF-8 character; 0 where they do not.
std::size_t utf8_length(std::string_view s, std::size_t at) {
    const auto lead = static_cast<unsigned char>(s[at]);
    const std::size_t n = lead < 0x80 ? 1 : lead < 0xC0 ? 0 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    if (n <= 1 || lead > 0xF4 || at + n > s.size()) {
        return n == 1 ? 1 : 0;
    }
    std::uint32_t code = lead & (0x7FU >> n);
    for (std::size_t i = 1; i < n; ++i) {
        if (!is_continuation(s[at + i])) {
            return 0;
        }
        code = (code << 6U) | (static_cast<unsigned char>(s[at + i]) & 0x3FU);
    }
    return code >= least_code[n] && is_scalar(code) ? n : 0;
}

void append_utf8(std::string& out, std::uint32_t code) {
    const auto put = [&out](std::uint32_t byte) { out += static_cast<char>(byte); };
    if (code < 0x80) {
        put(code);
    } else if (code < 0x800) {
        put(0xC0U | (code >> 6U));
        put(0x80U | (code & 0x3FU));
    } else if (code < 0x10000) {
        put(0xE0U | (code >> 12U));
        put(0x80U | ((code >> 6U) & 0x3FU));
        put(0x80U | (code & 0x3FU));
    } else {
        put(0xF0U | (code >> 18U));
        put(0x80U | ((code >> 12U) & 0x3FU));
        put(0x80U | ((code >> 6U) & 0x3FU));
        put(0x80U | (code & 0x3FU));
    }
}

/// The character a numbered entity ("#39", "#x27") stands for; 0 where it is none.
std::uint32_t numbered(std::string_view name) {
    const bool hexadecimal = name.size() > 2 && (name[1] == 'x' || name[1] == 'X');
    const std::string_view digits = name.substr(hexadecimal ? 2 : 1);
    std::uint32_t code = 0;
    const char* const end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, code, hexadecimal ? 16 : 10);
    return error == std::errc{} && stop == end && is_scalar(code) ? code : 0;
}

/// The character an entity's name stands for; 0 where it is none.
std::uint32_t entity(std::string_view name) {
    static constexpr std::array<std::pair<std::string_view, char>, 5> named{
        {{"amp", '&'}, {"lt", '<'}, {"gt", '>'}, {"quot", '"'}, {"apos", '\''}}};
    for (const auto& [known, character] : named) {
        if (name == known) {
            return static_cast<unsigned char>(character);
        }
    }
    return name.size() > 1 && name.front() == '#' ? numbered(name) : 0;
}

std::string decode(std::string_view text) {
    constexpr std::size_t longest_name = 8;
    std::string out;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '&') {
            const std::size_t end = text.substr(at, longest_name + 2).find(';');
            const std::uint32_t code =
                end == std::string_view::npos ? 0 : entity(text.substr(at + 1, end - 1));
            if (code != 0) {
                append_utf8(out, code);
                at += end;
                continue;
            }
        }
        at += text.substr(at, 2) == "''" ? 1 : 0;
        out += text[at];
    }
    return out;
}

// Powers of ten up to 10^22 are exact, and so are whole numbers up to 10^15: their quotient is the
// nearest double.
constexpr std::array<double, 16> power{1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                       1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

/// Any form a decimal number may be written in, exponent and all.
std::optional<double> general_number(std::string_view field, unsigned implied) {
    double value = 0.0;
    const char* const end = field.data() + field.size();
    const auto [stop, error] = std::from_chars(field.data(), end, value);
    if (error != std::errc{} || stop != end || !std::isfinite(value)) {
        return std::nullopt;
    }
    const bool whole = field.find_first_of(".eE") == std::string_view::npos;
    return whole ? value / power[implied] : value;
}

} // namespace

std::string state_of(std::string_view code) {
    const bool digits =
        std::all_of(code.begin(), code.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (code.empty() || code.size() > 3 || !digits) {
        return {};
    }
    std::string state(code.substr(0, 2));
    state.insert(0, 2 - state.size(), '0');
    return state == "00" ? std::string{} : state;
}

RecordKind kind_of(std::string_view code) {
    if (code == "1") {
        return RecordKind::structure;
    }
    const bool under = code.size() == 1 && (code == "2" || (code[0] >= 'A' && code[0] <= 'Z'));
    return under ? RecordKind::route_under : RecordKind::unknown;
}

std::string to_utf8(std::string_view bytes) {
    if (is_plain(bytes)) {
        return std::string(bytes);
    }
    std::string out;
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t length = utf8_length(bytes, at);
        if (length == 0) {
            append_utf8(out, static_cast<unsigned char>(bytes[at]));
        }
        out.append(bytes, at, length);
        at += std::max<std::size_t>(length, 1);
    }
    return out;
}

void put_text(std::string_view field, bool plain, std::string& out) {
    field = trimmed(field);
    if (field.size() >= 2 && field.front() == '\'' && field.back() == '\'') {
        field = trimmed(field.substr(1, field.size() - 2)); // quoted twice by a second program
    }
    if (plain || is_plain(field)) {
        out.assign(field);
    } else {
        out = decode(to_utf8(field));
    }
}

std::string excerpt(std::string_view field) {
    constexpr std::size_t longest = 60;
    std::size_t length = std::min(field.size(), longest);
    while (length < field.size() && length > longest - 4 && is_continuation(field[length])) {
        --length;
    }
    return to_utf8(field.substr(0, length)) + (length < field.size() ? "..." : "");
}

std::optional<double> read_number(std::string_view field, unsigned implied) {
    std::uint64_t digits = 0;
    std::size_t point = field.size();
    std::size_t at = 0;
    for (; at < field.size(); ++at) {
        const unsigned digit = static_cast<unsigned char>(field[at]) - static_cast<unsigned>('0');
        if (digit < 10) {
            digits = digits * 10 + digit;
        } else if (field[at] == '.' && point == field.size() && at > 0) {
            point = at;
        } else {
            break;
        }
    }
    if (at != field.size() || at == 0 || at >= power.size()) {
        return general_number(field, implied);
    }
    const std::size_t decimals = point == at ? implied : at - point - 1;
    return static_cast<double>(digits) / power[decimals];
}

std::optional<int> read_integer(std::string_view field) {
    constexpr std::size_t digits_of_any_int = 9;
    int value = 0;
    std::size_t at = 0;
    for (; at < field.size() && at < digits_of_any_int && field[at] >= '0' && field[at] <= '9';
         ++at) {
        value = value * 10 + (field[at] - '0');
    }
    if (at == field.size() && at > 0) {
        return value;
    }
    const std::optional<double> number = read_number(field);
    if (!number || std::abs(*number) > 1e9 || *number != std::trunc(*number)) {
        return std::nullopt;
    }
    return static_cast<int>(*number);
}

} // namespace scupper::inventory::detail
