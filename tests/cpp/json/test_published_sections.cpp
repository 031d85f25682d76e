// Published figures of girder sections against the shipped outlines.

#include "reference.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <cctype>
#include <limits>

using namespace scupper;
using namespace scupper::literals;
using reference::Row;
using takeoff::GirderSection;
using takeoff::SectionPiece;

namespace {

constexpr double inch = factor::inch;

/// "Type_I_area" and "W44X335_perim" belong to aashto_type_i and w44x335.
const GirderSection& section_of(const Row& row) {
    std::string name = row.text("id");
    for (const char* tail : {"_dims", "_area", "_yb", "_ix", "_perim_exposed", "_perim"}) {
        const std::string end(tail);
        if (name.ends_with(end)) {
            name.resize(name.size() - end.size());
            break;
        }
    }
    std::transform(name.begin(), name.end(), name.begin(), [](char c) {
        return c == '-' ? '_' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    });
    if (name.starts_with("type_")) {
        name = "aashto_" + name;
    }
    return takeoff::section_of(json::shipped_sections(), name, row.text("id"));
}

/// Moments of an outline about its foot, to prove outlines that nobody printed whole.
struct Moments {
    double area = 0.0, first = 0.0, second = 0.0; // [m2, m3, m4]

    double centroid() const { return first / area; }
    double inertia() const { return second - area * centroid() * centroid(); }
};

Moments moments(const std::vector<SectionPiece>& outline) {
    Moments m;
    double foot = 0.0;
    for (auto piece = outline.rbegin(); piece != outline.rend(); ++piece) {
        const double a = piece->top.si(), b = piece->bottom.si(), h = piece->height.si();
        const double area = 0.5 * (a + b) * h;
        const double centroid = foot + h * (2.0 * a + b) / (3.0 * (a + b));
        const double own = h * h * h * (a * a + 4.0 * a * b + b * b) / (36.0 * (a + b));
        m.area += area;
        m.first += area * centroid;
        m.second += own + area * centroid * centroid;
        foot += h;
    }
    return m;
}

/// What the shipped outline gives, in the unit of the row; NaN where it cannot tell.
double by_outline(const Row& row) {
    const GirderSection& section = section_of(row);
    const std::string& id = row.text("id");
    if (id.ends_with("_dims")) {
        return takeoff::section_depth(section.outline).in(1.0_in);
    }
    if (id.ends_with("_area")) {
        return takeoff::section_area(section.outline).si() / (inch * inch);
    }
    if (id.ends_with("_yb")) {
        return moments(section.outline).centroid() / inch;
    }
    if (id.ends_with("_ix")) {
        return moments(section.outline).inertia() / (inch * inch * inch * inch);
    }
    if (id.ends_with("_perim_exposed")) {
        return takeoff::exposed_perimeter(section.outline).in(1.0_ft);
    }
    if (id.ends_with("_perim")) {
        return takeoff::section_perimeter(section.outline).in(1.0_ft);
    }
    return std::numeric_limits<double>::quiet_NaN(); // a box's void is not drawn
}

double printed_in2(const char* name) {
    const auto& section = takeoff::section_of(json::shipped_sections(), name, "test");
    return section.printed->area.si() / (inch * inch);
}

} // namespace

TEST_CASE("published depths, areas, centroids, inertias and perimeters follow from the outlines") {
    reference::Tally tally;
    for (const Row& row : reference::rows("takeoff/sections")) {
        const double value = by_outline(row);
        tally.add(row, value,
                  {{"void not drawn", std::isnan(value)},
                   {"within 0.02 %", reference::within(row, value, 2e-4)}});
    }
    CHECK(tally.summary() == "agrees 25, agrees_from_memory 13, void not drawn_from_memory 8, "
                             "within 0.02 %_from_memory 2");
}

TEST_CASE("every printed area of the references is the one that ships") {
    int boxes = 0;
    for (const Row& row : reference::rows("takeoff/sections")) {
        const bool box = row.starts("AASHTO box beam");
        if (box || row.text("id").ends_with("_area")) {
            INFO(row.text("id"));
            const GirderSection& section = section_of(row);
            REQUIRE(section.printed);
            CHECK(section.printed->area.si() / (inch * inch) == Approx(row.expected()));
            boxes += box ? 1 : 0;
        }
        if (box) {
            const SectionPiece& piece = section_of(row).outline.front();
            CHECK(piece.top.in(1.0_in) == Approx(row["width_in"]));
            CHECK(piece.height.in(1.0_in) == Approx(row["depth_in"]));
        }
    }
    CHECK(boxes == 8);
}

TEST_CASE(
    "deeper boxes of a width differ by two webs of 5 in, wider ones by two slabs of 5 1/2 in") {
    CHECK(printed_in2("box_bii_48") - printed_in2("box_bi_48") == Approx(6.0 * 2.0 * 5.0));
    CHECK(printed_in2("box_biv_48") - printed_in2("box_biii_48") == Approx(3.0 * 2.0 * 5.0));
    CHECK(printed_in2("box_bi_48") - printed_in2("box_bi_36") == Approx(12.0 * 2.0 * 5.5));
}

TEST_CASE("the coated surface of a bridge of steel girders lies among the rolled shapes") {
    double least = 1e9, most = 0.0;
    for (const GirderSection& section : json::shipped_sections().sections) {
        if (section.kind == takeoff::SectionKind::rolled_shape) {
            const double ft = takeoff::section_perimeter(section.outline).in(1.0_ft);
            least = std::min(least, ft);
            most = std::max(most, ft);
        }
    }
    for (const Row& row : reference::rows("takeoff/geometry")) {
        if (row.text("id") == "nbe_IA1270_steel_perimeter") {
            CHECK(row.expected() > least);
            CHECK(row.expected() < most);
        }
    }
}
