#pragma once
// Standard girder sections: what an outline shows to dirt and water.

#include "scupper/quantity.hpp"
#include "scupper/uncertain.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace scupper::takeoff {

/// A piece of an outline: a trapezium that is the same left and right.
struct SectionPiece {
    Length<> top;    ///< [m] width above
    Length<> bottom; ///< [m] width below
    Length<> height; ///< [m]
};

/// Kinds of section; the words are `section_kind_names`, in this order.
enum class SectionKind { prestressed_i, bulb_tee, box_beam, rolled_shape };

/// The area of a section as somebody printed it.
struct PrintedArea {
    Area<> area;       ///< [m2] of the material; of a box without its void
    std::string basis; ///< [text] one of published_basis_names
    Provenance origin; ///< [text] document, date, note
};

/// A standard section.
struct GirderSection {
    std::string name;                              ///< [text] "aashto_type_iv"
    SectionKind kind = SectionKind::prestressed_i; ///< [-] what it is
    std::vector<SectionPiece> outline;             ///< [m, n] from the top
    Provenance origin;                             ///< [text] where the outline is drawn
    std::optional<PrintedArea> printed;            ///< [m2] none where nobody printed one here
    std::string note;                              ///< [text] free text
};

/// A dated, sourced collection of sections.
struct SectionLibrary {
    std::string name;                    ///< [text] what people call it
    std::string date;                    ///< ISO 8601
    std::string note;                    ///< [text] free text
    std::vector<GirderSection> sections; ///< [-, n] by kind, then by depth
};

/// How deep a section is.
///
/// Formula: sum of h
/// @param outline [m, n] pieces from the top
/// @return [m] depth
/// Range: any outline.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_section.cpp
Length<> section_depth(std::span<const SectionPiece> outline);

/// The area within an outline.
///
/// Formula: sum of (b_top + b_bottom) h / 2
/// @param outline [m, n] pieces from the top
/// @return [m2] area; of a box with its void
/// Range: square corners, no fillets.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_section.cpp
Area<> section_area(std::span<const SectionPiece> outline);

/// The length of a whole outline, its top face and every ledge included.
///
/// Formula: b_first + b_last + sum of 2 sqrt(h^2 + ((b_top - b_bottom) / 2)^2) + sum of the steps
/// |b_bottom - b_top of the next piece|
/// @param outline [m, n] pieces from the top
/// @return [m2/m] surface for each unit of length
/// Range: square corners, no fillets.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_section.cpp
Length<> section_perimeter(std::span<const SectionPiece> outline);

/// The length of an outline that shows: all but the top face, on which the deck sits.
///
/// Formula: section_perimeter - b_first
/// @param outline [m, n] pieces from the top
/// @return [m2/m] surface for each unit of length
/// Range: as `section_perimeter`; boxes side by side show their soffit alone, but for the fascias.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_section.cpp
Length<> exposed_perimeter(std::span<const SectionPiece> outline);

/// What is known of a structure's dimensions once its section is: depth and girth, exactly.
///
/// Formula: of a beam girder.depth = d, girder.face_factor = exposed_perimeter / (2 d) with
/// girder.flange_width = 0, for the flanges are in the factor; of boxes side by side girder.depth,
/// girder.spacing and girder.flange_width, their width
/// @param section [-] a standard section
/// @return [SI unit of each, 3] keys of the input schema and their values
/// Range: any section; stiffeners and gussets are not part of an outline.
/// Errors: none.
/// Source: geometry
/// Verified by: tests/cpp/takeoff/test_section.cpp
std::vector<std::pair<std::string_view, double>> dimensions_of(const GirderSection& section);

/// The section of a name.
///
/// @param library [-] sections
/// @param name [text] name of the section
/// @param path [text] where the name was written, for the error
/// @return [-] the section
/// Range: any text.
/// Errors: UnknownNameError `girder.section` naming the nearest known section.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_section.cpp
const GirderSection& section_of(const SectionLibrary& library, std::string_view name,
                                const std::string& path);

} // namespace scupper::takeoff
