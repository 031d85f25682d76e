#pragma once
// The record after doubtful items have been set aside: what the rules start from.

#include "scupper/structure.hpp"
#include "scupper/takeoff/infer.hpp"
#include "scupper/takeoff/shape.hpp"

namespace scupper::takeoff::detail {

/// Usable items of a record; NaN and no_code where an item is missing or out of bounds.
struct Record {
    double length;
    double longest; ///< at most the length
    double deck_width;
    bool irregular; ///< widths are means over a recorded area
    double roadway;
    double approach;
    double left_walk;
    double right_walk;
    double skew;
    double clearance; ///< above a road or railway below, or measured above whatever is there
    double navigation;
    double height; ///< the greatest, deck to ground or water
    int spans;     ///< main and approach spans, at least 1
    int main_spans;
    int approach_spans;
    int year; ///< built or reconstructed, the later
    int built;
    int median;
    int beam_lines;     ///< of the spans that make up most of the length
    int pier_units;     ///< at most as many as there are spaces between spans allow
    int abutment_units; ///< no more than any bridge has
    char beam_layout;   ///< A side by side, S apart, of these spans
    char rails;         ///< condition of the railings, of bearings, of joints; N: there are none
    char bearings;
    char joints;
    bool over_water;
    bool over_traffic; ///< a road or a railway
    char deck_type;
    Material main_material;
    Material approach_material;
    Design main_design;
    Design approach_design;
    Material material; ///< of the spans that make up most of the length
    Design design;     ///< of the spans that make up most of the length
    double span;       ///< likely span of these; not above the length

    bool has_width() const { return deck_width > 0.0 || roadway > 0.0 || approach > 0.0; }
    bool is_through() const {
        return main_design == Design::truss_through || main_design == Design::arch_through;
    }
    /// Built from 1980 on, when joints and drains became fewer and parapets the rule.
    bool is_newer() const { return year >= 1980; }
};

/// Sets doubtful items aside, and puts what somebody measured in the place of what is recorded.
Record usable(const Structure& structure, const Measured& measured);
/// What kind of record it is.
Verdict verdict_of(const Structure& structure, const Record& record);
/// The categories of a bridge.
Shape shape_of(const Record& record);
/// Whether the number of girder lines is recorded, of a kind that has lines.
bool counts_lines(const Record& record, const Shape& shape);
/// Integral abutments or a deck without joints are possible.
bool jointless_possible(const Record& record);

} // namespace scupper::takeoff::detail
