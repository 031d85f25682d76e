#pragma once
// Text and numbers as the files hold them.

#include <optional>
#include <string>
#include <string_view>

namespace scupper::inventory::detail {

/// Without blanks at either end. In the header, as every field passes through it.
inline std::string_view trimmed(std::string_view text) {
    const auto is_blank = [](char c) { return c == ' ' || c == '\t' || c == '\r'; };
    while (!text.empty() && is_blank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && is_blank(text.back())) {
        text.remove_suffix(1);
    }
    return text;
}

/// Valid UTF-8: bytes that are not are taken as Latin-1.
std::string to_utf8(std::string_view bytes);

/// A text field as people read it: trimmed, valid UTF-8, a doubled apostrophe as one, HTML entities
/// decoded (named &amp; &lt; &gt; &quot; &apos;, and by number), a bare & kept.
std::string clean_text(std::string_view field);

/// The beginning of a field for a message: valid UTF-8, at most some sixty bytes.
std::string excerpt(std::string_view field);

/// The finite decimal number a trimmed field holds, nothing else beside it.
std::optional<double> read_number(std::string_view field);

/// The whole number a trimmed field holds; "4.0" is 4.
std::optional<int> read_integer(std::string_view field);

} // namespace scupper::inventory::detail
