#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <string>

using namespace scupper;

namespace test_documents {

namespace {

const Setting& setting(const Job& job, const std::string& key) {
    for (const Setting& s : job.settings) {
        if (s.key == key) {
            return s;
        }
    }
    throw InputError({"test.key", key, "no such setting", ""});
}

std::string small_job(const std::string& inputs) {
    return R"({"scupper_job": 1, "service": {"deck_top": "rinse"}, "methods": [{"name": "hand_line", "hose": ["supply"]}],
               "inputs": {)" +
           inputs + "}}";
}

Job read(const std::string& inputs) {
    return json::read_job(small_job(inputs), "job.json", json::shipped_rates());
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_job(text, "job.json", json::shipped_rates());
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

} // namespace

TEST_CASE("a production rate is held as time per unit, low and high change places") {
    const Job job = read(R"("operation[deck_hand_line].time_per_unit":
                            ["5,000 ft2/h", "10,000 ft2/h", "20,000 ft2/h"])");
    const ThreePoint& time = setting(job, "operation[deck_hand_line].time_per_unit").value.guess;
    constexpr double square_foot = 0.3048 * 0.3048;
    CHECK(time.low == Approx(3600.0 / (20000.0 * square_foot)));
    CHECK(time.likely == Approx(3600.0 / (10000.0 * square_foot)));
    CHECK(time.high == Approx(3600.0 / (5000.0 * square_foot)));
    const Job same = read(R"("operation[deck_hand_line].time_per_unit": "0.36 s/ft2")");
    CHECK(setting(same, "operation[deck_hand_line].time_per_unit").value.guess.likely ==
          Approx(time.likely));
}

TEST_CASE("values keep low, likely, high, source, share and basis") {
    const Job job =
        read(R"("nozzle[hand_line].bore": {"low": "3/8 in", "likely": "1/2 in", "high": "5/8 in",
        "source": "yard list", "date": "2026-03-01", "shared_share": 0.25, "basis": "measured"})");
    const Setting& bore = setting(job, "nozzle[hand_line].bore");
    CHECK(bore.value.guess.low == Approx(0.375 * 0.0254));
    CHECK(bore.value.guess.high == Approx(0.625 * 0.0254));
    CHECK(bore.value.shared_share == 0.25);
    CHECK(bore.value.basis == Basis::measured);
    CHECK(bore.value.origin->source == "yard list");
    CHECK(bore.value.origin->date == "2026-03-01");
}

TEST_CASE("a job's own value takes the place of the rate book's, the rest stays") {
    const Job job = read(R"("dirt[gutter].depth": "1 in")");
    CHECK(setting(job, "dirt[gutter].depth").value.guess.likely == Approx(0.0254));
    CHECK(setting(job, "dirt[gutter].depth").origin->source == "job.json");
    CHECK(setting(job, "dirt[gutter].width").origin->source == "common practice");
}

TEST_CASE("wrong units, keys and words are refused, naming field and remedy") {
    const auto unit = refused<UnitError>(small_job(R"("nozzle[hand_line].bore": "100 psi")"));
    CHECK(unit.path() == "job.json:2 inputs.nozzle[hand_line].bore");
    CHECK(unit.id() == "unit.dimension");
    const auto bare = refused<UnitError>(small_job(R"("nozzle[hand_line].bore": 0.5)"));
    CHECK(bare.id() == "unit.missing");
    const auto key = refused<UnknownNameError>(small_job(R"("nozzle[hand_line].boar": "1 in")"));
    CHECK(key.allowed() == "\"nozzle[hand_line].bore\"?");
    const auto top = refused<UnknownNameError>(R"({"scupper_job": 1, "servise": {}})");
    CHECK(top.allowed() == "\"service\"?");
    const auto component =
        refused<UnknownNameError>(R"({"scupper_job": 1, "service": {"deck_topp": "rinse"}})");
    CHECK(component.allowed() == "\"deck_top\"?");
    CHECK(refused<UnitError>(small_job(R"("price.water": "8 EUR/m3")")).id() == "json.currency");
    CHECK(refused<InputError>(small_job(R"("nozzle[hand_line].bore": ["1 in", "2 in"])")).id() ==
          "json.type");
    CHECK(refused<InputError>(small_job(R"("nozzle[hand_line].bore": ["2 in", "1 in", "3 in"])"))
              .id() == "json.order");
    CHECK(refused<InputError>(R"({"scupper_job": 1, "labour": 3})").path() == "job.json.labour");
    CHECK(refused<InputError>(R"({"scupper_job": 1, "overrides": "x"})").id() == "json.type");
    CHECK(refused<InputError>(R"({"scupper_job": 2})").id() == "json.version");
    CHECK(refused<FileError>("{").id() == "json.text");
    CHECK(refused<FileError>(R"({"scupper_job": 1e999})").id() == "json.text"); // too great
}

TEST_CASE("a job written and read back is the same job") {
    const Job& job = json::demo_job();
    const std::string once = json::write_job(job);
    const Job again = json::read_job(once, "again.json", RateBook{});
    CHECK(json::write_job(again) == once);
    REQUIRE(again.settings.size() == job.settings.size());
    for (const Setting& s : job.settings) {
        const Uncertain& v = setting(again, s.key).value;
        INFO(s.key);
        CHECK(v.guess.low == s.value.guess.low);
        CHECK(v.guess.likely == s.value.guess.likely);
        CHECK(v.guess.high == s.value.guess.high);
        CHECK(v.shared_share == s.value.shared_share);
        CHECK(setting(again, s.key).origin->source == s.origin->source);
    }
}

TEST_CASE(
    "values with weights and samples are read, priced at their mean, and come back the same") {
    const std::string text = small_job(R"(
        "shift.travel_time": {"values": ["1 h", "2 h"], "weights": [3, 1], "shared_share": 0.2},
        "operation[deck_hand_line].time_per_unit":
            {"sample": ["8,000 ft2/h", "10,000 ft2/h", "16,000 ft2/h"], "source": "three decks"})");
    const Job job = json::read_job(text, "job.json", json::shipped_rates());
    const Setting& travel = setting(job, "shift.travel_time");
    CHECK(travel.value.guess.family == Family::discrete);
    CHECK(estimate::price_value(travel.value, PriceAt::mean) == 4500.0);
    CHECK(estimate::price_value(travel.value, PriceAt::likely) == 3600.0);
    CHECK(travel.value.shared_share == 0.2);
    const Setting& rate = setting(job, "operation[deck_hand_line].time_per_unit");
    constexpr double hour_square_foot = 3600.0 / (0.3048 * 0.3048);
    CHECK(rate.value.guess.low == Approx(hour_square_foot / 16000.0));
    CHECK(rate.value.guess.likely == Approx(hour_square_foot / 10000.0));
    CHECK(rate.value.guess.high == Approx(hour_square_foot / 8000.0));
    CHECK(rate.origin->source == "three decks");
    for (const std::string& again : {json::write_job(job), json::job_form(job)}) {
        const Job back = json::read_job(again, "again.json", json::shipped_rates());
        const Listed* values = setting(back, "shift.travel_time").value.guess.listed;
        REQUIRE(values != nullptr);
        CHECK(values->values() == std::vector<double>{3600.0, 7200.0});
        CHECK(values->weights() == std::vector<double>{3.0, 1.0});
        const Listed* sample =
            setting(back, "operation[deck_hand_line].time_per_unit").value.guess.listed;
        REQUIRE(sample != nullptr);
        CHECK(sample->family() == Family::empirical);
        CHECK(sample->mean() == Approx(rate.value.guess.mean()).epsilon(1e-14));
    }
}

TEST_CASE("listed values that say too much or too little are refused with their line") {
    const auto fault = [](const std::string& value) {
        return refused<InputError>(small_job("\"shift.travel_time\": " + value));
    };
    CHECK(fault(R"({"values": ["1 h"]})").path() == "job.json:2 inputs.shift.travel_time");
    CHECK(fault(R"({"values": ["1 h"], "weights": [1, 2]})").id() == "random.count");
    CHECK(fault(R"({"values": ["1 h", "2 h"], "weights": [1, -2]})").id() == "random.weights");
    CHECK(fault(R"({"values": ["1 h"], "weights": ["1"]})").id() == "json.type");
    CHECK(fault(R"({"sample": []})").id() == "random.count");
    CHECK(fault(R"({"sample": "1 h"})").id() == "json.type");
    CHECK(fault(R"({"sample": ["1 h"], "low": "1 h"})").id() == "json.key");
    CHECK(fault(R"({"sample": ["1 h"], "family": "pert"})").id() == "json.key");
    CHECK(fault(R"({"sample": ["1 psi"]})").id() == "unit.dimension");
    const Job far = read(R"("shift.travel_time": {"sample": ["1 h", "40 h"]})");
    CHECK_THROWS_AS(estimate::make_plan(far), InputError); // no day has forty hours
}

TEST_CASE("correlations are read, written and refused where they are") {
    const std::string before = R"({"scupper_job": 1, "service": {"deck_top": "rinse"},
        "correlations": )";
    const Job job = json::read_job(before + R"([{"inputs": ["shift.travel_time",
        "price.water"], "rank": 0.6}]})",
                                   "job.json", json::shipped_rates());
    REQUIRE(job.correlations.size() == 1);
    CHECK(job.correlations[0].rank == 0.6);
    const std::string once = json::write_job(job);
    CHECK(json::write_job(json::read_job(once, "again.json", json::shipped_rates())) == once);
    CHECK(refused<InputError>(before + "3}").id() == "json.type");
    CHECK(refused<InputError>(before + R"([{"inputs": ["a", "b"], "rank": "high"}]})").path() ==
          "job.json:2 correlations[0].rank");
    CHECK(
        refused<UnknownNameError>(before + R"([{"input": ["a", "b"], "rank": 0.5}]})").allowed() ==
        "\"inputs\"?");
}

TEST_CASE("haul trucks and wash water are read, written, and refused by the nearest word") {
    const std::string text = R"({"scupper_job": 1, "service": {"gutter": "rinse", "drain": "rinse"},
        "hauls": [{"name": "sweeper", "components": ["gutter"]},
                  {"name": "jet_vac", "dump": "after_shift", "note": "two people"}],
        "wash_water": "collect",
        "inputs": {"haul.distance": "12 mi", "haul[sweeper].distance": "1 mi"},
        "overrides": {"42": {"haul.distance": "20 mi"}}})";
    const Job job = json::read_job(text, "job.json", json::shipped_rates());
    REQUIRE(job.hauls.size() == 2);
    CHECK(job.hauls[0].components == std::vector<std::string>{"gutter"});
    CHECK(job.hauls[1].dump == DumpWhen::after_shift);
    CHECK(job.wash_water == WashWater::collect);
    // A key without a row, and the rate book's own, stand for every truck without a value of its own.
    const double mile = 1609.344;
    CHECK(setting(job, "haul[jet_vac].distance").value.guess.likely == Approx(12.0 * mile));
    CHECK(setting(job, "haul[sweeper].distance").value.guess.likely == Approx(1.0 * mile));
    CHECK(setting(job, "haul[sweeper].dump_time").value.guess.likely == Approx(1800.0));
    CHECK(job.overrides.at("42").size() == 2);
    const std::string once = json::write_job(job);
    CHECK(json::write_job(json::read_job(once, "again.json", json::shipped_rates())) == once);

    const auto dump = refused<UnknownNameError>(
        R"({"scupper_job": 1, "hauls": [{"name": "a", "dump": "after_shfit"}]})");
    CHECK(dump.path() == "job.json.hauls[0].dump");
    CHECK(dump.allowed().substr(0, 14) == "\"after_shift\"?");
    const auto water = refused<UnknownNameError>(R"({"scupper_job": 1, "wash_water": "colect"})");
    CHECK(water.path() == "job.json.wash_water");
    CHECK(water.allowed().substr(0, 10) == "\"collect\"?");
    CHECK(refused<UnknownNameError>(R"({"scupper_job": 1, "hauls": [{"nme": "a"}]})").id() ==
          "json.key");
    CHECK(refused<InputError>(R"({"scupper_job": 1, "hauls": "a"})").id() == "json.type");
}

TEST_CASE("an operation belongs to one way or to several") {
    const Job job = json::demo_job();
    const auto ways = [&](const std::string& name) {
        for (const Operation& op : job.operations) {
            if (op.name == name) {
                return op.ways;
            }
        }
        return std::vector<std::string>{};
    };
    CHECK(ways("flush_pass") == std::vector<std::string>{"flusher"});
    CHECK(ways("windrow_pick_up") == std::vector<std::string>{"hand_line", "flusher"});
    CHECK(ways("walk_through").empty());
}

TEST_CASE("single values change for all structures or for one") {
    const Job& job = json::demo_job();
    const Job changed = json::with_input(job, "nozzle[hand_line].bore", R"("7/8 in")");
    CHECK(setting(changed, "nozzle[hand_line].bore").value.guess.likely == Approx(0.875 * 0.0254));
    CHECK(setting(job, "nozzle[hand_line].bore").value.guess.likely == Approx(0.5 * 0.0254));
    const Job counted = json::with_override(job, "0042", "drains", "0");
    REQUIRE(counted.overrides.count("0042") == 1);
    CHECK(counted.overrides.at("0042").front().key == "quantity[drain_count].given");
    CHECK(counted.overrides.at("0042").front().value.basis == Basis::measured);
    CHECK_THROWS_AS(json::with_input(job, "nozzle[hand_line].bohr", R"("1 in")"), UnknownNameError);
}

TEST_CASE("every shipped value says where it comes from") {
    for (const Setting& s : json::demo_job().settings) {
        INFO(s.key);
        REQUIRE(s.origin != nullptr);
        CHECK(
            (s.origin->source == "common practice" || s.origin->source == "invented for the demo"));
    }
}

TEST_CASE("a hose of the library gives a segment bore and roughness, and comes back the same") {
    const std::string start = R"({"scupper_job": 1, "service": {"deck_top": "rinse"},
        "methods": [{"name": "hand_line", "hose": ["supply"]}], "hoses": {"supply": ")";
    const auto with = [&](const std::string& hose) {
        return json::read_job(start + hose + "\"}}", "job.json", json::shipped_rates());
    };
    const Job job = with("rubber_lined_1_1_2in");
    const Setting& bore = setting(job, "hose[supply].bore");
    CHECK(bore.value.guess.low == Approx(1.5 * 0.0254));
    CHECK(bore.value.guess.high > bore.value.guess.likely);
    CHECK(
        bore.origin->source ==
        hose_of(json::shipped_hose_library(), "rubber_lined_1_1_2in", "here").bore.origin->source);
    CHECK(setting(job, "hose[supply].roughness").origin->source == "common practice");
    const std::string written = json::write_job(job);
    CHECK(json::write_job(json::read_job(written, "again", RateBook{})) == written);
    try {
        with("rubber_lined_1_1_4");
        FAIL("was accepted");
    } catch (const UnknownNameError& e) {
        CHECK(e.path() == "job.hoses.supply");
        CHECK(e.allowed() == "\"rubber_lined_1_1_4in\"?");
    }
    CHECK(refused<InputError>(R"({"scupper_job": 1, "hoses": ["supply"]})").id() == "json.type");
    CHECK(refused<InputError>(R"({"scupper_job": 1, "hoses": {"supply": 3}})").id() == "json.type");
}

TEST_CASE("a fault in a document of several lines says on which it stands") {
    const auto path = [](const char* text) {
        try {
            json::read_job(text, "job.json", json::shipped_rates());
        } catch (const InputError& e) {
            return e.path();
        }
        return std::string{};
    };
    CHECK(path("{\"scupper_job\": 1,\n\"inputs\": {\n\n\"tank.volume\":\n\"3 ft\"}}") ==
          "job.json:4 inputs.tank.volume");
    CHECK(path("{\"scupper_job\": 1,\n\"servise\":\n{}}") == "job.json:2");
    CHECK(path("{\"scupper_job\": 1,\n\"operations\": [\n{\"name\": 3}]}")
              .rfind("job.json:3 operations[0]", 0) == 0);
    CHECK(path("{\"scupper_job\": 1,\n\"overrides\": {\n\"B1\": {\n\"drains\": \"2 ft\"}}}") ==
          "job.json:4 overrides.B1.drains");
    CHECK(path("{\n\"scupper_job\": 2}") == "job.json:2 scupper_job");
    CHECK(path("{\n\"name\": \"x\"}") == "job.json.scupper_job"); // what is not there has no line
    CHECK(path("{\"scupper_job\": 1, \"labour\": 3}") == "job.json.labour"); // one line
}

TEST_CASE("a fault in a rate book says on which line it stands") {
    try {
        json::read_rate_book("{\"scupper_rates\": 1,\n\"inputs\": {\n\"price.water\": \"3 ft\"}}",
                             "book.json");
        FAIL("it was read");
    } catch (const UnitError& e) {
        CHECK(e.path() == "book.json:3 inputs.price.water");
    }
}

} // namespace test_documents
