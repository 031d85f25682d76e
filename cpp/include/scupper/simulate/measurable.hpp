#pragma once
// Which inputs somebody can count or measure at a structure, and what each is written down as.

#include "scupper/schema.hpp"

#include <array>
#include <cstddef>
#include <string_view>

namespace scupper::simulate {

/// What a visit can find out: one input of the schema.
struct Measurable {
    std::string_view group;      ///< [text] of the input that becomes certain
    std::string_view field;      ///< [text] within the group
    std::string_view words;      ///< [text] what to do there, in the trade's words
    std::string_view written_as; ///< [text] quantity slot; empty where the input itself is measured
};

/// Dimensions, counts and dirt, in the order of the input schema; in groups with rows every row is
/// one. Rates, prices and equipment are nobody's to measure at a bridge, and how much of a girder
/// end is washed is decided, not found.
inline constexpr std::array<Measurable, 50> measurable_table{{
    {"deck", "length", "deck length", ""},
    {"deck", "width", "deck width, out to out", ""},
    {"deck", "roadway_width", "roadway width, curb to curb", ""},
    {"deck", "walk_width", "width of the sidewalks together", ""},
    {"deck", "skew", "skew", ""},
    {"deck", "overhang_width", "overhang beyond the outer girder", ""},
    {"deck", "pocket_share", "length of gutter pockets beneath walk edges", "gutter_pocket_length"},
    {"deck", "median_width", "width of the raised median", ""},
    {"span", "longest", "longest span", ""},
    {"joint", "count", "count the deck joints", "joint_count"},
    {"drain", "per_length", "count the drains", "drain_count"},
    {"drain", "clogged_share", "count the clogged drains", "drain_clogged_count"},
    {"drain", "frozen_share", "count the drains with a frozen grate", "drain_frozen_count"},
    {"drain", "box_share", "count the drains with a box", "drain_box_count"},
    {"drain", "downspout_length", "length of a downspout", ""},
    {"parapet", "face_height", "height of a parapet's traffic face", ""},
    {"parapet", "share", "length of parapet faces", "parapet_length"},
    {"rail", "share", "length of metal rail", "rail_length"},
    {"girder", "spacing", "count the girders", "girder_count"},
    {"girder", "depth", "girder depth", ""},
    {"girder", "face_factor", "surface of a girder's side over its outline", ""},
    {"girder", "floor_factor", "surface of floor beams and stringers over the deck's", ""},
    {"girder", "flange_width", "girder flange width", ""},
    {"diaphragm", "spacing", "spacing of diaphragms", ""},
    {"diaphragm", "depth", "depth of diaphragms, as if solid", ""},
    {"bearing", "per_line", "count the bearings", "bearing_count"},
    {"cap", "width", "cap width", ""},
    {"cap", "depth", "cap depth", ""},
    {"seat", "width", "open width of an abutment seat", ""},
    {"column", "spacing", "count the columns", "column_count"},
    {"column", "diameter", "column diameter", ""},
    {"column", "height", "column height", ""},
    {"pier", "wall_share", "which share of the piers are walls", ""},
    {"pier", "wall_thickness", "thickness of a pier wall", ""},
    {"footing", "projection", "footing beyond its column or wall", ""},
    {"footing", "exposed_share", "which share of the footings is exposed", ""},
    {"abutment", "height", "exposed abutment height", ""},
    {"abutment", "back_wall_height", "back wall height above the seat", ""},
    {"abutment", "wing_length", "length of a wing wall", ""},
    {"pedestal", "per_bearing", "count the pedestals", "pedestal_count"},
    {"berm", "width", "width of an abutment bench", ""},
    {"slope", "height", "height of the slope protection", ""},
    {"slope", "run", "slope, horizontal to one vertical", ""},
    {"quantity", "given", "count or measure", ""},
    {"dirt", "width", "dirt width", ""},
    {"dirt", "depth", "dirt depth", ""},
    {"dirt", "density", "dirt, weigh a bucket", ""},
    {"drain_dirt", "volume", "drain, dirt in it", ""},
    {"drain_dirt", "density", "drain, weigh a bucket of its dirt", ""},
    {"site", "clearance", "clearance from girders to ground or water", ""},
}};

} // namespace scupper::simulate
