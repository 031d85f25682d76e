// Values that cannot all be right together. NaN compares false, so a check with a value that is not
// recorded says nothing.

#include "consistency.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::inventory::detail {

namespace {

constexpr double half_step = 0.05; // [m] widths and lengths are recorded to 0.1 m

void check_widths(const Judge& judge) {
    const RecordedDimensions& d = judge.structure.dimensions;
    const double deck = d.deck_width.si();
    const double roadway = d.roadway_width.si();
    const bool culvert = judge.structure.codes.design == Design::culvert;
    if (deck == 0.0 && !culvert) {
        judge.doubt(Column::deck_width, "0, and the structure is no culvert");
    }
    if (roadway == 0.0 && (!culvert || deck > 0.0)) {
        judge.doubt(Column::roadway_width, "0, and the structure is no culvert under fill");
    }
    if (deck == 0.0) {
        return;
    }
    if (deck < roadway) {
        judge.doubt(Column::deck_width, "narrower than the roadway");
    } else if (roadway + d.left_walk_width.si() + d.right_walk_width.si() > deck + 4 * half_step) {
        judge.doubt(Column::deck_width, "narrower than roadway and walks together");
    }
    if (judge.structure.codes.deck_type == 'N' && deck > 0.0) {
        judge.doubt(Column::deck_type, "no deck (N) although it has a width");
    }
}

void check_lengths(const Judge& judge) {
    const RecordedCodes& c = judge.structure.codes;
    const double length = judge.structure.dimensions.length.si();
    const double longest = judge.structure.dimensions.longest_span.si();
    if (longest > length) {
        judge.doubt(Column::longest_span, "longer than the structure");
    }
    if (c.main_spans == no_code || c.approach_spans == no_code) {
        return;
    }
    const int spans = c.main_spans + c.approach_spans;
    if (spans * (longest + half_step) < 0.9 * length) {
        judge.doubt(Column::longest_span, "so short that all spans do not make up the length");
    }
    if (spans > length) {
        judge.doubt(Column::main_spans, "spans of less than 1 m on average");
    }
}

void check_approaches(const Judge& judge) {
    const RecordedCodes& c = judge.structure.codes;
    if (c.approach_spans == no_code || !judge.has_approaches) {
        return;
    }
    const bool described = c.approach_material != Material::unknown;
    if (c.approach_spans > 0 && !described) {
        judge.doubt(Column::approach_material, "no kind and type although there are spans");
    } else if (c.approach_spans == 0 && described) {
        judge.doubt(Column::approach_spans, "0 although 44 gives their kind and type");
    }
}

void check_traffic(const Judge& judge) {
    const RecordedCodes& c = judge.structure.codes;
    if (c.daily_traffic == 0) {
        judge.doubt(Column::daily_traffic, "0, where the guide asks for an estimate");
    }
}

void check_years(const Judge& judge) {
    const RecordedCodes& c = judge.structure.codes;
    if (c.year_reconstructed != no_code && c.year_reconstructed < c.year_built) {
        judge.doubt(Column::year_reconstructed, "before the structure was built");
    }
}

/// The file's own area is item 49 times item 52, or item 32 where item 52 is 0 (23 CFR 490.411).
void check_deck_area(const Judge& judge) {
    const RecordedDimensions& d = judge.structure.dimensions;
    const double width = d.deck_width.si() == 0.0 ? d.approach_width.si() : d.deck_width.si();
    const double area = d.length.si() * width;
    if (std::abs(judge.structure.recorded_deck_area - area) > 0.01 + 1e-3 * area) {
        judge.doubt(Column::deck_area, "not length times width");
    }
}

} // namespace

void check_consistency(const Judge& judge) {
    check_widths(judge);
    check_lengths(judge);
    check_approaches(judge);
    check_traffic(judge);
    check_years(judge);
    check_deck_area(judge);
}

} // namespace scupper::inventory::detail
