// Girders by their outline, and bearings.

#include "sheet.hpp"

#include <algorithm>

namespace scupper::takeoff::detail {

namespace {

/// What a flange width is a factor of.
enum class Of { itself, depth, spacing };

/// The rules for one outline; "shape.absent" where it has no such dimension.
struct GirderRules {
    RuleId overhang = "shape.absent";
    RuleId spacing = "shape.absent";
    RuleId depth_simple = "shape.absent";
    RuleId depth_continuous = "shape.absent";
    RuleId flange = "shape.absent";
    Of flange_of = Of::itself;
    RuleId face = "girder.face_factor.flat";
};

constexpr GirderRules soffit_of(RuleId face) {
    GirderRules rules;
    rules.face = face;
    return rules;
}

constexpr GirderRules none{};
constexpr GirderRules steel_beam{"deck.overhang_width.beams", "girder.spacing.steel",
                                 "girder.depth.steel_simple", "girder.depth.steel_continuous",
                                 "girder.flange_width.steel", Of::depth};
constexpr GirderRules prestressed_beam{
    "deck.overhang_width.beams",       "girder.spacing.prestressed",
    "girder.depth.prestressed_simple", "girder.depth.prestressed_continuous",
    "girder.flange_width.prestressed", Of::depth};
constexpr GirderRules concrete_tee{"deck.overhang_width.beams", "girder.spacing.tee",
                                   "girder.depth.tee_simple",   "girder.depth.tee_continuous",
                                   "girder.flange_width.stem",  Of::itself};
constexpr GirderRules prestressed_tee{"shape.absent",
                                      "girder.spacing.decked_tee",
                                      "girder.depth.prestressed_simple",
                                      "girder.depth.prestressed_continuous",
                                      "girder.flange_width.unit",
                                      Of::spacing};
constexpr GirderRules channel{"shape.absent",
                              "girder.spacing.channel",
                              "girder.depth.tee_simple",
                              "girder.depth.tee_continuous",
                              "girder.flange_width.unit",
                              Of::spacing};
constexpr GirderRules timber_beam{
    "shape.absent",        "girder.spacing.timber",      "girder.depth.timber",
    "girder.depth.timber", "girder.flange_width.timber", Of::itself};
constexpr GirderRules adjacent_box{"shape.absent",
                                   "girder.spacing.adjacent_box",
                                   "girder.depth.adjacent_box",
                                   "girder.depth.adjacent_box",
                                   "girder.flange_width.unit",
                                   Of::spacing,
                                   "girder.face_factor.adjacent_box"};
constexpr GirderRules steel_box{"deck.overhang_width.box", "girder.spacing.steel_box",
                                "girder.depth.steel_box",  "girder.depth.steel_box",
                                "girder.flange_width.box", Of::spacing};
constexpr GirderRules box_girder{"deck.overhang_width.box", "girder.spacing.box_girder",
                                 "girder.depth.box_girder", "girder.depth.box_girder",
                                 "girder.flange_width.box", Of::spacing};
constexpr GirderRules floorbeam{"shape.absent",
                                "shape.absent",
                                "girder.depth.floorbeam",
                                "girder.depth.floorbeam",
                                "girder.flange_width.floorbeam",
                                Of::depth,
                                "girder.face_factor.floorbeam"};
constexpr GirderRules truss{
    "shape.absent", "shape.absent", "girder.depth.truss",      "girder.depth.truss",
    "shape.absent", Of::itself,     "girder.face_factor.truss"};
constexpr GirderRules cable{"shape.absent",
                            "shape.absent",
                            "girder.depth.cable",
                            "girder.depth.cable",
                            "girder.flange_width.floorbeam",
                            Of::depth,
                            "girder.face_factor.floorbeam"};
constexpr GirderRules slab = soffit_of("girder.face_factor.slab");
constexpr GirderRules arch_soffit = soffit_of("girder.face_factor.arch");

/// In the order of Outline.
constexpr std::array<const GirderRules*, 15> by_outline{
    &none,        &steel_beam,   &prestressed_beam, &concrete_tee, &prestressed_tee, &channel,
    &timber_beam, &adjacent_box, &steel_box,        &box_girder,   &floorbeam,       &truss,
    &cable,       &slab,         &arch_soffit};

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

void infer_faces(const Shape& shape, const GirderRules& rules, Sheet& sheet) {
    const double share =
        sheet.likely(dimension("girder.spacing")) / sheet.likely(dimension("deck.width"));
    if (shape.outline == Outline::adjacent_box) {
        sheet.scaled(dimension("girder.face_factor"), rules.face, std::min(share, 1.0), 1.0);
    } else {
        sheet.scaled(dimension("girder.face_factor"), rules.face);
    }
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
    const GirderRules& rules = *by_outline[static_cast<std::size_t>(shape.outline)];
    sheet.scaled(dimension("deck.overhang_width"), rules.overhang, 1.0,
                 0.25 * sheet.likely(dimension("deck.width")));
    sheet.scaled(dimension("girder.spacing"), rules.spacing);
    sheet.scaled(dimension("girder.depth"),
                 is_continuous(r.material) ? rules.depth_continuous : rules.depth_simple, r.span);
    infer_faces(shape, rules, sheet);
    sheet.scaled(dimension("girder.flange_width"), rules.flange, flange_base(rules, sheet));
    sheet.scaled(dimension("girder.end_length"), "girder.end_length");
    infer_bearings(r, shape, sheet);
}

} // namespace scupper::takeoff::detail
