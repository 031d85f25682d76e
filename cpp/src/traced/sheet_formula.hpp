#pragma once
// How an operation is written in a spreadsheet. Internal to the recording.

#include "scupper/traced/sheet.hpp"

#include <string_view>

namespace scupper::detail {

/// What stands before, between and after the arguments, and how tight it binds.
struct Spelling {
    std::string_view before, between, after;
    int precedence; ///< of the whole, higher binds tighter
    int inside[2];  ///< the least precedence that the first and the other arguments need
};

inline constexpr int loosest = 0;
inline constexpr int comparison = 1;
inline constexpr int sum = 2;
inline constexpr int product = 3;
inline constexpr int tightest = 9;

/// How an operation is written. Only those with arguments; a name or a solve has its own cell.
Spelling spelling_of(Op op);

/// Appends one formula to another.
void append(Formula& to, Formula&& more);
/// Appends text, within the last piece where that is text.
void append(Formula& to, std::string_view text);
/// How long a formula is as text, addresses taken as long as they come.
std::size_t length_of(const Formula& formula);

} // namespace scupper::detail
