// The items whose rule is a range or a list of codes.
//
// Source: FHWA-PD-96-001 (1995), items by number, for codes and field widths. The upper limits of
// sizes are common practice: well above anything built, so that a slipped decimal or a "not known"
// of all nines does not pass.

#include "bytes.hpp"
#include "record.hpp"

#include <array>
#include <cstdint>
#include <initializer_list>
#include <utility>

namespace scupper::inventory::detail {

namespace {

struct DimensionRule {
    Column column;
    Length<> RecordedDimensions::*member;
    double metres; // of the file's unit
    NumberBounds bounds;
};

constexpr std::array dimension_rules{
    DimensionRule{
        Column::length, &RecordedDimensions::length, 1.0, {0.1, 40000.0, "outside 0.1 to 40000 m"}},
    DimensionRule{Column::longest_span,
                  &RecordedDimensions::longest_span,
                  1.0,
                  {0.1, 3000.0, "outside 0.1 to 3000 m"}},
    DimensionRule{Column::deck_width,
                  &RecordedDimensions::deck_width,
                  1.0,
                  {0.0, 300.0, "outside 0 to 300 m"}},
    DimensionRule{Column::roadway_width,
                  &RecordedDimensions::roadway_width,
                  1.0,
                  {0.0, 300.0, "outside 0 to 300 m"}},
    DimensionRule{Column::approach_width,
                  &RecordedDimensions::approach_width,
                  1.0,
                  {0.1, 300.0, "outside 0.1 to 300 m"}},
    DimensionRule{Column::left_walk,
                  &RecordedDimensions::left_walk_width,
                  1.0,
                  {0.0, 30.0, "outside 0 to 30 m"}},
    DimensionRule{Column::right_walk,
                  &RecordedDimensions::right_walk_width,
                  1.0,
                  {0.0, 30.0, "outside 0 to 30 m"}},
    DimensionRule{
        Column::detour, &RecordedDimensions::detour, 1000.0, {0.0, 199.0, "outside 0 to 199 km"}},
};

/// Some of the numbers from 0 to 99.
struct NumberSet {
    std::uint64_t low = ~std::uint64_t{0};
    std::uint64_t high = ~std::uint64_t{0};

    constexpr NumberSet() = default; // all of them
    constexpr NumberSet(std::initializer_list<unsigned> numbers) : low(0), high(0) {
        for (const unsigned n : numbers) {
            (n < 64 ? low : high) |= std::uint64_t{1} << (n % 64);
        }
    }
    constexpr bool all() const { return (low & high) == ~std::uint64_t{0}; }
    constexpr bool has(int n) const {
        const auto u = static_cast<unsigned>(n);
        return u > 127 || (((u < 64 ? low : high) >> (u % 64)) & 1U) != 0;
    }
};

constexpr NumberSet agencies{1,  2,  3,  4,  11, 12, 21, 25, 26, 27, 31, 32, 60, 61, 62,
                             63, 64, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 80};
constexpr NumberSet functional_classes{1, 2, 6, 7, 8, 9, 11, 12, 14, 16, 17, 19};
constexpr NumberSet service_levels{0, 1, 2, 3, 4, 6, 7, 8};

struct IntegerRule {
    Column column;
    int RecordedCodes::*member;
    IntegerBounds bounds;
    NumberSet listed = {};
    bool keep_unlisted = false;
};

constexpr std::array integer_rules{
    IntegerRule{Column::county, &RecordedCodes::county, {0, 999, "outside 0 to 999"}},
    IntegerRule{
        Column::maintained_by, &RecordedCodes::maintained_by, {0, 99, reason_code}, agencies, true},
    IntegerRule{Column::owner, &RecordedCodes::owner, {0, 99, reason_code}, agencies, true},
    IntegerRule{Column::functional_class,
                &RecordedCodes::functional_class,
                {0, 99, reason_code},
                functional_classes},
    IntegerRule{Column::year_built,
                &RecordedCodes::year_built,
                {1600, 2099, "outside the years 1600 to 2099"}},
    IntegerRule{Column::lanes_on, &RecordedCodes::lanes_on, {0, 50, "outside 0 to 50 lanes"}},
    IntegerRule{Column::lanes_under, &RecordedCodes::lanes_under, {0, 99, "outside 0 to 99 lanes"}},
    IntegerRule{Column::daily_traffic,
                &RecordedCodes::daily_traffic,
                {0, 500000, "outside 0 to 500000 vehicles a day"}},
    IntegerRule{Column::traffic_year,
                &RecordedCodes::traffic_year,
                {1900, 2099, "outside the years 1900 to 2099"}},
    IntegerRule{Column::median, &RecordedCodes::median, {0, 3, reason_code}},
    IntegerRule{Column::flared, &RecordedCodes::flared, {0, 1, reason_code}},
    IntegerRule{Column::service_on, &RecordedCodes::service_on, {0, 9, reason_code}},
    IntegerRule{Column::service_under, &RecordedCodes::service_under, {0, 9, reason_code}},
    // 998 and 999 stand for "not known" where they occur.
    IntegerRule{Column::main_spans, &RecordedCodes::main_spans, {1, 997, "outside 1 to 997 spans"}},
    IntegerRule{Column::approach_spans,
                &RecordedCodes::approach_spans,
                {0, 2500, "outside 0 to 2500 spans"}},
    IntegerRule{Column::traffic_direction, &RecordedCodes::traffic_direction, {0, 3, reason_code}},
    IntegerRule{Column::route_prefix, &RecordedCodes::route_prefix, {1, 8, reason_code}},
    IntegerRule{
        Column::service_level, &RecordedCodes::service_level, {0, 8, reason_code}, service_levels},
    IntegerRule{Column::route_direction, &RecordedCodes::route_direction, {0, 4, reason_code}},
    IntegerRule{Column::toll, &RecordedCodes::toll, {1, 5, reason_code}},
    IntegerRule{Column::inspection_interval,
                &RecordedCodes::inspection_interval,
                {1, 99, "outside 1 to 99 months"}},
    IntegerRule{Column::border_percent,
                &RecordedCodes::border_percent,
                {0, 100, "outside 0 to 100 %", true}},
    IntegerRule{
        Column::pier_protection, &RecordedCodes::pier_protection, {1, 5, reason_code, true}},
    IntegerRule{Column::future_traffic,
                &RecordedCodes::future_traffic,
                {0, 999999, "outside 0 to 999999 vehicles a day", true}},
    IntegerRule{Column::future_traffic_year,
                &RecordedCodes::future_traffic_year,
                {1900, 2099, "outside the years 1900 to 2099", true}},
    IntegerRule{
        Column::truck_percent, &RecordedCodes::truck_percent, {0, 100, "outside 0 to 100 %", true}},
};

/// Code letters, as bits from '0' on.
struct CodeSet {
    std::uint64_t bits = 0;

    constexpr CodeSet(std::string_view codes) {
        for (const char code : codes) {
            bits |= std::uint64_t{1} << static_cast<unsigned>(code - '0');
        }
    }
    constexpr bool has(char code) const {
        const auto u = static_cast<unsigned>(code) - static_cast<unsigned>('0');
        return u < 64 && ((bits >> u) & 1U) != 0;
    }
};

struct CodeRule {
    Column column;
    char RecordedCodes::*member; // null: checked, and of no use to the model
    CodeSet codes;
    bool may_be_blank = false;
};

constexpr CodeSet ratings("0123456789N");

constexpr std::array code_rules{
    CodeRule{Column::railing, &RecordedCodes::railing, CodeSet("01N"), true},
    CodeRule{Column::posting, &RecordedCodes::posting, CodeSet("ABDEGKPR")},
    CodeRule{Column::lateral_reference, &RecordedCodes::lateral_reference, CodeSet("HRN"), true},
    CodeRule{Column::deck_condition, &RecordedCodes::deck_condition, ratings},
    CodeRule{Column::superstructure_condition, &RecordedCodes::superstructure_condition, ratings},
    CodeRule{Column::substructure_condition, &RecordedCodes::substructure_condition, ratings},
    CodeRule{Column::channel_condition, &RecordedCodes::channel_condition, ratings},
    CodeRule{Column::culvert_condition, &RecordedCodes::culvert_condition, ratings},
    CodeRule{Column::structural_evaluation, nullptr, ratings},
    CodeRule{Column::posting_evaluation, &RecordedCodes::posting_evaluation, CodeSet("012345")},
    CodeRule{Column::parallel, &RecordedCodes::parallel, CodeSet("RLN")},
    CodeRule{Column::temporary, &RecordedCodes::temporary, CodeSet("T"), true},
    CodeRule{Column::national_system, &RecordedCodes::on_national_system, CodeSet("01")},
    CodeRule{Column::deck_type, &RecordedCodes::deck_type, CodeSet("123456789N")},
    CodeRule{Column::surface_type, &RecordedCodes::surface_type, ratings},
    CodeRule{Column::national_length, &RecordedCodes::national_length, CodeSet("YN"), true},
    CodeRule{Column::scour, &RecordedCodes::scour, CodeSet("0123456789NUT"), true},
};

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
    if (const auto value = unusual_number(record, rule.column, rule.bounds)) {
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

    /// A whole number from `low` to `high`; another one stands for whatever else there is.
    int integer(Column column, int low) const {
        const Cell cell = at(column);
        const int other = low - 1;
        if (!cell.usual) {
            return other;
        }
        const std::uint64_t digits = digit_word(cell.bytes, cell.length);
        return any_above_nine(digits) ? other : static_cast<int>(joined_digits(digits));
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
        return {fields_.row + fields_.begins[i], length, length - 1 < 8};
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

/// Calls a function with every rule of a table. The loop is unrolled, so that what stands in the
/// table becomes part of the code.
template <const auto& Rules, class Read>
[[gnu::always_inline]] inline void each(Read read) {
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        (read(Rules[I]), ...);
    }
    (std::make_index_sequence<Rules.size()>());
}

[[gnu::always_inline]] inline void read_rule(const Record& record, const UsualNumbers& numbers,
                                             const DimensionRule& rule) {
    const double number = numbers.number(rule.column);
    if (number >= rule.bounds.low && number <= rule.bounds.high) {
        record.structure.dimensions.*rule.member = Length<>(number * rule.metres);
    } else {
        read_unusual(record, rule);
    }
}

[[gnu::always_inline]] inline void read_rule(const Record& record, const UsualNumbers& numbers,
                                             const IntegerRule& rule) {
    const int number = numbers.integer(rule.column, rule.bounds.low);
    if (number >= rule.bounds.low && number <= rule.bounds.high &&
        (rule.listed.all() || rule.listed.has(number))) {
        record.structure.codes.*rule.member = number;
    } else {
        read_unusual(record, rule);
    }
}

[[gnu::always_inline]] inline void read_rule(const Record& record, const CodeRule& rule) {
    const std::string_view code = record.field(rule.column);
    if (code.size() == 1 && rule.codes.has(code.front())) {
        if (rule.member != nullptr) {
            record.structure.codes.*rule.member = code.front();
        }
    } else {
        read_unusual(record, rule);
    }
}

} // namespace

std::optional<double> number_of(const Record& record, Column column, const NumberBounds& bounds) {
    const double number = UsualNumbers(record).number(column);
    const bool usual = number >= bounds.low && number <= bounds.high;
    return usual ? number : unusual_number(record, column, bounds);
}

std::optional<int> integer_of(const Record& record, Column column, const IntegerBounds& bounds) {
    const int number = UsualNumbers(record).integer(column, bounds.low);
    const bool usual = number >= bounds.low && number <= bounds.high;
    return usual ? number : unusual_integer(record, column, bounds);
}

void read_by_rule(const Record& record) {
    const UsualNumbers numbers(record);
    each<dimension_rules>([&](const DimensionRule& rule) { read_rule(record, numbers, rule); });
    each<integer_rules>([&](const IntegerRule& rule) { read_rule(record, numbers, rule); });
    each<code_rules>([&](const CodeRule& rule) { read_rule(record, rule); });
}

} // namespace scupper::inventory::detail
