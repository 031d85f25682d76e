#pragma once
// What a structure is, decided once: no number that a draw could change stands here.

#include <cstdint>
#include <string_view>

namespace scupper::takeoff {

/// What carries the deck, as far as the washed surface differs.
enum class Outline : std::uint8_t {
    none,             ///< nothing to wash beneath (not a bridge)
    steel_beam,       ///< rolled beams and plate girders
    prestressed_beam, ///< I-beams and bulb tees
    concrete_tee,     ///< stems cast with the deck
    prestressed_tee,  ///< decked tees side by side
    channel,          ///< channel beams side by side
    timber_beam,      ///< stringers of wood
    adjacent_box,     ///< box beams side by side: only soffit and fascias show
    steel_box,        ///< tubs and boxes apart from each other
    box_girder,       ///< one box, or one for each carriageway
    floorbeam,        ///< two girders with floorbeams and stringers between
    truss,            ///< two trusses with a floor system; also steel arches
    cable,            ///< stiffening girders of suspension and stayed spans
    slab,             ///< a flat soffit
    arch_soffit,      ///< vault or rigid frame of concrete or masonry
    spread_box,       ///< box beams apart from each other: sides and soffit of each show
};

/// How the girder lines are counted.
enum class Lines : std::uint8_t {
    none,   ///< a soffit, no lines
    spaced, ///< one more than the spaces between the outer girders
    strips, ///< units side by side over the whole width
    pair,   ///< two
};

/// What the record turned out to be.
enum class Verdict : std::uint8_t {
    bridge,        ///< washed and priced as a bridge
    culvert,       ///< item 43B = 19
    buried,        ///< deck and roadway width zero: the road lies on fill
    tunnel,        ///< item 43B = 18
    no_dimensions, ///< no length, or no width in items 52, 51 and 32
};

/// Categories of one structure.
struct Shape {
    bool washable = true;                  ///< false: not priced as a bridge, see the verdict
    Outline outline = Outline::steel_beam; ///< what carries the deck
    Lines lines = Lines::spaced;           ///< how girder lines are counted
    int spans = 1;                         ///< [-] main and approach spans
    int units = 1;                         ///< [-] continuous lengths of deck
    int piers = 0;                         ///< [-] supports between the abutments
    int gutters = 2;                       ///< [-] gutter lines along the deck
    int walks = 0;                         ///< [-] sidewalks
    int flange_faces = 3;                  ///< [-] faces of flange width in the girder outline
    bool has_bearings = true;              ///< girders stand on bearings
    bool has_caps = false;                 ///< the piers have caps
    bool has_columns = false;              ///< the caps stand on columns
    int abutments = 2;                     ///< [-] abutments
    bool has_overhang = true;              ///< the deck reaches beyond the outer girders
    bool walk_present = false;             ///< walks > 0
    bool open_deck = false;                ///< dirt falls through: no gutter holds any
    bool clearance_known = false;          ///< how high the deck stands is recorded
};

/// The word for a verdict in tables.
///
/// @param verdict [-] from `infer`
/// @return [text] "bridge", "culvert", "buried", "tunnel" or "no_dimensions"
/// Range: any verdict.
/// Errors: none.
/// Source: own convention
std::string_view verdict_name(Verdict verdict);

/// Why a record is, or is not, priced as a bridge.
///
/// @param verdict [-] from `infer`
/// @return [text] one sentence
/// Range: any verdict.
/// Errors: none.
/// Source: FHWA-PD-96-001 items 43B, 49, 51, 52; 23 CFR 490.411(c)
std::string_view verdict_reason(Verdict verdict);

/// What people call the kind of superstructure that a structure is washed as.
///
/// @param outline [-] from `infer`
/// @return [text] "steel beams", "adjacent boxes"
/// Range: every outline.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_rules.cpp
std::string_view outline_name(Outline outline);

} // namespace scupper::takeoff
