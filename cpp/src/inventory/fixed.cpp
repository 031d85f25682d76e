#include "fixed.hpp"

#include "text.hpp"

#include <algorithm>
#include <vector>

namespace scupper::inventory::detail {

namespace {

bool is_record_length(std::size_t length) {
    return length == fixed_record || length == longest_fixed_record;
}

/// The first byte of each character, and the end of the last.
std::vector<std::uint32_t> character_starts(std::string_view row) {
    std::vector<std::uint32_t> starts;
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (!is_continuation(row[i])) {
            starts.push_back(static_cast<std::uint32_t>(i));
        }
    }
    starts.push_back(static_cast<std::uint32_t>(row.size()));
    return starts;
}

} // namespace

bool looks_fixed(std::string_view line) {
    constexpr std::size_t record_type = 18;
    const std::size_t length = FixedCutter::length(line);
    return length >= shortest_fixed_record && length <= longest_fixed_record &&
           !state_of(line.substr(0, 3)).empty() &&
           kind_of(line.substr(record_type, 1)) != RecordKind::unknown;
}

FixedCutter::FixedCutter() {
    for (std::size_t i = 0; i < column_count; ++i) {
        begins_[i] = fixed_places()[i].begin;
        ends_[i] = fixed_places()[i].end;
    }
}

std::size_t FixedCutter::length(std::string_view row) {
    if (is_record_length(row.size())) {
        return row.size();
    }
    const auto characters =
        row.size() -
        static_cast<std::size_t>(std::count_if(row.begin(), row.end(), is_continuation));
    const bool in_utf8 = characters != row.size() && to_utf8(row) == row;
    return in_utf8 ? characters : row.size();
}

/// Where the characters of the guide's places stand in a row of fewer or longer ones.
void FixedCutter::place_in_bytes(std::string_view row) {
    const std::size_t characters = length(row);
    std::vector<std::uint32_t> starts;
    if (characters != row.size()) {
        starts = character_starts(row);
    }
    const auto byte = [&](std::uint32_t character) {
        const std::size_t within = std::min<std::size_t>(character, characters);
        return starts.empty() ? static_cast<std::uint32_t>(within) : starts[within];
    };
    for (std::size_t i = 0; i < column_count; ++i) {
        moved_begins_[i] = byte(begins_[i]);
        moved_ends_[i] = byte(ends_[i]);
    }
}

Fields FixedCutter::cut(std::string_view row) {
    if (is_record_length(row.size())) {
        return {row.data(), begins_.data(), ends_.data(), 0, false, false};
    }
    place_in_bytes(row);
    return {row.data(), moved_begins_.data(), moved_ends_.data(), 0, false, false};
}

} // namespace scupper::inventory::detail
