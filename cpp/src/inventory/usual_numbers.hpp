#pragma once
// Numbers as they are usually written: digits, perhaps a point, nothing else. In a header, so that
// the bounds of each item become part of the code that reads it.

#include "bytes.hpp"
#include "record.hpp"

#include <array>
#include <cstddef>
#include <optional>

namespace scupper::inventory::detail {

/// The usual way numbers are written, without a look at what else they might be.
class UsualNumbers {
  public:
    explicit UsualNumbers(const Record& record)
        : fields_(record.fields), position_(record.header.position.data()),
          decimals_(record.header.decimals.data()) {}

    /// A whole number; `other` stands for whatever else there is.
    int integer(Column column, int other) const {
        const Cell cell = at(column);
        if (!cell.usual) {
            return other;
        }
        const std::uint64_t digits = digit_word(cell.bytes, cell.length);
        return any_above_nine(digits) ? other : static_cast<int>(joined_digits(digits));
    }

    /// A single sign; '\0' stands for whatever else there is.
    char sign(Column column) const {
        const std::size_t i = position_[static_cast<std::size_t>(column)];
        return fields_.length(i) == 1 ? *fields_.begin(i) : '\0';
    }

    /// A number of one digit; `other` stands for whatever else there is.
    int digit(Column column, int other) const {
        const int value = sign(column) - '0';
        return value >= 0 && value <= 9 ? value : other;
    }

    /// Whether nothing at all is written, not even a blank.
    bool empty(Column column) const {
        return fields_.length(position_[static_cast<std::size_t>(column)]) == 0;
    }

    /// A number; NaN stands for whatever else there is.
    double number(Column column) const {
        static constexpr std::array<double, 8> power{1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7};
        const Cell cell = at(column);
        if (!cell.usual) {
            return not_recorded;
        }
        const unsigned implied = decimals_[static_cast<std::size_t>(column)];
        const PlainNumber plain = plain_number(cell.bytes, cell.length, implied);
        return plain.valid ? plain.digits / power[plain.decimals] : not_recorded;
    }

  private:
    struct Cell {
        const char* bytes;
        std::size_t length;
        bool usual;
    };

    Cell at(Column column) const {
        const std::size_t i = position_[static_cast<std::size_t>(column)];
        const std::size_t length = fields_.length(i);
        return {fields_.begin(i), length, length - 1 < 8};
    }

    Fields fields_;
    const std::uint16_t* position_;
    const std::uint8_t* decimals_;
};

/// The number in a column where it can be used; a doubt where it cannot.
inline std::optional<double> number_of(const Record& record, Column column,
                                       const NumberBounds& bounds) {
    const UsualNumbers numbers(record);
    const double number = numbers.number(column);
    if (number >= bounds.low && number <= bounds.high) {
        return number;
    }
    const bool empty = bounds.may_be_blank && numbers.empty(column);
    return empty ? std::nullopt : unusual_number(record, column, bounds);
}

/// The whole number in a column where it can be used; a doubt where it cannot.
inline std::optional<int> integer_of(const Record& record, Column column,
                                     const IntegerBounds& bounds) {
    const UsualNumbers numbers(record);
    const int number = numbers.integer(column, bounds.low - 1);
    if (number >= bounds.low && number <= bounds.high) {
        return number;
    }
    const bool empty = bounds.may_be_blank && numbers.empty(column);
    return empty ? std::nullopt : unusual_integer(record, column, bounds);
}

} // namespace scupper::inventory::detail
