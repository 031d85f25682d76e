#include "catch.hpp"
#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <map>
#include <string>

using namespace scupper;

namespace test_hose_library {

namespace {

std::string library_of(const std::string& hose, const std::string& fitting = {}) {
    return R"({"scupper_hoses": 1, "date": "2026-11", "hoses": [)" + hose + R"(], "fittings": [)" +
           fitting + "]}";
}

const std::string sound = R"({"name": "a", "construction": "jetting", "nominal_bore": "1 in",
    "bore": {"value": "1 in", "source": "x"}, "roughness": {"value": "0.01 mm", "source": "x"}})";

std::string changed(std::string text, const std::string& from, const std::string& to) {
    return text.replace(text.find(from), from.size(), to);
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_hose_library(text, "mine.json");
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

bool says_where_from(const Provenance& origin) {
    return !origin.source.empty() && !origin.date.empty();
}

} // namespace

TEST_CASE("every value of the shipped hoses has source, date and a sane range") {
    const HoseLibrary& library = json::shipped_hose_library();
    CHECK(library.hoses.size() == 34);
    CHECK(library.fittings.size() == 22);
    for (const HoseKind& hose : library.hoses) {
        INFO(hose.name);
        const std::string start = hose.construction + "_";
        CHECK(hose.name.rfind(start, 0) == 0);
        CHECK(says_where_from(*hose.bore.origin));
        CHECK(says_where_from(*hose.roughness.origin));
        CHECK(hose.bore.value.guess.low > 0.94 * hose.nominal_bore);
        CHECK(hose.bore.value.guess.high < 1.14 * hose.nominal_bore);
        CHECK(hose.coefficient.has_value() == !hose.published.empty());
        CHECK(hose.working_pressure.has_value() == (hose.construction != "suction"));
    }
    for (const FittingKind& fitting : library.fittings) {
        INFO(fitting.name);
        CHECK(says_where_from(*fitting.loss_coefficient.origin));
        CHECK(fitting.loss_coefficient.value.guess.low > 0.0);
    }
}

TEST_CASE("coefficients keep the whole spread of what was published") {
    for (const HoseKind& hose : json::shipped_hose_library().hoses) {
        if (!hose.coefficient) {
            continue;
        }
        INFO(hose.name);
        const auto [least, greatest] =
            std::minmax_element(hose.published.begin(), hose.published.end(),
                                [](const auto& a, const auto& b) { return a.value < b.value; });
        CHECK(hose.coefficient->value.guess.low == least->value);
        CHECK(hose.coefficient->value.guess.high == greatest->value);
        for (const PublishedCoefficient& p : hose.published) {
            CHECK(says_where_from(p.origin));
        }
    }
    const HoseKind& hose = hose_of(json::shipped_hose_library(), "rubber_lined_1_3_4in", "here");
    CHECK(hose.coefficient->value.guess.low == 7.0);
    CHECK(hose.coefficient->value.guess.high == 15.5);
}

TEST_CASE("printed coefficients are within the library's range") {
    int met = 0;
    for (const reference::Row& row : reference::rows("hydraulics/hose_coefficients")) {
        const double bore = row["hose_in"] * 0.0254;
        for (const HoseKind& hose : json::shipped_hose_library().hoses) {
            const bool same = reference::near(hose.nominal_bore, bore, 1e-9);
            if (same && hose.construction == "rubber_lined") {
                ++met;
                INFO(row.text("id"));
                CHECK(hose.coefficient->value.guess.low <= row.expected());
                CHECK(hose.coefficient->value.guess.high >= row.expected());
            }
        }
    }
    CHECK(met == 19); // all but the 4 1/2 in hose, which the library does not have
}

TEST_CASE("printed loss coefficients lie within the library's range") {
    const std::map<std::string, std::string> fitting_of_words{
        {"globe", "globe_valve"},       {"angle valve", "angle_valve"},
        {"swing check", "check_valve"}, {"elbow 90", "elbow_90"},
        {"elbow 45", "elbow_45"},       {"tee line", "tee_run"},
        {"tee branch", "tee_branch"},   {"180 return", "return_bend"},
        {"gate", "gate_valve"},         {"sudden entry", "inlet"},
        {"sudden exit", "outlet"}};
    int met = 0;
    for (const reference::Row& row : reference::rows("hydraulics/darcy_minor")) {
        for (const auto& [printed, name] : fitting_of_words) {
            const bool same = row.is("minor loss coefficient K") &&
                              row.text("inputs_json").find('"' + printed) != std::string::npos;
            if (same) {
                ++met;
                INFO(row.text("id"));
                const ThreePoint& k = fitting_of(json::shipped_hose_library(), name, "here")
                                          .loss_coefficient.value.guess;
                CHECK(k.low <= row.expected());
                CHECK(k.high >= row.expected());
            }
        }
    }
    CHECK(met == 17);
}

TEST_CASE("the loss by bore and roughness lies within the spread of the coefficients") {
    // Water at 20 degC, 100 gpm in 1 1/2 in, 200 gpm in 2 1/2 in hose.
    using namespace scupper::literals;
    const auto water = hydraulics::water(20.0_degC);
    for (const auto& [name, flow] :
         {std::pair{"rubber_lined_1_1_2in", 100.0_gpm}, {"rubber_lined_2_1_2in", 200.0_gpm}}) {
        const HoseKind& hose = hose_of(json::shipped_hose_library(), name, "here");
        const auto loss = [&](double bore, double roughness) {
            return hydraulics::friction_loss(flow, Length<>(bore), 100.0_ft, Length<>(roughness),
                                             water)
                .si();
        };
        const auto by_coefficient = [&](double c) {
            return hydraulics::hose_coefficient_loss(flow, 100.0_ft, c).si();
        };
        INFO(name);
        const double least = loss(hose.bore.value.guess.high, hose.roughness.value.guess.low);
        const double greatest = loss(hose.bore.value.guess.low, hose.roughness.value.guess.high);
        CHECK(least < by_coefficient(hose.coefficient->value.guess.high));
        CHECK(greatest > by_coefficient(hose.coefficient->value.guess.low));
    }
}

TEST_CASE("a hose library is written and read back the same") {
    const std::string written = json::write_hose_library(json::shipped_hose_library());
    const HoseLibrary again = json::read_hose_library(written, "again.json");
    CHECK(json::write_hose_library(again) == written);
    const HoseKind& hose = hose_of(again, "wire_braided_3_8in", "here");
    CHECK(hose.published.front().flow.value() ==
          json::shipped_hose_library().hoses.at(17).published.front().flow.value());
}

TEST_CASE("a wrong hose library is refused, naming place and remedy") {
    json::read_hose_library(library_of(sound), "mine.json"); // accepted as it is
    const auto key = refused<UnknownNameError>(library_of(changed(sound, "roughness", "roughnes")));
    CHECK(key.id() == "json.key");
    CHECK(key.path() == "mine.json.hoses[0]");
    CHECK(key.allowed() == "\"roughness\"?");
    const auto word =
        refused<UnknownNameError>(library_of(changed(sound, "\"jetting", "\"jeting")));
    CHECK(word.path() == "mine.json.hoses[0].construction");
    CHECK(word.allowed().rfind("\"jetting\"?", 0) == 0);
    const auto unit = refused<UnitError>(library_of(changed(sound, "\"0.01 mm\"", "\"0.01 psi\"")));
    CHECK(unit.path() == "mine.json.hoses[0].roughness");
    const auto bare = refused<UnitError>(library_of(changed(sound, "\"1 in\",", "1,")));
    CHECK(bare.path() == "mine.json.hoses[0].nominal_bore");
    const auto bounds = refused<InputError>(
        library_of(changed(sound, "\"value\": \"1 in\"", "\"value\": \"0 in\"")));
    CHECK(bounds.id() == "hose.bounds");
    const auto source = refused<InputError>(
        library_of(sound, R"({"name": "f", "loss_coefficient": {"value": 1}})"));
    CHECK(source.path() == "mine.json.fittings[0].loss_coefficient.source");
    CHECK(refused<InputError>(library_of(sound + "," + sound)).id() == "hose.twice");
    CHECK(refused<InputError>(R"({"scupper_hoses": 2})").id() == "json.version");
    CHECK(refused<InputError>(R"({"scupper_hoses": 1, "hoses": 3})").id() == "json.type");
    CHECK(refused<FileError>("{").id() == "json.text");
    const auto missing =
        refused<InputError>(library_of(R"({"name": "a", "construction": "jetting"})"));
    CHECK(missing.id() == "json.missing");
}

} // namespace test_hose_library
