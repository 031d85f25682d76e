#include "catch.hpp"
#include "estimate/structures.hpp"

#include <cmath>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {
constexpr std::size_t columns = column_count();
}

TEST_CASE("a table row tells value, range and basis of every quantity") {
    const std::vector<Structure> list{overpass(), counted_overpass(), culvert()};
    const auto table = estimate::take_off_table(list, 1);
    REQUIRE(table.value.size() == list.size() * columns);
    const std::size_t deck = slot("deck_total_area") * list.size();
    CHECK(table.value[deck] == Approx(61.0 * 11.0).epsilon(1e-12));
    CHECK(table.low[deck] == table.value[deck]);
    CHECK(table.high[deck] == table.value[deck]);
    CHECK(table.basis[deck] == Basis::recorded);
    const std::size_t girders = slot("girder_area") * list.size();
    CHECK(table.low[girders] < table.value[girders]);
    CHECK(table.value[girders] < table.high[girders]);
    CHECK(table.basis[girders] >= Basis::inferred);
}

TEST_CASE("drains no record tells are not a number; counted drains are what was counted") {
    const auto table = estimate::take_off_table(std::vector{overpass(), counted_overpass()}, 1);
    const Slot drains = slot("drain_count");
    CHECK(std::isnan(table.value[drains * 2]));
    CHECK(table.low[drains * 2] < table.high[drains * 2]);
    CHECK(table.basis[drains * 2] == Basis::assumed);
    CHECK(table.value[drains * 2 + 1] == 4.0);
    CHECK(table.low[drains * 2 + 1] == 4.0);
    CHECK(table.basis[drains * 2 + 1] == Basis::measured);
}

TEST_CASE("a culvert is recognised and holds nothing to wash but its deck area is told") {
    const auto table = estimate::take_off_table(std::vector{culvert()}, 1);
    CHECK(table.verdict.front() == takeoff::Verdict::culvert);
    CHECK(table.value[slot("deck_total_area")] == Approx(18.3 * 9.4));
    CHECK(table.value[slot("wash_area_total")] == 0.0);
}

TEST_CASE("a row does not depend on its neighbours or on the threads") {
    std::vector<Structure> list;
    for (int i = 0; i < 600; ++i) {
        list.push_back(i % 2 == 0 ? overpass() : creek_bridge());
    }
    const auto one = estimate::take_off_table(list, 1);
    const auto two = estimate::take_off_table(list, 2);
    CHECK(one.low == two.low);
    CHECK(one.high == two.high);
    const auto alone = estimate::take_off_table(std::vector{creek_bridge()}, 1);
    for (Slot s = 0; s < columns; ++s) {
        CHECK(alone.low[s] == one.low[s * list.size() + 1]);
        CHECK(alone.high[s] == one.high[s * list.size() + 1]);
    }
}

TEST_CASE("a table without ranges holds the same values and bases") {
    const std::vector<Structure> list{overpass(), counted_overpass(), culvert()};
    const auto drawn = estimate::take_off_table(list, 1);
    const auto plain = estimate::take_off_table(list, 1, {}, estimate::Ranges::none);
    REQUIRE(plain.value.size() == drawn.value.size());
    for (std::size_t i = 0; i < plain.value.size(); ++i) {
        const bool untold = std::isnan(drawn.value[i]);
        CHECK((untold ? std::isnan(plain.value[i]) : plain.value[i] == drawn.value[i]));
    }
    CHECK(plain.basis == drawn.basis);
    CHECK(plain.verdict == drawn.verdict);
    CHECK(plain.low.empty());
    CHECK(plain.high.empty());
}
