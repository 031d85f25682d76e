// What a solved lay warns of, and with which numbers.

#include "lays.hpp"
#include "reference.hpp"

#include <algorithm>

using namespace lays;
using reference::near;
using Kind = LayWarningKind;

namespace {

std::vector<Kind> kinds(const LaySolution& s) {
    std::vector<Kind> out;
    for (const LayWarning& w : s.warnings) {
        out.push_back(w.kind);
    }
    return out;
}

std::string words(const LaySolution& s, Kind kind) {
    for (const LayWarning& w : s.warnings) {
        if (w.kind == kind) {
            return warning_text(w, UnitSystem::us);
        }
    }
    return "none";
}

} // namespace

TEST_CASE("an easy lay warns of nothing") {
    HoseLay lay = wyed();
    lay.pump.pressure = 40.0_psi;
    lay.segments[1].working_pressure = 300.0_psi;
    CHECK(kinds(solve(lay)).empty());
}

TEST_CASE("hoses above their working pressure and fast water are named with numbers") {
    HoseLay lay = wyed();
    lay.segments[0].working_pressure = 100.0_psi;
    CHECK(words(solve(lay), Kind::working_pressure) ==
          "supply: 120 psi in the hose, whose working pressure is 100 psi");
    lay.segments[1].hose.bore = 0.75_in;
    CHECK(words(solve(lay), Kind::velocity).find("32.8 ft/s") != std::string::npos);
}

TEST_CASE("who holds which reaction") {
    HoseLay lay = wyed();
    lay.segments.resize(1);
    lay.segments[0].hose.length = 0.0_m;
    lay.nozzles = {{"tip", 0, {0.5_in, 1.0}}};
    const auto kind_at = [&](double psi, Length<> bore) {
        lay.pump.pressure = psi * 1.0_psi;
        lay.nozzles[0].tip.bore = bore;
        const LaySolution s = solve(lay);
        REQUIRE(s.warnings.size() <= 1);
        return s.warnings.empty() ? Kind::drafting : s.warnings[0].kind;
    };
    // 1.57 d^2 p: 24, 31, 79 and 157 lbf
    CHECK(kind_at(60.0, 0.5_in) == Kind::drafting);
    CHECK(kind_at(80.0, 0.5_in) == Kind::reaction_bucket);
    CHECK(kind_at(50.0, 1.0_in) == Kind::reaction_one);
    CHECK(kind_at(100.0, 1.0_in) == Kind::reaction_two);
}

TEST_CASE("points below the air's pressure, and where water boils") {
    HoseLay lay = wyed();
    lay.pump.pressure = 20.0_psi;
    lay.segments[0].rise = 60.0_ft;
    lay.segments[1].rise = lay.segments[2].rise = Length<>(-30.0);
    CHECK(kinds(solve(lay)).front() == Kind::sub_atmospheric);
    lay.segments[0].rise = 90.0_ft;
    CHECK(kinds(solve(lay)).front() == Kind::boiling);
}

TEST_CASE("a nozzle that water does not reach") {
    HoseLay lay = wyed();
    lay.pump.pressure = 30.0_psi;
    lay.segments[1].rise = 100.0_ft;
    const LaySolution s = solve(lay);
    CHECK(s.nozzles[0].too_high);
    CHECK(s.nozzles[0].flow.si() == 0.0);
    CHECK(s.nozzles[1].flow.si() > 0.0);
    CHECK(words(s, Kind::too_high).find("the nozzle is too high") != std::string::npos);
}

TEST_CASE("a pump off its curve, an open unloader, suction") {
    HoseLay lay = wyed();
    lay.pump.kind = PumpKind::curve;
    lay.pump.curve = PumpCurve({{10.0_gpm, 200.0_ft}, {20.0_gpm, 150.0_ft}});
    CHECK(words(solve(lay), Kind::off_curve).find("given up to 20 gpm") != std::string::npos);
    lay.nozzles[0].tip.bore = lay.nozzles[1].tip.bore = 0.08_in;
    CHECK(words(solve(lay), Kind::off_curve).find("given from 10 gpm") != std::string::npos);
    lay.pump.unloader_pressure = 50.0_psi;
    lay.pump.suction_lift = 10.0_ft;
    lay.pump.npsh_required = 25.0_ft;
    const LaySolution s = solve(lay);
    CHECK(words(s, Kind::unloader_open) == "pump: the unloader is open at 50 psi");
    CHECK(words(s, Kind::npsh).find("25 ft required") != std::string::npos);
    CHECK(words(s, Kind::drafting).find("needs permission") != std::string::npos);
}

TEST_CASE("flows between laminar and turbulent are uncertain, and said to be") {
    HoseLay lay = wyed();
    lay.segments[1].hose = {FrictionLaw::darcy_weisbach, 1.5_in, 50.0_ft, Length<>(1e-5)};
    lay.nozzles[0].tip.bore = 0.07_in;
    const LaySolution s = solve(lay);
    REQUIRE(s.segments[1].reynolds > 2000.0);
    REQUIRE(s.segments[1].reynolds < 4000.0);
    const auto shown = kinds(s);
    CHECK(std::count(shown.begin(), shown.end(), Kind::transition) == 1);
}

TEST_CASE("every kind has a word and a sentence with its numbers filled in") {
    for (std::size_t i = 0; i < lay_warning_names.size(); ++i) {
        const LayWarning w{static_cast<Kind>(i), "here", 1.0, 2.0, dim::pressure};
        const std::string text = warning_text(w, UnitSystem::si);
        CHECK(text.find('{') == std::string::npos);
        CHECK(text.find("here: ") == 0);
    }
    CHECK(lay_unit(dim::speed, UnitSystem::us).name == "ft/s");
    CHECK(lay_unit(dim::speed, UnitSystem::metric).name == "m/s");
    CHECK(lay_unit(dim::flow, UnitSystem::us).name == "gpm");
}

TEST_CASE("limits show what is taken and what is allowed") {
    HoseLay lay = wyed();
    lay.pump.power_limit = 5.0 * Power<>(factor::horsepower);
    lay.pump.flow_limit = 500.0_gpm;
    const LaySolution s = solve(lay);
    REQUIRE(s.limits.size() == 3);
    CHECK(s.limits[0].limit == PumpLimit::pressure);
    CHECK(!s.limits[0].holds);
    CHECK(s.limits[1].limit == PumpLimit::flow_limit);
    CHECK(s.limits[2].limit == PumpLimit::power_limit);
    CHECK(s.limits[2].holds);
    CHECK(near(s.limits[2].value, s.limits[2].allowed, 1e-8));
}
