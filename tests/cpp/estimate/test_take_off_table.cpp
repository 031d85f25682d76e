#include <cmath>
#include <vector>

#include "catch.hpp"
#include "estimate/structures.hpp"

using namespace scupper;
using namespace made_up;

namespace {
constexpr std::size_t columns = column_count();
}

TEST_CASE("a table row tells value, range and basis of every quantity") {
    const std::vector<Structure> list{overpass(), counted_overpass(), culvert()};
    const auto table = estimate::take_off_table(list, 1);
    REQUIRE(table.value.size() == list.size() * columns);
    const Slot deck = slot("deck_total_area");
    CHECK(table.value[deck] == Approx(61.0 * 11.0).epsilon(1e-12));
    CHECK(table.low[deck] == table.value[deck]);
    CHECK(table.high[deck] == table.value[deck]);
    CHECK(table.basis[deck] == Basis::recorded);
    const Slot girders = slot("girder_area");
    CHECK(table.low[girders] < table.value[girders]);
    CHECK(table.value[girders] < table.high[girders]);
    CHECK(table.basis[girders] >= Basis::inferred);
}

TEST_CASE("drains no record tells are not a number; counted drains are what was counted") {
    const auto table = estimate::take_off_table(std::vector{overpass(), counted_overpass()}, 1);
    const Slot drains = slot("drain_count");
    CHECK(std::isnan(table.value[drains]));
    CHECK(table.low[drains] < table.high[drains]);
    CHECK(table.basis[drains] == Basis::assumed);
    CHECK(table.value[columns + drains] == 4.0);
    CHECK(table.low[columns + drains] == 4.0);
    CHECK(table.basis[columns + drains] == Basis::measured);
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
        CHECK(alone.low[s] == one.low[columns + s]);
        CHECK(alone.high[s] == one.high[columns + s]);
    }
}
