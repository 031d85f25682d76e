// Reads the items of the tables of rules.

#include "bytes.hpp"
#include "record.hpp"
#include "rule_tables.hpp"

#include <array>
#include <cstddef>
#include <utility>

namespace scupper::inventory::detail {

namespace {

/// What stands in a column, trimmed; empty with a doubt where it is blank and may not be.
std::string_view text_of(const Record& record, Column column, bool may_be_blank) {
    const std::string_view text = record.text(column);
    if (text.empty() && !may_be_blank && record.has(column)) {
        record.doubt(column, reason_blank);
    }
    return text;
}

/// A value that is written unusually: padded, quoted, signed, long, not within bounds, or none.
template <class T, class Read>
std::optional<T> unusual(const Record& record, Column column, const Bounds<T>& bounds, Read read) {
    const std::string_view text = text_of(record, column, bounds.may_be_blank);
    if (text.empty()) {
        return std::nullopt;
    }
    const std::optional<T> value = read(text);
    if (value && *value >= bounds.low && *value <= bounds.high) {
        return value;
    }
    record.doubt(column, value ? bounds.outside : reason_number);
    return std::nullopt;
}

std::optional<double> unusual_number(const Record& record, Column column,
                                     const NumberBounds& bounds) {
    const unsigned implied = record.header.implied(column);
    return unusual<double>(record, column, bounds,
                           [implied](std::string_view text) { return read_number(text, implied); });
}

std::optional<int> unusual_integer(const Record& record, Column column,
                                   const IntegerBounds& bounds) {
    return unusual<int>(record, column, bounds, read_integer);
}

[[gnu::noinline]] void read_unusual(const Record& record, const DimensionRule& rule) {
    const auto value = unusual_number(record, rule.column, rule.bounds);
    if (value && !rule.is_none(*value)) {
        record.structure.dimensions.*rule.member = Length<>(*value * rule.metres);
    }
}

[[gnu::noinline]] void read_unusual(const Record& record, const IntegerRule& rule) {
    const std::optional<int> value = unusual_integer(record, rule.column, rule.bounds);
    if (!value) {
        return;
    }
    const bool listed = rule.listed.has(*value);
    if (!listed) {
        record.doubt(rule.column, reason_code, rule.keep_unlisted);
    }
    if (listed || rule.keep_unlisted) {
        record.structure.codes.*rule.member = *value;
    }
}

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

[[gnu::noinline]] void read_unusual(const Record& record, const CodeRule& rule) {
    const std::string_view code = text_of(record, rule.column, rule.may_be_blank);
    if (code.empty()) {
        return;
    }
    if (code.size() != 1 || !rule.codes.has(code.front())) {
        record.doubt(rule.column, reason_code);
    } else if (rule.member != nullptr) {
        record.structure.codes.*rule.member = code.front();
    }
}

/// Reads a field by its rule: at once where it is written as usual, else by `read_unusual` with the
/// rule as it stands in its table.
struct RuleReader {
    const Record& record;
    UsualNumbers numbers;

    [[gnu::always_inline]] void operator()(const DimensionRule& rule,
                                           const DimensionRule& kept) const {
        const double number = numbers.number(rule.column);
        if (!(number >= rule.bounds.low && number <= rule.bounds.high)) {
            read_unusual(record, kept);
        } else if (!rule.is_none(number)) {
            record.structure.dimensions.*rule.member = Length<>(number * rule.metres);
        }
    }

    [[gnu::always_inline]] void operator()(const IntegerRule& rule, const IntegerRule& kept) const {
        const int other = rule.bounds.low - 1;
        const int number = rule.bounds.high <= 9 ? numbers.digit(rule.column, other)
                                                 : numbers.integer(rule.column, other);
        const bool within = number >= rule.bounds.low && number <= rule.bounds.high;
        if (within && (rule.listed.all() || rule.listed.has(number))) {
            record.structure.codes.*rule.member = number;
        } else {
            read_unusual(record, kept);
        }
    }

    [[gnu::always_inline]] void operator()(const CodeRule& rule, const CodeRule& kept) const {
        const char code = numbers.sign(rule.column);
        if (!rule.codes.has(code)) {
            read_unusual(record, kept);
        } else if (rule.member != nullptr) {
            record.structure.codes.*rule.member = code;
        }
    }
};

/// Reads by every rule of a table. The loop is unrolled and each rule a constant, so that it becomes
/// part of the code.
template <const auto& Rules>
void read_all(const Record& record) {
    const RuleReader read{record, UsualNumbers(record)};
    const auto read_one = [read](auto place) {
        constexpr auto rule = Rules[place.value];
        read(rule, Rules[place.value]);
    };
    [&read_one]<std::size_t... I>(std::index_sequence<I...>) {
        (read_one(std::integral_constant<std::size_t, I>()), ...);
    }
    (std::make_index_sequence<Rules.size()>());
}

} // namespace

std::optional<double> number_of(const Record& record, Column column, const NumberBounds& bounds) {
    const double number = UsualNumbers(record).number(column);
    const bool usual = number >= bounds.low && number <= bounds.high;
    return usual ? number : unusual_number(record, column, bounds);
}

std::optional<int> integer_of(const Record& record, Column column, const IntegerBounds& bounds) {
    const int number = UsualNumbers(record).integer(column, bounds.low - 1);
    const bool usual = number >= bounds.low && number <= bounds.high;
    return usual ? number : unusual_integer(record, column, bounds);
}

void read_by_rule(const Record& record) {
    read_all<dimension_rules>(record);
    read_all<integer_rules>(record);
    read_all<code_rules>(record);
}

} // namespace scupper::inventory::detail
