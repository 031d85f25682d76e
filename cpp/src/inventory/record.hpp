#pragma once
// One record on its way from fields to a structure.

#include "columns.hpp"
#include "scupper/inventory/inventory.hpp"
#include "split.hpp"
#include "text.hpp"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// The fields of one record, the structure they fill, and where doubts about them go.
struct Record {
    const Header& header;
    const Fields& fields;
    Structure& structure;
    std::vector<Doubt>& doubts;
    std::uint32_t file = 0;

    bool has(Column column) const { return header.has(column); }
    /// What stands in a column, quotes and all; empty where the file has no such column.
    std::string_view field(Column column) const { return fields.at(header.at(column)); }
    /// What stands in a column, padding and all.
    std::string_view raw(Column column) const {
        return fields.quoted ? unquoted(field(column)) : field(column);
    }
    std::string_view text(Column column) const { return trimmed(raw(column)); }
    void doubt(Column column, std::string_view reason, bool kept = false) const;
};

/// What a number may be; anything else is a doubt and not recorded.
template <class T>
struct Bounds {
    T low;
    T high;
    std::string_view outside; ///< the reason of the doubt
    bool may_be_blank = false;
};
using NumberBounds = Bounds<double>;
using IntegerBounds = Bounds<int>;

inline constexpr std::string_view reason_blank = "blank, where the guide asks for a value";
inline constexpr std::string_view reason_number = "not a number";
inline constexpr std::string_view reason_code = "not a code of the guide";

/// A number that is written unusually, padded, quoted, signed or long; a doubt where it cannot be
/// used.
std::optional<double> unusual_number(const Record& record, Column column,
                                     const NumberBounds& bounds);
/// A whole number that is written unusually; a doubt where it cannot be used.
std::optional<int> unusual_integer(const Record& record, Column column,
                                   const IntegerBounds& bounds);

/// Reads every field whose rule is no more than bounds or a list of codes.
void read_by_rule(const Record& record);
/// Reads every field of a record; the structure's names and line are set already.
void read_fields(const Record& record);

} // namespace scupper::inventory::detail
