#pragma once
// Exact decimal numbers for money: a whole coefficient and a number of decimals.

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace scupper {

/// An exact decimal number, coefficient x 10^-scale. Nothing is ever rounded unless a function
/// named so is called; a result that does not fit raises MoneyError. The scale is kept for
/// printing ("2.10") and does not matter to comparison (2.10 == 2.1).
class Decimal {
  public:
    static constexpr int max_scale = 18; ///< [-] most decimals a number can have

    constexpr Decimal() = default;
    /// The number coefficient x 10^-scale.
    ///
    /// @param coefficient [-] whole number, the most negative one excepted
    /// @param scale [-] number of decimals, 0 to 18
    /// @return [-] the number
    /// Range: |coefficient| <= 9,223,372,036,854,775,807.
    /// Errors: MoneyError `money.scale` outside 0 to 18, `money.overflow` outside the range.
    /// Source: definition
    explicit Decimal(std::int64_t coefficient, int scale = 0);

    /// The whole number behind the decimals [-].
    constexpr std::int64_t coefficient() const { return coefficient_; }
    /// The number of decimals [-].
    constexpr int scale() const { return scale_; }

    /// The number of opposite sign [-].
    Decimal operator-() const;
    friend Decimal operator+(const Decimal& a, const Decimal& b);
    friend Decimal operator-(const Decimal& a, const Decimal& b);
    /// The exact product, without trailing zeros [-].
    friend Decimal operator*(const Decimal& a, const Decimal& b);
    friend std::weak_ordering operator<=>(const Decimal& a, const Decimal& b);
    friend bool operator==(const Decimal& a, const Decimal& b);

  private:
    std::int64_t coefficient_ = 0;
    int scale_ = 0;
};

/// The number rounded to so many decimals, halves away from zero: 0.125 -> 0.13, -0.125 -> -0.13.
///
/// Formula: sign(x) floor(|x| 10^d + 1/2) / 10^d
/// @param number [-] any number
/// @param decimals [-] decimals to keep, 0 to 18
/// @return [-] the rounded number; unchanged where it has no more decimals than that
/// Range: any number.
/// Errors: MoneyError `money.scale` outside 0 to 18.
/// Source: definition ("half up" as bid sheets use it, mirrored for credits)
/// Verified by: tests/cpp/money/test_decimal.cpp
Decimal rounded(const Decimal& number, int decimals);

/// The number that a text says.
///
/// Accepted: an optional sign, digits with commas before groups of three or without commas, an
/// optional point with digits. Refused: currency signs, exponents, decimal commas, spaces inside,
/// brackets for negatives.
/// @param text [text] as "1,234.56"
/// @param path [text] where the text stands, for the error
/// @return [-] the number, with as many decimals as were written
/// Range: 18 significant digits.
/// Errors: MoneyError `money.number` where the text is not such a number, `money.overflow` where
/// it has too many digits.
/// Source: definition
/// Verified by: tests/cpp/money/test_decimal.cpp
Decimal parse_decimal(std::string_view text, std::string_view path);

/// A number as text with its own decimals and no commas.
///
/// @param number [-] any number
/// @return [text] as "-1234.50"
/// Range: any number; parse_decimal reads it back.
/// Errors: none.
/// Source: definition
std::string to_text(const Decimal& number);

/// The double nearest to a decimal number.
///
/// @param number [-] any number
/// @return [-] the nearest double; exact up to 2^53 without decimals
/// Range: any number.
/// Errors: none.
/// Source: definition
double to_double(const Decimal& number);

/// A computed double rounded to so many decimals: the one way from binary fractions to decimals.
///
/// The shortest decimal that reads back as the same double is rounded, halves away from zero, so
/// that 1.005 (in binary a little less) becomes 1.01 as a person expects.
/// @param value [-] a finite number
/// @param decimals [-] decimals to keep, 0 to 18
/// @param path [text] what is rounded, for the error
/// @return [-] the rounded number
/// Range: |value| 10^decimals below 9.2e18.
/// Errors: MoneyError `money.number` for NaN or infinity, `money.overflow`, `money.scale`.
/// Source: definition
/// Verified by: tests/cpp/money/test_decimal.cpp
Decimal rounded_from_double(double value, int decimals, std::string_view path);

} // namespace scupper
