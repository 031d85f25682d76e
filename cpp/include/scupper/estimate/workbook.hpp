#pragma once
// An estimate as a workbook with live formulas, as far as that is arithmetic: cells, units, checks.

#include "scupper/estimate/estimate.hpp"
#include "scupper/traced.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace scupper::estimate {

/// What a workbook writes around an address to turn its value into another unit.
struct Conversion {
    std::string before; ///< [text] as "1/("
    std::string after;  ///< [text] as "*2.58E-05)"
};

/// An input or another value in the unit people read it in.
struct ShownCell {
    double number;       ///< [unit] of an input to 15 digits, those a spreadsheet keeps
    std::string unit;    ///< [text] the unit of the trade
    std::string si_unit; ///< [text] the coherent SI unit of formulas; empty for a part without one
    Conversion to_si;    ///< [-] from the number shown
    Conversion to_shown; ///< [-] from the SI value
    std::string low, likely, high; ///< [text] inputs: the guess; low and high only with a spread
};

/// A figure or a cost line of a workbook.
struct WorkbookFigure {
    std::string key, label; ///< [text] of the figure schema
    std::size_t cell;       ///< [-] index into the cells
};

/// A cost line of a workbook.
struct WorkbookLine {
    std::string component, operation, resource; ///< [text] what is washed, how, and with what
    std::size_t cell;                           ///< [-] index into the cells
};

/// A decision that the recording holds; formulas alone do not take it again.
struct WorkbookCheck {
    std::string label; ///< [text] what must hold, or what has to be priced again
    Formula formula;   ///< [-, n] 1 where the sheet no longer answers as the engine would, else 0
};

/// What a workbook is written from.
struct Workbook {
    std::vector<SheetCell> cells;        ///< [-, n] every cell in SI units
    std::vector<ShownCell> shown;        ///< [-, n] the same cells as people read them
    std::vector<WorkbookFigure> figures; ///< [-, n] those asked for, in their order
    std::vector<WorkbookLine> lines;     ///< [-, n] cost lines; they add up to the total
    std::vector<WorkbookCheck> checks;   ///< [-, n] beside those of the solves
};

/// The figures that lead a workbook: quantities of work, water, dirt, hours, money, nozzles.
///
/// @param estimate [-] an estimate
/// @return [text, n] keys of the figure schema
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
std::vector<std::string> workbook_figures(const Estimate& estimate);

/// Cells with live formulas for figures and cost lines, by pricing the structure with a recording.
///
/// Categories stay as they are: which operations run, the closure, the shape. A change of what
/// iterative solves or rules of inference rest on raises a check instead of a wrong figure.
/// @param estimate [-] an estimate
/// @param keys [text, n] as for `figure_place_of`
/// @return [-] what the workbook is written from
/// Range: any estimate.
/// Errors: UnknownNameError `schema.key` naming the nearest known key.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_workbook.cpp, tests/python/test_workbook.py
Workbook workbook(const Estimate& estimate, std::span<const std::string> keys);

} // namespace scupper::estimate
