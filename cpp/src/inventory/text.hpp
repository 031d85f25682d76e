#pragma once
// Text and numbers as the files hold them.

#include "bytes.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace scupper::inventory::detail {

/// Without blanks at either end. In the header, as every field passes through it.
inline std::string_view trimmed(std::string_view text) {
    const auto is_blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
    while (text.size() >= 8 && word_of(text.data() + text.size() - 8) == eight_of(' ')) {
        text.remove_suffix(8); // padding, of which there is much
    }
    while (!text.empty() && is_blank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && is_blank(text.back())) {
        text.remove_suffix(1);
    }
    return text;
}

/// Two digits of a state: a dropped zero is put back, the region digit of the three-digit form
/// goes; empty where it is no state code.
std::string state_of(std::string_view code);

/// What item 5A makes of a record.
enum class RecordKind { structure, route_under, unknown };
RecordKind kind_of(std::string_view code);

/// A byte of UTF-8 that begins no character.
inline bool is_continuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

/// Valid UTF-8: bytes that are not are taken as Latin-1.
std::string to_utf8(std::string_view bytes);

/// Puts a text field as people read it: trimmed, valid UTF-8, a doubled apostrophe as one, HTML
/// entities decoded (named &amp; &lt; &gt; &quot; &apos;, and by number), a bare & kept. `plain` says
/// that there is nothing to decode.
void put_text(std::string_view field, bool plain, std::string& out);

/// The beginning of a field for a message: valid UTF-8, at most some sixty bytes.
std::string excerpt(std::string_view field);

/// The finite decimal number a trimmed field holds, nothing else beside it. Where no point is
/// written, the last `implied` digits are decimals.
std::optional<double> read_number(std::string_view field, unsigned implied = 0);

/// The whole number a trimmed field holds; "4.0" is 4.
std::optional<int> read_integer(std::string_view field);

} // namespace scupper::inventory::detail
