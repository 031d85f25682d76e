#include <algorithm>
#include <cstdio>
#include <string>

#include "catch.hpp"
#include "scupper/traced.hpp"

using namespace scupper;

namespace {

std::string plain(double value, const Dimension&, std::string_view) {
    char text[32];
    std::snprintf(text, sizeof text, "%g", value);
    return text;
}

Traced leaf(Recording& recording, double value, const char* name, Dimension dimension = {}) {
    Label label;
    label.name = name;
    label.key = std::string("test.") + name;
    label.dimension = dimension;
    label.basis = "assumed";
    label.source = "common practice";
    return {value, &recording, recording.leaf(value, label)};
}

Derivation of(const Recording& recording, const Traced& figure) {
    return derive(recording, figure.step_in(*figure.recording()));
}

/// The trade's example: dirt in a gutter, in whole loads when there is much of it.
Traced dirt(Recording& recording) {
    const Traced area = leaf(recording, 10.0, "gutter area", dim::area);
    const Traced depth = leaf(recording, 0.1, "build-up depth", dim::length);
    const Traced density = leaf(recording, 1500.0, "bulk density", dim::density);
    const Traced mass = named("debris mass", area * depth * density, dim::mass);
    const Traced loads = named("loads", count_up(mass / 400.0));
    return named("hauled", choose(loads > 2.0, loads * 400.0, mass), dim::mass, "test.hauled");
}

} // namespace

TEST_CASE("a derivation reads as the formula was written, down to inputs with their origin") {
    Recording recording;
    const std::string text = of(recording, dirt(recording)).text(plain);
    CHECK(text.find("debris mass = 1500  = gutter area × build-up depth × bulk density\n") !=
          std::string::npos);
    CHECK(text.find("build-up depth = 0.1  [assumed: common practice]\n") != std::string::npos);
    CHECK(text.find("loads = 4  = count up(debris mass ÷ 400)\n") != std::string::npos);
    CHECK(text.find("taken: loads × 400\n") != std::string::npos);
    CHECK(text.find("not taken: debris mass\n") != std::string::npos);
    CHECK(text.find("(above)") == std::string::npos);
}

TEST_CASE("a step that is shared stands once, as near to the figure as it is used") {
    Recording recording;
    const Derivation d = of(recording, dirt(recording));
    const std::string text = d.text(plain);
    for (const DerivedStep& s : d.steps) {
        const std::string line = " " + s.name + " = ";
        const std::size_t first = ("\n" + text).find(line);
        CHECK((first == std::string::npos || text.find(line, first + 1) == std::string::npos));
    }
    CHECK(text.rfind("debris mass = ") == text.find("debris mass = "));
    CHECK(text.rfind("build-up depth = ") == text.find("build-up depth = "));
}

TEST_CASE("an explanation of few levels says how many steps it leaves out") {
    Recording recording;
    const Derivation d = of(recording, dirt(recording));
    const std::string figure = d.text(plain, 0);
    CHECK(std::count(figure.begin(), figure.end(), '\n') == 2);
    const std::string left = std::to_string(d.steps.size() - 1);
    CHECK(figure.find("[+" + left + "]\n(" + left + " of ") != std::string::npos);
    CHECK(d.text(plain, 1).find("gutter area = ") == std::string::npos);
    CHECK(d.text(plain, 20) == d.text(plain));
    CHECK(d.text(plain).find("not shown") == std::string::npos);
}

TEST_CASE("HTML holds every step whatever the depth, and folds what lies deeper") {
    Recording recording;
    const Derivation d = of(recording, dirt(recording));
    const std::string html = d.html(plain, 1);
    for (const DerivedStep& s : d.steps) {
        CHECK(html.find("<b>" + s.name + "</b>") == html.rfind("<b>" + s.name + "</b>"));
        CHECK(html.find("<b>" + s.name + "</b>") != std::string::npos);
    }
    CHECK(html.find("<details open>") == html.rfind("<details open>"));
    CHECK(html.find("<details><summary>") != std::string::npos);
    CHECK(d.html(plain).find("<details><summary>") == std::string::npos);
}

TEST_CASE("the data of a derivation holds every step once, the figure first") {
    Recording recording;
    const Derivation d = of(recording, dirt(recording));
    REQUIRE(!d.steps.empty());
    const DerivedStep& figure = d.steps.front();
    CHECK(figure.name == "hauled");
    CHECK(figure.key == "test.hauled");
    CHECK(figure.kind == DerivedKind::choice);
    CHECK(figure.taken_first);
    CHECK(figure.value == 1600.0);
    CHECK(figure.dimension == dim::mass);
    int masses = 0;
    for (const DerivedStep& s : d.steps) {
        masses += s.name == "debris mass" ? 1 : 0;
        for (const std::size_t part : s.parts) {
            CHECK(part < d.steps.size());
        }
    }
    CHECK(masses == 1);
}

TEST_CASE("HTML shows both arms, marks the one taken, and escapes names") {
    Recording recording;
    const Traced a = leaf(recording, 1.0, "a <b> & \"c\"");
    const Traced figure = named("figure", choose(a > 0.0, a * 2.0, a * 3.0));
    const std::string html = of(recording, figure).html(plain);
    CHECK(html.find("<div class=\"taken\"><b>taken</b> if so: ") != std::string::npos);
    CHECK(html.find("<div class=\"not-taken\">not taken if not: ") != std::string::npos);
    CHECK(html.find("a &lt;b&gt; &amp; &quot;c&quot;") != std::string::npos);
    CHECK(html.find("<b> &") == std::string::npos);
}

TEST_CASE("brackets stand where the order of operations needs them, and only there") {
    Recording recording;
    const Traced a = leaf(recording, 8.0, "a");
    const Traced b = leaf(recording, 4.0, "b");
    const Traced c = leaf(recording, 2.0, "c");
    const auto expression = [&](const Traced& x) {
        return of(recording, named("x", x)).steps.front().expression;
    };
    CHECK(expression(a - (b - c)) == "a − (b − c)");
    CHECK(expression(a - b - c) == "a − b − c");
    CHECK(expression((a + b) * c) == "(a + b) × c");
    CHECK(expression(a + b * c) == "a + b × c");
    CHECK(expression(a / (b * c)) == "a ÷ (b × c)");
    CHECK(expression(max_of(a, b + c)) == "the greater of(a; b + c)");
    CHECK(expression(sqrt(a * c)) == "√(a × c)");
}

TEST_CASE("a named constant shows its source once it meets an input") {
    static constexpr NamedConstant gravity{9.80665, dim::acceleration, "standard gravity",
                                           "3rd CGPM (1901)"};
    Recording recording;
    const Traced mass = leaf(recording, 2.0, "mass", dim::mass);
    const std::string text =
        of(recording, named("weight", mass * constant<Traced>(gravity))).text(plain);
    CHECK(text.find("weight = 19.6133  = mass × standard gravity\n") != std::string::npos);
    CHECK(text.find("standard gravity = 9.80665  [constant: 3rd CGPM (1901)]") !=
          std::string::npos);
    CHECK(constant<double>(gravity) == 9.80665);
}
