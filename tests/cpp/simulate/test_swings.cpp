#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using simulate::Swing;
using simulate::Swings;

namespace {

std::vector<Structure> both() {
    return {overpass(), creek_bridge(), culvert()};
}

double total_at(const std::vector<Structure>& list, const std::string& key, double value) {
    Job job = json::demo_job();
    for (Setting& s : job.settings) {
        if (s.key == key) {
            s.value = certain(value, Basis::given);
        }
    }
    const auto programme = estimate::estimate_all(list, estimate::make_plan(job));
    const auto at = std::find(programme.keys.begin(), programme.keys.end(), "cost.total");
    return programme.totals[static_cast<std::size_t>(at - programme.keys.begin())];
}

} // namespace

TEST_CASE("a swing is the difference between two estimates of the list") {
    const Swings found = simulate::swings(both(), demo_plan(), 0.1, 2);
    REQUIRE(!found.rows.empty());
    const Job job = json::demo_job();
    int compared = 0;
    for (const Swing& s : found.rows) {
        const auto setting = std::find_if(job.settings.begin(), job.settings.end(),
                                          [&](const Setting& x) { return x.key == s.key; });
        if (setting == job.settings.end() || compared == 8) {
            continue;
        }
        const FastQuantile quantile(setting->value.guess);
        CHECK(s.at_low == Approx(total_at(both(), s.key, quantile(0.1))).epsilon(1e-9));
        CHECK(s.at_high == Approx(total_at(both(), s.key, quantile(0.9))).epsilon(1e-9));
        ++compared;
    }
    CHECK(compared > 3);
}

TEST_CASE("swings are sorted, and the same for any threads") {
    const Swings one = simulate::swings(both(), demo_plan(), 0.1, 1);
    const Swings three = simulate::swings(both(), demo_plan(), 0.1, 3);
    REQUIRE(one.rows.size() == three.rows.size());
    for (std::size_t i = 0; i < one.rows.size(); ++i) {
        CHECK(one.rows[i].key == three.rows[i].key);
        CHECK(one.rows[i].width == three.rows[i].width);
        CHECK(one.rows[i].width == std::fabs(one.rows[i].at_high - one.rows[i].at_low));
        CHECK((i == 0 || one.rows[i].width <= one.rows[i - 1].width));
    }
}

TEST_CASE("levels nearer the middle move the cost less; levels that are none are refused") {
    const double wide = simulate::swings(both(), demo_plan(), 0.05).rows.front().width;
    const double narrow = simulate::swings(both(), demo_plan(), 0.25).rows.front().width;
    CHECK(narrow < wide);
    for (const double level : {0.0, 0.5, -0.1, std::nan("")}) {
        CHECK_THROWS_AS(simulate::swings(both(), demo_plan(), level), InputError);
    }
}
