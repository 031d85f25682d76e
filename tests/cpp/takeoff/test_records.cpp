// From the record line alone: what was counted on site lies within the draws.

#include "records.hpp"

#include <algorithm>
#include <map>

using namespace records;
using reference::Row;

namespace {

struct Range {
    double low = 1e300;
    double high = -1e300;
};

using Ranges = std::array<Range, slot_table.size()>;

void widen(Ranges& ranges, const Quantities<double>& q) {
    for (Slot k = 0; k < slot_table.size(); ++k) {
        ranges[k].low = std::min(ranges[k].low, q[k]);
        ranges[k].high = std::max(ranges[k].high, q[k]);
    }
}

/// Draws, and the limits they approach but do not reach (no drain, a parapet on every edge).
Ranges drawn_ranges(const Structure& s) {
    const Inferred inferred = infer(s);
    Numbers numbers(1);
    Ranges out{};
    for (int n = 0; n < 1000; ++n) {
        widen(out, take_off(inferred.shape, drawn(inferred, numbers)));
    }
    widen(out, take_off(inferred.shape, pick(inferred, [](const ThreePoint& p) { return p.low; })));
    widen(out,
          take_off(inferred.shape, pick(inferred, [](const ThreePoint& p) { return p.high; })));
    return out;
}

} // namespace

TEST_CASE("what was counted lies within what the record alone allows") {
    std::map<std::string, Ranges> ranges;
    for (const Row& row : rows("counted")) {
        const std::string& name = row.text("locator");
        if (ranges.count(name) == 0) {
            ranges[name] = drawn_ranges(named_record(name));
        }
        INFO(row.text("id"));
        const Range& range = ranges[name][find_slot(row.text("quantity"))];
        const double counted = row.expected() * to_unit(row.text("unit"));
        // Records round to a tenth of a metre: 31 ft are told as 9.4 m.
        CHECK(counted * 1.006 >= range.low);
        CHECK(counted / 1.006 <= range.high);
    }
}

TEST_CASE("yardstick: caps and seats together, as counted") {
    const auto range = drawn_ranges(yardstick());
    const double counted = 416.0 * to_unit("ft2"); // common practice, not told apart
    CHECK(range[slot("cap_top_area")].low + range[slot("seat_area")].low < counted);
    CHECK(range[slot("cap_top_area")].high + range[slot("seat_area")].high > counted);
}

TEST_CASE("the likely values of the record lines") {
    const Quantities<double> y = likely_quantities(yardstick());
    CHECK(y[slot("girder_count")] == 5.0);
    CHECK(y[slot("bearing_count")] == 30.0);
    CHECK(y[slot("joint_count")] == 4.0);
    CHECK(y[slot("drain_count")] == Approx(4.0).margin(0.5));
    const Quantities<double> a = likely_quantities(creek());
    CHECK(a[slot("girder_count")] == 5.0);
    CHECK(a[slot("bearing_count")] == 10.0);
    CHECK(a[slot("joint_count")] == 2.0);
    CHECK(a[slot("drain_count")] < 1.0);
    CHECK(a[slot("cap_count")] == 0.0);
    const Inferred c = infer(river());
    CHECK(c.shape.units == 3);
    CHECK(c.dimensions[dimension("bearing.per_line")].guess.likely == 12.0);
    const ThreePoint drains = c.dimensions[dimension("drain.per_length")].guess;
    CHECK(drains.low == 0.0);
    CHECK(drains.likely * 548.6 == Approx(40.0).epsilon(0.01));
    CHECK(drains.high * 548.6 == Approx(120.0).epsilon(0.01));
}

TEST_CASE("deck area as the public inventory counts it") {
    const Structure s = pinal_creek();
    CHECK(likely_quantities(s)[slot("deck_total_area")] ==
          Approx(s.recorded_deck_area).margin(0.005));
    CHECK(likely_quantities(creek())[slot("deck_total_area")] == Approx(172.02).margin(0.005));
}
