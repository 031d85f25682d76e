// Girders by their outline, and bearings.

#include "sheet.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::takeoff::detail {

namespace {

/// What a flange width is a factor of.
enum class Of { itself, depth, spacing };

/// Flanges of plate girders are seldom wider [m].
constexpr double widest_plate = 0.9;

/// The rules for one outline; "shape.absent" where it has no such dimension.
struct GirderRules {
    RuleId overhang = "shape.absent";
    RuleId spacing = "shape.absent";
    RuleId depth_simple = "shape.absent";
    RuleId depth_continuous = "shape.absent";
    RuleId flange = "shape.absent";
    Of flange_of = Of::itself;
    RuleId face = "girder.face_factor.flat";
    RuleId floor = "shape.absent";
    RuleId diaphragm_spacing = "shape.absent";
    RuleId diaphragm_depth = "shape.absent";
    double deepest = unbounded; ///< [m] cap on the depth
    double widest = unbounded;  ///< [m] cap on the flange
};

constexpr GirderRules braced(GirderRules rules, RuleId spacing, RuleId depth) {
    rules.diaphragm_spacing = spacing;
    rules.diaphragm_depth = depth;
    return rules;
}
constexpr GirderRules braced_concrete(const GirderRules& rules) {
    return braced(rules, "diaphragm.spacing.concrete", "diaphragm.depth.concrete");
}
constexpr GirderRules capped(GirderRules rules, double deepest, double widest = unbounded) {
    rules.deepest = deepest;
    rules.widest = widest;
    return rules;
}
/// Two girders or trusses with floorbeams and stringers between.
constexpr GirderRules with_floor(RuleId depth, double deepest) {
    GirderRules rules;
    rules.depth_simple = depth;
    rules.depth_continuous = depth;
    rules.flange = "girder.flange_width.floorbeam";
    rules.flange_of = Of::depth;
    rules.floor = "girder.floor_factor";
    return capped(rules, deepest, widest_plate);
}

constexpr GirderRules soffit_of(RuleId face) {
    GirderRules rules;
    rules.face = face;
    return rules;
}

constexpr GirderRules none{};
constexpr GirderRules steel_beam =
    capped(braced({"deck.overhang_width.beams", "girder.spacing.steel", "girder.depth.steel_simple",
                   "girder.depth.steel_continuous", "girder.flange_width.steel", Of::depth},
                  "diaphragm.spacing.steel", "diaphragm.depth.steel"),
           unbounded, widest_plate);
constexpr GirderRules prestressed_beam = braced_concrete(
    {"deck.overhang_width.beams", "girder.spacing.prestressed", "girder.depth.prestressed_simple",
     "girder.depth.prestressed_continuous", "girder.flange_width.prestressed", Of::depth});
constexpr GirderRules concrete_tee =
    braced_concrete({"deck.overhang_width.beams", "girder.spacing.tee", "girder.depth.tee_simple",
                     "girder.depth.tee_continuous", "girder.flange_width.stem", Of::itself});
constexpr GirderRules prestressed_tee = braced_concrete(
    {"shape.absent", "girder.spacing.decked_tee", "girder.depth.prestressed_simple",
     "girder.depth.prestressed_continuous", "girder.flange_width.unit", Of::spacing});
constexpr GirderRules channel{"shape.absent",
                              "girder.spacing.channel",
                              "girder.depth.tee_simple",
                              "girder.depth.tee_continuous",
                              "girder.flange_width.unit",
                              Of::spacing};
constexpr GirderRules sawn_timber =
    capped(braced({"shape.absent", "girder.spacing.timber", "girder.depth.timber",
                   "girder.depth.timber", "girder.flange_width.timber", Of::itself},
                  "diaphragm.spacing.timber", "diaphragm.depth.timber"),
           0.5);
constexpr GirderRules glulam =
    capped(braced({"shape.absent", "girder.spacing.glulam", "girder.depth.glulam",
                   "girder.depth.glulam", "girder.flange_width.glulam", Of::itself},
                  "diaphragm.spacing.timber", "diaphragm.depth.timber"),
           1.8);
constexpr GirderRules adjacent_box{"shape.absent",
                                   "girder.spacing.adjacent_box",
                                   "girder.depth.adjacent_box",
                                   "girder.depth.adjacent_box",
                                   "girder.flange_width.unit",
                                   Of::spacing,
                                   "girder.face_factor.adjacent_box"};
constexpr GirderRules spread_box = [] {
    GirderRules rules = braced_concrete({"deck.overhang_width.beams", "girder.spacing.spread_box",
                                         "girder.depth.adjacent_box", "girder.depth.adjacent_box",
                                         "girder.flange_width.spread_box", Of::itself});
    return rules;
}();
constexpr GirderRules steel_box{"deck.overhang_width.box", "girder.spacing.steel_box",
                                "girder.depth.steel_box",  "girder.depth.steel_box",
                                "girder.flange_width.box", Of::spacing};
constexpr GirderRules box_girder{"deck.overhang_width.box", "girder.spacing.box_girder",
                                 "girder.depth.box_girder", "girder.depth.box_girder",
                                 "girder.flange_width.box", Of::spacing};
constexpr GirderRules floorbeam = with_floor("girder.depth.floorbeam", 4.5);
constexpr GirderRules cable = with_floor("girder.depth.cable", 4.5);
constexpr GirderRules truss = [] {
    GirderRules rules = with_floor("girder.depth.truss", unbounded);
    rules.flange = "shape.absent";
    rules.flange_of = Of::itself;
    rules.face = "girder.face_factor.truss";
    return rules;
}();
constexpr GirderRules slab = soffit_of("girder.face_factor.slab");
constexpr GirderRules arch_soffit = soffit_of("girder.face_factor.arch");

/// In the order of Outline.
constexpr std::array<const GirderRules*, 16> by_outline{
    &none,        &steel_beam,   &prestressed_beam, &concrete_tee, &prestressed_tee, &channel,
    &sawn_timber, &adjacent_box, &steel_box,        &box_girder,   &floorbeam,       &truss,
    &cable,       &slab,         &arch_soffit,      &spread_box};

/// Long timber spans are laminated; long steel spans have fewer girders and open cross frames.
GirderRules rules_for(const Record& r, const Shape& shape) {
    constexpr double longest_sawn = 9.0;
    constexpr double long_steel = 45.0;
    if (shape.outline == Outline::timber_beam && r.span > longest_sawn) {
        return glulam;
    }
    GirderRules rules = *by_outline[static_cast<std::size_t>(shape.outline)];
    if (shape.outline == Outline::steel_beam && r.span > long_steel) {
        rules.spacing = "girder.spacing.steel_long";
        rules.diaphragm_depth = "diaphragm.depth.cross_frame";
    }
    return rules;
}

/// Lines that are counted stand evenly over the width.
void infer_spacing(const Record& r, const Shape& shape, const GirderRules& rules, Sheet& sheet) {
    constexpr std::size_t spacing = dimension("girder.spacing");
    const double width = sheet.likely(dimension("deck.width"));
    const double between = width - 2.0 * sheet.likely(dimension("deck.overhang_width"));
    if (!counts_lines(r, shape) || shape.lines == Lines::pair) {
        sheet.scaled(spacing, rules.spacing);
    } else if (shape.lines == Lines::strips) {
        sheet.exact(spacing, "girder.spacing.counted_strips", width / r.beam_lines);
    } else if (r.beam_lines > 1) {
        sheet.exact(spacing, "girder.spacing.counted", between / (r.beam_lines - 1));
    } else {
        sheet.scaled(spacing, rules.spacing);
    }
}

double flange_base(const GirderRules& rules, const Sheet& sheet) {
    switch (rules.flange_of) {
    case Of::depth:
        return sheet.likely(dimension("girder.depth"));
    case Of::spacing:
        return sheet.likely(dimension("girder.spacing"));
    case Of::itself:
        break;
    }
    return 1.0;
}

/// What the face factor of a rule is multiplied by.
double face_base(const Record& r, const Shape& shape, const Sheet& sheet) {
    const double width = sheet.likely(dimension("deck.width"));
    if (shape.outline == Outline::adjacent_box) {
        return std::min(sheet.likely(dimension("girder.spacing")) / width, 1.0);
    }
    return shape.outline == Outline::truss
               ? std::sqrt(r.span) / (2.0 * sheet.likely(dimension("girder.depth")))
               : 1.0;
}

void infer_faces(const Record& r, const Shape& shape, const GirderRules& rules, Sheet& sheet) {
    const double most = shape.outline == Outline::adjacent_box ? 1.0 : unbounded;
    sheet.scaled(dimension("girder.face_factor"), rules.face, face_base(r, shape, sheet), most);
    sheet.scaled(dimension("girder.floor_factor"), rules.floor);
}

void infer_diaphragms(const GirderRules& rules, Sheet& sheet) {
    sheet.scaled(dimension("diaphragm.spacing"), rules.diaphragm_spacing);
    sheet.scaled(dimension("diaphragm.depth"), rules.diaphragm_depth,
                 sheet.likely(dimension("girder.depth")));
}

void infer_bearings(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t line = dimension("bearing.per_line");
    const double likely = static_cast<double>(shape.spans) + shape.units;
    const double most = 2.0 * shape.spans;
    if (!shape.has_bearings) {
        sheet.absent(line);
    } else if (shape.outline == Outline::box_girder) {
        sheet.range(line, "bearing.per_line.box", likely, 2.0 * likely, 2.0 * likely);
    } else if (jointless_possible(r)) {
        sheet.range(line, "bearing.per_line.integral_possible", likely - 2.0, likely, most);
    } else {
        sheet.range(line, "bearing.per_line", likely, likely, most);
    }
}

} // namespace

void infer_girders(const Record& r, const Shape& shape, Sheet& sheet) {
    const GirderRules rules = rules_for(r, shape);
    sheet.scaled(dimension("deck.overhang_width"), rules.overhang, 1.0,
                 0.25 * sheet.likely(dimension("deck.width")));
    infer_spacing(r, shape, rules, sheet);
    sheet.scaled(dimension("girder.depth"),
                 is_continuous(r.material) ? rules.depth_continuous : rules.depth_simple, r.span,
                 rules.deepest);
    infer_faces(r, shape, rules, sheet);
    infer_diaphragms(rules, sheet);
    sheet.scaled(dimension("girder.flange_width"), rules.flange, flange_base(rules, sheet),
                 rules.widest);
    sheet.scaled(dimension("girder.end_length"), "girder.end_length");
    infer_bearings(r, shape, sheet);
}

} // namespace scupper::takeoff::detail
