#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <string>
#include <vector>

using namespace scupper;

namespace {

const Setting& setting(const std::vector<Setting>& settings, const std::string& key) {
    for (const Setting& s : settings) {
        if (s.key == key) {
            return s;
        }
    }
    throw InputError({"test.key", key, "no such setting", ""});
}

using Cells = std::vector<std::string>;

Job surveyed(const Cells& headers, const Cells& cells) {
    return json::with_survey(json::demo_job(), "s.csv:1", headers, {{"99:A", "s.csv:2", cells}});
}

const Setting& value(const Job& job, const std::string& key) {
    return setting(job.overrides.at("99:A"), key);
}

InputError refused(const Cells& headers, const Cells& cells) {
    try {
        surveyed(headers, cells);
    } catch (const InputError& e) {
        return e;
    }
    throw InputError({"test.accepted", "survey", "was accepted", "an error"});
}

} // namespace

TEST_CASE("a form is read as it is and means the same job") {
    for (const char* units : {"us", "metric", "si"}) {
        Job job = json::with_override(json::demo_job(), "0042", "column.height", R"("12 ft 6 in")");
        job.units = units;
        const Job again = json::read_job(json::job_form(job), "form.json", json::shipped_rates());
        for (const Setting& s : job.settings) {
            INFO(units << " " << s.key);
            const Setting& t = setting(again.settings, s.key);
            CHECK(t.value.guess.low == Approx(s.value.guess.low).epsilon(1e-14));
            CHECK(t.value.guess.likely == Approx(s.value.guess.likely).epsilon(1e-14));
            CHECK(t.value.guess.high == Approx(s.value.guess.high).epsilon(1e-14));
            CHECK(t.value.guess.family == s.value.guess.family);
            CHECK(t.value.guess.meaning == s.value.guess.meaning);
            if (!is_certain(s.value)) { // a value without spread has none to share
                CHECK(t.value.shared_share == s.value.shared_share);
            }
            CHECK(t.value.basis == s.value.basis);
            CHECK(t.origin->source == s.origin->source);
            CHECK(t.origin->note == s.origin->note);
        }
        CHECK(setting(again.overrides.at("0042"), "column.height").value.basis == Basis::measured);
    }
}

TEST_CASE("a form is written in the units of the trade, rates from the least") {
    const std::string form = json::job_form(json::demo_job());
    const std::size_t rate = form.find("operation[deck_hand_line].time_per_unit");
    REQUIRE(rate != std::string::npos);
    CHECK(form.find("\"low\": \"5,000 ft2/h\"", rate) <
          form.find("\"high\": \"20,000 ft2/h\"", rate));
    CHECK(form.find("\"low\": \"41 degF\"") != std::string::npos);
    CHECK(form.find("\"likely\": \"0.5 in\"") != std::string::npos);
    CHECK(form.find("dirt[gutter].width") < form.find("pump[hand_line].pressure"));
    CHECK(form.find("pump[hand_line].pressure") < form.find("labour[wash_crew].wage"));
}

TEST_CASE("a distribution that is not the usual one stays") {
    const Job job = json::with_input(json::demo_job(), "tank.volume",
                                     R"({"low": "2,000 gal", "likely": "3,000 gal",
        "high": "4,000 gal", "family": "uniform", "meaning": "p10_p90", "basis": "measured"})");
    const Job again = json::read_job(json::job_form(job), "form.json", json::shipped_rates());
    const Uncertain& tank = setting(again.settings, "tank.volume").value;
    CHECK(tank.guess.family == Family::uniform);
    CHECK(tank.guess.meaning == Meaning::p10_p90);
    CHECK(tank.basis == Basis::measured);
}

TEST_CASE("a survey's cells are numbers in the header's unit or text with a unit") {
    const Cells headers{"drain_count", "column.height [ft]", "deck.length [m]", "berm.width [ft]"};
    const Job job = surveyed(headers, {"4", "12 1/2", "1,200 in", ""});
    CHECK(value(job, "quantity[drain_count].given").value.guess.likely == 4.0);
    CHECK(value(job, "column.height").value.guess.likely == Approx(12.5 * 0.3048));
    CHECK(value(job, "deck.length").value.guess.likely == Approx(1200.0 * 0.0254));
    CHECK(value(job, "column.height").value.basis == Basis::measured);
    CHECK(value(job, "column.height").origin->source == "s.csv:2");
    CHECK(job.overrides.at("99:A").size() == 3);
    const Job without_unit = surveyed({"column.height"}, {"3 m"});
    CHECK(value(without_unit, "column.height").value.guess.likely == 3.0);
}

TEST_CASE("the columns of a sheet are read back as they are") {
    for (const char* units : {"us", "metric", "si"}) {
        Job job = json::demo_job();
        job.units = units;
        Cells headers;
        for (const json::SurveyColumn& c : json::survey_columns(job)) {
            headers.push_back(c.header);
        }
        const Job same = json::with_survey(job, "s.csv:1", headers,
                                           {{"99:A", "s.csv:2", Cells(headers.size())}});
        CHECK(same.overrides.empty());
    }
}

TEST_CASE("what a survey cannot mean is refused, naming file, line and column") {
    const InputError word = refused({"column.height [ft]"}, {"tall"});
    CHECK(word.path() == "s.csv:2: column column.height [ft]");
    const InputError greatest = refused({"column.height [ft]"}, {"5000"});
    CHECK(greatest.id() == "survey.bounds");
    CHECK(greatest.found() == "\"5000\"");
    CHECK(greatest.allowed() == "0 ft to 984.3 ft");
    CHECK(refused({"drain_count"}, {"-1"}).id() == "survey.bounds");
    CHECK(refused({"drain_count"}, {"2.5"}).id() == "survey.count");
    CHECK(refused({"column.height [ft]"}, {"3 psi"}).id() == "unit.dimension");
    CHECK(refused({"column.height [psi]"}, {""}).path() == "s.csv:1: column column.height [psi]");
    CHECK(refused({"column.height"}, {"3"}).id() == "unit.missing");
    CHECK(refused({"column.hieght [ft]"}, {""}).allowed() == "\"column.height\"?");
    CHECK(refused({"drains", "drain_count"}, {"1", "1"}).id() == "survey.twice");
    CHECK(refused({"drain_count"}, {"1", "2"}).id() == "survey.cells");
    CHECK_THROWS_AS(json::with_survey(json::demo_job(), "s.csv:1", {"drain_count"},
                                      {{"A", "s.csv:2", {"1"}}, {"A", "s.csv:3", {"1"}}}),
                    InputError);
}

TEST_CASE("drains by condition make up all drains") {
    const Cells headers{"drain_count", "drain_free_count", "drain_clogged_count",
                        "drain_frozen_count"};
    CHECK(refused(headers, {"4", "2", "1", "2"}).id() == "survey.drains");
    CHECK(refused(headers, {"4", "1", "1", "1"}).id() == "survey.drains");
    CHECK(surveyed(headers, {"4", "2", "1", "1"}).overrides.at("99:A").size() == 4);
    CHECK(surveyed(headers, {"4", "", "1", ""}).overrides.at("99:A").size() == 2);
    CHECK(surveyed(headers, {"", "2", "1", "1"}).overrides.at("99:A").size() == 3);
}
