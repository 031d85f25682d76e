// Values that cannot all be right together. NaN compares false, so a check with a value that is not
// recorded says nothing.

#include "record.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::inventory::detail {

namespace {

constexpr double half_step = 0.05; // [m] widths and lengths are recorded to 0.1 m

void check_widths(const Record& record) {
    const RecordedDimensions& d = record.structure.dimensions;
    const double deck = d.deck_width.si();
    const double roadway = d.roadway_width.si();
    const bool culvert = record.structure.codes.design == Design::culvert;
    if (deck == 0.0 && !culvert) {
        record.doubt(Column::deck_width, "0, and the structure is no culvert", true);
    }
    if (roadway == 0.0 && (!culvert || deck > 0.0)) {
        record.doubt(Column::roadway_width, "0, and the structure is no culvert under fill", true);
    }
    if (deck == 0.0) {
        return;
    }
    if (deck < roadway) {
        record.doubt(Column::deck_width, "narrower than the roadway", true);
    } else if (roadway + d.left_walk_width.si() + d.right_walk_width.si() > deck + 4 * half_step) {
        record.doubt(Column::deck_width, "narrower than roadway and walks together", true);
    }
    if (record.structure.codes.deck_type == 'N' && deck > 0.0) {
        record.doubt(Column::deck_type, "no deck (N) although it has a width", true);
    }
}

void check_lengths(const Record& record) {
    const RecordedCodes& c = record.structure.codes;
    const double length = record.structure.dimensions.length.si();
    const double longest = record.structure.dimensions.longest_span.si();
    if (longest > length) {
        record.doubt(Column::longest_span, "longer than the structure", true);
    }
    if (c.main_spans == no_code || c.approach_spans == no_code) {
        return;
    }
    const int spans = c.main_spans + c.approach_spans;
    if (spans * (longest + half_step) < 0.9 * length) {
        record.doubt(Column::longest_span, "so short that all spans do not make up the length",
                     true);
    }
    if (spans > length) {
        record.doubt(Column::main_spans, "spans of less than 1 m on average", true);
    }
}

void check_approaches(const Record& record) {
    const RecordedCodes& c = record.structure.codes;
    if (c.approach_spans == no_code || !record.has(Column::approach_material) ||
        !record.has(Column::approach_design)) {
        return;
    }
    const bool described = c.approach_material != Material::unknown;
    if (c.approach_spans > 0 && !described) {
        record.doubt(Column::approach_material, "no kind and type although there are spans", true);
    } else if (c.approach_spans == 0 && described) {
        record.doubt(Column::approach_spans, "0 although 44 gives their kind and type", true);
    }
}

void check_traffic(const Record& record) {
    const RecordedCodes& c = record.structure.codes;
    if (c.daily_traffic == 0) {
        record.doubt(Column::daily_traffic, "0, where the guide asks for an estimate", true);
    }
    if (c.daily_traffic > 100 && record.has(Column::truck_percent) &&
        record.text(Column::truck_percent).empty()) {
        record.doubt(Column::truck_percent, "blank with more than 100 vehicles a day");
    }
}

void check_years(const Record& record) {
    const RecordedCodes& c = record.structure.codes;
    if (c.year_reconstructed != no_code && c.year_reconstructed < c.year_built) {
        record.doubt(Column::year_reconstructed, "before the structure was built", true);
    }
}

/// The file's own area is item 49 times item 52, or item 32 where item 52 is 0 (23 CFR 490.411).
void check_deck_area(const Record& record) {
    const RecordedDimensions& d = record.structure.dimensions;
    const double width = d.deck_width.si() == 0.0 ? d.approach_width.si() : d.deck_width.si();
    const double area = d.length.si() * width;
    if (std::abs(record.structure.recorded_deck_area - area) > 0.01 + 1e-3 * area) {
        record.doubt(Column::deck_area, "not length times width", true);
    }
}

} // namespace

void check_consistency(const Record& record) {
    check_widths(record);
    check_lengths(record);
    check_approaches(record);
    check_traffic(record);
    check_years(record);
    check_deck_area(record);
}

} // namespace scupper::inventory::detail
