#include "record.hpp"

#include "rule_tables.hpp"
#include "scupper/quantity/factors.hpp"
#include "usual_numbers.hpp"

#include <cmath>
#include <cstddef>
#include <string>

namespace scupper::inventory::detail {

namespace {

/// Item 16 or 17: degrees, minutes and seconds with two decimals, packed into one number.
struct Packed {
    double degrees;
    double minutes;
    double seconds;
    double decimal() const { return degrees + minutes / 60.0 + seconds / 3600.0; }
};

Packed unpack(int dddmmssss) {
    return {static_cast<double>(dddmmssss / 1'000'000),
            static_cast<double>(dddmmssss / 10'000 % 100), dddmmssss % 10'000 / 100.0};
}

/// The packed number of a coordinate column; 0 where it has none.
int packed_number(const Record& record, Column column, bool pointed) {
    constexpr std::string_view outside = "outside the packed form";
    if (pointed) { // DDDMMSS.ss
        const auto number = number_of(record, column, {0.0, 1e7, outside, true});
        return static_cast<int>(std::lround(number.value_or(0.0) * 100.0));
    }
    return integer_of(record, column, {0, 1'000'000'000, outside, true}).value_or(0);
}

/// The angle in a coordinate column, or NaN; `most` is the greatest possible.
double coordinate(const Record& record, Column column, double most) {
    const bool pointed = record.field(column).find('.') != std::string_view::npos;
    const int number = packed_number(record, column, pointed);
    if (number == 0) {
        return not_recorded;
    }
    const Packed packed = unpack(number);
    if (packed.seconds >= 60.0) {
        record.doubt(column, "seconds of 60 or more", packed.degrees > 0.0);
    }
    if (packed.degrees < 1.0 || packed.decimal() > most || packed.minutes >= 60.0) {
        record.doubt(column, "degrees or minutes that cannot be");
        return not_recorded;
    }
    if (pointed) {
        record.doubt(column, "decimal point: read as degrees, minutes and seconds", true);
    }
    return packed.decimal();
}

/// The Marianas alone lie east of Greenwich by less than half a turn (from memory: FIPS 66, 69).
bool lies_east(const std::string& state) {
    return state == "66" || state == "69";
}

void read_position(const Record& record) {
    Structure& s = record.structure;
    s.latitude = coordinate(record, Column::latitude, 90.0);
    const double west = coordinate(record, Column::longitude, 180.0);
    s.longitude = lies_east(s.state) ? west : -west;
}

void read_spans(const Record& record) {
    RecordedCodes& codes = record.structure.codes;
    if (const auto kind = integer_of(record, Column::material, {0, 9, reason_code})) {
        codes.material = static_cast<Material>(*kind);
    }
    if (const auto type = integer_of(record, Column::design, {0, 22, reason_code})) {
        codes.design = static_cast<Design>(*type);
    }
    const auto kind = integer_of(record, Column::approach_material, {0, 9, reason_code});
    const auto type = integer_of(record, Column::approach_design, {0, 22, reason_code});
    const bool none = kind == 0 && type == 0; // so the guide says "no approach spans"
    if (kind && !none) {
        codes.approach_material = static_cast<Material>(*kind);
    }
    if (type && !none) {
        codes.approach_design = static_cast<Design>(*type);
    }
}

void read_skew(const Record& record) {
    const auto degrees = number_of(record, Column::skew, {0.0, 99.0, "outside 0 to 89 degrees"});
    if (!degrees) {
        return;
    }
    if (*degrees < 90.0) {
        record.structure.dimensions.skew = Angle<>(*degrees * factor::degree);
    } else {
        record.doubt(Column::skew, *degrees == 99.0 ? "99: the skew varies over the structure"
                                                    : "outside 0 to 89 degrees");
    }
}

Below below_of(std::string_view code) {
    const char letter = code.size() == 1 ? code.front() : ' ';
    return letter == 'N'   ? Below::neither
           : letter == 'H' ? Below::highway
           : letter == 'R' ? Below::railroad
                           : Below::unknown;
}

void read_clearance_under(const Record& record) {
    Structure& s = record.structure;
    s.codes.below = below_of(record.text(Column::below));
    if (record.has(Column::below) && s.codes.below == Below::unknown) {
        record.doubt(Column::below,
                     record.text(Column::below).empty() ? reason_blank : reason_code);
    }
    const auto metres =
        number_of(record, Column::clearance_under, {0.0, 99.99, "outside 0 to 99.99 m"});
    if (!metres) {
        return;
    }
    const bool recorded = *metres > 0.0 && *metres < none_from;
    if (recorded) {
        s.dimensions.clearance_under = Length<>(*metres);
    }
    if (s.codes.below == Below::neither && *metres > 0.0) {
        record.doubt(Column::clearance_under, "a clearance although 54A says neither", recorded);
    } else if (s.codes.below != Below::neither && *metres == 0.0) {
        record.doubt(Column::clearance_under, "0 although 54A names what is below");
    }
}

void read_navigation_opening(const Record& record, Column column,
                             Length<> RecordedDimensions::*member, const NumberBounds& bounds) {
    const auto metres = number_of(record, column, bounds);
    if (!metres || *metres == 0.0) {
        return;
    }
    if (record.structure.codes.navigation == 1) {
        record.structure.dimensions.*member = Length<>(*metres);
    } else {
        record.doubt(column, "a clearance although 38 is not 1");
    }
}

void read_navigation(const Record& record) {
    Structure& s = record.structure;
    if (record.text(Column::navigation) != "N") {
        s.codes.navigation =
            integer_of(record, Column::navigation, {0, 1, reason_code}).value_or(no_code);
    }
    read_navigation_opening(record, Column::navigation_clearance,
                            &RecordedDimensions::navigation_clearance,
                            {0.0, 200.0, "outside 0 to 200 m"});
    read_navigation_opening(record, Column::navigation_width, &RecordedDimensions::navigation_width,
                            {0.0, 3000.0, "outside 0 to 3000 m"});
}

void read_year_reconstructed(const Record& record) {
    constexpr std::string_view outside = "outside the years 1600 to 2099";
    const auto year =
        integer_of(record, Column::year_reconstructed, {0, 2099, outside, true}).value_or(0);
    if (year >= 1600) {
        record.structure.codes.year_reconstructed = year;
    } else if (year != 0) { // 0 and blank: never
        record.doubt(Column::year_reconstructed, outside);
    }
}

/// Item 90: month and two digits of the year, the leading zero often dropped.
void read_inspected(const Record& record) {
    const auto mmyy = integer_of(record, Column::inspected, {100, 1299, "not a month and year"});
    if (!mmyy) {
        return;
    }
    const int two_digits = *mmyy % 100;
    RecordedCodes& codes = record.structure.codes;
    codes.inspection_month = *mmyy / 100;
    codes.inspection_year = two_digits + (two_digits < 70 ? 2000 : 1900);
}

/// Item 109 may be blank up to 100 vehicles a day.
void check_trucks(const Record& record) {
    if (record.structure.codes.daily_traffic > 100 && record.has(Column::truck_percent) &&
        record.text(Column::truck_percent).empty()) {
        record.doubt(Column::truck_percent, "blank with more than 100 vehicles a day");
    }
}

void read_texts(const Record& record) {
    Structure& s = record.structure;
    put_text(record.raw(Column::district), record.fields.plain, s.district);
    put_text(record.raw(Column::carries), record.fields.plain, s.carries);
    put_text(record.raw(Column::crosses), record.fields.plain, s.crosses);
    put_text(record.raw(Column::location), record.fields.plain, s.location);
    const std::string_view route = record.text(Column::route);
    if (route.find_first_not_of('0') != std::string_view::npos) {
        put_text(route, record.fields.plain, s.route);
    }
}

/// Items 98 and 99: who else answers for a structure on a border.
void read_border(const Record& record) {
    Structure& s = record.structure;
    const std::string_view code = record.text(Column::border_state);
    const std::string_view abroad = code.substr(0, 2); // Canada and Mexico (from memory)
    if (!code.empty()) {
        s.border_state = abroad == "CN" || abroad == "MX" ? std::string(abroad) : state_of(code);
        if (s.border_state.empty()) {
            record.doubt(Column::border_state, reason_code);
        }
    }
    const std::string_view number = record.text(Column::border_number);
    if (number.find_first_not_of("_0") != std::string_view::npos) { // a filler in some files
        put_text(number, record.fields.plain, s.border_number);
    }
}

} // namespace

void Record::doubt(Column column, std::string_view reason, bool kept) const {
    doubts.push_back({file, structure.line, structure.state, structure.id,
                      std::string(column_name(column)), excerpt(text(column)), std::string(reason),
                      kept});
}

void read_fields(const Record& record) {
    read_texts(record);
    read_by_rule(record);
    read_position(record);
    read_spans(record);
    read_skew(record);
    read_clearance_under(record);
    read_navigation(record);
    read_year_reconstructed(record);
    read_inspected(record);
    read_border(record);
    record.structure.recorded_deck_area =
        number_of(record, Column::deck_area, {0.0, 1e7, "outside 0 to 10000000 m2", true})
            .value_or(not_recorded);
    constexpr NumberBounds rated{0.0, 99.9, "outside 0 to 99.9 t", true};
    record.structure.operating_rating =
        number_of(record, Column::operating_rating, rated).value_or(not_recorded);
    record.structure.inventory_rating =
        number_of(record, Column::inventory_rating, rated).value_or(not_recorded);
    check_trucks(record);
}

} // namespace scupper::inventory::detail
