#pragma once
// For "unknown name" errors: which known name was probably meant.

#include <span>
#include <string>
#include <string_view>

namespace scupper {

/// How many letters have to be inserted, removed, replaced or swapped with a neighbour to turn a
/// into b.
///
/// Formula: optimal string alignment distance
/// @param a [text] one word
/// @param b [text] the other word
/// @return [-] whole number >= 0; 0 only for equal words
/// Range: any text; bytes are compared, upper and lower case alike.
/// Errors: none.
/// Source: L. Boytsov, Indexing methods for approximate dictionary searching, ACM JEA 16 (2011),
/// 1.1 (definition)
int edit_distance(std::string_view a, std::string_view b);

/// The known name nearest to a wrong one, or empty text where none is near.
///
/// Formula: least edit distance, first of equals, at most a third of the longer word
/// @param wrong [text] what was given
/// @param known [text, n] the names that would be right
/// @return [text] one of `known`, or empty
/// Range: any text.
/// Errors: none.
/// Source: common practice
std::string nearest_name(std::string_view wrong, std::span<const std::string_view> known);

} // namespace scupper
