#include "split.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>
#include <vector>

namespace scupper::inventory::detail {

namespace {

bool is_quote(char c) {
    return c == '\'' || c == '"';
}

/// The position of the sign that may close a text opened before `from`, or npos.
std::size_t closing_quote(std::string_view row, char quote, std::size_t from) {
    std::size_t at = row.find(quote, from);
    while (at != std::string_view::npos && at + 1 < row.size() && row[at + 1] != ',') {
        at = row.find(quote, at + 1);
    }
    return at;
}

std::size_t next_comma(std::string_view row, std::size_t from) {
    const char* p = row.data() + from;
    const char* const end = row.data() + row.size();
    while (p != end && *p != ',') {
        ++p;
    }
    return static_cast<std::size_t>(p - row.data());
}

/// The high bit of every byte of the word that is a comma.
std::uint64_t comma_marks(const char* bytes) {
    constexpr std::uint64_t low_bits = 0x7f7f7f7f7f7f7f7fULL;
    constexpr std::uint64_t commas = 0x2c2c2c2c2c2c2c2cULL;
    std::uint64_t word = 0;
    if constexpr (std::endian::native == std::endian::little) {
        std::memcpy(&word, bytes, sizeof(word));
    } else {
        for (int i = 7; i >= 0; --i) {
            word = (word << 8U) | static_cast<unsigned char>(bytes[i]);
        }
    }
    word ^= commas; // a byte is now zero where a comma stood
    return ~(((word & low_bits) + low_bits) | word | low_bits);
}

/// How many bytes of the word are marked; std::popcount would be a call on a plain x86-64.
std::size_t count_marks(std::uint64_t marks) {
    constexpr std::uint64_t ones = 0x0101010101010101ULL;
    return static_cast<std::size_t>(((marks >> 7U) * ones) >> 56U);
}

/// Writes the positions of four marks and takes them off, whether there are so many or not: writing
/// too much is cheaper than a branch that cannot be foreseen.
void put_marks(std::uint64_t& marks, std::size_t from, std::size_t* out) {
    constexpr std::uint64_t never_zero = std::uint64_t{1} << 63U; // or countr_zero would ask
    for (int i = 0; i < 4; ++i) {
        out[i] = from + static_cast<std::size_t>(std::countr_zero(marks | never_zero)) / 8;
        marks &= marks - 1;
    }
}

std::string_view without_quotes(std::string_view field) {
    if (!field.empty() && is_quote(field.front())) {
        field.remove_prefix(1);
    }
    if (!field.empty() && is_quote(field.back())) {
        field.remove_suffix(1);
    }
    return field;
}

bool has_quote(std::string_view field) {
    return field.find_first_of("'\"") != std::string_view::npos;
}

/// Whether what follows a sign that looks like the end of a text is more of the text: fields that
/// do not begin with a quote, up to one that has a quote further on.
bool goes_on(std::string_view row, std::size_t close) {
    for (std::size_t at = close + 2; at < row.size() && !is_quote(row[at]);) {
        const std::size_t end = next_comma(row, at);
        if (has_quote(row.substr(at, end - at))) {
            return true;
        }
        at = end + 1;
    }
    return false;
}

/// The end of the text that begins at `at`, where signs before commas may be part of the text.
std::size_t lenient_close(std::string_view row, std::size_t at) {
    std::size_t close = closing_quote(row, row[at], at + 1);
    while (close != std::string_view::npos && goes_on(row, close)) {
        close = closing_quote(row, row[at], close + 1);
    }
    return close;
}

/// Splits a row with a text whose own apostrophes stand before commas.
bool split_leniently(std::string_view row, std::span<std::string_view> fields) {
    std::size_t count = 0;
    for (std::size_t at = 0; at <= row.size(); ++count) {
        const bool text = at < row.size() && is_quote(row[at]);
        const std::size_t close = text ? lenient_close(row, at) : std::string_view::npos;
        const bool closed = close != std::string_view::npos;
        const std::size_t end = closed ? close + 1 : next_comma(row, at);
        if (count < fields.size()) {
            fields[count] = closed ? row.substr(at + 1, close - at - 1) : row.substr(at, end - at);
        }
        at = end + 1;
    }
    return count == fields.size();
}

/// Whether a text seems to swallow the next one, as it does where its closing sign is missing.
bool lacks_a_close(std::string_view row) {
    for (std::size_t at = 0; at < row.size();) {
        const std::size_t close =
            is_quote(row[at]) ? closing_quote(row, row[at], at + 1) : std::string_view::npos;
        const bool closed = close != std::string_view::npos;
        const std::string_view text = row.substr(at, closed ? close - at : 0);
        if (text.find(",'") != std::string_view::npos ||
            text.find(",\"") != std::string_view::npos) {
            return true;
        }
        at = closed ? close + 2 : next_comma(row, at) + 1;
    }
    return false;
}

/// Splits at every comma, as if quotes meant nothing.
bool split_plainly(std::string_view row, std::span<std::string_view> fields) {
    std::size_t count = 0;
    for (std::size_t at = 0; at <= row.size(); ++count) {
        const std::size_t end = next_comma(row, at);
        if (count < fields.size()) {
            fields[count] = without_quotes(row.substr(at, end - at));
        }
        at = end + 1;
    }
    return count == fields.size();
}

} // namespace

std::size_t Splitter::find_commas(std::string_view row) {
    constexpr std::size_t word = sizeof(std::uint64_t);
    commas_.resize(std::max(commas_.size(), row.size() + 2 * word)); // room for careless writes
    std::size_t count = 0;
    std::size_t at = 0;
    for (; at + word <= row.size(); at += word) {
        std::uint64_t marks = comma_marks(row.data() + at);
        const std::size_t here = count_marks(marks);
        put_marks(marks, at, commas_.data() + count);
        if (here > 4) {
            put_marks(marks, at, commas_.data() + count + 4);
        }
        count += here;
    }
    for (; at < row.size(); ++at) {
        commas_[count] = at;
        count += row[at] == ',' ? 1 : 0;
    }
    commas_[count] = row.size(); // the end of the row closes the last field
    return count;
}

bool Splitter::every_comma_divides(std::string_view row, std::span<std::string_view> fields) const {
    const char* begin = row.data();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const char* const end = row.data() + commas_[i];
        const bool text = begin != end && is_quote(*begin);
        if (text && (end - begin == 1 || end[-1] != *begin)) {
            return false;
        }
        fields[i] = {begin + text, static_cast<std::size_t>(end - begin) - 2 * text};
        begin = end + 1;
    }
    return true;
}

std::size_t Splitter::split(std::string_view row, std::span<std::string_view> fields) {
    const std::size_t commas = find_commas(row);
    if (commas + 1 == fields.size() && every_comma_divides(row, fields)) {
        return fields.size();
    }
    std::size_t count = 0;
    std::size_t at = 0;
    for (std::size_t next = 0; next <= commas; ++next, ++count) {
        std::string_view field(row.data() + at, commas_[next] - at);
        if (!field.empty() && is_quote(field.front())) {
            const std::size_t close = closing_quote(row, field.front(), at + 1);
            if (close != std::string_view::npos) {
                field = row.substr(at + 1, close - at - 1);
                while (commas_[next] < close) {
                    ++next;
                }
            }
        }
        if (count < fields.size()) {
            fields[count] = field;
        }
        at = commas_[next] + 1;
    }
    return count;
}

bool resplit_row(std::string_view row, std::span<std::string_view> fields) {
    return split_leniently(row, fields) || (lacks_a_close(row) && split_plainly(row, fields));
}

} // namespace scupper::inventory::detail
