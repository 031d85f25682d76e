// Seats, stems, back walls and wings of the abutments; benches and slopes before them.

#include "sheet.hpp"

namespace scupper::takeoff::detail {

namespace {

void infer_seats(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t seat = dimension("seat.width");
    if (shape.outline == Outline::arch_soffit) {
        sheet.absent(seat);
    } else if (shape.outline == Outline::slab) {
        sheet.scaled(seat, "seat.width.slab");
    } else if (shape.outline == Outline::timber_beam) {
        sheet.scaled(seat, "seat.width.timber");
    } else if (jointless_possible(r)) {
        sheet.scaled(seat, "seat.width.integral_possible");
    } else {
        sheet.scaled(seat, "seat.width");
    }
}

void infer_back_walls(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t height = dimension("abutment.back_wall_height");
    const ThreePoint& depth = sheet.guess(dimension("girder.depth"));
    if (shape.outline == Outline::arch_soffit) {
        sheet.absent(height);
    } else if (shape.outline == Outline::slab) {
        sheet.scaled(height, "abutment.back_wall_height.slab");
    } else if (shape.lines == Lines::pair) {
        sheet.scaled(height, "abutment.back_wall_height.floor");
    } else if (jointless_possible(r)) {
        constexpr RuleId rule("abutment.back_wall_height.integral_possible");
        sheet.range(height, rule, 0.0, depth.likely + rule->likely, depth.high + rule->high);
    } else {
        constexpr RuleId rule("abutment.back_wall_height.beams");
        sheet.range(height, rule, depth.low + rule->low, depth.likely + rule->likely,
                    depth.high + rule->high);
    }
}

void infer_slopes(const Record& r, Sheet& sheet) {
    if (r.clearance > 0.0) {
        sheet.scaled(dimension("berm.width"), "berm.width.clearance");
        sheet.scaled(dimension("slope.height"), "slope.height.clearance", r.clearance);
    } else if (r.height > 0.0) {
        sheet.scaled(dimension("berm.width"), "berm.width.clearance");
        sheet.scaled(dimension("slope.height"), "slope.height.height", r.height);
    } else {
        sheet.scaled(dimension("berm.width"), "berm.width.assumed");
        sheet.scaled(dimension("slope.height"), "slope.height.assumed");
    }
    sheet.scaled(dimension("slope.run"), "slope.run");
}

} // namespace

void infer_abutments(const Record& r, const Shape& shape, Sheet& sheet) {
    infer_seats(r, shape, sheet);
    sheet.scaled(dimension("abutment.height"), "abutment.height");
    infer_back_walls(r, shape, sheet);
    sheet.scaled(dimension("abutment.wing_length"), "abutment.wing_length");
    infer_slopes(r, sheet);
}

} // namespace scupper::takeoff::detail
