// Caps, columns, abutments, pedestals, benches and slopes.

#include "sheet.hpp"

namespace scupper::takeoff::detail {

namespace {

void infer_caps(const Shape& shape, Sheet& sheet) {
    if (shape.has_caps) {
        sheet.scaled(dimension("cap.width"), "cap.width");
        sheet.scaled(dimension("cap.depth"), "cap.depth");
    } else {
        sheet.absent(dimension("cap.width"));
        sheet.absent(dimension("cap.depth"));
    }
}

void infer_column_height(const Record& r, Sheet& sheet) {
    constexpr std::size_t height = dimension("column.height");
    if (r.clearance > 0.0) {
        sheet.scaled(height, "column.height.clearance", r.clearance);
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
        sheet.absent(dimension("column.height"));
        return;
    }
    if (r.material == Material::timber) {
        sheet.scaled(spacing, "column.spacing.timber");
        sheet.scaled(diameter, "column.diameter.timber");
    } else {
        sheet.scaled(spacing, "column.spacing");
        sheet.scaled(diameter, "column.diameter");
    }
    infer_column_height(r, sheet);
}

void infer_slopes(const Record& r, Sheet& sheet) {
    if (r.clearance > 0.0) {
        sheet.scaled(dimension("berm.width"), "berm.width.clearance");
        sheet.scaled(dimension("slope.height"), "slope.height.clearance", r.clearance);
    } else {
        sheet.scaled(dimension("berm.width"), "berm.width.assumed");
        sheet.scaled(dimension("slope.height"), "slope.height.assumed");
    }
    sheet.scaled(dimension("slope.run"), "slope.run");
}

} // namespace

void infer_supports(const Record& r, const Shape& shape, Sheet& sheet) {
    infer_caps(shape, sheet);
    infer_columns(r, shape, sheet);
    sheet.scaled(dimension("abutment.height"), "abutment.height");
    if (shape.has_bearings) {
        sheet.scaled(dimension("pedestal.per_bearing"), "pedestal.per_bearing");
    } else {
        sheet.absent(dimension("pedestal.per_bearing"));
    }
    infer_slopes(r, sheet);
}

} // namespace scupper::takeoff::detail
