#include "national.hpp"

#include "consistency.hpp"
#include "scupper/quantity/factors.hpp"
#include "text.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::inventory::detail {

namespace {

struct FeetItem {
    const char* tag;
    Column kin; ///< the item of the old record that says the same
    bool may_be_blank;
};

constexpr std::array feet_items{
    FeetItem{"BG02", Column::length, false},       FeetItem{"BG03", Column::longest_span, false},
    FeetItem{"BG05", Column::deck_width, false},   FeetItem{"BG06", Column::roadway_width, false},
    FeetItem{"BG07", Column::left_walk, true},     FeetItem{"BG08", Column::right_walk, true},
    FeetItem{"BG09", Column::approach_width, true}};

struct RatingItem {
    const char* tag;
    char RecordedCodes::*member;
};

constexpr std::array rating_items{RatingItem{"BC01", &RecordedCodes::deck_condition},
                                  RatingItem{"BC02", &RecordedCodes::superstructure_condition},
                                  RatingItem{"BC03", &RecordedCodes::substructure_condition},
                                  RatingItem{"BC04", &RecordedCodes::culvert_condition},
                                  RatingItem{"BC05", &RecordedCodes::railing_condition},
                                  RatingItem{"BC07", &RecordedCodes::bearing_condition},
                                  RatingItem{"BC08", &RecordedCodes::joint_condition}};

/// Where the tag of a contradiction stands.
const char* tag_of(Column column) {
    switch (column) {
    case Column::deck_width:
        return "BG05";
    case Column::roadway_width:
        return "BG06";
    case Column::longest_span:
        return "BG03";
    case Column::deck_type:
        return "BSP09";
    case Column::daily_traffic:
        return "BH09";
    default:
        return "SpanSets";
    }
}

void read_position(const Items& items) {
    Structure& s = items.structure();
    s.latitude = items.number("BL05", {-90.0, 90.0, "outside -90 to 90 degrees", true})
                     .value_or(not_recorded);
    s.longitude = items.number("BL06", {-180.0, 180.0, "outside -180 to 180 degrees", true})
                      .value_or(not_recorded);
    const bool east = s.state == "66" || s.state == "69"; // Guam, Marianas (from memory)
    if (s.longitude > 0.0 && !east) {
        items.doubt("BL06", "east of Greenwich: west is negative here", true);
    }
}

void read_shape(const Items& items) {
    Structure& s = items.structure();
    for (const FeetItem& item : feet_items) {
        read_feet(items, item.tag, item.kin, item.may_be_blank);
    }
    constexpr double foot = factor::foot;
    if (const auto feet = items.number("BG13", {0.0, 1300.0, "outside 0 to 1300 ft", true});
        feet && *feet > 0.0) {
        s.dimensions.height = Length<>(*feet * foot);
    }
    if (const auto area = items.number("BG15", {0.0, 1e8, "outside 0 to 100000000 ft2", true});
        area && *area > 0.0) {
        s.irregular_deck_area = *area * foot * foot;
    }
    const auto skew = items.integer("BG11", {0, 99, "outside 0 to 89 degrees", true});
    if (skew && *skew < 90) {
        s.dimensions.skew = Angle<>(*skew * factor::degree);
    } else if (skew) {
        items.doubt("BG11", *skew == 99 ? "99: the skew varies over the structure"
                                        : "outside 0 to 89 degrees");
    }
    // The numbers are taken to be those of item 33 (from memory).
    s.codes.median = items.integer("BG10", {0, 3, reason_code, true}).value_or(no_code);
}

/// S01 is a state's highway agency (from memory); other owners are told by their code alone.
void read_owner(const Items& items) {
    Structure& s = items.structure();
    s.owner_code = items.text("BCL01");
    s.codes.owner = s.owner_code == "S01" ? 1 : no_code;
    s.codes.maintained_by = items.text("BCL02") == "S01" ? 1 : no_code;
}

/// The status of the latest date. C: closed (FHWA, SNBI data validation logic, 2025); P: posted (from
/// memory).
void read_posting(const Items& items) {
    std::string latest;
    std::string status;
    for (const Items& set : items.sets("PostingStatuses")) {
        const std::string date = set.text("BPS02");
        if (status.empty() || date >= latest) {
            latest = date;
            status = set.text("BPS01");
        }
    }
    if (!status.empty()) {
        char& posting = items.structure().codes.posting;
        posting = status.front() == 'C' ? 'K' : status.front() == 'P' ? 'P' : ' ';
    }
}

/// The latest inspection; code 2 is a routine one.
void read_inspection(const Items& items) {
    RecordedCodes& codes = items.structure().codes;
    for (const Items& set : items.sets("Inspections")) {
        if (set.text("BIE01") != "2") {
            continue;
        }
        const auto date = set.integer("BIE02", {19000101, 20991231, "not a date YYYYMMDD", true});
        const int year = date.value_or(0) / 10000;
        const int month = date.value_or(0) / 100 % 100;
        if (date && (month < 1 || month > 12)) {
            set.doubt("BIE02", "not a date YYYYMMDD");
        } else if (date &&
                   year * 12 + month >= codes.inspection_year * 12 + codes.inspection_month) {
            codes.inspection_year = year;
            codes.inspection_month = month;
            codes.inspection_interval =
                set.integer("BIE05", {1, 99, "outside 1 to 99 months", true}).value_or(no_code);
        }
    }
}

/// What was added up from several sets, and what it may come to.
struct Total {
    int RecordedCodes::*member;
    int most;
    const char* tag;
    std::string_view outside;
};

constexpr std::array totals{
    Total{&RecordedCodes::main_spans, 997, "SpanSets", "more than 997 spans"},
    Total{&RecordedCodes::approach_spans, 2500, "SpanSets", "more than 2500 spans"},
    Total{&RecordedCodes::beam_lines, 200, "SpanSets", "more than 200 lines"},
    Total{&RecordedCodes::pier_units, 2500, "SubstructureSets", "more than 2500 units"},
    Total{&RecordedCodes::abutment_units, 50, "SubstructureSets", "more than 50 units"},
    Total{&RecordedCodes::lanes_on, 50, "Features", "more than 50 lanes"},
    Total{&RecordedCodes::lanes_under, 99, "Features", "more than 99 lanes"},
    Total{&RecordedCodes::daily_traffic, 500000, "Features", "more than 500000 vehicles a day"},
};

void check_totals(const Items& items) {
    for (const Total& total : totals) {
        int& value = items.structure().codes.*total.member;
        if (value > total.most) {
            items.doubt(total.tag, total.outside);
            value = no_code;
        }
    }
}

void judge(const Items& items) {
    const Structure& s = items.structure();
    const bool has_approaches = s.codes.approach_material != Material::unknown ||
                                s.codes.approach_design != Design::unknown;
    check_consistency({s, has_approaches, [&items](Column column, std::string_view reason) {
                           items.doubt(tag_of(column), reason, true);
                       }});
}

} // namespace

void read_feet(const Items& items, const char* tag, Column kin, bool may_be_blank) {
    const auto rule = std::find_if(dimension_rules.begin(), dimension_rules.end(),
                                   [kin](const DimensionRule& one) { return one.column == kin; });
    const double foot = factor::foot / rule->metres;
    const NumberBounds any{-1e9, 1e9, rule->bounds.outside, may_be_blank};
    const auto feet = items.number(tag, any);
    if (!feet) {
        return;
    }
    const double number = *feet * foot;
    if (number < rule->bounds.low || number > rule->bounds.high) {
        items.doubt(tag, rule->bounds.outside);
    } else if (!rule->is_none(number)) {
        items.structure().dimensions.*rule->member = Length<>(*feet * factor::foot);
    }
}

void read_national(const Items& items) {
    Structure& s = items.structure();
    s.location = items.text("BID02");
    s.district = items.text("BL04");
    s.codes.county = items.integer("BL02", {0, 999, "outside 0 to 999", true}).value_or(no_code);
    s.codes.year_built =
        items.integer("BW01", {1600, 2099, "outside the years 1600 to 2099"}).value_or(no_code);
    for (const RatingItem& item : rating_items) {
        s.codes.*item.member = items.code(item.tag, ratings);
    }
    if (items.text("BRH01").substr(0, 1) == "N") { // no railings (from memory)
        s.codes.railing = 'N';
    }
    read_position(items);
    read_owner(items);
    read_shape(items);
    read_national_spans(items);
    read_national_units(items);
    read_national_features(items);
    read_posting(items);
    read_inspection(items);
    check_totals(items);
    judge(items);
}

void read_national_elements(const Items& items, ElementRecords& elements) {
    constexpr NumberBounds quantity{0.0, 1e9, "no quantity"};
    constexpr NumberBounds part{0.0, 1e9, "no quantity", true};
    const Structure& s = items.structure();
    for (const Items& set : items.sets("Elements")) {
        const auto element = set.integer("BE01", {1, 9999, "no element number"});
        const auto total = set.number("BE03", quantity);
        if (!element || !total) {
            continue;
        }
        ElementRecord record{s.line, s.state, s.id, *element, 0, *total, {}};
        record.parent = set.integer("BE02", {0, 9999, "no element number", true}).value_or(0);
        constexpr std::array tags{"BCS01", "BCS02", "BCS03", "BCS04"};
        double sum = 0.0;
        for (std::size_t i = 0; i < tags.size(); ++i) {
            record.states.at(i) = set.number(tags.at(i), part).value_or(0.0);
            sum += record.states.at(i);
        }
        if (std::abs(sum - *total) > 0.5) {
            set.doubt("BE03", "condition states do not add up to the total", true);
        }
        elements.records.push_back(std::move(record));
    }
}

} // namespace scupper::inventory::detail
