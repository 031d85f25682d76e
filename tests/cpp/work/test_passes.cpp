#include "catch.hpp"
#include "scupper/work.hpp"

using namespace scupper;
using namespace scupper::literals;

TEST_CASE("passes of a seven-foot bar, fifteen per cent overlap") {
    // By hand: 34 ft / (7 ft x 0.85) = 5.71, six passes; 22 ft / 5.95 = 3.70, four passes.
    CHECK(number(work::passes<double>(34_ft, 7_ft, 0.15)) == 6.0);
    CHECK(number(work::passes<double>(22_ft, 7_ft, 0.15)) == 4.0);
    CHECK(number(work::passes<double>(0_ft, 7_ft, 0.15)) == 0.0);
}

TEST_CASE("a change of unit adds no pass, a wider bar never takes more") {
    CHECK(number(work::passes<double>(35_ft, 7_ft, 0.0)) == 5.0);
    CHECK(number(work::passes<double>(Length<>(35 * 0.3048), 7_ft, 0.0)) == 5.0);
    double before = 1e9;
    for (int inches = 36; inches < 120; ++inches) {
        const double n =
            number(work::passes<double>(50_ft, static_cast<double>(inches) * 1_in, 0.1));
        CHECK(n <= before);
        before = n;
    }
}
