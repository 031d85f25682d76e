#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/money.hpp"

#include <string>
#include <utility>
#include <vector>

using namespace scupper;

namespace test_money {

namespace {
const Currency usd = parse_currency("USD", "test");
const Currency eur = parse_currency("EUR", "test");

Money dollars(std::string_view text) {
    return {parse_decimal(text, "test"), usd};
}

Decimal d(std::string_view text) {
    return parse_decimal(text, "test");
}

template <class Call>
std::string refused(Call call) {
    try {
        call();
    } catch (const MoneyError& error) {
        return error.id();
    }
    return "";
}
} // namespace

TEST_CASE("an extension is price times quantity, rounded once to the cent") {
    CHECK(extension(dollars("2.10"), d("12.345")) == dollars("25.92"));
    CHECK(extension(dollars("0.125"), d("1")) == dollars("0.13"));
    CHECK(extension(dollars("-0.125"), d("1")) == dollars("-0.13"));
    CHECK(extension(dollars("0.333"), d("0.5")) == dollars("0.17"));
    CHECK(extension(dollars("5"), d("0")) == dollars("0"));
    CHECK(refused([] { extension(dollars("99999999999.99"), d("99999999.999")); }) ==
          "money.overflow");
}

TEST_CASE("a slip of two decimals is a hundredfold extension") {
    // City of Tukwila bid award memo of 13 May 2016: the sheet showed $210.00 per foot where the
    // extension used $2.10, and the unit price governed. The quantity here is invented.
    const Money written = parse_amount("$210.00", usd, "bid[0].price");
    const Money meant = parse_amount("$2.10", usd, "bid[0].price");
    CHECK(extension(written, d("1,850")) == extension(meant, d("1,850")) * d("100"));
    CHECK(extension(written, d("1,850")) == dollars("388,500"));
}

TEST_CASE("published bid prices extend and add up") {
    // Public airport bid tabulation (open data, ds-oliver/PDX-Bid-Tabs), first 33 items, prices of
    // one bidder without cents errors: quantity, unit price, extension as printed.
    const std::vector<std::pair<std::string, std::string>> lines = {
        {"1", "170000"},  {"1", "90000"},   {"1", "170000"}, {"12", "250"},    {"1", "20000"},
        {"6", "500"},     {"100", "4"},     {"14", "70"},    {"5000", "3.75"}, {"1", "9500"},
        {"13", "90"},     {"3", "3150"},    {"300", "9"},    {"7800", "3.5"},  {"1", "890000"},
        {"7900", "3.75"}, {"4100", "5"},    {"4200", "9.5"}, {"4900", "2.75"}, {"4000", "3.25"},
        {"1", "95000"},   {"38600", "15"},  {"2500", "80"},  {"1000", "70"},   {"11000", "47"},
        {"228", "275"},   {"1000", "81"},   {"9700", "96"},  {"12800", "2"},   {"2900", "160"},
        {"3600", "160"},  {"2200", "2.25"}, {"20", "120"}};
    Money total = dollars("0");
    for (const auto& [quantity, price] : lines) {
        total += extension(dollars(price), d(quantity));
    }
    CHECK(total == dollars("5,141,600.00"));
}

TEST_CASE("amounts of two currencies never meet") {
    const Money euros(d("5"), eur);
    CHECK(refused([&] { return dollars("5") + euros; }) == "money.mixed");
    CHECK(refused([&] { return dollars("5") - euros; }) == "money.mixed");
    CHECK(refused([&] { return dollars("5") < euros; }) == "money.mixed");
    CHECK_FALSE(dollars("5") == euros);
    CHECK(dollars("5") < dollars("5.01"));
    CHECK(-dollars("5") == dollars("-5"));
}

TEST_CASE("money is read with its code") {
    CHECK(parse_money("USD 1,234.56", "x") == dollars("1234.56"));
    CHECK(parse_money("1,234.56 USD", "x") == dollars("1234.56"));
    CHECK(parse_money("USD -5", "x") == dollars("-5"));
    CHECK(parse_money(" EUR 3.10 ", "x") == Money(d("3.1"), eur));
    CHECK(refused([] { parse_money("1,234.56", "x"); }) == "money.currency");
    CHECK(refused([] { parse_money("$1,234.56", "x"); }) == "money.currency");
    CHECK(refused([] { parse_money("usd 5", "x"); }) == "money.currency");
    CHECK(refused([] { parse_money("5 USD 6", "x"); }) == "money.currency");
    CHECK(refused([] { parse_money("USD", "x"); }) == "money.number");
    CHECK(refused([] { parse_money("USD 1,20", "x"); }) == "money.number");
}

TEST_CASE("in a table of one currency its sign may stand in front") {
    CHECK(parse_amount("$210.00", usd, "x") == dollars("210"));
    CHECK(parse_amount("-$5.00", usd, "x") == dollars("-5"));
    CHECK(parse_amount("1,234.5", usd, "x") == dollars("1234.5"));
    CHECK(parse_amount("USD 7", usd, "x") == dollars("7"));
    CHECK(parse_amount("\u20ac 7", eur, "x") == Money(d("7"), eur));
    CHECK(refused([] { parse_amount("$7", eur, "x"); }) == "money.number");
    CHECK(refused([] { parse_amount("EUR 7", usd, "x"); }) == "money.mixed");
    CHECK(refused([] { parse_amount("", usd, "x"); }) == "money.number");
}

TEST_CASE("money is written with code, commas and cents, and read back") {
    CHECK(to_text(dollars("1234.5")) == "USD 1,234.50");
    CHECK(to_text(dollars("-1234567.005")) == "USD -1,234,567.005");
    CHECK(to_text(dollars("0")) == "USD 0.00");
    CHECK(to_text(Money(d("1200"), parse_currency("JPY", "x"))) == "JPY 1,200");
    CHECK(to_text(from_minor_units(-123456, usd)) == "USD -1,234.56");
    for (const auto text : {"USD 1,234.50", "USD -0.05", "EUR 999.99", "KWD 12.345"}) {
        CHECK(to_text(parse_money(text, "x")) == text);
    }
}

TEST_CASE("currencies are codes of ISO 4217 with their minor unit") {
    // ISO 4217 list one (from memory): yen without, dinars of Kuwait with three decimals.
    CHECK(minor_digits(usd) == 2);
    CHECK(minor_digits(parse_currency("JPY", "x")) == 0);
    CHECK(minor_digits(parse_currency("KWD", "x")) == 3);
    CHECK(is_currency_code("CAD"));
    CHECK_FALSE(is_currency_code("PSI"));
    CHECK_FALSE(is_currency_code("US"));
    CHECK_FALSE(is_currency_code(""));
    CHECK_FALSE(is_currency_code("SD "));
    CHECK(refused([] { parse_currency("XXX", "x"); }) == "money.currency");
    try {
        parse_currency("usd", "job.currency");
        FAIL("a lower-case code was taken");
    } catch (const MoneyError& error) {
        CHECK(error.path() == "job.currency");
        CHECK(error.allowed() == "a currency code of ISO 4217, e.g. \"USD\"");
    }
}

} // namespace test_money
