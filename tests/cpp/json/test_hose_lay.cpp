// Hose lays as documents: what is read, what is refused, and that writing gives the same lay.

#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/json.hpp"

#include <string>

using namespace scupper;
using namespace scupper::literals;

namespace {

// An invented lay.
const std::string head = R"({"name": "two legs", "water": "15 degC", "tank": "1,000 gal",
  "pump": {"kind": "pressure", "pressure": "120 psi", "power_limit": "20 hp", "efficiency": 0.7},)";
const std::string segments = R"("segments": [
    {"name": "leg", "from": "supply", "bore": "1.5 in", "length": "100 ft", "rise": "12 ft",
     "roughness": "0.02 mm", "minor_loss": 0.5,
     "fittings": [{"name": "wye", "loss_coefficient": 1.5}, {"loss_coefficient": 0.3}]},
    {"name": "supply", "bore": "2.5 in", "length": "200 ft", "c": 140,
     "form": "us_4_52_4_87", "working_pressure": "300 psi"},
    {"name": "old", "from": "supply", "bore": "1 in", "length": "50 ft", "coefficient": 150}],)";
const std::string nozzles = R"("nozzles": [
    {"name": "tip", "at": "leg", "bore": "1/2 in", "discharge_coefficient": 0.97},
    {"name": "wand", "at": "old", "rated_flow": "4 gpm", "rated_pressure": "100 psi",
     "wear": "5 %"}]})";

std::string with(std::string text, const std::string& old, const std::string& now) {
    const auto at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), now);
}

std::string refusal(const std::string& text) {
    try {
        json::read_hose_lay(text, "lay");
    } catch (const InputError& e) {
        return e.id() + " " + e.path();
    }
    return "none";
}

std::string refused_with(const std::string& old, const std::string& now) {
    return refusal(with(head + segments + nozzles, old, now));
}

} // namespace

TEST_CASE("a lay is read with its units, whatever the order of its segments") {
    const auto lay = json::read_hose_lay(head + segments + nozzles, "lay");
    CHECK(lay.name == "two legs");
    CHECK(lay.tank->in(1.0_gal) == Approx(1000.0));
    CHECK(lay.pump.pressure.in(1.0_psi) == Approx(120.0));
    REQUIRE(lay.segments.size() == 3);
    CHECK(lay.segments[0].from == 1);
    CHECK(lay.segments[1].from == hydraulics::at_pump);
    CHECK(lay.segments[0].hose.minor_loss == Approx(2.3));
    CHECK(lay.segments[0].hose.law == hydraulics::FrictionLaw::darcy_weisbach);
    CHECK(lay.segments[1].hose.law == hydraulics::FrictionLaw::hazen_williams);
    CHECK(lay.segments[1].hose.form == hydraulics::HazenWilliamsForm::us_4_52_4_87);
    CHECK(lay.segments[2].hose.coefficient == 150.0);
    CHECK(lay.nozzles[1].state == hydraulics::NozzleState::worn);
    CHECK(lay.nozzles[1].wear == Approx(0.05));
    CHECK(hydraulics::nozzle_flow(lay.nozzles[1].tip.bore, 100.0_psi, 1.0,
                                  hydraulics::water_density(lay.temperature))
              .in(1.0_gpm) == Approx(4.0));
}

TEST_CASE("a lay written and read back is the same, and flows the same") {
    const auto lay = json::read_hose_lay(head + segments + nozzles, "lay");
    const std::string text = json::write_hose_lay(lay);
    const auto again = json::read_hose_lay(text, "lay");
    CHECK(json::write_hose_lay(again) == text);
    CHECK(hydraulics::solve(again).pump.flow.si() ==
          Approx(hydraulics::solve(lay).pump.flow.si()).epsilon(1e-13));
}

TEST_CASE("shipped hoses and fittings are known by name") {
    const auto lay = json::read_hose_lay(
        R"({"pump": {"pressure": "100 psi"}, "segments": [
            {"hose": "rubber_lined_1_1_2in", "length": "100 ft", "fittings": ["gated_wye", "gun"]},
            {"hose": "rubber_lined_1_1_2in", "length": "50 ft", "bore": "1.5 in",
             "coefficient": 24, "working_pressure": "200 psi"}]})",
        "lay");
    const HoseLibrary& library = json::shipped_hose_library();
    const HoseKind& kind = hose_of(library, "rubber_lined_1_1_2in", "hose");
    const auto loss = [&](const char* name) {
        return fitting_of(library, name, "fitting").loss_coefficient.value.guess.likely;
    };
    CHECK(lay.segments[0].hose.bore.si() == kind.bore.value.guess.likely);
    CHECK(lay.segments[0].hose.roughness.si() == kind.roughness.value.guess.likely);
    CHECK(lay.segments[0].hose.minor_loss == Approx(loss("gated_wye") + loss("gun")));
    CHECK(lay.segments[0].working_pressure->si() == kind.working_pressure->value.guess.likely);
    CHECK(lay.segments[1].hose.law == hydraulics::FrictionLaw::hose_coefficient);
    CHECK(lay.segments[1].hose.bore.in(1.0_in) == Approx(1.5));
    CHECK(lay.segments[1].working_pressure->in(1.0_psi) == Approx(200.0));
}

TEST_CASE("pumps of every kind are read and written") {
    for (const char* pump :
         {R"({"kind": "curve", "curve": [["0 gpm", "200 ft"], ["100 gpm", "80 psi"]], "speed": 0.9,
              "suction_lift": "8 ft", "suction_loss": "1 ft", "altitude": "5,000 ft",
              "npsh_required": "10 ft"})",
          R"({"kind": "displacement", "flow_limit": "8 gpm", "unloader_pressure": "3,000 psi",
              "volumetric_efficiency": "93 %"})"}) {
        const std::string text = R"({"pump": )" + std::string(pump) +
                                 R"(, "nozzles": [{"at": "pump", "bore": "1 mm"}]})";
        const auto lay = json::read_hose_lay(text, "lay");
        const std::string written = json::write_hose_lay(lay);
        CHECK(json::write_hose_lay(json::read_hose_lay(written, "lay")) == written);
    }
}

TEST_CASE("what cannot be a lay is refused at its place") {
    CHECK(refusal(head + segments + nozzles) == "none");
    CHECK(refusal("[1") == "json.text lay");
    CHECK(refusal("{}") == "json.missing lay.pump");
    CHECK(refused_with(R"("tank")", R"("tnk")") == "json.key lay");
    CHECK(refused_with(R"("rise")", R"("risen")") == "json.key lay.segments[0]");
    CHECK(refused_with(R"("1.5 in")", R"("0 in")") == "hydraulics.bore lay.segments[0].bore");
    CHECK(refused_with(R"("1.5 in")", R"("-1.5 in")") == "hydraulics.bore lay.segments[0].bore");
    CHECK(refused_with(R"("1.5 in")", R"(1.5)") == "unit.missing lay.segments[0].bore");
    CHECK(refused_with(R"("1.5 in")", R"("1.5 psi")") == "unit.dimension lay.segments[0].bore");
    CHECK(refused_with(R"("1.5 in")", R"(null)") == "json.type lay.segments[0].bore");
    CHECK(refused_with(R"("from": "supply", "bore": "1.5 in")",
                       R"("from": "suply", "bore": "1.5 in")") ==
          "hydraulics.segment lay.segments[0].from");
    CHECK(refused_with(R"("at": "leg")", R"("at": "legg")") ==
          "hydraulics.segment lay.nozzles[0].at");
    CHECK(refused_with(R"("at": "leg", )", "") == "json.missing lay.nozzles[0].at");
    CHECK(refused_with(R"("name": "supply",)", R"("name": "supply", "from": "leg",)") ==
          "hydraulics.loop lay.segments[0].from");
    CHECK(refused_with(R"("15 degC")", R"("-1 degC")") == "hydraulics.temperature lay.water");
    CHECK(refused_with(R"("c": 140,)", R"("c": 140, "coefficient": 2,)") ==
          "json.one_of lay.segments[1]");
    CHECK(refused_with(R"("roughness": "0.02 mm",)", "") == "json.one_of lay.segments[0]");
    CHECK(refused_with(R"("length": "50 ft",)", "") == "json.missing lay.segments[2].length");
    CHECK(refused_with(R"("us_4_52_4_87")", R"("us_4_52")") == "json.word lay.segments[1].form");
    CHECK(refused_with(R"({"name": "wye", "loss_coefficient": 1.5})", R"("wie")") ==
          "fitting.kind lay.segments[0].fittings[0]");
    CHECK(refused_with(R"("loss_coefficient": 0.3)", R"("loss_coefficient": -0.3)") ==
          "hydraulics.loss_coefficient lay.segments[0].fittings[1].loss_coefficient");
    CHECK(refused_with(R"("wear": "5 %")", R"("state": "worn")") ==
          "json.missing lay.nozzles[1].wear");
    CHECK(refused_with(R"("wear": "5 %")", R"("state": "ajar")") ==
          "json.word lay.nozzles[1].state");
    CHECK(refused_with(R"("4 gpm")", R"("0 gpm")") ==
          "hydraulics.rated_flow lay.nozzles[1].rated_flow");
    CHECK(refused_with(R"("kind": "pressure")", R"("kind": "centrifugal")") ==
          "json.word lay.pump.kind");
    CHECK(refused_with(R"("pressure": "120 psi",)", "") == "json.missing lay.pump.pressure");
    CHECK(refused_with(R"("bore": "1 in")", R"("hose": "garden")") ==
          "hose.kind lay.segments[2].hose");
}

TEST_CASE("two pumps, and a drooping curve, are refused with the reason") {
    const std::string rest = R"(, "nozzles": [{"at": "pump", "bore": "1 mm"}]})";
    CHECK(refusal(R"({"pump": [{"pressure": "1 bar"}, {"pressure": "1 bar"}])" + rest) ==
          "hydraulics.pump lay.pump");
    CHECK(refusal(R"({"pump": {"kind": "curve", "curve": [["0 gpm", "90 ft"], ["10 gpm", "95 ft"],
                     ["20 gpm", "60 ft"]]})" +
                  rest) == "hydraulics.curve lay.pump.curve[1]");
    CHECK(refusal(R"({"pump": {"kind": "curve", "pressure": "9 psi"})" + rest) ==
          "json.unused lay.pump.pressure");
    CHECK(refusal(R"({"pump": {"kind": "curve", "curve": [["0 gpm"]]})" + rest) ==
          "json.type lay.pump.curve[0]");
}
