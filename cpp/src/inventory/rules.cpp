// Reads the items of the tables of rules.

#include "record.hpp"
#include "rule_tables.hpp"
#include "usual_numbers.hpp"

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

    template <class Rule>
    [[gnu::always_inline]] void read_unless_empty(bool may_be_blank, const Rule& kept) const {
        if (!may_be_blank || !numbers.empty(kept.column)) {
            read_unusual(record, kept);
        }
    }

    [[gnu::always_inline]] void operator()(const DimensionRule& rule,
                                           const DimensionRule& kept) const {
        const double number = numbers.number(rule.column);
        if (!(number >= rule.bounds.low && number <= rule.bounds.high)) {
            read_unless_empty(rule.bounds.may_be_blank, kept);
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
            read_unless_empty(rule.bounds.may_be_blank, kept);
        }
    }

    [[gnu::always_inline]] void operator()(const CodeRule& rule, const CodeRule& kept) const {
        const char code = numbers.sign(rule.column);
        if (!rule.codes.has(code)) {
            read_unless_empty(rule.may_be_blank, kept);
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

void read_by_rule(const Record& record) {
    read_all<dimension_rules>(record);
    read_all<integer_rules>(record);
    read_all<code_rules>(record);
}

} // namespace scupper::inventory::detail
