// Which dimensions each quantity rests on.

#include "scupper/takeoff/infer.hpp"

#include <algorithm>
#include <bitset>
#include <cmath>
#include <initializer_list>

namespace scupper::takeoff {

namespace {

using Uses = std::bitset<dimension_count>;
using UsesBySlot = std::array<Uses, slot_table.size()>;

Uses uses(std::initializer_list<std::size_t> dimensions) {
    Uses out;
    for (const std::size_t index : dimensions) {
        out.set(index);
    }
    return out;
}

void set_deck(UsesBySlot& by) {
    const Uses length = uses({dimension("deck.length")});
    by[slot("deck_top_area")] = length | uses({dimension("deck.roadway_width")});
    by[slot("deck_total_area")] = length | uses({dimension("deck.width")});
    by[slot("sidewalk_area")] = length | uses({dimension("deck.walk_width")});
    by[slot("gutter_pocket_length")] = length | uses({dimension("deck.pocket_share")});
    by[slot("soffit_overhang_area")] = length | uses({dimension("deck.overhang_width")});
    by[slot("median_area")] = length | uses({dimension("deck.median_width")});
    by[slot("parapet_length")] = length | uses({dimension("parapet.share")});
    by[slot("parapet_area")] =
        by[slot("parapet_length")] | uses({dimension("parapet.face_height")});
    by[slot("rail_length")] = length | uses({dimension("rail.share")});
    by[slot("gutter_length")] = length;
    by[slot("joint_count")] = uses({dimension("joint.count")});
    by[slot("joint_length")] =
        by[slot("joint_count")] | uses({dimension("deck.roadway_width"), dimension("deck.skew")});
}

void set_drains(UsesBySlot& by) {
    const Uses count = uses({dimension("deck.length"), dimension("drain.per_length")});
    const Uses clogged = uses({dimension("drain.clogged_share")});
    const Uses frozen = uses({dimension("drain.frozen_share")});
    by[slot("drain_count")] = count;
    by[slot("drain_clogged_count")] = count | clogged;
    by[slot("drain_frozen_count")] = count | clogged | frozen;
    by[slot("drain_free_count")] = count | clogged | frozen;
    by[slot("drain_box_count")] = count | uses({dimension("drain.box_share")});
    by[slot("downspout_length")] =
        by[slot("drain_box_count")] | uses({dimension("drain.downspout_length")});
}

void set_girders(UsesBySlot& by) {
    const Uses count = uses(
        {dimension("deck.width"), dimension("deck.overhang_width"), dimension("girder.spacing")});
    const Uses area =
        count |
        uses({dimension("deck.length"), dimension("girder.depth"), dimension("girder.face_factor"),
              dimension("girder.floor_factor"), dimension("girder.flange_width")});
    by[slot("girder_count")] = count;
    by[slot("girder_area")] = area;
    by[slot("girder_end_area")] =
        area | uses({dimension("joint.count"), dimension("girder.end_length")});
    by[slot("girder_end_count")] = count | uses({dimension("joint.count")});
    by[slot("diaphragm_area")] =
        uses({dimension("deck.length"), dimension("deck.width"), dimension("deck.overhang_width"),
              dimension("diaphragm.spacing"), dimension("diaphragm.depth")});
    by[slot("bearing_count")] = count | uses({dimension("bearing.per_line")});
    by[slot("pedestal_count")] =
        by[slot("bearing_count")] | uses({dimension("pedestal.per_bearing")});
}

Uses support_line() {
    return uses({dimension("deck.width"), dimension("deck.skew")});
}

void set_piers(UsesBySlot& by) {
    const Uses line = support_line();
    const Uses share = uses({dimension("pier.wall_share")});
    const Uses footing =
        uses({dimension("footing.projection"), dimension("footing.exposed_share")});
    by[slot("cap_top_area")] = line | uses({dimension("cap.width")});
    by[slot("cap_area")] = by[slot("cap_top_area")] | share | uses({dimension("cap.depth")});
    by[slot("column_count")] = line | share | uses({dimension("column.spacing")});
    by[slot("column_area")] =
        by[slot("column_count")] | uses({dimension("column.diameter"), dimension("column.height")});
    by[slot("wall_pier_area")] = line | share |
                                 uses({dimension("pier.wall_thickness"), dimension("column.height"),
                                       dimension("cap.depth")});
    by[slot("footing_area")] =
        by[slot("column_count")] | footing |
        uses({dimension("pier.wall_thickness"), dimension("column.diameter")});
}

void set_abutments(UsesBySlot& by) {
    const Uses line = support_line();
    const Uses stem = uses({dimension("abutment.height")});
    const Uses back_wall = uses({dimension("abutment.back_wall_height")});
    by[slot("seat_area")] = line | uses({dimension("seat.width")});
    by[slot("abutment_stem_area")] = line | stem;
    by[slot("back_wall_area")] = line | back_wall;
    by[slot("abutment_area")] = line | stem | back_wall;
    by[slot("wing_wall_area")] = stem | back_wall | uses({dimension("abutment.wing_length")});
    by[slot("berm_area")] = line | uses({dimension("berm.width")});
    by[slot("slope_protection_area")] =
        line | uses({dimension("slope.height"), dimension("slope.run")});
    by[slot("support_line_length")] = line;
}

void set_total(UsesBySlot& by) {
    for (const Slot part :
         {slot("deck_top_area"), slot("sidewalk_area"), slot("median_area"),
          slot("soffit_overhang_area"), slot("parapet_area"), slot("girder_area"),
          slot("diaphragm_area"), slot("cap_area"), slot("column_area"), slot("wall_pier_area"),
          slot("footing_area"), slot("seat_area"), slot("abutment_area"), slot("wing_wall_area"),
          slot("berm_area"), slot("slope_protection_area")}) {
        by[slot("wash_area_total")] |= by[part];
    }
}

const UsesBySlot& uses_by_slot() {
    static const UsesBySlot all = [] {
        UsesBySlot by;
        set_deck(by);
        set_drains(by);
        set_girders(by);
        set_piers(by);
        set_abutments(by);
        set_total(by);
        return by;
    }();
    return all;
}

} // namespace

bool rests_on(Slot slot, std::size_t dimension) {
    return uses_by_slot()[slot][dimension];
}

std::array<Basis, slot_table.size()> bases_of(const std::array<Basis, dimension_count>& known) {
    constexpr std::size_t bases = static_cast<std::size_t>(Basis::assumed) + 1;
    std::array<Uses, bases> of_basis{};
    for (std::size_t i = 0; i < dimension_count; ++i) {
        of_basis[static_cast<std::size_t>(known[i])].set(i);
    }
    const UsesBySlot& by = uses_by_slot();
    std::array<Basis, slot_table.size()> out;
    for (Slot s = 0; s < out.size(); ++s) {
        std::size_t worst = by[s].none() ? static_cast<std::size_t>(Basis::inferred) : bases - 1;
        while (by[s].any() && worst > 0 && (by[s] & of_basis[worst]).none()) {
            --worst;
        }
        out[s] = static_cast<Basis>(worst);
    }
    return out;
}

Basis basis_of(const Inferred& inferred, Slot slot) {
    if (inferred.untold[slot]) {
        return Basis::assumed;
    }
    if (!std::isnan(inferred.counted[slot])) {
        return Basis::recorded;
    }
    std::array<Basis, dimension_count> known;
    std::transform(inferred.dimensions.begin(), inferred.dimensions.end(), known.begin(),
                   [](const Uncertain& u) { return u.basis; });
    return bases_of(known)[slot];
}

} // namespace scupper::takeoff
