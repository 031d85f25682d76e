// Outlines of girders: depth, area, perimeter, and what a structure's dimensions are then.

#include "records.hpp"
#include "scupper/error.hpp"

#include <algorithm>

using namespace records;
using namespace scupper::literals;

namespace {

using Outline_ = std::vector<SectionPiece>;

const Outline_ box{{1.2_m, 1.2_m, 0.8_m}};
/// A web of 0.1 m between flanges of 0.4 m by 0.1 m and 0.6 m by 0.1 m, 1 m deep.
const Outline_ beam{{0.4_m, 0.4_m, 0.1_m}, {0.1_m, 0.1_m, 0.8_m}, {0.6_m, 0.6_m, 0.1_m}};

GirderSection section(SectionKind kind, const Outline_& outline) {
    GirderSection s;
    s.name = "made_up";
    s.kind = kind;
    s.outline = outline;
    return s;
}

Outline_ scaled(Outline_ outline, double by) {
    for (SectionPiece& piece : outline) {
        piece = {by * piece.top, by * piece.bottom, by * piece.height};
    }
    return outline;
}

/// The take-off of the yardstick bridge with what a section says in place of the inferred.
Quantities<double> with_section(const Structure& s, const GirderSection& g, double& lines) {
    const Inferred i = infer(s);
    std::array<double, dimension_count> flat{};
    for (std::size_t d = 0; d < dimension_count; ++d) {
        flat[d] = i.dimensions[d].guess.likely;
    }
    for (const auto& [key, si] : dimensions_of(g)) {
        for (std::size_t d = 0; d < dimension_count; ++d) {
            const InputField& f = input_table[d];
            if (std::string(f.group) + "." + std::string(f.field) == key) {
                flat[d] = si;
            }
        }
    }
    const Quantities<double> q =
        take_off(i.shape, dimensions_from(std::span<const double, dimension_count>(flat)));
    lines = q[slot("girder_count")];
    return q;
}

} // namespace

TEST_CASE("a rectangle shows its two sides and its soffit") {
    CHECK(section_depth(box).si() == Approx(0.8));
    CHECK(section_area(box).si() == Approx(0.96));
    CHECK(section_perimeter(box).si() == Approx(4.0));
    CHECK(exposed_perimeter(box).si() == Approx(2.8));
}

TEST_CASE("a beam shows its ledges too") {
    // By hand: 0.4 + 0.6 + 2 x 1.0 + (0.4 - 0.1) + (0.6 - 0.1) = 3.8.
    CHECK(section_depth(beam).si() == Approx(1.0));
    CHECK(section_area(beam).si() == Approx(0.04 + 0.08 + 0.06));
    CHECK(section_perimeter(beam).si() == Approx(3.8));
    CHECK(exposed_perimeter(beam).si() == Approx(3.4));
}

TEST_CASE("a slope counts along itself") {
    // By hand: sides of 3, 4, 5: 7 wide above, 1 below, 4 high.
    const Outline_ wedge{{7.0_m, 1.0_m, 4.0_m}};
    CHECK(section_perimeter(wedge).si() == Approx(7.0 + 1.0 + 2.0 * 5.0));
    CHECK(section_area(wedge).si() == Approx(16.0));
    CHECK(section_perimeter({}).si() == 0.0);
}

TEST_CASE("upside down it is the same outline; scaled, perimeter goes by one and area by two") {
    Outline_ turned(beam.rbegin(), beam.rend());
    for (SectionPiece& piece : turned) {
        std::swap(piece.top, piece.bottom);
    }
    CHECK(section_perimeter(turned).si() == Approx(section_perimeter(beam).si()));
    CHECK(section_area(turned).si() == Approx(section_area(beam).si()));
    CHECK(section_perimeter(scaled(beam, 3.0)).si() == Approx(3.0 * section_perimeter(beam).si()));
    CHECK(section_area(scaled(beam, 3.0)).si() == Approx(9.0 * section_area(beam).si()));
}

TEST_CASE("a known beam is taken off at its own girth, whatever the flanges counted") {
    double lines = 0.0;
    const GirderSection known = section(SectionKind::rolled_shape, beam);
    const Structure s = yardstick();
    const double area = with_section(s, known, lines)[slot("girder_area")];
    CHECK(area == Approx(lines * 61.0 * 3.4).epsilon(1e-9));
}

TEST_CASE("known boxes side by side are counted by their width") {
    double lines = 0.0;
    const Structure s =
        record({20.0, 11.0, 9.75, 20.0, 1}, Material::prestressed, Design::box_multiple, 1985);
    with_section(s, section(SectionKind::box_beam, box), lines);
    CHECK(lines == 10.0); // 11 m of boxes of 1.2 m
}

TEST_CASE("sections are found by name; unknown ones refused, naming the nearest") {
    SectionLibrary library;
    library.sections = {section(SectionKind::bulb_tee, beam)};
    CHECK(section_of(library, "made_up", "here").kind == SectionKind::bulb_tee);
    try {
        section_of(library, "made_op", "here");
        FAIL("was accepted");
    } catch (const UnknownNameError& e) {
        CHECK(e.id() == "girder.section");
        CHECK(e.allowed() == "\"made_up\"?");
    }
}
