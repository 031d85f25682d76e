#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/money.hpp"

#include <limits>
#include <random>
#include <string>

using namespace scupper;

namespace {
Decimal d(std::string_view text) {
    return parse_decimal(text, "test");
}

template <class Call>
MoneyError refusal(Call call) {
    try {
        call();
    } catch (const MoneyError& error) {
        return error;
    }
    throw std::logic_error("nothing was refused");
}

std::string refused(std::string_view text) {
    return refusal([text] { parse_decimal(text, "items[3].price"); }).id();
}
} // namespace

TEST_CASE("decimals are read as written") {
    CHECK(to_text(d("1,234.56")) == "1234.56");
    CHECK(to_text(d("210.00")) == "210.00");
    CHECK(to_text(d("  2.10 ")) == "2.10");
    CHECK(to_text(d("-0.05")) == "-0.05");
    CHECK(to_text(d("+7")) == "7");
    CHECK(to_text(d(".5")) == "0.5");
    CHECK(to_text(d("12,345,678")) == "12345678");
    CHECK(to_text(d("000123")) == "123");
    CHECK(d("2.10") == d("2.1"));
    CHECK(d("-0") == d("0"));
}

TEST_CASE("text that could be read in two ways is refused") {
    for (const auto text :
         {"",         " ",     "-",        ".",         "1.",      "1,20",   "1,2345",
          "1234,567", "0,123", "1.234,56", "1e5",       "$210.00", "(5.00)", "1 000",
          "--1",      "1.2.3", "nan",      "1,234.5,6", ",123",    "1,,234"}) {
        INFO(text);
        CHECK(refused(text) == "money.number");
    }
}

TEST_CASE("a refusal names the place and what to write") {
    const auto error = refusal([] { parse_decimal("1.234,56", "items[3].price"); });
    CHECK(error.path() == "items[3].price");
    CHECK(error.found() == "\"1.234,56\"");
    CHECK(error.allowed() ==
          "a decimal point, \"1234.56\"; a comma only groups thousands, \"1,200\"");
}

TEST_CASE("sums, differences and products are exact") {
    CHECK(d("0.1") + d("0.2") == d("0.3"));
    CHECK(to_text(d("2.10") + d("0.90")) == "3.00");
    CHECK(d("1") - d("0.001") == d("0.999"));
    CHECK(d("2.10") * d("12345.678") == d("25925.9238"));
    CHECK(to_text(d("0.50") * d("2")) == "1");
    CHECK(-d("1.5") == d("-1.5"));
}

TEST_CASE("arithmetic over random decimals agrees with whole-number arithmetic") {
    std::mt19937_64 engine(5);
    std::uniform_int_distribution<std::int64_t> any(-1'000'000'000, 1'000'000'000);
    for (int i = 0; i < 1000; ++i) {
        const std::int64_t a = any(engine);
        const std::int64_t b = any(engine);
        const Decimal x(a, 3);
        const Decimal y(b, 5);
        REQUIRE(x + y == Decimal(a * 100 + b, 5));
        REQUIRE(x - y == Decimal(a * 100 - b, 5));
        REQUIRE(x * y == Decimal(a * b, 8));
        REQUIRE((x < y) == (a * 100 < b));
        REQUIRE((x == y) == (a * 100 == b));
        REQUIRE(d(to_text(x)) == x);
        REQUIRE(to_text(d(to_text(y))) == to_text(y));
    }
}

TEST_CASE("comparison is exact where doubles are not, and never overflows") {
    CHECK(d("9007199254740993") > d("9007199254740992"));
    CHECK(Decimal(std::numeric_limits<std::int64_t>::max()) > Decimal(1, 18));
    CHECK(Decimal(-1, 18) < d("0"));
    CHECK(d("-1.5") < d("-1.4"));
}

TEST_CASE("halves go away from zero") {
    CHECK(rounded(d("0.125"), 2) == d("0.13"));
    CHECK(rounded(d("-0.125"), 2) == d("-0.13"));
    CHECK(rounded(d("0.1249999"), 2) == d("0.12"));
    CHECK(rounded(d("2.5"), 0) == d("3"));
    CHECK(rounded(d("0.995"), 2) == d("1"));
    CHECK(rounded(d("0.5"), 2) == d("0.5"));
    CHECK(rounded(Decimal(std::numeric_limits<std::int64_t>::max(), 18), 0) == d("9"));
}

TEST_CASE("what does not fit is an error, not another number") {
    const Decimal large(std::numeric_limits<std::int64_t>::max());
    CHECK(refusal([&] { return large + Decimal(1); }).id() == "money.overflow");
    CHECK(refusal([&] { return -large - Decimal(1); }).id() == "money.overflow");
    CHECK(refusal([&] { return large * d("1.1"); }).id() == "money.overflow");
    CHECK(refusal([&] { return Decimal(1, 18) * d("0.1"); }).id() == "money.overflow");
    CHECK(refusal([&] { return large + d("0.01"); }).id() == "money.overflow");
    CHECK(refused("99999999999999999999") == "money.overflow");
    CHECK(refused("0.1234567890123456789") == "money.overflow");
    CHECK(refusal([] { return Decimal(1, 19); }).id() == "money.scale");
    CHECK(refusal([] { return Decimal(1, -1); }).id() == "money.scale");
    CHECK(refusal([] { return Decimal(std::numeric_limits<std::int64_t>::min()); }).id() ==
          "money.overflow");
    CHECK(large * Decimal(0) == Decimal(0));
    CHECK(large + Decimal(0, 18) == large);
}

TEST_CASE("a double becomes a decimal by its shortest digits") {
    const auto from = [](double value, int decimals) {
        return to_text(rounded_from_double(value, decimals, "test"));
    };
    CHECK(from(1.005, 2) == "1.01");
    CHECK(from(-1.005, 2) == "-1.01");
    CHECK(from(0.1 + 0.2, 2) == "0.30");
    CHECK(from(1234567.891, 2) == "1234567.89");
    CHECK(from(1e15, 2) == "1000000000000000.00");
    CHECK(from(1e-300, 2) == "0.00");
    CHECK(from(0.0, 2) == "0.00");
    CHECK(from(2.5, 0) == "3");
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(refusal([&] { rounded_from_double(nan, 2, "x"); }).id() == "money.number");
    CHECK(refusal([] { rounded_from_double(1e18, 2, "x"); }).id() == "money.overflow");
    CHECK(refusal([] { rounded_from_double(1e300, 2, "x"); }).id() == "money.overflow");
    CHECK(refusal([] { rounded_from_double(1.0, 19, "x"); }).id() == "money.scale");
}

TEST_CASE("cents survive the way through a double") {
    std::mt19937_64 engine(9);
    std::uniform_int_distribution<std::int64_t> any(-1'000'000'000'000, 1'000'000'000'000);
    for (int i = 0; i < 1000; ++i) {
        const Decimal cents(any(engine), 2);
        REQUIRE(rounded_from_double(to_double(cents), 2, "test") == cents);
    }
}
