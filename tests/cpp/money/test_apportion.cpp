#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/money.hpp"

#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <random>
#include <string>
#include <vector>

using namespace scupper;

namespace {
using Cents = std::vector<std::int64_t>;

Cents cents(const std::vector<double>& parts) {
    return apportion(parts, 2, "cost");
}

std::int64_t sum(const Cents& all) {
    return std::accumulate(all.begin(), all.end(), std::int64_t{0});
}

std::string refused(const std::vector<double>& parts, std::int64_t total) {
    try {
        apportion(parts, total, 2, "cost");
    } catch (const MoneyError& error) {
        return error.id();
    }
    return "";
}

/// A table of amounts of either sign, some of them zero, some with exact half cents.
std::vector<double> random_table(std::mt19937& engine) {
    std::uniform_real_distribution<double> amount(-5000.0, 5000.0);
    std::vector<double> parts(engine() % 12);
    for (double& part : parts) {
        const auto kind = engine() % 4;
        const double any = amount(engine);
        part = kind == 0 ? 0.0 : kind == 1 ? std::round(any * 8.0) / 800.0 : any;
    }
    return parts;
}
} // namespace

TEST_CASE("thirds of a dollar add up to it") {
    const double third = 100.0 / 3.0;
    CHECK(cents({third, third, third}) == Cents{3334, 3333, 3333});
    CHECK(cents({2 * third, 2 * third, 2 * third}) == Cents{6667, 6667, 6666});
    CHECK(cents({-third, -third, -third}) == Cents{-3334, -3333, -3333});
}

TEST_CASE("the largest remainders get the cents") {
    CHECK(cents({0.006, 0.004, 0.000}) == Cents{1, 0, 0});
    CHECK(cents({0.014, 0.013, 0.013}) == Cents{2, 1, 1});
    CHECK(cents({0.016, 0.017, 0.017}) == Cents{1, 2, 2});
    CHECK(cents({0.009, -0.009}) == Cents{1, -1});
}

TEST_CASE("among equal remainders the greater part, then the earlier, keeps more") {
    CHECK(cents({0.005, 0.005, 0.005}) == Cents{1, 1, 0});
    CHECK(cents({0.003, 10.003}) == Cents{0, 1001});
    CHECK(cents({10.005, 0.005}) == Cents{1001, 0});
}

TEST_CASE("a decimal half is a half although its double is not") {
    CHECK(cents({1.005}) == Cents{101});
    CHECK(cents({-1.005}) == Cents{-101});
    CHECK(cents({}).empty());
    CHECK(cents({0.0, 0.0}) == Cents{0, 0});
}

TEST_CASE("sum, distance, zeros, mirror and order, over random tables") {
    std::mt19937 engine(17);
    for (int i = 0; i < 2000; ++i) {
        std::vector<double> parts = random_table(engine);
        const Cents all = cents(parts);
        const double total = std::accumulate(parts.begin(), parts.end(), 0.0);
        REQUIRE(std::abs(static_cast<double>(sum(all)) - 100.0 * total) <= 0.5 + 1e-5);
        for (std::size_t k = 0; k < parts.size(); ++k) {
            REQUIRE(std::abs(static_cast<double>(all[k]) - 100.0 * parts[k]) < 1.0 + 1e-6);
            REQUIRE((parts[k] != 0.0 || all[k] == 0));
        }
        std::vector<double> negative(parts);
        std::vector<double> backwards(parts.rbegin(), parts.rend());
        for (double& part : negative) {
            part = -part;
        }
        Cents mirrored = cents(negative);
        for (std::int64_t& c : mirrored) {
            c = -c;
        }
        REQUIRE(mirrored == all);
        REQUIRE(sum(cents(backwards)) == sum(all));
    }
}

TEST_CASE("a total settled elsewhere is met as long as no part moves a whole cent") {
    const std::vector<double> parts{1.004, 2.004, 3.004};
    CHECK(apportion(parts, 600, 2, "cost") == Cents{100, 200, 300});
    CHECK(apportion(parts, 602, 2, "cost") == Cents{100, 201, 301});
    CHECK(apportion(parts, 603, 2, "cost") == Cents{101, 201, 301});
    CHECK(refused(parts, 604) == "money.total");
    CHECK(refused(parts, 599) == "money.total");
    CHECK(refused(parts, std::numeric_limits<std::int64_t>::min()) == "money.overflow");
    CHECK(refused({}, 0).empty());
    CHECK(refused({}, 1) == "money.total");
}

TEST_CASE("other minor units") {
    CHECK(apportion(std::vector{100.4, 100.4, 100.4}, 0, "cost") == Cents{101, 100, 100});
    CHECK(apportion(std::vector{0.0005}, 3, "cost") == Cents{1});
}

TEST_CASE("what is no amount is refused") {
    CHECK(refused({1.0, std::numeric_limits<double>::quiet_NaN()}, 100) == "money.number");
    CHECK(refused({std::numeric_limits<double>::infinity()}, 100) == "money.number");
    CHECK(refused({1e12}, 100) == "money.overflow");
    CHECK(refused(std::vector<double>(200, 9e8), 100) == "money.overflow");
    CHECK_THROWS_AS(apportion(std::vector{1.0}, 4, "cost"), MoneyError);
}
