#pragma once
// Every dimension of a structure that can be drawn, in the order of the input schema.

#include "scupper/quantity.hpp"
#include "scupper/schema.hpp"

#include <cstddef>
#include <span>
#include <string_view>

namespace scupper::takeoff {

/// How many dimensions there are: the input schema from deck.length to slope.run [-].
inline constexpr std::size_t dimension_count = 44;

static_assert(input_table[0].group == "deck" && input_table[0].field == "length");
static_assert(input_table[dimension_count - 1].group == "slope" &&
              input_table[dimension_count - 1].field == "run");
static_assert(input_table[dimension_count].group == "quantity");

/// Where a dimension of a structure, named in code, stands among the inputs.
///
/// @param key [text] "deck.length" to "slope.run"
/// @return [-] index into the input table and into a flat span of inputs, < dimension_count
/// Range: keys of the first `dimension_count` fields.
/// Errors: none when running; a misspelt key, or one of another input, does not compile.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_take_off.cpp
consteval std::size_t dimension(std::string_view key) {
    const std::size_t index = input_place(key).index;
    if (index >= dimension_count) {
        throw "not a dimension of a structure";
    }
    return index;
}

/// The dimensions of one structure, each with its unit.
template <class T>
struct Dimensions {
    Length<T> deck_length;                                   ///< [m]
    Length<T> deck_width;                                    ///< [m] out to out
    Length<T> roadway_width;                                 ///< [m] curb to curb
    Length<T> walk_width;                                    ///< [m] sidewalks together
    Angle<T> skew;                                           ///< [rad]
    Length<T> overhang_width;                                ///< [m] beyond the outer girder
    T pocket_share{0.0};                                     ///< [-] of the walk edges
    Length<T> median_width;                                  ///< [m] raised, beside the roadway
    Length<T> longest_span;                                  ///< [m]
    Count<T> joint_count;                                    ///< [-] deck joints
    Quantity<dim::count / dim::length, T> drains_per_length; ///< [1/m] along the deck
    T clogged_share{0.0};                                    ///< [-] of the drains
    T frozen_share{0.0};                                     ///< [-] of the drains
    T box_share{0.0};                                        ///< [-] of the drains
    Length<T> downspout_length;                              ///< [m] below one drain box
    Length<T> parapet_face_height;                           ///< [m] along the face
    T parapet_share{0.0};                                    ///< [-] of the edges
    T rail_share{0.0};                                       ///< [-] of the edges
    Length<T> girder_spacing;                                ///< [m] or width of a unit
    Length<T> girder_depth;                                  ///< [m]
    T girder_face_factor{0.0};    ///< [-] surface of a side over its outline
    T floor_factor{0.0};          ///< [-] surface of floorbeams and stringers over deck area
    Length<T> flange_width;       ///< [m]
    Length<T> girder_end_length;  ///< [m] washed at each end
    Length<T> diaphragm_spacing;  ///< [m] along the deck
    Length<T> diaphragm_depth;    ///< [m] if it were solid
    Count<T> bearings_per_line;   ///< [-] along one girder line
    Length<T> cap_width;          ///< [m]
    Length<T> cap_depth;          ///< [m]
    Length<T> seat_width;         ///< [m] in front of the back wall
    Length<T> column_spacing;     ///< [m] along a cap
    Length<T> column_diameter;    ///< [m]
    Length<T> column_height;      ///< [m] below the cap; a pier wall's goes up to its top
    T wall_share{0.0};            ///< [-] of the piers, the others have columns
    Length<T> wall_thickness;     ///< [m] of a pier wall
    Length<T> footing_projection; ///< [m] beyond the column or wall, on every side
    T footing_exposed_share{0.0}; ///< [-] of the footings
    Length<T> abutment_height;    ///< [m] exposed stem, from the ground to the seat
    Length<T> back_wall_height;   ///< [m] above the seat
    Length<T> wing_length;        ///< [m] of each of four wing walls
    T pedestals_per_bearing{0.0}; ///< [-]
    Length<T> berm_width;         ///< [m]
    Length<T> slope_height;       ///< [m]
    T slope_run{0.0};             ///< [-] horizontal to one vertical
};

/// The dimensions that stand in the first places of a flat span of inputs.
///
/// @param flat [SI unit of each field, 44] deck.length to slope.run, as the input schema has them
/// @return [-] the same numbers, each with its unit
/// Range: any numbers.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/takeoff/test_take_off.cpp
template <class T>
Dimensions<T> dimensions_from(std::span<const T, dimension_count> flat);

} // namespace scupper::takeoff
