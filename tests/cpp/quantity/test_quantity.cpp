#include "catch.hpp"
#include "scupper/quantity.hpp"

#include <concepts>
#include <random>
#include <type_traits>

using namespace scupper;
using namespace scupper::literals;

namespace {
constexpr double close = 1e-14;

bool near(double a, double b) {
    return a == Approx(b).epsilon(close).margin(0.0);
}
} // namespace

TEST_CASE("products and quotients have the dimension of the product and quotient") {
    static_assert(std::same_as<decltype(2.0_m * 3.0_m), Area<double>>);
    static_assert(std::same_as<decltype(2.0_m * 3.0_m2), Volume<double>>);
    static_assert(std::same_as<decltype(2.0_m3 / 3.0_s), Flow<double>>);
    static_assert(std::same_as<decltype(2.0_N / 3.0_m2), Pressure<double>>);
    static_assert(std::same_as<decltype(2.0_kg / 3.0_m3), Density<double>>);
    static_assert(std::same_as<decltype(2.0_Pa * 3.0_m3ps), Power<double>>);
    static_assert(std::same_as<decltype(2.0_gal / 3.0_each), VolumeEach<double>>);
    static_assert(std::same_as<decltype(power<3>(2.0_m)), Volume<double>>);
    CHECK((2.0_m * 3.0_m).si() == 6.0);
    CHECK((2.0_m3 / 4.0_s).si() == 0.5);
    CHECK(power<3>(2.0_m).si() == 8.0);
}

TEST_CASE("a quotient of equals is a plain number") {
    static_assert(std::same_as<decltype(3.0_ft / 1.0_m), double>);
    static_assert(std::same_as<decltype(1.0_s * (2.0 / 1.0_s)), double>);
    CHECK(6.0_m / 3.0_m == 2.0);
    CHECK(near((1.0 / 4.0_s) * 2.0_s, 0.5));
}

TEST_CASE("plain numbers scale, and nothing else") {
    CHECK((2.0 * 3.0_m).si() == 6.0);
    CHECK((3.0_m * 2).si() == 6.0);
    CHECK((3.0_m / 2.0).si() == 1.5);
    CHECK((-(3.0_m)).si() == -3.0);
    static_assert(!std::is_convertible_v<double, Length<double>>);
    static_assert(!std::is_convertible_v<Length<double>, double>);
    static_assert(!std::is_convertible_v<Length<double>, Area<double>>);
    static_assert(std::is_convertible_v<Length<float>, Length<double>>);
}

TEST_CASE("addition and comparison") {
    Length<double> length = 1.0_m;
    length += 0.5_m;
    CHECK(length.si() == 1.5);
    length -= 1.0_m;
    CHECK(length.si() == 0.5);
    CHECK(1.0_ft < 1.0_m);
    CHECK(1.0_m > 1.0_ft);
    CHECK(1.0_m <= 1.0_m);
    CHECK(1.0_m >= 1.0_m);
    CHECK(12.0_in == 1.0_ft);
    CHECK(Length<double>().si() == 0.0);
    CHECK(abs(-(2.0_m)) == 2.0_m);
}

TEST_CASE("square roots halve the exponents") {
    static_assert(std::same_as<decltype(sqrt(4.0_m2)), Length<double>>);
    static_assert(std::same_as<decltype(sqrt(2.0_Pa / 1.0_kg_per_m3)), Speed<double>>);
    CHECK(sqrt(9.0_m2).si() == 3.0);
    static_assert(has_root(dim::area) && !has_root(dim::volume));
    static_assert(root(dim::area) == dim::length);
}

TEST_CASE("laws of arithmetic hold over random values") {
    std::mt19937 engine(3);
    std::uniform_real_distribution<double> any(-1e3, 1e3);
    for (int i = 0; i < 500; ++i) {
        const Length<double> a(any(engine));
        const Length<double> b(any(engine));
        const Length<double> c(any(engine));
        REQUIRE((a + b) == (b + a));
        REQUIRE((a * b) == (b * a));
        REQUIRE((a - a).si() == 0.0);
        REQUIRE((a * (b + c)).si() == Approx((a * b + a * c).si()).epsilon(1e-12).margin(1e-9));
        REQUIRE(near((a * b / b).si(), a.si()));
        REQUIRE(near(abs(sqrt(a * a)).si(), abs(a).si()));
    }
}

TEST_CASE("dimensions form a group") {
    static_assert(dim::length * dim::none == dim::length);
    static_assert(dim::length / dim::length == dim::none);
    static_assert(dim::pressure * dim::area == dim::force);
    static_assert(dim::pressure * dim::flow == dim::power);
    static_assert(power(dim::length, 3) == dim::volume);
    static_assert(power(dim::time, -1) == dim::none / dim::time);
    static_assert(!(dim::money == dim::none) && !(dim::count == dim::none) &&
                  !(dim::angle == dim::none));
    SUCCEED("checked while compiling");
}

TEST_CASE("a value in another unit") {
    CHECK(near((2.0_mi).in(1.0_ft), 10560.0));
    CHECK(near((100.0_psi).in(1.0_psi), 100.0));
    CHECK(number(8.0_each) == 8.0);
    CHECK(near(cos(60.0_deg), 0.5));
    CHECK(near(tan(45.0_deg), 1.0));
}
