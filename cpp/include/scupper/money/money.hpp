#pragma once
// Amounts of money: an exact decimal and its currency.

#include "scupper/money/currency.hpp"
#include "scupper/money/decimal.hpp"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace scupper {

/// An exact amount of one currency. Sums and comparisons of two currencies raise MoneyError
/// `money.mixed`; amounts of different currencies are never equal.
class Money {
  public:
    /// An amount.
    ///
    /// @param amount [currency] exact amount, with any decimals
    /// @param currency [text] its currency
    /// @return [currency] the money
    /// Range: any amount.
    /// Errors: none.
    /// Source: definition
    Money(Decimal amount, Currency currency) : amount_(amount), currency_(currency) {}

    /// The amount without its currency [currency].
    const Decimal& amount() const { return amount_; }
    /// The currency [text].
    const Currency& currency() const { return currency_; }

    /// The amount of opposite sign [currency].
    Money operator-() const { return {-amount_, currency_}; }
    Money& operator+=(const Money& b) { return *this = *this + b; }
    friend Money operator+(const Money& a, const Money& b);
    friend Money operator-(const Money& a, const Money& b) { return a + -b; }
    /// The exact product; nothing is rounded.
    friend Money operator*(const Money& a, const Decimal& factor) {
        return {a.amount_ * factor, a.currency_};
    }
    friend std::weak_ordering operator<=>(const Money& a, const Money& b);
    friend bool operator==(const Money& a, const Money& b) = default;

  private:
    Decimal amount_;
    Currency currency_;
};

/// What a bid line comes to: unit price times quantity, rounded once to the currency's minor unit.
///
/// Formula: round(price x quantity), halves away from zero (a credit of -0.125 becomes -0.13)
/// @param unit_price [currency per unit] exact price, as bid
/// @param quantity [unit] exact quantity, as listed
/// @return [currency] the extension, to the cent where the currency has cents
/// Range: the exact product must fit 18 digits.
/// Errors: MoneyError `money.overflow`.
/// Source: common practice in bid tabulation
/// Verified by: tests/cpp/money/test_money.cpp
Money extension(const Money& unit_price, const Decimal& quantity);

/// An amount rounded to its currency's minor unit, halves away from zero.
///
/// @param amount [currency] exact amount
/// @return [currency] amount with at most so many decimals
/// Range: any amount.
/// Errors: none.
/// Source: definition
Money rounded_to_minor_unit(const Money& amount);

/// An amount given in whole minor units: 123456 of USD is USD 1,234.56.
///
/// @param units [-] whole number of minor units (cents)
/// @param currency [text] the currency
/// @return [currency] the amount
/// Range: any whole number but the most negative.
/// Errors: MoneyError `money.overflow`.
/// Source: definition
Money from_minor_units(std::int64_t units, const Currency& currency);

/// The amount that a text with its currency says.
///
/// Accepted: "USD 1,234.56" and "1,234.56 USD". A bare number and a sign like "$", which several
/// currencies share, are refused here.
/// @param text [text] amount and code
/// @param path [text] where the text stands, for the error
/// @return [currency] the amount
/// Range: 18 significant digits.
/// Errors: MoneyError `money.number`, `money.currency`, `money.overflow`.
/// Source: definition
/// Verified by: tests/cpp/money/test_money.cpp
Money parse_money(std::string_view text, std::string_view path);

/// The amount in a table whose currency is stated elsewhere, as the columns of a bid tabulation.
///
/// Accepted: "1,234.56", the same with the currency's own sign in front ("$210.00", "-$5.00"
/// where the currency is a dollar), and the forms of `parse_money` in that currency.
/// @param text [text] amount
/// @param currency [text] the currency of the table
/// @param path [text] where the text stands, for the error
/// @return [currency] the amount
/// Range: 18 significant digits.
/// Errors: MoneyError `money.number`, `money.overflow`, `money.mixed` for another currency.
/// Source: definition
/// Verified by: tests/cpp/money/test_money.cpp
Money parse_amount(std::string_view text, const Currency& currency, std::string_view path);

/// An amount as text: code, commas, and at least the decimals of the minor unit.
///
/// @param amount [currency] any amount
/// @return [text] as "USD -1,234.50"
/// Range: any amount; `parse_money` reads it back.
/// Errors: none.
/// Source: definition
std::string to_text(const Money& amount);

} // namespace scupper
