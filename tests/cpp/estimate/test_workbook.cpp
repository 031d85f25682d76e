#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <bit>
#include <cstdint>
#include <set>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

estimate::Workbook book_of(const estimate::Estimate& e) {
    return estimate::workbook(e, estimate::workbook_figures(e));
}

std::size_t cell_with(const estimate::Workbook& book, const std::string& key) {
    for (std::size_t i = 0; i < book.cells.size(); ++i) {
        if (book.cells[i].key == key) {
            return i;
        }
    }
    throw std::out_of_range(key);
}

} // namespace

TEST_CASE("the cells of a workbook hold the figures to the bit, and its lines add up") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const auto book = book_of(e);
    REQUIRE(book.cells.size() == book.shown.size());
    REQUIRE(book.figures.size() >= 16);
    for (const auto& figure : book.figures) {
        INFO(figure.key);
        CHECK(std::bit_cast<std::uint64_t>(book.cells[figure.cell].value) ==
              std::bit_cast<std::uint64_t>(e.figure(figure.key)));
    }
    double sum = 0.0;
    for (const auto& line : book.lines) {
        CHECK(!line.operation.empty());
        sum += book.cells[line.cell].value;
    }
    CHECK(sum == Approx(e.figure("cost.total")).epsilon(1e-12));
}

TEST_CASE("inputs are shown as the trade writes them, once each") {
    const auto book = book_of(estimate::estimate(overpass(), demo_plan()));
    std::set<std::string> keys;
    for (const SheetCell& cell : book.cells) {
        if (cell.kind == CellKind::input) {
            INFO(cell.key);
            CHECK(keys.insert(cell.key).second);
        }
    }
    CHECK(keys.size() > 40);
    const auto& length = book.shown[cell_with(book, "deck.length")];
    CHECK(length.unit == "ft");
    CHECK(length.number == Approx(61.0 / 0.3048).epsilon(1e-14)); // international foot
    CHECK(length.to_si.after == "*0.3048");
    CHECK(length.to_shown.after == "/0.3048");
    CHECK(length.si_unit == "m");
    const auto& rate = book.shown[cell_with(book, "operation[deck_hand_line].time_per_unit")];
    CHECK(rate.unit == "ft2/h");
    CHECK(rate.to_si.before == "1/(");
    CHECK(!rate.low.empty());
    const auto& temperature = book.shown[cell_with(book, "water.temperature")];
    CHECK(temperature.unit == "degF");
    CHECK(temperature.to_si.before == "(");
}

TEST_CASE("solves, bounds, rules and the shift are checked") {
    const auto book = book_of(estimate::estimate(overpass(), demo_plan()));
    std::size_t solves = 0;
    for (const SheetCell& cell : book.cells) {
        solves += cell.kind == CellKind::solve ? 1 : 0;
        CHECK((cell.kind == CellKind::solve) == !cell.checks.empty());
    }
    CHECK(solves > 0);
    std::set<std::string> labels;
    for (const auto& check : book.checks) {
        labels.insert(check.label);
    }
    CHECK(labels.count("time left for work in a shift") == 1);
    CHECK(labels.count("deck length: a number within bounds") == 1);
    CHECK(labels.count("deck length: what is inferred from it by rule") == 1);
    CHECK(labels.count("usable tank volume: a number within bounds") == 1);
}

TEST_CASE("a figure that does not exist is refused with the nearest") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const std::vector<std::string> keys{"water.volumme"};
    CHECK_THROWS_AS(estimate::workbook(e, keys), UnknownNameError);
}
