#include "catch.hpp"
#include "scupper/money.hpp"
#include "scupper/unit.hpp"

#include <cmath>
#include <set>
#include <sstream>
#include <string>
#include <vector>

using namespace scupper;

namespace {
std::vector<std::string> names_of(const UnitRow& row) {
    std::vector<std::string> names{std::string(row.name)};
    std::istringstream aliases{std::string(row.aliases)};
    for (std::string alias; std::getline(aliases, alias, '|');) {
        names.push_back(alias);
    }
    return names;
}
} // namespace

TEST_CASE("no two units share a name, and none is a currency") {
    std::set<std::string> seen;
    for (const UnitRow& row : unit_table()) {
        for (const std::string& name : names_of(row)) {
            INFO(name);
            CHECK(seen.insert(name).second);
            CHECK_FALSE(is_currency_code(name));
            CHECK_FALSE(name.empty());
        }
    }
    CHECK(seen.size() > 200);
}

TEST_CASE("every name is read as its row") {
    for (const UnitRow& row : unit_table()) {
        CHECK(row.factor > 0.0);
        for (const std::string& name : names_of(row)) {
            INFO(name);
            const Unit unit = parse_unit(name, "x");
            CHECK(unit.dimension == row.dimension);
            CHECK(unit.factor == row.factor);
            CHECK(unit.offset == row.offset);
        }
    }
}

TEST_CASE("numbers go into every unit and back") {
    for (const UnitRow& row : unit_table()) {
        const Unit unit = parse_unit(row.name, "x");
        for (const double number : {-40.0, 0.0, 1.0, 3.25, 1e6}) {
            INFO(row.name << ' ' << number);
            const double back = to_unit(from_unit(number, unit), unit);
            CHECK(std::abs(back - number) <= 1e-13 * (std::abs(number) + unit.offset));
        }
    }
}

TEST_CASE("text of every unit is written and read back") {
    for (const UnitRow& row : unit_table()) {
        if (row.dimension == dim::money) {
            continue; // an amount of no particular currency is shown, not read
        }
        INFO(row.name);
        const Unit unit = parse_unit(row.name, "x");
        const double si = from_unit(1234.5, unit);
        const ParsedQuantity read = parse_quantity(format_quantity(si, unit, 12), "x");
        CHECK(read.dimension == row.dimension);
        CHECK(read.si == Approx(si).epsilon(1e-12));
    }
}

TEST_CASE("every unit multiplies with every other, and divides") {
    for (const UnitRow& a : unit_table()) {
        for (const UnitRow& b : unit_table()) {
            if (a.offset != 0.0 || b.offset != 0.0) {
                continue;
            }
            const std::string product = std::string(a.name) + '*' + std::string(b.name);
            const std::string quotient = std::string(a.name) + '/' + std::string(b.name);
            INFO(product);
            REQUIRE(parse_unit(product, "x").dimension == a.dimension * b.dimension);
            REQUIRE(parse_unit(quotient, "x").dimension == a.dimension / b.dimension);
            REQUIRE(parse_unit(quotient, "x").factor == a.factor / b.factor);
        }
    }
}
