#include "catch.hpp"
#include "estimate/structures.hpp"

#include <cmath>
#include <cstring>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

std::vector<Structure> two() {
    std::vector<Structure> list{overpass(), counted_overpass()};
    list[1].id = list[1].number = "T2";
    return list;
}

std::vector<estimate::ProgrammeGuess> guesses_of(const std::vector<Structure>& list,
                                                 unsigned threads = 1) {
    return estimate::programme_guesses(estimate::estimate_all(list, demo_plan()), list, threads);
}

} // namespace

TEST_CASE("the guesses of a programme of one are the assumptions of its structure") {
    const std::vector<Structure> one{overpass()};
    const auto guesses = guesses_of(one);
    const auto alone = estimate::assumptions(estimate::estimate(one[0], demo_plan()));
    REQUIRE(guesses.size() == alone.size());
    for (std::size_t i = 0; i < alone.size(); ++i) {
        CHECK(guesses[i].worth == Approx(alone[i].worth).margin(1e-6));
        CHECK(guesses[i].structures == 1);
    }
    CHECK(guesses.front().key == alone.front().key);
}

TEST_CASE("a guess moves the programme by what it moves its structures together") {
    const std::vector<Structure> list = two();
    double low = 0.0;
    double high = 0.0;
    for (const Structure& s : list) {
        for (const auto& a : estimate::assumptions(estimate::estimate(s, demo_plan()))) {
            low += a.key == "shift.travel_time" ? a.total_at_low : 0.0;
            high += a.key == "shift.travel_time" ? a.total_at_high : 0.0;
        }
    }
    for (const auto& g : guesses_of(list)) {
        if (g.key == "shift.travel_time") {
            CHECK(g.structures == 2);
            CHECK(g.at_low == Approx(low));
            CHECK(g.at_high == Approx(high));
            CHECK(g.worth == Approx(std::abs(high - low)));
        }
    }
}

TEST_CASE("the guesses of a programme are the same bits for any number of threads") {
    const std::vector<Structure> list = two();
    const auto one = guesses_of(list, 1);
    const auto many = guesses_of(list, 3);
    REQUIRE(one.size() == many.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        CHECK(one[i].key == many[i].key);
        CHECK(std::memcmp(&one[i].worth, &many[i].worth, sizeof(double)) == 0);
    }
}
