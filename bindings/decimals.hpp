#pragma once
// Exact decimals for Python: as text, so that nothing is rounded on the way.

#include "convert.hpp"
#include "scupper/money.hpp"

#include <optional>
#include <pybind11/stl.h>
#include <string>

namespace scupper::python {

/// A decimal as text, None where there is none.
inline std::optional<std::string> decimal(const std::optional<Decimal>& value) {
    return value ? std::optional(to_text(*value)) : std::nullopt;
}

/// A list of decimals from one member or function of every row.
template <class Rows, class Get>
py::list decimals(const Rows& rows, Get get) {
    py::list list;
    for (const auto& row : rows) {
        list.append(decimal(get(row)));
    }
    return list;
}

} // namespace scupper::python
