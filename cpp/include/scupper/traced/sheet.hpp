#pragma once
// A recording as the cells of a spreadsheet: live formulas that work as the engine did.

#include "scupper/traced/recording.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// What a cell holds.
enum class CellKind {
    input,     ///< a value to change
    constant,  ///< a value that never changes
    result,    ///< a formula with a name
    part,      ///< a formula without a name, split off because it is long or used more than once
    condition, ///< a formula that is true or false
    solve,     ///< the recorded answer of an iterative solve; `checks` say when it is out of date
};

/// The mark of a piece of a formula that refers to no cell.
inline constexpr std::size_t no_cell = static_cast<std::size_t>(-1);

/// A piece of a formula: text as spreadsheets read it, or the address of a cell.
struct FormulaPart {
    std::string text;           ///< [text] functions, signs, numbers; empty for an address
    std::size_t cell = no_cell; ///< [-] the cell whose address stands here, or `no_cell`
};

/// A formula without the sign of equality before it.
using Formula = std::vector<FormulaPart>;

/// One cell, everything in it in SI units.
struct SheetCell {
    CellKind kind = CellKind::result; ///< [-] what it holds
    std::string label;                ///< [text] what people call it; of a part, of what it is one
    std::string key;                  ///< [text] schema key, or empty
    Dimension dimension{};            ///< of the value; dim::none where a part has an unknown one
    double value = 0.0;               ///< [SI unit of the dimension] as recorded
    std::string basis;                ///< [text] inputs: how it came to be known
    std::string source;               ///< [text] origin; of a solve the method
    Formula formula;                  ///< [-, n] empty for an input, an unchanging value or a solve
    std::vector<Formula> checks; ///< [-, n] solves: each gives 1 where what was solved for changed
};

/// Cells that refer to earlier cells only.
struct Sheet {
    std::vector<SheetCell> cells;   ///< [-, n] each step that is shown, once
    std::vector<std::size_t> roots; ///< [-, n] the cells of the figures asked for, in their order
};

/// Writes what a recording did as cells with formulas, from figures down to inputs.
///
/// Names, inputs, solves, named constants and whatever is used more than once get a cell; the
/// arithmetic between is written within a formula, and split where it grows long. Formulas use
/// functions that every spreadsheet knows, and keep the order of the engine's operations.
/// @param recording [-] the recording
/// @param roots [-, n] the figures, steps of the recording
/// @return [-] the cells, and where the figures stand
/// Range: any recording; NaN and infinity become an error value of the spreadsheet.
/// Errors: none.
/// Source: ISO/IEC 29500-1:2016, 18.17 (formulas)
/// Verified by: tests/cpp/traced/test_sheet.cpp
Sheet sheet_of(const Recording& recording, std::span<const Step> roots);

/// A number as formulas write it: the fewest digits that read back the same.
///
/// @param value [any unit] the number
/// @return [text] as "0.3048"; the missing value NA() where it is not finite
/// Range: any number.
/// Errors: none.
/// Source: ISO/IEC 29500-1:2016, 18.17.2.2
/// Verified by: tests/cpp/traced/test_sheet.cpp
std::string formula_number(double value);

/// A check that a cell still has its value.
///
/// Formula: 1 where |cell - value| > 1e-9 |value|, or where the cell is no number; else 0
/// @param cells [-, n] the cells to compare, fewer than 100
/// @param sheet [-] the sheet they stand in, with the values as recorded
/// @return [-] a formula that gives 1 or 0
/// Range: cells of the sheet.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/traced/test_sheet.cpp
Formula changed(std::span<const std::size_t> cells, const Sheet& sheet);

} // namespace scupper
