#include "record.hpp"

#include "rule_table.hpp"
#include "scupper/schema.hpp"
#include "scupper/takeoff/dimensions.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace scupper::takeoff::detail {

namespace {

constexpr int most_lines = 200;    // on any deck; common practice
constexpr int most_abutments = 10; // with ramps; common practice
constexpr double steepest_skew = 75.0 * factor::degree;

double within(double value, double greatest) {
    return value >= 0.0 && value <= greatest ? value : not_recorded;
}

double above_zero(double value, double greatest) {
    return value > 0.0 && value <= greatest ? value : not_recorded;
}

constexpr double greatest(std::size_t index) {
    return input_table[index].greatest;
}

/// A deck of uneven width has its recorded area, spread over its length; edges stay as they are.
void widen_irregular(double area, Record& r) {
    const double mean = area / r.length;
    constexpr double most = 3.0; // times the recorded width; more is another deck's area
    if (!(area > 0.0) || !(mean >= r.deck_width / most && mean <= r.deck_width * most)) {
        return;
    }
    const double beside = r.deck_width - r.roadway;
    r.irregular = true;
    r.deck_width = mean;
    r.roadway = beside >= 0.0 && beside < mean ? mean - beside : r.roadway;
}

Record dimensions_of(const Structure& s) {
    constexpr double widest = greatest(dimension("deck.width"));
    constexpr double widest_walk = greatest(dimension("deck.walk_width"));
    const RecordedDimensions& d = s.dimensions;
    const bool measured = s.codes.below == Below::highway || s.codes.below == Below::railroad;
    constexpr double highest = greatest(dimension("column.height"));
    Record r{};
    r.length = above_zero(d.length.si(), greatest(dimension("deck.length")));
    r.longest =
        above_zero(d.longest_span.si(), std::min(r.length, greatest(dimension("span.longest"))));
    r.deck_width = within(d.deck_width.si(), widest);
    r.roadway = within(d.roadway_width.si(), widest);
    r.approach = within(d.approach_width.si(), widest);
    r.left_walk = within(d.left_walk_width.si(), widest_walk);
    r.right_walk = within(d.right_walk_width.si(), widest_walk);
    r.skew = within(d.skew.si(), steepest_skew);
    r.clearance = measured ? above_zero(d.clearance_under.si(), highest) : not_recorded;
    r.navigation = above_zero(d.navigation_clearance.si(), highest);
    r.height = above_zero(d.height.si(), highest);
    widen_irregular(s.irregular_deck_area, r);
    return r;
}

void put_known(double measured, double& recorded) {
    if (!std::isnan(measured)) {
        recorded = measured;
    }
}

/// The width of all walks together stands on the sides that the record names, or else on one.
void correct_walks(double measured, Record& r) {
    if (std::isnan(measured)) {
        return;
    }
    const bool both = r.left_walk > 0.0 && r.right_walk > 0.0;
    const bool right = !both && r.right_walk > 0.0;
    r.left_walk = both ? 0.5 * measured : right ? 0.0 : measured;
    r.right_walk = measured - r.left_walk;
}

/// Items of the record that are dimensions too, and others follow from.
void correct(const Measured& measured, Record& r) {
    const auto& known = measured.dimensions;
    put_known(known[dimension("deck.length")], r.length);
    put_known(known[dimension("deck.width")], r.deck_width);
    put_known(known[dimension("deck.roadway_width")], r.roadway);
    put_known(known[dimension("deck.skew")], r.skew);
    put_known(known[dimension("span.longest")], r.longest);
    put_known(measured.clearance, r.clearance);
    correct_walks(known[dimension("deck.walk_width")], r);
    r.irregular = r.irregular && std::isnan(known[dimension("deck.width")]);
}

void set_codes(const RecordedCodes& c, Record& r) {
    r.year = std::max(c.year_built, c.year_reconstructed);
    r.built = c.year_built;
    r.median = c.median;
    const auto below = [&c](std::initializer_list<int> codes) {
        return std::find(codes.begin(), codes.end(), c.service_under) != codes.end();
    };
    r.over_water = below({5, 6, 7, 8, 9});
    r.over_traffic =
        below({1, 2, 4, 6, 7, 8}) || c.below == Below::highway || c.below == Below::railroad;
    r.deck_type = c.deck_type;
    r.rails = c.railing_condition;
    r.bearings = c.bearing_condition;
    r.joints = c.joint_condition;
    r.main_material = c.material;
    r.approach_material = c.approach_material;
    r.main_design = c.design;
    r.approach_design = c.approach_design;
}

int spans_from_length(const Record& r, double shortest) {
    const double by_span = r.longest > 0.0 ? std::round(r.length / r.longest) : 1.0;
    return static_cast<int>(std::clamp(by_span, 1.0, std::max(1.0, r.length / shortest)));
}

void set_spans(const RecordedCodes& c, Record& r) {
    constexpr RuleId rule("shape.spans");
    r.main_spans = std::max(c.main_spans, 0);
    r.approach_spans = std::max(c.approach_spans, 0);
    const double total = static_cast<double>(r.main_spans) + static_cast<double>(r.approach_spans);
    // Also true of a length that is not recorded: then no dimension is used.
    if (!(total >= 1.0) || (total > 1.0 && !(r.length >= total * rule->low))) {
        r.main_spans = r.length > 0.0 ? spans_from_length(r, rule->low) : 1;
        r.approach_spans = 0;
    }
    r.spans = r.main_spans + r.approach_spans;
}

bool is_known(Design design) {
    return design != Design::unknown && design != Design::other && design != Design::culvert &&
           design != Design::tunnel && design != Design::mixed;
}

/// A long viaduct with one truss over the river is, for its dirt, a viaduct.
bool set_majority(Record& r) {
    const double mean = r.length / r.spans;
    const double likely = RuleId("span.longest.inferred")->likely * mean;
    const double main_span = r.longest > 0.0 ? r.longest : std::min(likely, r.length);
    const double main_length = std::min(main_span * r.main_spans, r.length);
    const bool approach =
        r.approach_spans > 0 && is_known(r.approach_design) && main_length < 0.5 * r.length;
    r.material = approach ? r.approach_material : r.main_material;
    r.design = approach ? r.approach_design : r.main_design;
    const double approach_span = (r.length - main_length) / r.approach_spans;
    r.span = approach ? std::min(approach_span, main_span) : main_span;
    return approach;
}

int counted(int recorded, int most) {
    return recorded >= 0 && recorded <= most ? recorded : no_code;
}

void set_counts(const RecordedCodes& c, bool approach, Record& r) {
    const int lines = approach ? c.approach_beam_lines : c.beam_lines;
    r.beam_lines = counted(lines, most_lines);
    r.beam_layout = approach ? c.approach_beam_layout : c.beam_layout;
    r.pier_units = counted(c.pier_units, r.spans + 1); // ends may stand on piers
    r.abutment_units = counted(c.abutment_units, most_abutments);
}

} // namespace

Record usable(const Structure& structure, const Measured& measured) {
    Record r = dimensions_of(structure);
    correct(measured, r);
    set_codes(structure.codes, r);
    set_spans(structure.codes, r);
    set_counts(structure.codes, set_majority(r), r);
    return r;
}

Verdict verdict_of(const Structure& structure, const Record& r) {
    if (structure.codes.design == Design::culvert) {
        return Verdict::culvert;
    }
    if (structure.codes.design == Design::tunnel) {
        return Verdict::tunnel;
    }
    if (r.deck_width == 0.0 && !(r.roadway > 0.0)) {
        return Verdict::buried;
    }
    return r.length > 0.0 && r.has_width() ? Verdict::bridge : Verdict::no_dimensions;
}

} // namespace scupper::takeoff::detail
