// The rinse of a well-known kind of overpass against what crews report (common practice).
#include <map>
#include <string>

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "reference.hpp"
#include "scupper/unit.hpp"

using namespace scupper;
using namespace made_up;

namespace {

struct Band {
    double low, likely, high;
};

std::map<std::string, Band> bands() {
    std::map<std::string, Band> found;
    for (const reference::Row& row : reference::rows("estimate/yardstick")) {
        const Unit unit = parse_unit(row.text("unit"), row.text("id"));
        const auto si = [&](const char* column) {
            return from_unit(std::stod(row.text(column)), unit);
        };
        found[row.text("figure")] = {si("low"), si("likely"), si("high")};
    }
    return found;
}

void compare(const Structure& s) {
    const auto ranges = estimate::ranges(estimate::estimate(s, demo_plan()), {});
    for (const auto& [figure, band] : bands()) {
        for (const auto& range : ranges) {
            if (range.key != figure) {
                continue;
            }
            INFO(figure << ": " << range.low << " - " << range.value << " - " << range.high
                        << " against " << band.low << " - " << band.likely << " - " << band.high);
            CHECK(range.value >= band.low);
            CHECK(range.value <= band.high);
            CHECK(range.low <= 2.0 * band.likely); // the ranges meet
            CHECK(range.high >= 0.5 * band.likely);
        }
    }
}

} // namespace

TEST_CASE("the yardstick overpass lies within the bands of common practice, counted or not") {
    REQUIRE(bands().size() == 4);
    compare(counted_overpass());
    compare(overpass());
}
