#include <bit>
#include <cmath>
#include <cstdint>

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

using namespace scupper;
using namespace made_up;

TEST_CASE("every figure explains itself, and the explanation is the figure to the bit") {
    const auto plan = demo_plan();
    const auto e = estimate::estimate(overpass(), plan);
    for (std::size_t i = 0; i < plan->figures.size(); ++i) {
        const std::string& key = plan->figures.fields()[i].key;
        INFO(key);
        const Derivation d = estimate::explain(e, key);
        REQUIRE(!d.steps.empty());
        CHECK(std::bit_cast<std::uint64_t>(d.steps.front().value) ==
              std::bit_cast<std::uint64_t>(e.figures[i]));
    }
}

TEST_CASE("an explanation ends in inputs that say how they came to be known") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    const Derivation d = estimate::explain(e, "cost.total");
    std::size_t inputs = 0;
    for (const DerivedStep& s : d.steps) {
        if (s.kind == DerivedKind::input) {
            ++inputs;
            INFO(s.key);
            CHECK(!s.key.empty());
            CHECK(!s.basis.empty());
            CHECK(!s.source.empty());
        }
    }
    CHECK(inputs > 40);
}

TEST_CASE("the flow at the nozzle is explained as a solve with its method") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    bool found = false;
    for (const DerivedStep& s : estimate::explain(e, "nozzle[hand_line].flow").steps) {
        found |= s.kind == DerivedKind::solve && !s.source.empty() && s.residual < 1e-9;
    }
    CHECK(found);
}

TEST_CASE("figures answer to the names people use") {
    const auto e = estimate::estimate(overpass(), demo_plan());
    CHECK(e.figure("water") == e.figure("water.volume"));
    CHECK(e.figure("cost") == e.figure("cost.total"));
    CHECK(e.figure("drain_count") == e.figure("takeoff[drain_count].quantity"));
    CHECK(e.figure("deck_hand_line") == e.figure("operation[deck_hand_line].time"));
    try {
        e.figure("water.volumme");
        FAIL("should have been refused");
    } catch (const UnknownNameError& error) {
        CHECK(error.allowed() == "\"water.volume\"?");
    }
}
