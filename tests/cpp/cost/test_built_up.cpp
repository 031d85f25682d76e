#include "catch.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <vector>

using namespace scupper;
using namespace scupper::cost;

namespace {

constexpr double hour = factor::hour;

const std::vector<PartValue> prevailing{{"cash", 20.0 / hour},
                                        {"basic", 22.0 / hour},
                                        {"fringe", 7.0 / hour},
                                        {"social_security", 0.062},
                                        {"social_security_cap", 168600.0},
                                        {"medicare", 0.0145},
                                        {"federal_unemployment", 0.006},
                                        {"federal_unemployment_cap", 7000.0},
                                        {"insurance", 0.08},
                                        {"modifier", 0.9}};

const std::vector<PartValue> truck{
    {"ownership", 1.0},
    {"price", 300000.0},
    {"salvage", 50000.0},
    {"life", 8.0 * factor::year},
    {"year_hours", 1330.0 * hour},
    {"interest", 0.08},
    {"power", 250.0 * factor::horsepower},
    {"fuel_use", 0.04 * factor::us_gallon / (factor::horsepower * hour)},
    {"load", 0.6},
    {"fuel_price", 4.0 / factor::us_gallon},
    {"repair", 0.6},
    {"tyre_set", 6000.0},
    {"tyre_life", 3000.0 * hour},
    {"tyre_repair", 0.15}};

std::vector<PartValue> without(std::vector<PartValue> parts, const std::string& name) {
    std::erase_if(parts, [&](const PartValue& p) { return p.name == name; });
    return parts;
}

} // namespace

TEST_CASE("a wage is built up from pay, fringe, capped taxes and insurance") {
    // by hand: year's pay 41,600; taxes 0.062 + 0.0145 + 0.006 x 7000/41600; insurance 0.072
    const double burden = 0.062 + 0.0145 + 0.006 * 7000.0 / 41600.0 + 0.072;
    const double wage = built_up_rate(BuiltUp::wage, prevailing) * hour;
    CHECK(wage == Approx(20.0 * (1.0 + burden) + 7.0));
    const double share = built_up_rate(BuiltUp::overtime_share, prevailing);
    CHECK(share * wage == Approx(22.0 * (1.0 + burden - 0.072)));
    CHECK(share < 1.0);
}

TEST_CASE("an hour of equipment is built up from published parts") {
    // 34.9624 ownership, 24 fuel, 14.0977 repair (60 % of 250,000 / 8 / 1,330), 2.3 tyres
    const double rate = built_up_rate(BuiltUp::equipment, truck) * hour;
    CHECK(rate == Approx(34.962406 + 24.0 + 0.6 * 31250.0 / 1330.0 + 2.3).epsilon(1e-8));
    auto recovery = truck;
    recovery.front().value = 0.0;
    CHECK(built_up_rate(BuiltUp::equipment, recovery) > built_up_rate(BuiltUp::equipment, truck));
}

TEST_CASE("traced and plain build-ups are equal to the bit") {
    Recording recording;
    std::vector<NamedPart<Traced>> parts;
    for (const PartValue& p : truck) {
        parts.push_back({p.name, Traced(p.value, &recording, recording.leaf(p.value, {}))});
    }
    CHECK(built_up_rate<Traced>(BuiltUp::equipment, parts).value() ==
          built_up_rate(BuiltUp::equipment, truck));
}

TEST_CASE("fields say what they can be built up as") {
    CHECK(built_up_of("labour[wash_crew].wage") == BuiltUp::wage);
    CHECK(built_up_of("haul[truck].wage") == BuiltUp::wage);
    CHECK(built_up_of("labour[wash_crew].overtime_share") == BuiltUp::overtime_share);
    CHECK(built_up_of("equipment.rate") == BuiltUp::equipment);
    CHECK(built_up_of("labour[wash_crew].people") == BuiltUp::none);
    CHECK(built_up_of("price.water") == BuiltUp::none);
}

TEST_CASE("parts that do not make a rate are refused, with what is missing") {
    CHECK_NOTHROW(check_parts(BuiltUp::equipment, truck, "truck"));
    for (const char* needed : {"price", "life", "year_hours", "fuel_price", "tyre_life"}) {
        INFO(needed);
        CHECK_THROWS_AS(check_parts(BuiltUp::equipment, without(truck, needed), "truck"),
                        InputError);
    }
    CHECK_THROWS_AS(check_parts(BuiltUp::wage, without(prevailing, "cash"), "crew"), InputError);
    CHECK_THROWS_AS(check_parts(BuiltUp::wage, truck, "crew"), UnknownNameError);
    auto odd = prevailing;
    odd[3].value = 6.2;
    CHECK_THROWS_AS(check_parts(BuiltUp::wage, odd, "crew"), InputError);
}

TEST_CASE("every part of the tables moves the rate") {
    const auto moves = [](BuiltUp kind, const std::vector<PartValue>& parts) {
        for (std::size_t i = 0; i < parts.size(); ++i) {
            INFO(parts[i].name);
            auto changed = parts;
            changed[i].value = parts[i].name == "ownership" ? 0.0 : parts[i].value * 0.5;
            CHECK((built_up_rate(kind, changed) != built_up_rate(kind, parts) ||
                   parts[i].name == "basic" || parts[i].name == "insured_premium" ||
                   parts[i].name == "social_security_cap"));
        }
    };
    auto whole = truck;
    whole.insert(whole.end(), {{"keeping", 0.02},
                               {"utilisation", 0.8},
                               {"lubrication", 0.15},
                               {"wear_parts", 1.0 / hour}});
    CHECK(whole.size() == equipment_parts.size());
    moves(BuiltUp::equipment, whole);
    auto crew = prevailing;
    crew.insert(crew.end(), {{"year_hours", 2080.0 * hour},
                             {"worked_hours", 1776.0 * hour},
                             {"state_unemployment", 0.027},
                             {"state_unemployment_cap", 9000.0},
                             {"per_diem", 60.0},
                             {"day_hours", 10.0 * hour},
                             {"insured_premium", 0.5}});
    CHECK(crew.size() == wage_parts.size());
    moves(BuiltUp::wage, crew);
    for (const char* name : {"basic", "insured_premium"}) {
        CHECK(built_up_rate(BuiltUp::overtime_share, without(crew, name)) !=
              built_up_rate(BuiltUp::overtime_share, crew));
    }
}

TEST_CASE("a rate whose parts have a range has one: independent swings add by their squares") {
    std::vector<PartValue> parts{{"cash", 20.0 / hour}, {"fringe", 7.0 / hour}};
    CHECK(built_up_range(BuiltUp::wage, parts).low == built_up_rate(BuiltUp::wage, parts));
    parts[0].low = 17.0 / hour; // a swing of 3 down and 6 up
    parts[0].high = 26.0 / hour;
    parts[1].low = 3.0 / hour; // a swing of 4 down and 8 up
    parts[1].high = 15.0 / hour;
    const ThreePoint range = built_up_range(BuiltUp::wage, parts);
    CHECK(range.low * hour == Approx(27.0 - 5.0));
    CHECK(range.likely * hour == Approx(27.0));
    CHECK(range.high * hour == Approx(27.0 + 10.0));
    parts[0].low = 21.0 / hour; // above the likely value
    CHECK_THROWS_AS(check_parts(BuiltUp::wage, parts, "test"), InputError);
}
