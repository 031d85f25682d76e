#include "catch.hpp"
#include "scupper/uncertain.hpp"

using namespace scupper;

TEST_CASE("a certain value has no spread and keeps its origin") {
    const Provenance survey{"site visit", "2026-05-04", ""};
    const Uncertain value = certain(4.0, Basis::measured, &survey);
    CHECK(is_certain(value));
    CHECK(value.guess.mean() == 4.0);
    CHECK(value.origin->source == "site visit");
    CHECK_FALSE(is_certain(between(1.0, 2.0, 4.0, Basis::inferred)));
    CHECK(between(1.0, 2.0, 4.0, Basis::inferred).guess.mean() == Approx(13.0 / 6.0));
}

TEST_CASE("every basis has its word") {
    CHECK(basis_name(Basis::measured) == "measured");
    CHECK(basis_name(Basis::element) == "element");
    CHECK(basis_name(Basis::recorded) == "recorded");
    CHECK(basis_name(Basis::given) == "given");
    CHECK(basis_name(Basis::inferred) == "inferred");
    CHECK(basis_name(Basis::assumed) == "assumed");
}
