#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

#include <string>

using namespace scupper;

namespace test_rate_book {

namespace {

const char* const agency = R"({
  "scupper_rates": 1, "name": "agency", "version": "2", "date": "2027-01", "currency": "USD",
  "source": "invented",
  "inputs": {
    "labour[wash_crew].wage": {"built_up": {"cash": "26 USD/h", "fringe": "12 USD/h",
        "social_security": "6.2 %", "social_security_cap": "168,600 USD", "insurance": "8 %"}},
    "labour[diver].wage": "90 USD/h",
    "equipment[water_truck].rate": {"built_up": {"ownership": "average_investment",
        "price": "180,000 USD", "salvage": "30,000 USD", "life": "10 years",
        "year_hours": "1,200 h", "interest": "4 %", "power": "250 hp",
        "fuel_use": "0.04 gal/hp/h", "load": "40 %", "fuel_price": "4 USD/gal"}},
    "operation[deck_hand_line].time_per_unit": ["4,000 ft2/h", "8,000 ft2/h", "16,000 ft2/h"]
  }})";

RateBook read(const std::string& text) {
    return json::read_rate_book(text, "agency.json", json::shipped_rates());
}

std::string with(const std::string& input) {
    return R"({"scupper_rates": 1, "inputs": {)" + input + "}}";
}

template <class E>
E refused(const std::string& input) {
    try {
        read(with(input));
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", "", "was accepted", "an error"});
}

const Setting& setting(const std::vector<Setting>& settings, const std::string& key) {
    for (const Setting& s : settings) {
        if (s.key == key) {
            return s;
        }
    }
    throw InputError({"test.setting", key, "no such setting", ""});
}

} // namespace

TEST_CASE("a book of an agency gives values for what the book beneath it has") {
    const RateBook book = read(agency);
    CHECK(book.version == "2");
    CHECK(book.settings.size() == 4);
    CHECK(book.operations.empty());
    const Setting& wage = setting(book.settings, "labour[wash_crew].wage");
    CHECK(wage.origin->parts.size() == 5);
    // by hand: 26 (1 + 0.062 + 0.08) + 12; the year's pay is below the cap
    CHECK(wage.value.guess.likely * 3600.0 == Approx(26.0 * 1.142 + 12.0));
    CHECK(is_certain(wage.value));
}

TEST_CASE("a rate book that is written reads back the same") {
    for (const char* units : {"us", "metric", "si"}) {
        const RateBook book = read(agency);
        const RateBook again = read(json::write_rate_book(book, json::shipped_rates(), units));
        CHECK(title_of(again) == title_of(book));
        REQUIRE(again.settings.size() == book.settings.size());
        for (const Setting& s : book.settings) {
            INFO(s.key);
            const Setting& other = setting(again.settings, s.key);
            CHECK(other.value.guess.likely == Approx(s.value.guess.likely).epsilon(1e-14));
            CHECK(other.value.guess.low == Approx(s.value.guess.low).epsilon(1e-14));
            CHECK(other.origin->parts.size() == s.origin->parts.size());
        }
    }
    const RateBook shipped = read(json::write_rate_book(json::shipped_rates(), {}, "us"));
    CHECK(shipped.settings.size() == json::shipped_rates().settings.size());
    CHECK(shipped.operations.size() == json::shipped_rates().operations.size());
}

TEST_CASE("a job lays a book of its own over the one beneath, and says on which it rests") {
    const std::string text = std::string(R"({"scupper_job": 1, "service": {"deck_top": "rinse"},
        "labour": [{"name": "wash_crew"}], "rates": )") +
                             agency + "}";
    const Job job = json::read_job(text, "job.json", json::shipped_rates());
    CHECK(job.rate_books ==
          std::vector<std::string>{title_of(json::shipped_rates()), "agency, version 2, 2027-01"});
    CHECK(setting(job.settings, "labour[wash_crew].wage").origin->parts.size() == 5);
    for (const Setting& s : job.settings) {
        CHECK(s.key != "labour[diver].wage"); // the job has no diver
    }
    const Job again = json::read_job(json::write_job(job), "job", RateBook{});
    CHECK(again.rate_books == job.rate_books);
    CHECK(again.settings.size() == job.settings.size());
    const auto& wage = setting(again.settings, "labour[wash_crew].wage");
    CHECK(wage.value.guess.likely ==
          setting(job.settings, "labour[wash_crew].wage").value.guess.likely);
}

TEST_CASE("a plain number takes the place of a built-up rate") {
    Job job = json::with_input(json::demo_job(), "labour[wash_crew].wage",
                               R"({"built_up": {"cash": "26 USD/h", "fringe": "12 USD/h"}})");
    const auto share = [](const Job& j) {
        const auto plan = estimate::make_plan(j);
        return plan->base_values[plan->inputs.at("labour[wash_crew].overtime_share", "test")];
    };
    CHECK(share(json::demo_job()) == 1.0);
    CHECK(share(job) == Approx(26.0 / 38.0));
    job = json::with_input(job, "labour[wash_crew].wage", "\"46 USD/h\"");
    CHECK(share(job) == 1.0);
    job = json::with_input(job, "labour[wash_crew].overtime_share", "0.8");
    CHECK(share(job) == 0.8);
}

TEST_CASE("what cannot be built up is refused where it stands") {
    const auto wage = [](const std::string& parts) {
        return R"("labour[x].wage": {"built_up": {)" + parts + "}}";
    };
    CHECK(refused<UnknownNameError>(wage(R"("csh": "26 USD/h")")).allowed() == "\"cash\"?");
    CHECK(refused<InputError>(wage(R"("fringe": "6 USD/h")")).id() == "cost.missing");
    CHECK(refused<UnitError>(wage(R"("cash": "26 ft")")).path().find("built_up.cash") !=
          std::string::npos);
    CHECK(refused<InputError>(wage(R"("cash": 26)")).path().find("cash") != std::string::npos);
    CHECK(refused<InputError>(R"("price.water": {"built_up": {"cash": "26 USD/h"}})").id() ==
          "json.built_up");
    CHECK(refused<InputError>(R"("equipment[x].rate": {"built_up": [1]})").id() == "json.type");
    CHECK(refused<UnknownNameError>(R"("equipment[x].rate": {"built_up": {"ownership": "rent"}})")
              .found() == "\"rent\"");
    CHECK(refused<UnknownNameError>(R"("operation[no_such].time_per_unit": "1 h")").id() ==
          "schema.key");
}

} // namespace test_rate_book
