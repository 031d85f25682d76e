#pragma once
// Categories a bridge record holds, in the words of the public coding guide.
//
// Source: FHWA, Recording and Coding Guide for the Structure Inventory and Appraisal of the
// Nation's Bridges, FHWA-PD-96-001 (1995), items 42, 43, 44, 26, 41, 54.

#include <cstdint>
#include <string_view>

namespace scupper {

/// Item 43A / 44A: what the spans are made of.
enum class Material : std::uint8_t {
    other = 0,
    concrete = 1,
    concrete_continuous = 2,
    steel = 3,
    steel_continuous = 4,
    prestressed = 5,
    prestressed_continuous = 6,
    timber = 7,
    masonry = 8,
    aluminum_or_iron = 9,
    unknown = 255,
};

/// Item 43B / 44B: how the spans are built.
enum class Design : std::uint8_t {
    other = 0,
    slab = 1,
    multi_beam = 2,
    girder_floorbeam = 3,
    tee_beam = 4,
    box_multiple = 5,
    box_single = 6,
    frame = 7,
    orthotropic = 8,
    truss_deck = 9,
    truss_through = 10,
    arch_deck = 11,
    arch_through = 12,
    suspension = 13,
    stayed_girder = 14,
    movable_lift = 15,
    movable_bascule = 16,
    movable_swing = 17,
    tunnel = 18,
    culvert = 19,
    mixed = 20,
    segmental_box = 21,
    channel_beam = 22,
    unknown = 255,
};

/// Item 54A: what the clearance under the structure is measured from.
enum class Below : std::uint8_t { neither, highway, railroad, unknown };

/// Whether spans of this material run on over their piers without a break.
///
/// @param m [-] item 43A or 44A
/// @return [-] true for codes 2, 4 and 6
/// Range: every material; false where it is unknown.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 43A
/// Verified by: tests/cpp/structure/test_codes.cpp
constexpr bool is_continuous(Material m) {
    return m == Material::concrete_continuous || m == Material::steel_continuous ||
           m == Material::prestressed_continuous;
}

/// Whether the spans are of steel, simple or continuous.
///
/// @param m [-] item 43A or 44A
/// @return [-] true for codes 3 and 4
/// Range: every material; false where it is unknown.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 43A
/// Verified by: tests/cpp/structure/test_codes.cpp
constexpr bool is_steel(Material m) {
    return m == Material::steel || m == Material::steel_continuous;
}

/// What the coding guide calls a material, for tables and reasons.
///
/// @param material [-] item 43A or 44A
/// @return [text] the guide's word; "unknown" where it is not recorded
/// Range: every material.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 43A
/// Verified by: tests/cpp/structure/test_codes.cpp
std::string_view material_name(Material material);

/// What the coding guide calls a design, for tables and reasons.
///
/// @param design [-] item 43B or 44B
/// @return [text] the guide's word; "unknown" where it is not recorded
/// Range: every design.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), item 43B
/// Verified by: tests/cpp/structure/test_codes.cpp
std::string_view design_name(Design design);

} // namespace scupper
