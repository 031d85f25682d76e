#pragma once
// Words of headings and rows of bid forms. Internal to reading them.

#include "scupper/bid/read_form.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper::bid::detail {

/// A text without the blanks around it, hard ones too.
std::string trimmed(std::string_view text);
/// The words of a text in small letters: runs of letters and digits.
std::vector<std::string> words_of(std::string_view text);
/// Those words with a blank between.
std::string plain(std::string_view text);

/// What a heading says: a role, and whose column it is where the heading says that too.
struct Heading {
    Role role = Role::none;
    std::string bidder{};
};
Heading heading_of(std::string_view cell);
/// The role of a heading that is known word for word.
Role role_named(std::string_view text);

/// What a row without figures of an item may be.
bool is_total(std::string_view cell, const std::vector<std::string>& own_words);
bool is_subtotal(std::string_view cell);
bool is_bidder_label(std::string_view cell);
bool is_days_label(std::string_view cell);
/// Whether a name of a bidder is the engineer's estimate.
bool is_engineer(std::string_view name);
/// Whether an item is an alternate or optional, by its code, description or group.
ItemKind kind_of(std::string_view text);

} // namespace scupper::bid::detail
