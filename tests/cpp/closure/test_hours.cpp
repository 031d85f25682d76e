// How a day's traffic spreads over its hours.

#include "reference.hpp"
#include "refusal.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

#include <numeric>
#include <vector>

using namespace scupper;
using namespace scupper::closure;
using reference::Row;

TEST_CASE("the rural hours are those of FHWA-SA-98-079 (from memory)") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/hours")) {
        const auto hour = static_cast<std::size_t>(row["hour"]);
        tally.add(row, 100.0 * hourly_shares(HourPattern::rural).at(hour));
    }
    CHECK(tally.summary() == "agrees_from_memory 24");
}

TEST_CASE("shares of a day add up to one") {
    for (const HourPattern pattern : {HourPattern::rural, HourPattern::urban}) {
        const HourlyShares& shares = hourly_shares(pattern);
        CHECK(std::accumulate(shares.begin(), shares.end(), 0.0) == Approx(1.0).epsilon(1e-12));
    }
}

TEST_CASE("a road's pattern follows from its functional class") {
    CHECK(hour_pattern_by_record(7) == HourPattern::rural);
    CHECK(hour_pattern_by_record(-1) == HourPattern::rural);
    CHECK(hour_pattern_by_record(11) == HourPattern::urban);
    CHECK(hour_pattern_by_name("Urban") == HourPattern::urban);
    CHECK_THROWS_AS(hour_pattern_by_name("suburban"), UnknownNameError);
}

TEST_CASE("a count of the road is scaled to one; what is no distribution is refused") {
    std::vector<double> count(24, 1.01 / 24.0);
    const HourlyShares shares = checked_shares(count);
    CHECK(shares.front() == Approx(1.0 / 24.0));
    CHECK(refusal([] { checked_shares(std::vector<double>(23, 1.0 / 23.0)); }).id() ==
          "closure.hours");
    count.front() = -0.01;
    CHECK(refusal([&] { checked_shares(count); }).id() == "closure.hours");
    CHECK(refusal([] { checked_shares(std::vector<double>(24, 1.0)); }).id() == "closure.hours");
}
