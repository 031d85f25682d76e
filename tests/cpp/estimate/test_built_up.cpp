#include "catch.hpp"
#include "estimate/structures.hpp"

#include <algorithm>

using namespace scupper;
using namespace made_up;

namespace {

Job built_up_job() {
    Job job = json::with_input(json::demo_job(), "labour[wash_crew].wage",
                               R"({"built_up": {"cash": "26 USD/h", "fringe": "12 USD/h",
        "medicare": "7.65 %", "insurance": "8 %", "worked_hours": "1,776 h",
        "year_hours": "2,080 h"}, "source": "invented"})");
    job = json::with_input(job, "equipment[water_truck].rate",
                           R"({"built_up": {"price": "180,000 USD", "salvage": "30,000 USD",
        "life": "10 years", "year_hours": "1,200 h", "interest": "4 %", "repair": "60 %"}})");
    job.sharing = Sharing::own_shifts;
    return job;
}

/// A shift too short for the work, and overtime rather than another shift.
Job with_overtime(const Job& job) {
    return json::with_input(json::with_input(job, "shift.length", "\"5 h\""),
                            "shift.overtime_limit", "\"11 h\"");
}

} // namespace

TEST_CASE("a built-up rate explains itself down to its parts, to the bit") {
    const auto e = estimate::estimate(overpass(), estimate::make_plan(built_up_job()));
    const Derivation d = estimate::explain(e, "cost.total");
    const std::string text = d.text(estimate::Show(e.plan->job).writer());
    for (const char* part : {"pay in cash", "fringe benefits", "paid hours for every hour worked",
                             "price when bought", "ownership"}) {
        INFO(part);
        CHECK(text.find(part) != std::string::npos);
    }
    CHECK(d.steps.front().value == e.figure("cost.total"));
}

TEST_CASE("what is built up prices as the same number would") {
    const auto plan = estimate::make_plan(built_up_job());
    Job plain = built_up_job();
    for (const char* key : {"labour[wash_crew].wage", "equipment[water_truck].rate"}) {
        const double rate = plan->base_values[plan->inputs.at(key, "test")];
        put_setting(plain.settings, make_setting(key, certain(rate, Basis::given), {}));
    }
    const auto built = estimate::estimate(creek_bridge(), plan);
    const auto given = estimate::estimate(creek_bridge(), estimate::make_plan(plain));
    CHECK(built.figure("cost.equipment") == given.figure("cost.equipment"));
    CHECK(built.figure("cost.total") <= given.figure("cost.total"));
}

TEST_CASE("overtime raises pay, not fringe benefits") {
    Job job = with_overtime(built_up_job());
    job.service = {{"deck_top", "full_clean"}, {"gutter", "full_clean"}, {"joint", "full_clean"}};
    const auto plan = estimate::make_plan(job);
    const auto e = estimate::estimate(overpass(), plan);
    const auto cost_of = [&](double share) {
        return estimate::estimate(
                   overpass(), estimate::make_plan(json::with_input(
                                   job, "labour[wash_crew].overtime_share", std::to_string(share))))
            .figure("cost.labour");
    };
    const double none = cost_of(0.0);
    const double whole = cost_of(1.0);
    REQUIRE(whole > none);
    CHECK(e.figure("cost.labour") > none);
    CHECK(e.figure("cost.labour") < whole);
}

TEST_CASE("a workbook holds the parts of a built-up rate as inputs") {
    const auto e = estimate::estimate(overpass(), estimate::make_plan(built_up_job()));
    const auto book = estimate::workbook(e, estimate::workbook_figures(e));
    const auto cells = [&](const std::string& key) {
        return std::count_if(book.cells.begin(), book.cells.end(), [&](const SheetCell& c) {
            return c.kind == CellKind::input && c.key == key;
        });
    };
    CHECK(cells("labour[wash_crew].wage.cash") == 1);
    CHECK(cells("equipment[water_truck].rate.price") == 1);
    CHECK(cells("labour[wash_crew].wage") == 0);
}

TEST_CASE("a wage of one structure brings its own overtime share") {
    Job job = json::with_override(json::demo_job(), overpass().id, "labour[wash_crew].wage",
                                  R"({"built_up": {"cash": "26 USD/h", "fringe": "12 USD/h"}})");
    const auto plan = estimate::make_plan(job);
    const auto e = estimate::estimate(overpass(), plan);
    const std::size_t place = plan->inputs.at("labour[wash_crew].overtime_share", "test");
    CHECK(e.resolved.values[place] == Approx(26.0 / 38.0));
    CHECK(estimate::estimate(creek_bridge(), plan).resolved.values[place] == 1.0);
}

TEST_CASE("a part with a range gives the rate one, which is drawn and explained to the bit") {
    const char* wage = R"({"built_up": {"cash": ["20 USD/h", "26 USD/h", "40 USD/h"],
        "fringe": {"low": "10 USD/h", "likely": "12 USD/h", "high": "13 USD/h"}},
        "source": "invented"})";
    const Job job = json::with_input(json::demo_job(), "labour[wash_crew].wage", wage);
    const auto e = estimate::estimate(overpass(), estimate::make_plan(job));
    const std::size_t place = e.plan->inputs.at("labour[wash_crew].wage", "test");
    const Uncertain& value = e.plan->base[place];
    CHECK(value.guess.likely == Approx(38.0 / factor::hour));
    CHECK(value.guess.low < value.guess.likely);
    CHECK(value.guess.high > value.guess.likely);
    CHECK(estimate::explain(e, "cost.total").steps.front().value == e.figure("cost.total"));
    const auto guesses = estimate::assumptions(e);
    CHECK(std::any_of(guesses.begin(), guesses.end(), [](const estimate::Assumption& a) {
        return a.key == "labour[wash_crew].wage" && a.worth > 0.0;
    }));
    const Job again = json::read_job(json::write_job(job), "test", RateBook{});
    CHECK(json::write_job(again) == json::write_job(job));
}
