#include "scupper/takeoff/section.hpp"

#include "scupper/error.hpp"

#include <algorithm>

namespace scupper::takeoff {

namespace {

/// One slope of a piece.
Length<> side(const SectionPiece& piece) {
    const Length<> run = 0.5 * (piece.top - piece.bottom);
    return sqrt(power<2>(piece.height) + power<2>(run));
}

} // namespace

Length<> section_depth(std::span<const SectionPiece> outline) {
    Length<> depth;
    for (const SectionPiece& piece : outline) {
        depth += piece.height;
    }
    return depth;
}

Area<> section_area(std::span<const SectionPiece> outline) {
    Area<> area;
    for (const SectionPiece& piece : outline) {
        area += 0.5 * (piece.top + piece.bottom) * piece.height;
    }
    return area;
}

Length<> section_perimeter(std::span<const SectionPiece> outline) {
    Length<> length;
    Length<> above; // nothing: the top face is a step from nothing
    for (const SectionPiece& piece : outline) {
        length += abs(piece.top - above) + 2.0 * side(piece);
        above = piece.bottom;
    }
    return length + above;
}

Length<> exposed_perimeter(std::span<const SectionPiece> outline) {
    const Length<> top = outline.empty() ? Length<>() : outline.front().top;
    return section_perimeter(outline) - top;
}

std::vector<std::pair<std::string_view, double>> dimensions_of(const GirderSection& section) {
    const Length<> depth = section_depth(section.outline);
    if (section.kind == SectionKind::box_beam) {
        const double width = section.outline.back().bottom.si();
        return {{"girder.depth", depth.si()},
                {"girder.spacing", width},
                {"girder.flange_width", width}};
    }
    return {{"girder.depth", depth.si()},
            {"girder.face_factor", exposed_perimeter(section.outline) / (2.0 * depth)},
            {"girder.flange_width", 0.0}};
}

const GirderSection& section_of(const SectionLibrary& library, std::string_view name,
                                const std::string& path) {
    return entry_of(
        library.sections, [](const GirderSection& s) { return s.name; }, name, "girder.section",
        path, "section library");
}

} // namespace scupper::takeoff
