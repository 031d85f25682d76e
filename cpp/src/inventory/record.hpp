#pragma once
// One record on its way from fields to a structure.

#include "columns.hpp"
#include "scupper/inventory/inventory.hpp"
#include "text.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// The fields of one record, the structure they fill, and where doubts about them go.
struct Record {
    const Header& header;
    std::span<const std::string_view> fields;
    Structure& structure;
    std::vector<Doubt>& doubts;
    std::uint32_t file = 0;

    bool has(Column column) const { return header.at(column) != Header::absent; }
    /// What stands in a column, as the file has it; empty where the file has no such column.
    std::string_view raw(Column column) const {
        return has(column) ? fields[header.at(column)] : std::string_view{};
    }
    std::string_view text(Column column) const { return trimmed(raw(column)); }
    void doubt(Column column, std::string_view reason, bool kept = false) const;
};

/// What a number may be; anything else is a doubt and not recorded.
struct Bounds {
    double low;
    double high;
    std::string_view outside; ///< the reason of the doubt
    bool may_be_blank = false;
};

inline constexpr std::string_view reason_blank = "blank, where the guide asks for a value";
inline constexpr std::string_view reason_number = "not a number";
inline constexpr std::string_view reason_code = "not a code of the guide";

/// The number in a column where it can be used; a doubt where it cannot.
std::optional<double> number_of(const Record& record, Column column, const Bounds& bounds);
/// The whole number in a column where it can be used; a doubt where it cannot.
std::optional<int> integer_of(const Record& record, Column column, const Bounds& bounds);

/// Reads every field whose rule is no more than bounds or a list of codes.
void read_by_rule(const Record& record);
/// Reads every field of a record; the structure's names and line are set already.
void read_fields(const Record& record);
/// Doubts about values that cannot all be right together; the values are kept.
void check_consistency(const Record& record);

} // namespace scupper::inventory::detail
