#include "scupper/inventory/faults.hpp"

#include "consistency.hpp"
#include "rule_tables.hpp"
#include "scupper/quantity/factors.hpp"

#include <array>
#include <cmath>
#include <utility>

namespace scupper::inventory {

namespace {

using namespace detail;

constexpr double slack = 1e-9; // relative: what a unit of another system may add to a bound

bool is_within(double value, const NumberBounds& bounds) {
    return value >= bounds.low - slack * std::abs(bounds.low) &&
           value <= bounds.high + slack * std::abs(bounds.high);
}

/// A dimension that is read in a way of its own.
struct OwnRule {
    Length<> RecordedDimensions::*member;
    NumberBounds bounds;
};

constexpr std::array own_rules{
    OwnRule{&RecordedDimensions::clearance_under, {0.0, 99.99, "outside 0 to 99.99 m"}},
    OwnRule{&RecordedDimensions::navigation_clearance, {0.0, 200.0, "outside 0 to 200 m"}},
    OwnRule{&RecordedDimensions::navigation_width, {0.0, 3000.0, "outside 0 to 3000 m"}},
    OwnRule{&RecordedDimensions::height, {0.1, 400.0, "outside 0.1 to 400 m"}},
};

/// A whole number that is read in a way of its own.
struct OwnInteger {
    int RecordedCodes::*member;
    IntegerBounds bounds;
};

constexpr std::array own_integers{
    OwnInteger{&RecordedCodes::navigation, {0, 1, reason_code}},
    OwnInteger{&RecordedCodes::year_reconstructed, {1600, 2099, "outside the years 1600 to 2099"}},
    OwnInteger{&RecordedCodes::inspection_year, {1900, 2099, "outside the years 1900 to 2099"}},
    OwnInteger{&RecordedCodes::inspection_month, {1, 12, "not a month"}},
    OwnInteger{&RecordedCodes::beam_lines, {0, 200, "outside 0 to 200 lines"}},
    OwnInteger{&RecordedCodes::approach_beam_lines, {0, 200, "outside 0 to 200 lines"}},
    OwnInteger{&RecordedCodes::pier_units, {0, 2500, "outside 0 to 2500 units"}},
    OwnInteger{&RecordedCodes::abutment_units, {0, 50, "outside 0 to 50 units"}},
};

/// A code that is read in a way of its own.
struct OwnCode {
    char RecordedCodes::*member;
    CodeSet codes;
};

constexpr std::array own_codes{
    OwnCode{&RecordedCodes::beam_layout, CodeSet("1AS")},
    OwnCode{&RecordedCodes::approach_beam_layout, CodeSet("1AS")},
    OwnCode{&RecordedCodes::railing_condition, ratings},
    OwnCode{&RecordedCodes::bearing_condition, ratings},
    OwnCode{&RecordedCodes::joint_condition, ratings},
};

/// Faults of single values, gathered.
class Search {
  public:
    explicit Search(const Structure& structure) : s_(structure) {}

    std::vector<Fault> run() {
        for (const DimensionRule& rule : dimension_rules) {
            check(s_.dimensions.*rule.member, rule.metres, rule.bounds);
        }
        for (const OwnRule& rule : own_rules) {
            check(s_.dimensions.*rule.member, 1.0, rule.bounds);
        }
        check(s_.dimensions.skew, factor::degree, {0.0, 89.99, "outside 0 to 89 degrees"});
        check(s_.latitude, {-90.0, 90.0, "outside -90 to 90 degrees"});
        check(s_.longitude, {-180.0, 180.0, "outside -180 to 180 degrees"});
        check(s_.recorded_deck_area, {0.0, 1e7, "outside 0 to 10000000 m2"});
        check(s_.irregular_deck_area, {0.1, 1e7, "outside 0.1 to 10000000 m2"});
        check(s_.operating_rating, {0.0, 99.9, "outside 0 to 99.9 t"});
        check(s_.inventory_rating, {0.0, 99.9, "outside 0 to 99.9 t"});
        check_codes();
        return std::move(faults_);
    }

  private:
    template <class Q>
    void check(const Q& value, double unit, const NumberBounds& bounds) {
        check_number(&value, value.si() / unit, bounds);
    }
    void check(const double& value, const NumberBounds& bounds) {
        check_number(&value, value, bounds);
    }
    void check_number(const void* field, double value, const NumberBounds& bounds) {
        if (!std::isnan(value) && !is_within(value, bounds)) {
            faults_.push_back({field, bounds.outside});
        }
    }

    /// Whether a value is recorded and within its bounds.
    bool check_integer(const int& value, const IntegerBounds& bounds) {
        const bool within = value >= bounds.low && value <= bounds.high;
        if (value != no_code && !within) {
            faults_.push_back({&value, bounds.outside});
        }
        return value != no_code && within;
    }

    void check_codes() {
        for (const OwnInteger& rule : own_integers) {
            check_integer(s_.codes.*rule.member, rule.bounds);
        }
        for (const IntegerRule& rule : integer_rules) {
            const int& value = s_.codes.*rule.member;
            if (check_integer(value, rule.bounds) && !rule.listed.has(value)) {
                faults_.push_back({&value, reason_code, rule.keep_unlisted});
            }
        }
        for (const CodeRule& rule : code_rules) {
            if (rule.member == nullptr) {
                continue;
            }
            check_code(s_.codes.*rule.member, rule.codes);
        }
        for (const OwnCode& rule : own_codes) {
            check_code(s_.codes.*rule.member, rule.codes);
        }
    }

    void check_code(const char& code, const CodeSet& codes) {
        if (code != ' ' && !codes.has(code)) {
            faults_.push_back({&code, reason_code});
        }
    }

    const Structure& s_;
    std::vector<Fault> faults_;
};

/// The member of a structure that a column fills.
const void* member_of(const Structure& s, Column column) {
    for (const DimensionRule& rule : dimension_rules) {
        if (rule.column == column) {
            return &(s.dimensions.*rule.member);
        }
    }
    for (const IntegerRule& rule : integer_rules) {
        if (rule.column == column) {
            return &(s.codes.*rule.member);
        }
    }
    switch (column) {
    case Column::approach_material:
        return &s.codes.approach_material;
    case Column::year_reconstructed:
        return &s.codes.year_reconstructed;
    case Column::deck_type:
        return &s.codes.deck_type;
    default:
        return &s.recorded_deck_area;
    }
}

} // namespace

std::vector<Fault> faults_of(const Structure& structure) {
    std::vector<Fault> faults = Search(structure).run();
    const bool has_approaches = structure.codes.approach_material != Material::unknown ||
                                structure.codes.approach_design != Design::unknown;
    check_consistency({structure, has_approaches, [&](Column column, std::string_view reason) {
                           faults.push_back({member_of(structure, column), reason, true});
                       }});
    return faults;
}

} // namespace scupper::inventory
