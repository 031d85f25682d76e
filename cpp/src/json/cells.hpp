#pragma once
// Cells of sheets that people fill in: bare numbers in the unit of their header, or text with a unit.

#include "scupper/schema.hpp"
#include "scupper/unit.hpp"
#include "values.hpp"

#include <optional>
#include <string>

namespace scupper::json::detail {

/// A column of a sheet, looked up.
struct SheetColumn {
    std::string header;
    LayoutField field;
    std::optional<Unit> unit; ///< of bare numbers
};

struct HeaderParts {
    std::string key, unit;
};

/// "column.height [ft]" is a key and a unit; a key with a row has brackets of its own.
HeaderParts split_header(const std::string& header);
/// The unit of bare numbers; without one every cell of a column with a dimension states its own.
std::optional<Unit> unit_of(const HeaderParts& parts, const LayoutField& field,
                            const std::string& where);
/// The SI value of a cell.
double read_cell(const std::string& cell, const SheetColumn& column, const ValueContext& context,
                 const std::string& where);
/// Throws where a value cannot be, or a count is no whole number.
void check_cell(double si, const std::string& cell, const SheetColumn& column,
                const std::string& where);

} // namespace scupper::json::detail
