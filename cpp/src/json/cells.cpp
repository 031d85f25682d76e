#include "cells.hpp"

#include "scupper/error.hpp"

#include <cmath>

namespace scupper::json::detail {

namespace {

bool is_bare_number(const std::string& cell) {
    return cell.find_first_not_of("0123456789.,+-/ eE") == std::string::npos;
}

std::string bounds_text(const SheetColumn& column) {
    const Unit unit =
        column.unit ? *column.unit : display_unit(column.field.dimension, UnitSystem::si);
    const std::string least = format_quantity(column.field.least, unit, 4);
    return std::isfinite(column.field.greatest)
               ? least + " to " + format_quantity(column.field.greatest, unit, 4)
               : least + " or more";
}

} // namespace

HeaderParts split_header(const std::string& header) {
    const std::size_t open = header.rfind(" [");
    if (open == std::string::npos || !header.ends_with(']')) {
        return {header, {}};
    }
    return {header.substr(0, open), header.substr(open + 2, header.size() - open - 3)};
}

std::optional<Unit> unit_of(const HeaderParts& parts, const LayoutField& field,
                            const std::string& where) {
    if (parts.unit.empty()) {
        const bool plain = takes_plain_number(field.dimension);
        return plain ? std::optional(Unit{.name = "1", .dimension = {}, .currency = {}})
                     : std::nullopt;
    }
    Unit unit = parse_unit(parts.unit, where);
    if (unit.dimension != field.dimension) {
        throw UnitError({"unit.dimension", where, "[" + parts.unit + "]",
                         "in brackets the unit of " + dimension_phrase(field.dimension)});
    }
    return unit;
}

double read_cell(const std::string& cell, const SheetColumn& column, const ValueContext& context,
                 const std::string& where) {
    if (column.unit && is_bare_number(cell)) {
        return from_unit(parse_as(cell, dim::none, where), *column.unit);
    }
    return read_number(cell, column.field, context, where);
}

void check_cell(double si, const std::string& cell, const SheetColumn& column,
                const std::string& where) {
    if (!(si >= column.field.least && si <= column.field.greatest)) {
        throw InputError({"survey.bounds", where, "\"" + cell + "\"", bounds_text(column)});
    }
    if (column.field.dimension == dim::count && si != std::floor(si)) {
        throw InputError({"survey.count", where, "\"" + cell + "\"", "a whole number"});
    }
}

} // namespace scupper::json::detail
