#pragma once
// The items whose rule is a range or a list of codes.
//
// Source: FHWA-PD-96-001 (1995), items by number, for codes and field widths. The upper limits of
// sizes are common practice: well above anything built, so that a slipped decimal or a "not known"
// of all nines does not pass.

#include "record.hpp"

#include <array>
#include <cstdint>
#include <initializer_list>
#include <limits>
#include <string_view>

namespace scupper::inventory::detail {

/// A dimension and what it may be.
struct DimensionRule {
    Column column;
    Length<> RecordedDimensions::*member;
    double metres; ///< of the file's unit
    NumberBounds bounds;
    double none_from = std::numeric_limits<double>::infinity(); ///< so the guide writes "no limit"
    bool zero_is_none = false;

    /// Whether a number within the bounds stands for "there is none".
    constexpr bool is_none(double number) const {
        return number >= none_from || (zero_is_none && number == 0.0);
    }
};

/// Item 53 or 54B writes "none, or 30 m and more" as 99.99.
inline constexpr double none_from = 99.0;

inline constexpr std::array dimension_rules{
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
    DimensionRule{Column::clearance_over,
                  &RecordedDimensions::clearance_over,
                  1.0,
                  {0.1, 99.99, "outside 0.1 to 99.99 m"},
                  none_from},
    DimensionRule{Column::route_clearance,
                  &RecordedDimensions::route_clearance,
                  1.0,
                  {0.1, 99.99, "outside 0.1 to 99.99 m"},
                  none_from},
    DimensionRule{Column::route_width,
                  &RecordedDimensions::route_width,
                  1.0,
                  {0.1, 99.9, "outside 0.1 to 99.9 m", true},
                  99.9},
    DimensionRule{Column::right_clearance_under,
                  &RecordedDimensions::right_clearance_under,
                  1.0,
                  {0.0, 99.9, "outside 0 to 99.9 m", true},
                  99.8},
    DimensionRule{Column::left_clearance_under,
                  &RecordedDimensions::left_clearance_under,
                  1.0,
                  {0.0, 99.9, "outside 0 to 99.9 m", true},
                  99.8,
                  true},
    DimensionRule{Column::lift_clearance,
                  &RecordedDimensions::lift_clearance,
                  1.0,
                  {0.0, 999.9, "outside 0 to 999.9 m", true},
                  999.9,
                  true},
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

inline constexpr NumberSet agencies{1,  2,  3,  4,  11, 12, 21, 25, 26, 27, 31, 32, 60, 61, 62,
                                    63, 64, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 80};
inline constexpr NumberSet functional_classes{1, 2, 6, 7, 8, 9, 11, 12, 14, 16, 17, 19};
inline constexpr NumberSet service_levels{0, 1, 2, 3, 4, 6, 7, 8};

/// A whole number or code and what it may be.
struct IntegerRule {
    Column column;
    int RecordedCodes::*member;
    IntegerBounds bounds;
    NumberSet listed = {};
    bool keep_unlisted = false;
};

inline constexpr std::array integer_rules{
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

/// A code letter and what it may be.
struct CodeRule {
    Column column;
    char RecordedCodes::*member; // null: checked, and of no use to the model
    CodeSet codes;
    bool may_be_blank = false;
};

/// Codes 5 to 8 and A to F came after the guide (from memory; 8 and A stand in files).
inline constexpr CodeSet rating_methods("012345678ABCDEF");
inline constexpr CodeSet ratings("0123456789N");

inline constexpr std::array code_rules{
    CodeRule{Column::railing, &RecordedCodes::railing, CodeSet("01N"), true},
    CodeRule{Column::posting, &RecordedCodes::posting, CodeSet("ABDEGKPR")},
    CodeRule{Column::lateral_reference, &RecordedCodes::lateral_reference, CodeSet("HRN"), true},
    CodeRule{Column::deck_condition, &RecordedCodes::deck_condition, ratings},
    CodeRule{Column::superstructure_condition, &RecordedCodes::superstructure_condition, ratings},
    CodeRule{Column::substructure_condition, &RecordedCodes::substructure_condition, ratings},
    CodeRule{Column::channel_condition, &RecordedCodes::channel_condition, ratings},
    CodeRule{Column::culvert_condition, &RecordedCodes::culvert_condition, ratings},
    CodeRule{Column::operating_method, &RecordedCodes::operating_method, rating_methods},
    CodeRule{Column::inventory_method, &RecordedCodes::inventory_method, rating_methods},
    CodeRule{Column::design_load, &RecordedCodes::design_load, CodeSet("0123456789ABC")},
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

} // namespace scupper::inventory::detail
