#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/random/three_point.hpp"

#include <cmath>
#include <limits>

using namespace scupper;

namespace {

/// The id of the refusal, or "" where the guess is taken.
std::string refusal(const ThreePoint& point) {
    try {
        check(point, "rates.labour.wage");
    } catch (const InputError& error) {
        CHECK(error.path() == "rates.labour.wage");
        CHECK_FALSE(error.found().empty());
        CHECK_FALSE(error.allowed().empty());
        return error.id();
    }
    return "";
}

} // namespace

TEST_CASE("Usable guesses are taken", "[random]") {
    CHECK(refusal({1.0, 2.0, 5.0}) == "");
    CHECK(refusal({1.0, 1.0, 5.0, Family::triangular, Meaning::p10_p90}) == "");
    CHECK(refusal({5.0, 5.0, 5.0, Family::fixed}) == "");
    CHECK(refusal({1.0, 3.01, 5.0, Family::normal}) == "");
    CHECK(refusal({0.1, 1.02, 10.0, Family::lognormal}) == "");
    CHECK(refusal({-3.0, -2.0, -1.0, Family::uniform}) == "");
}

TEST_CASE("Guesses that cannot be used are refused by a stable id", "[random]") {
    const double nan = std::nan("");
    const double infinity = std::numeric_limits<double>::infinity();
    CHECK(refusal({nan, 2.0, 5.0}) == "random.nan");
    CHECK(refusal({1.0, nan, 5.0}) == "random.nan");
    CHECK(refusal({1.0, 2.0, infinity}) == "random.nan");
    CHECK(refusal({3.0, 2.0, 5.0}) == "random.order");
    CHECK(refusal({1.0, 6.0, 5.0}) == "random.order");
    CHECK(refusal({1.0, 2.0, 5.0, Family::fixed}) == "random.fixed");
    CHECK(refusal({0.0, 2.0, 5.0, Family::lognormal}) == "random.positive");
    CHECK(refusal({1.0, 2.0, 5.0, Family::normal}) == "random.skew");
    CHECK(refusal({1.0, 3.0, 5.0, Family::lognormal}) == "random.skew");
    CHECK(refusal({1.0, 2.0, 5.0, Family::discrete}) == "random.family");
    CHECK(refusal({1.0, 2.0, 5.0, Family::empirical}) == "random.family");
}

TEST_CASE("The implied likely value is one the check takes", "[random]") {
    for (const Family family : {Family::normal, Family::lognormal, Family::pert}) {
        const double likely = implied_likely(0.2, 30.0, family);
        CHECK(refusal({0.2, likely, 30.0, family}) == "");
        CHECK(ThreePoint{0.2, likely, 30.0, family}.quantile(0.5) == Approx(likely).epsilon(1e-12));
    }
}

TEST_CASE("A probability outside 0 to 1 is refused", "[random]") {
    const ThreePoint point{1.0, 2.0, 5.0};
    CHECK_THROWS_AS(point.quantile(-0.1), InputError);
    CHECK_THROWS_AS(point.quantile(1.1), InputError);
    CHECK_THROWS_AS(point.quantile(std::nan("")), InputError);
}
