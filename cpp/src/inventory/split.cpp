#include "split.hpp"

#include <algorithm>

namespace scupper::inventory::detail {

namespace {

/// The position of the sign that may close a text opened before `from`, or npos.
std::size_t closing_quote(std::string_view row, char quote, std::size_t from) {
    std::size_t at = row.find(quote, from);
    while (at != std::string_view::npos && at + 1 < row.size() && row[at + 1] != ',') {
        at = row.find(quote, at + 1);
    }
    return at;
}

std::size_t next_comma(std::string_view row, std::size_t from) {
    return std::min(row.find(',', from), row.size());
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

} // namespace

/// Ends the last field, and puts one of no length after it: that of columns the file lacks.
void Splitter::close(std::string_view row, std::size_t count) {
    starts_.fields[count] = static_cast<std::uint32_t>(row.size() + 1);
    starts_.fields[count + 1] = starts_.fields[count] + 1;
}

/// The common case, in which no comma stands within a text.
bool Splitter::texts_are_whole(std::string_view row) const {
    return std::all_of(starts_.texts.begin(), starts_.texts.end(), [&](std::uint32_t field) {
        const std::size_t begin = starts_.fields[field];
        const std::size_t end = starts_.fields[field + 1] - 1;
        return end - begin > 1 && row[end - 1] == row[begin];
    });
}

/// Takes out the commas within texts.
std::size_t Splitter::split_at_quotes(std::string_view row, std::size_t commas) {
    std::size_t count = 0;
    std::size_t at = 0;
    for (std::size_t next = 0; next <= commas; ++next, ++count) {
        if (at < row.size() && is_quote(row[at])) {
            const std::size_t close = closing_quote(row, row[at], at + 1);
            while (close != std::string_view::npos && starts_.fields[next + 1] - 1 < close) {
                ++next;
            }
        }
        starts_.fields[count] = static_cast<std::uint32_t>(at);
        at = starts_.fields[next + 1];
    }
    close(row, count);
    return count;
}

std::size_t Splitter::split(std::string_view row, std::size_t wanted) {
    const std::size_t commas = find_commas(row, starts_);
    close(row, commas + 1);
    if (commas + 1 == wanted && texts_are_whole(row)) {
        return wanted;
    }
    return split_at_quotes(row, commas);
}

/// Splits where a rule says that a field ends.
template <class End>
std::size_t Splitter::split_by(std::string_view row, End end_of_field) {
    std::size_t count = 0;
    for (std::size_t at = 0; at <= row.size(); ++count) {
        starts_.fields[count] = static_cast<std::uint32_t>(at);
        at = end_of_field(at) + 1;
    }
    close(row, count);
    return count;
}

bool Splitter::resplit(std::string_view row, std::size_t wanted) {
    const auto leniently = [row](std::size_t at) { // a text's own apostrophes stand before commas
        const bool text = at < row.size() && is_quote(row[at]);
        const std::size_t close = text ? lenient_close(row, at) : std::string_view::npos;
        return close != std::string_view::npos ? close + 1 : next_comma(row, at);
    };
    const auto plainly = [row](std::size_t at) { return next_comma(row, at); };
    return split_by(row, leniently) == wanted ||
           (lacks_a_close(row) && split_by(row, plainly) == wanted);
}

} // namespace scupper::inventory::detail
