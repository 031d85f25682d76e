#pragma once
// Currencies by their three-letter code.

#include <array>
#include <string_view>

namespace scupper {

/// A currency of ISO 4217, as "USD". Made by `parse_currency` only.
class Currency {
  public:
    /// The three-letter code [text].
    constexpr std::string_view code() const { return {code_.data(), code_.size()}; }
    friend constexpr bool operator==(const Currency&, const Currency&) = default;
    friend Currency parse_currency(std::string_view text, std::string_view path);

  private:
    constexpr explicit Currency(std::array<char, 3> code) : code_(code) {}
    std::array<char, 3> code_;
};

/// The currency a code names.
///
/// @param text [text] three upper-case letters, as "USD"
/// @param path [text] where the text stands, for the error
/// @return [text] the currency
/// Range: national currencies of ISO 4217; metals, funds and test codes are left out.
/// Errors: MoneyError `money.currency` where the code is unknown; the nearest is named.
/// Source: ISO 4217:2015, list one (codes from memory, compared with the list of a Java runtime)
/// Verified by: tests/cpp/money/test_money.cpp
Currency parse_currency(std::string_view text, std::string_view path);

/// Whether a text is the code of a currency.
///
/// @param text [text] any text
/// @return [-] true for a code `parse_currency` accepts
/// Range: any text.
/// Errors: none.
/// Source: ISO 4217:2015, list one
bool is_currency_code(std::string_view text);

/// How many decimals the smallest unit of account of a currency has: 2 for USD (cents).
///
/// @param currency [text] a currency
/// @return [-] 0, 2 or 3
/// Range: any currency.
/// Errors: none.
/// Source: ISO 4217:2015, list one, column "minor unit"
int minor_digits(const Currency& currency);

} // namespace scupper
