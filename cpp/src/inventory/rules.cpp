// The items whose rule is a range or a list of codes.
//
// Source: FHWA-PD-96-001 (1995), items by number, for codes and field widths. The upper limits of
// sizes are common practice: well above anything built, so that a slipped decimal or a "not known"
// of all nines does not pass.

#include "record.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace scupper::inventory::detail {

namespace {

struct DimensionRule {
    Column column;
    Length<> RecordedDimensions::*member;
    double metres; // of the file's unit
    Bounds bounds;
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

bool is_agency(int code) {
    static constexpr std::array known{1,  2,  3,  4,  11, 12, 21, 25, 26, 27, 31, 32, 60, 61, 62,
                                      63, 64, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 80};
    return std::binary_search(known.begin(), known.end(), code);
}

bool is_functional_class(int code) {
    static constexpr std::array known{1, 2, 6, 7, 8, 9, 11, 12, 14, 16, 17, 19};
    return std::binary_search(known.begin(), known.end(), code);
}

struct IntegerRule {
    Column column;
    int RecordedCodes::*member;
    Bounds bounds;
    bool (*listed)(int) = nullptr;
    bool keep_unlisted = false;
};

constexpr std::array integer_rules{
    IntegerRule{Column::county, &RecordedCodes::county, {0, 999, "outside 0 to 999"}},
    IntegerRule{Column::maintained_by,
                &RecordedCodes::maintained_by,
                {0, 99, reason_code},
                is_agency,
                true},
    IntegerRule{Column::owner, &RecordedCodes::owner, {0, 99, reason_code}, is_agency, true},
    IntegerRule{Column::functional_class,
                &RecordedCodes::functional_class,
                {0, 99, reason_code},
                is_functional_class},
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
    IntegerRule{
        Column::truck_percent, &RecordedCodes::truck_percent, {0, 100, "outside 0 to 100 %", true}},
};

struct CodeRule {
    Column column;
    char RecordedCodes::*member; // null: checked, and of no use to the model
    std::string_view codes;
};

constexpr std::array code_rules{
    CodeRule{Column::posting, &RecordedCodes::posting, "ABDEGKPR"},
    CodeRule{Column::deck_condition, &RecordedCodes::deck_condition, "0123456789N"},
    CodeRule{Column::superstructure_condition, &RecordedCodes::superstructure_condition,
             "0123456789N"},
    CodeRule{Column::substructure_condition, &RecordedCodes::substructure_condition, "0123456789N"},
    CodeRule{Column::culvert_condition, &RecordedCodes::culvert_condition, "0123456789N"},
    CodeRule{Column::structural_evaluation, nullptr, "0123456789N"},
    CodeRule{Column::posting_evaluation, &RecordedCodes::posting_evaluation, "012345"},
    CodeRule{Column::parallel, &RecordedCodes::parallel, "RLN"},
    CodeRule{Column::national_system, &RecordedCodes::on_national_system, "01"},
    CodeRule{Column::deck_type, &RecordedCodes::deck_type, "123456789N"},
    CodeRule{Column::surface_type, &RecordedCodes::surface_type, "0123456789N"},
};

/// What stands in a column, trimmed; empty with a doubt where it is blank and may not be.
std::string_view text_of(const Record& record, Column column, bool may_be_blank) {
    const std::string_view text = record.text(column);
    if (text.empty() && !may_be_blank && record.has(column)) {
        record.doubt(column, reason_blank);
    }
    return text;
}

template <class T, class Read>
std::optional<T> value_of(const Record& record, Column column, const Bounds& bounds, Read read) {
    const std::string_view text = text_of(record, column, bounds.may_be_blank);
    if (text.empty()) {
        return std::nullopt;
    }
    const std::optional<T> value = read(text);
    if (!value) {
        record.doubt(column, reason_number);
    } else if (*value < static_cast<T>(bounds.low) || *value > static_cast<T>(bounds.high)) {
        record.doubt(column, bounds.outside);
        return std::nullopt;
    }
    return value;
}

void read_integer_rule(const Record& record, const IntegerRule& rule) {
    const std::optional<int> value = integer_of(record, rule.column, rule.bounds);
    if (!value) {
        return;
    }
    const bool listed = rule.listed == nullptr || rule.listed(*value);
    if (!listed) {
        record.doubt(rule.column, reason_code, rule.keep_unlisted);
    }
    if (listed || rule.keep_unlisted) {
        record.structure.codes.*rule.member = *value;
    }
}

void read_code_rule(const Record& record, const CodeRule& rule) {
    const std::string_view code = text_of(record, rule.column, false);
    if (code.empty()) {
        return;
    }
    if (code.size() != 1 || rule.codes.find(code.front()) == std::string_view::npos) {
        record.doubt(rule.column, reason_code);
    } else if (rule.member != nullptr) {
        record.structure.codes.*rule.member = code.front();
    }
}

} // namespace

std::optional<double> number_of(const Record& record, Column column, const Bounds& bounds) {
    return value_of<double>(record, column, bounds, read_number);
}

std::optional<int> integer_of(const Record& record, Column column, const Bounds& bounds) {
    return value_of<int>(record, column, bounds, read_integer);
}

void read_by_rule(const Record& record) {
    for (const DimensionRule& rule : dimension_rules) {
        if (const auto value = number_of(record, rule.column, rule.bounds)) {
            record.structure.dimensions.*rule.member = Length<>(*value * rule.metres);
        }
    }
    for (const IntegerRule& rule : integer_rules) {
        read_integer_rule(record, rule);
    }
    for (const CodeRule& rule : code_rules) {
        read_code_rule(record, rule);
    }
}

} // namespace scupper::inventory::detail
