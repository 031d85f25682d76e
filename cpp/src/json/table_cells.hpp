#pragma once
// Tables of structures: which field a header names, and what a cell puts into it.

#include "cells.hpp"
#include "structure_fields.hpp"

#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace scupper::json::detail {

/// A field of a record, in the order in which records are visited.
struct TableField {
    std::string key;
    std::optional<Dimension> dimension; ///< of those that have one
};

/// The fields of a record.
const std::vector<TableField>& record_fields();

/// What a table calls a field.
std::string table_name(const std::string& key);

inline constexpr std::size_t no_field = std::numeric_limits<std::size_t>::max();

/// Which field a header names, and in which unit: `length_m`, `length_ft`, `length [ft]`.
std::size_t field_named(const std::string& header, HeaderParts& parts);

/// Puts the text of a cell into a field; throws InputError where it cannot be used.
class CellReader {
  public:
    CellReader(const SheetColumn& column, const std::string& cell) : column_(column), cell_(cell) {}

    void operator()(std::string& value) const { value = cell_; }
    void operator()(std::uint64_t&) const {} // the line of this table, not of another
    void operator()(double& value) const { value = number(); }
    void operator()(Length<>& value) const { value = Length<>(number()); }
    void operator()(Angle<>& value) const { value = Angle<>(number()); }
    void operator()(int& value) const;
    void operator()(char& value) const;
    void operator()(Material& value) const;
    void operator()(Design& value) const;
    void operator()(Below& value) const;

  private:
    double number() const;
    [[noreturn]] void refuse(const std::string& allowed) const;
    template <class Enum, class Name>
    void word(Enum& value, Name name_of, std::size_t count) const;

    const SheetColumn& column_;
    const std::string& cell_;
};

} // namespace scupper::json::detail
