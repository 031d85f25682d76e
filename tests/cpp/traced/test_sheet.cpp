#include "catch.hpp"
#include "scupper/traced.hpp"

#include <cmath>
#include <limits>
#include <string>
#include <vector>

using namespace scupper;

namespace test_sheet {

namespace {

Traced leaf(Recording& recording, double value, const char* name) {
    Label label;
    label.name = name;
    label.key = std::string("test.") + name;
    label.basis = "given";
    label.source = "common practice";
    return {value, &recording, recording.leaf(value, label)};
}

Sheet sheet_with(Recording& recording, const Traced& figure) {
    return sheet_of(recording, std::vector<Step>{figure.step_in(recording)});
}

/// A formula with the labels of its cells in place of addresses.
std::string text_of(const Formula& formula, const Sheet& sheet) {
    std::string text;
    for (const FormulaPart& part : formula) {
        text += part.cell == no_cell ? part.text : sheet.cells[part.cell].label;
    }
    return text;
}

/// The formula of a result made of three inputs and called x.
std::string formula_of(Traced (*make)(const Traced&, const Traced&, const Traced&)) {
    Recording recording;
    const Traced a = leaf(recording, 8.0, "a");
    const Traced b = leaf(recording, 4.0, "b");
    const Traced c = leaf(recording, 2.0, "c");
    const Sheet sheet = sheet_with(recording, named("x", make(a, b, c)));
    return text_of(sheet.cells[sheet.roots[0]].formula, sheet);
}

using T = const Traced&;

} // namespace

TEST_CASE("every operation is written as spreadsheets know it") {
    CHECK(formula_of([](T a, T b, T) { return a + b; }) == "a+b");
    CHECK(formula_of([](T a, T b, T) { return a - b; }) == "a-b");
    CHECK(formula_of([](T a, T b, T) { return a * b; }) == "a*b");
    CHECK(formula_of([](T a, T b, T) { return a / b; }) == "a/b");
    CHECK(formula_of([](T a, T, T) { return -a; }) == "(-a)");
    CHECK(formula_of([](T a, T b, T) { return pow(a, b); }) == "a^b");
    CHECK(formula_of([](T a, T, T) { return sqrt(a); }) == "SQRT(a)");
    CHECK(formula_of([](T a, T, T) { return exp(a); }) == "EXP(a)");
    CHECK(formula_of([](T a, T, T) { return log(a); }) == "LN(a)");
    CHECK(formula_of([](T a, T, T) { return cos(a); }) == "COS(a)");
    CHECK(formula_of([](T a, T, T) { return tan(a); }) == "TAN(a)");
    CHECK(formula_of([](T a, T, T) { return abs(a); }) == "ABS(a)");
    CHECK(formula_of([](T a, T b, T) { return min_of(a, b); }) == "MIN(a,b)");
    CHECK(formula_of([](T a, T b, T) { return max_of(a, b); }) == "MAX(a,b)");
    CHECK(formula_of([](T a, T, T) { return ceil(a); }) == "(-INT(-(a)))");
    CHECK(formula_of([](T a, T, T) { return count_up(a); }) == "(-INT(-(1-1E-09)*(a)))");
}

TEST_CASE("decisions, comparisons and logic are written whole, both arms") {
    CHECK(formula_of([](T a, T b, T c) { return choose(a < b, b, c); }) == "IF(a<b,b,c)");
    CHECK(formula_of([](T a, T b, T c) { return choose(a <= b, c * 2.0, c); }) == "IF(a<=b,c*2,c)");
    CHECK(formula_of([](T a, T b, T c) { return choose(a == b && !(b < c), a, b); }) ==
          "IF(AND(a=b,NOT(b<c)),a,b)");
    CHECK(formula_of([](T a, T b, T c) { return choose(a + b < c || c < b, a, b); }) ==
          "IF(OR(a+b<c,c<b),a,b)");
}

TEST_CASE("brackets keep the order in which the engine works") {
    CHECK(formula_of([](T a, T b, T c) { return a - (b - c); }) == "a-(b-c)");
    CHECK(formula_of([](T a, T b, T c) { return a - b - c; }) == "a-b-c");
    CHECK(formula_of([](T a, T b, T c) { return a + (b + c); }) == "a+(b+c)");
    CHECK(formula_of([](T a, T b, T c) { return a / (b * c); }) == "a/(b*c)");
    CHECK(formula_of([](T a, T b, T c) { return (a + b) * c; }) == "(a+b)*c");
    CHECK(formula_of([](T a, T b, T c) { return pow(pow(a, b), c); }) == "(a^b)^c");
    CHECK(formula_of([](T a, T b, T c) { return pow(-a, b * c); }) == "(-a)^(b*c)");
    CHECK(formula_of([](T a, T b, T) { return a * -b; }) == "a*(-b)");
    CHECK(formula_of([](T a, T, T) { return a + -3.0; }) == "a+(-3)");
}

TEST_CASE("an input used many times has one cell, and cells refer to earlier ones only") {
    Recording recording;
    const Traced a = leaf(recording, 3.0, "a");
    const Traced b = leaf(recording, 5.0, "b");
    const Traced twice = sqrt(a * a + b);
    const Traced first = named("first", twice * a);
    const Sheet sheet = sheet_with(recording, named("second", first + twice));
    std::vector<std::string> labels;
    for (std::size_t i = 0; i < sheet.cells.size(); ++i) {
        labels.push_back(sheet.cells[i].label);
        for (const FormulaPart& part : sheet.cells[i].formula) {
            CHECK((part.cell == no_cell || part.cell < i));
        }
    }
    CHECK(labels == std::vector<std::string>{"a", "b", "first", "first", "second"});
    CHECK(sheet.cells[2].kind == CellKind::part);
    CHECK(sheet.cells[2].value == std::sqrt(14.0));
    CHECK(sheet.cells[0].kind == CellKind::input);
    CHECK(sheet.cells[0].key == "test.a");
    CHECK(sheet.cells[0].basis == "given");
    CHECK(sheet.cells[0].source == "common practice");
}

TEST_CASE("a result that only gets its own name again has one cell") {
    Recording recording;
    const Traced a = leaf(recording, 3.0, "a");
    const Traced x = named("x", named("x", a * 2.0));
    const Sheet sheet = sheet_with(recording, named("y", x + 1.0));
    CHECK(sheet.cells.size() == 3);
    CHECK(text_of(sheet.cells.back().formula, sheet) == "x+1");
}

TEST_CASE("a named constant stands once, with its source") {
    static constexpr NamedConstant gravity{9.80665, dim::acceleration, "standard gravity",
                                           "3rd CGPM (1901)"};
    Recording recording;
    const Traced a = leaf(recording, 3.0, "a");
    const Traced g = constant<Traced>(gravity);
    const Sheet sheet = sheet_with(recording, named("x", a * g + g));
    REQUIRE(sheet.cells.size() == 3);
    CHECK(sheet.cells[1].kind == CellKind::constant);
    CHECK(sheet.cells[1].source == "3rd CGPM (1901)");
    CHECK(text_of(sheet.cells[2].formula, sheet) == "a*standard gravity+standard gravity");
}

TEST_CASE("a long formula is split, and nothing of it is lost") {
    Recording recording;
    const Traced a = leaf(recording, 2.0, "a");
    Traced sum = a;
    for (int i = 2; i <= 401; ++i) {
        sum += a * static_cast<double>(i);
    }
    const Sheet sheet = sheet_with(recording, named("sum", sum));
    std::size_t terms = 0;
    for (const SheetCell& cell : sheet.cells) {
        const std::string text = text_of(cell.formula, sheet);
        CHECK(text.size() < 500);
        for (const char c : text) {
            terms += c == '*' ? 1 : 0;
        }
    }
    CHECK(terms == 400);
    CHECK(sheet.cells.size() > 10);
    CHECK(sheet.cells[sheet.roots[0]].value == sum.value());
}

TEST_CASE("a solve keeps its answer and says when what it rests on changed") {
    Recording recording;
    const Traced a = leaf(recording, 9.0, "a");
    const SolveInfo info{"root of a", "bisection", dim::none};
    const auto solve = [](const std::array<double, 2>& x) { return Solved{std::sqrt(x[0]), 0.0}; };
    const Traced root = solve_opaque(info, std::array<Traced, 2>{a, Traced(3.0)}, solve);
    const Sheet sheet = sheet_with(recording, named("x", root * 2.0));
    REQUIRE(sheet.cells.size() == 3);
    const SheetCell& solved = sheet.cells[1];
    CHECK(solved.kind == CellKind::solve);
    CHECK(solved.value == 3.0);
    CHECK(solved.source == "bisection");
    CHECK(solved.formula.empty());
    REQUIRE(solved.checks.size() == 1);
    CHECK(text_of(solved.checks[0], sheet) == "IFERROR(IF(OR(ABS(a-(9))>1E-09*9),1,0),1)");
}

TEST_CASE("a solve with many inputs is checked in parts") {
    Recording recording;
    std::array<Traced, 45> inputs;
    for (Traced& input : inputs) {
        input = leaf(recording, 1.0, "a");
    }
    const SolveInfo info{"count", "none", dim::none};
    const auto solve = [](const std::array<double, 45>&) { return Solved{1.0, 0.0}; };
    const Sheet sheet = sheet_with(recording, solve_opaque(info, inputs, solve));
    CHECK(sheet.cells.back().checks.size() == 3);
}

TEST_CASE("numbers are written with the fewest digits that read back, and never as NaN") {
    CHECK(formula_number(0.3048) == "0.3048");
    CHECK(formula_number(-2.5) == "-2.5");
    CHECK(formula_number(0.1 + 0.2) == "0.30000000000000004");
    CHECK(formula_number(1e-9) == "1E-09");
    CHECK(formula_number(std::numeric_limits<double>::quiet_NaN()) == "NA()");
    CHECK(formula_number(std::numeric_limits<double>::infinity()) == "NA()");
}

} // namespace test_sheet
