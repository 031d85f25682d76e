#include "catch.hpp"
#include "estimate/structures.hpp"

#include <cmath>

using namespace scupper;
using namespace made_up;

TEST_CASE("unit costs add up to the total and are money for a unit") {
    Job job = json::demo_job();
    job.service = {{"deck_top", "full_clean"}, {"gutter", "full_clean"}, {"joint", "full_clean"},
                   {"drain", "full_clean"},    {"girder", "full_clean"}, {"bearing", "full_clean"}};
    for (const char* margin : {"overhead", "profit"}) {
        job = json::with_input(job, std::string("margin.") + margin, "0.1");
    }
    const auto plan = estimate::make_plan(job);
    for (const Structure& s : {overpass(), counted_overpass(), creek_bridge()}) {
        const auto e = estimate::estimate(s, plan);
        const auto rows = estimate::unit_costs(e);
        double sum = 0.0;
        for (const auto& row : rows) {
            INFO(row.component);
            CHECK(row.total == Approx(row.direct + row.distributed + row.margins));
            CHECK((row.quantity > 0.0 ? row.per_unit * row.quantity == Approx(row.total)
                                      : std::isnan(row.per_unit)));
            sum += row.component == "structure" ? 0.0 : row.total;
        }
        REQUIRE(rows.back().component == "structure");
        CHECK(rows.back().total == Approx(e.figure("cost.total")).epsilon(1e-9));
        CHECK(sum == Approx(e.figure("cost.total")).epsilon(1e-9));
        CHECK(rows.back().direct + rows.back().distributed ==
              Approx(e.figure("cost.direct")).epsilon(1e-9));
        CHECK(rows.back().margins ==
              Approx(e.figure("cost.total") - e.figure("cost.direct")).epsilon(1e-9));
    }
}

TEST_CASE("girders washed whole are counted by their whole surface") {
    const auto slot_of = [](const std::string& level) {
        Job job = json::demo_job();
        job.service = {{"girder", level}};
        const auto e = estimate::estimate(overpass(), estimate::make_plan(job));
        for (const auto& row : estimate::unit_costs(e)) {
            if (row.component == "girder") {
                return slot_table[row.slot].key;
            }
        }
        return std::string_view{};
    };
    CHECK(slot_of("full_clean") == "girder_end_area");
    CHECK(slot_of("full_length") == "girder_area");
}
