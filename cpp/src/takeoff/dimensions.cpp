#include "scupper/takeoff/dimensions.hpp"

#include "scupper/traced.hpp"

namespace scupper::takeoff {

template <class T>
Dimensions<T> dimensions_from(std::span<const T, dimension_count> flat) {
    std::size_t next = 0;
    const auto take = [&](auto& member) {
        using Member = std::remove_reference_t<decltype(member)>;
        member = Member(flat[next++]);
    };
    Dimensions<T> d;
    take(d.deck_length);
    take(d.deck_width);
    take(d.roadway_width);
    take(d.walk_width);
    take(d.skew);
    take(d.overhang_width);
    take(d.pocket_share);
    take(d.median_width);
    take(d.longest_span);
    take(d.joint_count);
    take(d.drains_per_length);
    take(d.clogged_share);
    take(d.frozen_share);
    take(d.box_share);
    take(d.downspout_length);
    take(d.parapet_face_height);
    take(d.parapet_share);
    take(d.rail_share);
    take(d.girder_spacing);
    take(d.girder_depth);
    take(d.girder_face_factor);
    take(d.floor_factor);
    take(d.flange_width);
    take(d.girder_end_length);
    take(d.diaphragm_spacing);
    take(d.diaphragm_depth);
    take(d.bearings_per_line);
    take(d.cap_width);
    take(d.cap_depth);
    take(d.seat_width);
    take(d.column_spacing);
    take(d.column_diameter);
    take(d.column_height);
    take(d.wall_share);
    take(d.wall_thickness);
    take(d.footing_projection);
    take(d.footing_exposed_share);
    take(d.abutment_height);
    take(d.back_wall_height);
    take(d.wing_length);
    take(d.pedestals_per_bearing);
    take(d.berm_width);
    take(d.slope_height);
    take(d.slope_run);
    return d;
}

template Dimensions<double> dimensions_from(std::span<const double, dimension_count>);
template Dimensions<Traced> dimensions_from(std::span<const Traced, dimension_count>);

} // namespace scupper::takeoff
