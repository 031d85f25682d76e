#include "sheet.hpp"

namespace scupper::takeoff {

namespace {

using detail::Record;
using detail::Sheet;

Shape nothing_to_wash(const Record& record) {
    Shape shape;
    shape.washable = false;
    shape.outline = Outline::none;
    shape.lines = Lines::none;
    shape.spans = record.spans;
    shape.units = 0;
    shape.gutters = 0;
    shape.flange_faces = 0;
    shape.has_bearings = false;
    shape.abutments = 0;
    shape.has_overhang = false;
    return shape;
}

/// What no record can tell of a bridge. Columns are among it even where their height is known.
void mark_untold(const Shape& shape, Inferred& out) {
    const auto mark = [&](Slot slot, bool untold) { out.untold[slot] = untold; };
    mark(slot("gutter_pocket_length"), shape.walk_present);
    mark(slot("soffit_overhang_area"), shape.has_overhang);
    mark(slot("drain_count"), true);
    mark(slot("drain_free_count"), true);
    mark(slot("drain_clogged_count"), true);
    mark(slot("drain_frozen_count"), true);
    mark(slot("drain_box_count"), true);
    mark(slot("downspout_length"), true);
    mark(slot("column_count"), shape.has_columns);
    mark(slot("column_area"), shape.has_columns);
    const bool has_walls = out.dimensions[dimension("pier.wall_share")].guess.high > 0.0;
    mark(slot("wall_pier_area"), has_walls && !shape.clearance_known);
    mark(slot("footing_area"), has_walls);
    mark(slot("pedestal_count"), shape.has_bearings);
    mark(slot("berm_area"), !shape.clearance_known);
    mark(slot("slope_protection_area"), !shape.clearance_known);
}

/// What the record counts itself.
void put_counts(const Record& record, Inferred& out) {
    if (detail::counts_lines(record, out.shape)) {
        out.counted[slot("girder_count")] = record.beam_lines;
    }
    if (out.shape.has_caps && record.pier_units != no_code) {
        out.counted[slot("cap_count")] = record.pier_units;
    }
}

void infer_bridge(const Record& record, const Measured& measured, Inferred& out) {
    Sheet sheet(out, measured);
    out.shape = detail::shape_of(record);
    put_counts(record, out);
    detail::infer_deck(record, out.shape, sheet);
    detail::infer_girders(record, out.shape, sheet);
    detail::infer_piers(record, out.shape, sheet);
    detail::infer_abutments(record, out.shape, sheet);
    mark_untold(out.shape, out);
}

/// Deck area alone, as the inventory's own statistics count it.
void infer_other(const Record& record, Inferred& out) {
    const Measured nothing_measured;
    Sheet sheet(out, nothing_measured);
    out.shape = nothing_to_wash(record);
    for (std::size_t i = 0; i < dimension_count; ++i) {
        sheet.absent(i);
    }
    detail::infer_extent(record, sheet);
    out.untold[slot("deck_total_area")] = !(record.length > 0.0) || !record.has_width();
}

} // namespace

Inferred infer(const Structure& structure, const Measured& measured) {
    const Record record = detail::usable(structure, measured);
    Inferred out;
    out.verdict = detail::verdict_of(structure, record);
    if (out.verdict == Verdict::bridge) {
        infer_bridge(record, measured, out);
    } else {
        infer_other(record, out);
    }
    return out;
}

} // namespace scupper::takeoff
