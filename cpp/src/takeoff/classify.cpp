// Outline of the girders and counts that follow from codes alone.

#include "record.hpp"
#include "rule_table.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::takeoff::detail {

namespace {

bool is_concrete(Material m) {
    return m == Material::concrete || m == Material::concrete_continuous;
}

bool is_prestressed(Material m) {
    return m == Material::prestressed || m == Material::prestressed_continuous;
}

Outline beams_of(Material m) {
    if (is_concrete(m)) {
        return Outline::concrete_tee;
    }
    if (is_prestressed(m)) {
        return Outline::prestressed_beam;
    }
    if (m == Material::timber) {
        return Outline::timber_beam;
    }
    return m == Material::masonry ? Outline::arch_soffit : Outline::steel_beam;
}

Outline vault_or(Outline otherwise, Material m) {
    return is_concrete(m) || is_prestressed(m) || m == Material::masonry ? Outline::arch_soffit
                                                                         : otherwise;
}

/// Item 43B = 06 is one box or several that stand apart. Of precast beams they are several: one box is
/// built for longer spans, and what is cast in place is seldom simple.
bool are_spread(Material m, char layout, double span) {
    constexpr RuleId rule("shape.outline.spread_box");
    return layout == 'S' || (layout == ' ' && m == Material::prestressed && span <= rule->likely);
}

Outline outline_of(Design design, Material m, char layout, double span) {
    switch (design) {
    case Design::slab:
        return Outline::slab;
    case Design::tee_beam:
        return is_prestressed(m) ? Outline::prestressed_tee : beams_of(m);
    case Design::box_multiple:
        return is_steel(m)     ? Outline::steel_box
               : layout == 'S' ? Outline::spread_box
                               : Outline::adjacent_box;
    case Design::box_single:
        return are_spread(m, layout, span) ? Outline::spread_box : Outline::box_girder;
    case Design::segmental_box:
        return Outline::box_girder;
    case Design::frame:
        return vault_or(beams_of(m), m);
    case Design::girder_floorbeam:
    case Design::movable_lift:
    case Design::movable_bascule:
    case Design::movable_swing:
        return Outline::floorbeam;
    case Design::truss_deck:
    case Design::truss_through:
    case Design::arch_through:
        return Outline::truss;
    case Design::arch_deck:
        return vault_or(Outline::truss, m);
    case Design::suspension:
    case Design::stayed_girder:
        return Outline::cable;
    case Design::channel_beam:
        return Outline::channel;
    default:
        return beams_of(m);
    }
}

Lines lines_of(Outline outline) {
    switch (outline) {
    case Outline::none:
    case Outline::slab:
    case Outline::arch_soffit:
        return Lines::none;
    case Outline::floorbeam:
    case Outline::truss:
    case Outline::cable:
        return Lines::pair;
    case Outline::prestressed_tee:
    case Outline::channel:
    case Outline::adjacent_box:
    case Outline::steel_box:
    case Outline::box_girder:
        return Lines::strips;
    default:
        return Lines::spaced;
    }
}

int flange_faces_of(Outline outline) {
    switch (outline) {
    case Outline::steel_beam:
    case Outline::prestressed_beam:
    case Outline::floorbeam:
    case Outline::cable:
        return 3;
    case Outline::none:
    case Outline::truss:
    case Outline::slab:
    case Outline::arch_soffit:
        return 0;
    default:
        return 1;
    }
}

bool runs_through(Material m, Design design) {
    return is_continuous(m) || design == Design::frame || design == Design::arch_deck ||
           design == Design::arch_through || design == Design::suspension ||
           design == Design::stayed_girder || design == Design::segmental_box;
}

/// Continuous lengths of deck among some spans of the same kind.
int units_of(int spans, double length, bool through) {
    constexpr RuleId rule("shape.units.continuous");
    const double units = through ? std::ceil(length / rule->likely) : spans;
    return static_cast<int>(std::min(units, static_cast<double>(spans)));
}

int units_of(const Record& r) {
    const double mean = r.length / r.spans;
    return units_of(r.main_spans, mean * r.main_spans,
                    runs_through(r.main_material, r.main_design)) +
           units_of(r.approach_spans, mean * r.approach_spans,
                    runs_through(r.approach_material, r.approach_design));
}

int walks_of(const Record& r) {
    const double least = RuleId("deck.walk_width.recorded")->low;
    return (r.left_walk >= least ? 1 : 0) + (r.right_walk >= least ? 1 : 0);
}

bool has_overhang(Outline o) {
    return o == Outline::steel_beam || o == Outline::prestressed_beam ||
           o == Outline::concrete_tee || o == Outline::steel_box || o == Outline::box_girder ||
           o == Outline::spread_box;
}

} // namespace

Shape shape_of(const Record& r) {
    Shape s;
    s.outline = outline_of(r.design, r.material, r.beam_layout, r.span);
    s.lines = lines_of(s.outline);
    s.spans = r.spans;
    s.units = units_of(r);
    s.piers = r.pier_units != no_code ? r.pier_units : r.spans - 1;
    s.abutments = r.abutment_units != no_code ? r.abutment_units : s.abutments;
    s.gutters = r.median == 1 || r.median == 3 ? 4 : 2;
    s.walks = walks_of(r);
    s.flange_faces = flange_faces_of(s.outline);
    s.has_bearings =
        s.lines != Lines::none && s.outline != Outline::timber_beam && r.bearings != 'N';
    s.has_caps = s.piers > 0 && s.outline != Outline::arch_soffit;
    s.has_columns = s.has_caps;
    s.has_overhang = has_overhang(s.outline);
    s.walk_present = s.walks > 0;
    s.open_deck = r.deck_type == '3';
    s.clearance_known = r.clearance > 0.0 || r.height > 0.0;
    return s;
}

bool counts_lines(const Record& r, const Shape& shape) {
    return r.beam_lines > 0 && shape.lines != Lines::none;
}

bool jointless_possible(const Record& r) {
    constexpr RuleId rule("joint.count.jointless_possible");
    const bool old = r.year != no_code && !r.is_newer();
    return (r.length <= rule->high && !old) || (r.spans == 1 && r.length <= rule->low);
}

} // namespace scupper::takeoff::detail
