// Caps, columns, pier walls and footings; pedestals and downspouts.

#include "sheet.hpp"

#include <algorithm>

namespace scupper::takeoff::detail {

namespace {

void infer_caps(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr double long_span = 45.0;
    if (shape.has_caps && r.span > long_span) {
        sheet.scaled(dimension("cap.width"), "cap.width.long");
        sheet.scaled(dimension("cap.depth"), "cap.depth.long");
    } else if (shape.has_caps) {
        sheet.scaled(dimension("cap.width"), "cap.width");
        sheet.scaled(dimension("cap.depth"), "cap.depth");
    } else {
        sheet.absent(dimension("cap.width"));
        sheet.absent(dimension("cap.depth"));
    }
}

void infer_column_height(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t height = dimension("column.height");
    if (shape.piers == 0) {
        sheet.absent(height);
    } else if (r.clearance > 0.0) {
        sheet.scaled(height, "column.height.clearance", r.clearance);
    } else if (r.height > 0.0) {
        const double above =
            sheet.likely(dimension("girder.depth")) + sheet.likely(dimension("cap.depth"));
        sheet.scaled(height, "column.height.height", std::max(r.height - above, 0.0));
    } else if (r.navigation > 0.0) {
        sheet.scaled(height, "column.height.navigation", r.navigation);
    } else {
        sheet.scaled(height, "column.height.assumed");
    }
}

void infer_columns(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t spacing = dimension("column.spacing");
    constexpr std::size_t diameter = dimension("column.diameter");
    if (!shape.has_columns) {
        sheet.absent(spacing);
        sheet.absent(diameter);
    } else if (r.material == Material::timber) {
        sheet.scaled(spacing, "column.spacing.timber");
        sheet.scaled(diameter, "column.diameter.timber");
    } else {
        sheet.scaled(spacing, "column.spacing");
        sheet.scaled(diameter, "column.diameter");
    }
}

/// Few columns stood in a stream before about 1950; short spans rest on walls to this day.
bool are_walls_probable(const Record& r, const Shape& shape) {
    constexpr int before = 1950;
    constexpr double short_span = 15.0;
    const bool old = r.built != no_code && r.built < before;
    return shape.outline == Outline::slab || (r.over_water && (old || r.span <= short_span));
}

void infer_wall_share(const Record& r, const Shape& shape, Sheet& sheet) {
    constexpr std::size_t share = dimension("pier.wall_share");
    if (shape.outline == Outline::arch_soffit) {
        sheet.scaled(share, "pier.wall_share.vault");
    } else if (are_walls_probable(r, shape)) {
        sheet.scaled(share, "pier.wall_share.probable");
    } else if (r.over_traffic && !r.over_water) {
        sheet.scaled(share, "pier.wall_share.seldom");
    } else {
        sheet.scaled(share, "pier.wall_share.possible");
    }
}

/// Timber bents stand on piles: no walls, no footings.
void infer_walls(const Record& r, const Shape& shape, Sheet& sheet) {
    if (shape.piers == 0 || r.material == Material::timber) {
        sheet.absent(dimension("pier.wall_share"));
        sheet.absent(dimension("pier.wall_thickness"));
        sheet.absent(dimension("footing.projection"));
        sheet.absent(dimension("footing.exposed_share"));
        return;
    }
    infer_wall_share(r, shape, sheet);
    sheet.scaled(dimension("pier.wall_thickness"), "pier.wall_thickness");
    sheet.scaled(dimension("footing.projection"), "footing.projection");
    sheet.scaled(dimension("footing.exposed_share"), "footing.exposed_share");
}

void infer_downspouts(const Record& r, Sheet& sheet) {
    constexpr RuleId rule("drain.downspout_length");
    const double below = sheet.likely(dimension("girder.depth")) + rule->likely;
    const double height = r.clearance > 0.0 ? r.clearance
                          : r.height > 0.0  ? r.height
                                            : RuleId("column.height.assumed")->high;
    sheet.range(dimension("drain.downspout_length"), rule, 0.0, below, below + height);
}

} // namespace

void infer_piers(const Record& r, const Shape& shape, Sheet& sheet) {
    infer_caps(r, shape, sheet);
    infer_columns(r, shape, sheet);
    infer_column_height(r, shape, sheet);
    infer_walls(r, shape, sheet);
    if (shape.has_bearings) {
        sheet.scaled(dimension("pedestal.per_bearing"), "pedestal.per_bearing");
    } else {
        sheet.absent(dimension("pedestal.per_bearing"));
    }
    infer_downspouts(r, sheet);
}

} // namespace scupper::takeoff::detail
