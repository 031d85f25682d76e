#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <cmath>
#include <limits>
#include <string>

using namespace scupper;

namespace {

Structure sample() {
    Structure s;
    s.state = "99";
    s.id = "A";
    s.dimensions.length = Length<>(40.0);
    s.dimensions.longest_span = Length<>(20.0);
    s.dimensions.deck_width = Length<>(11.3);
    s.dimensions.roadway_width = Length<>(10.4);
    s.codes.material = Material::steel;
    s.codes.design = Design::multi_beam;
    s.codes.main_spans = 2;
    s.codes.lanes_on = 2;
    s.codes.service_under = 5;
    return s;
}

estimate::Estimate priced(const Job& job) {
    return estimate::estimate(sample(), estimate::make_plan(job));
}

} // namespace

TEST_CASE("an estimate that was saved is priced again to the same figures") {
    const Job job = json::with_override(json::demo_job(), "A", "drains", "4");
    const estimate::Estimate e = priced(job);
    const std::string text = json::write_estimate(e, job, {{"version", "1"}});
    const json::SavedEstimate saved = json::read_estimate(text, "e.json");
    CHECK(saved.stamp.at("version") == "1");
    const auto again = estimate::estimate(saved.structure, estimate::make_plan(saved.job));
    REQUIRE(saved.figures.size() == e.figures.size());
    CHECK(again.figure("cost.total") == e.figure("cost.total"));
    CHECK(estimate::changed_figures(estimate::named_figures(again), saved.figures, 0.0).empty());
    CHECK(estimate::changed_inputs(again, e).empty());
    CHECK(json::write_estimate(again, saved.job, saved.stamp) == text);
}

TEST_CASE("a saved figure that is another now is found") {
    const estimate::Estimate e = priced(json::demo_job());
    json::SavedEstimate saved =
        json::read_estimate(json::write_estimate(e, json::demo_job(), {}), "e.json");
    for (estimate::NamedFigure& f : saved.figures) {
        f.value *= f.key == "cost.total" ? 1.0 + 1e-8 : 1.0 + 1e-10;
    }
    const auto moved = estimate::changed_figures(estimate::named_figures(e), saved.figures, 1e-9);
    REQUIRE(moved.size() == 1);
    CHECK(moved[0].key == "cost.total");
    CHECK(moved[0].label == "total cost");
    CHECK(moved[0].here == e.figure("cost.total"));
    CHECK(moved[0].there > moved[0].here);
}

TEST_CASE("figures that only one list has are changed, two that are no numbers agree") {
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double infinity = std::numeric_limits<double>::infinity();
    const std::vector<estimate::NamedFigure> here{
        {"a", "a", dim::none, 1.0}, {"b", "b", dim::none, nan}, {"c", "c", dim::none, 2.0}};
    const std::vector<estimate::NamedFigure> there{{"b", "b", dim::none, infinity},
                                                   {"c", "c", dim::none, nan},
                                                   {"d", "d", dim::none, 3.0},
                                                   {"e", "e", dim::none, nan}};
    const auto changed = estimate::changed_figures(here, there, 1.0);
    REQUIRE(changed.size() == 3);
    CHECK(changed[0].key == "a");
    CHECK(std::isnan(changed[0].there));
    CHECK(changed[1].key == "c");
    CHECK(changed[2].key == "d");
    CHECK(std::isnan(changed[2].here));
    CHECK(changed[2].there == 3.0);
}

TEST_CASE("changed inputs are those of the change, with their sources") {
    const Job wider =
        json::with_input(json::demo_job(), "nozzle.bore", R"(["3/8 in", "1/2 in", "3/4 in"])");
    const estimate::Estimate here = priced(json::demo_job());
    const estimate::Estimate there = priced(wider);
    const auto changed = estimate::changed_inputs(here, there);
    REQUIRE(changed.size() == 1);
    CHECK(changed[0].key == "nozzle[hand_line].bore");
    CHECK(changed[0].there.guess.high == Approx(0.75 * 0.0254));
    CHECK(changed[0].here.origin->source == "invented for the demo");
}

TEST_CASE("documents that are no saved estimate are refused") {
    CHECK_THROWS_AS(json::read_estimate("{", "e.json"), FileError);
    CHECK_THROWS_AS(json::read_estimate(R"({"scupper_job": 1})", "e.json"), UnknownNameError);
    try {
        json::read_estimate(R"({"scupper_estimate": 1, "stamp": {}})", "e.json");
        FAIL("a document without record and job was accepted");
    } catch (const InputError& e) {
        CHECK(e.id() == "json.missing");
        CHECK(e.path() == "e.json.structure");
    }
    std::string text = json::write_estimate(priced(json::demo_job()), json::demo_job(), {});
    text.replace(text.find("\"scupper_estimate\": 1"), 21, "\"scupper_estimate\": 2");
    CHECK_THROWS_AS(json::read_estimate(text, "e.json"), InputError);
}
