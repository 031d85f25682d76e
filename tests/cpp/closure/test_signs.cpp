// Sign spacings against the tables of both editions.

#include "reference.hpp"
#include "scupper/closure.hpp"
#include "scupper/error.hpp"

#include <array>
#include <string>

using namespace scupper;
using namespace scupper::closure;
using namespace scupper::literals;
using reference::Row;

namespace {

constexpr std::array both{Edition::manual_2009, Edition::manual_2023};

std::string road_of(const Row& row) {
    const std::string& json = row.text("inputs_json");
    const std::string key = "\"road_type\":\"";
    const auto from = json.find(key) + key.size();
    return json.substr(from, json.find('"', from) - from);
}

double spacing(const Row& row, Edition edition) {
    const std::string head = "advance warning sign spacing ";
    const SignSpacing s = sign_spacing(road_class_by_name(road_of(row)), edition);
    const char which = row.text("quantity")[head.size()];
    return (which == 'A' ? s.a : which == 'B' ? s.b : s.c).in(1.0_ft);
}

bool is_2014(const Row& row) {
    return row.text("quantity").find("2014") != std::string::npos;
}
bool is_national(const Row& row) {
    return row.text("quantity").find("national") != std::string::npos;
}

} // namespace

TEST_CASE("sign spacings agree with the tables of their edition") {
    reference::Tally tally;
    for (const Row& row : reference::rows("closure/signs")) {
        if (is_national(row)) {
            CHECK(spacing(row, Edition::manual_2009) == spacing(row, Edition::manual_2023));
        }
        tally.add(row, spacing(row, is_2014(row) ? Edition::manual_2009 : Edition::manual_2023));
    }
    CHECK(tally.summary() == "agrees 26, agrees_from_memory 8");
}

TEST_CASE("a class that an edition does not know takes the spacing of its fastest traffic") {
    const auto ft = [](RoadClass road, Edition edition) {
        return sign_spacing(road, edition).a.in(1.0_ft);
    };
    CHECK(ft(RoadClass::urban_over_40, Edition::manual_2023) == Approx(350.0));
    CHECK(ft(RoadClass::urban_over_25_to_40, Edition::manual_2023) == Approx(250.0));
    CHECK(ft(RoadClass::urban_30, Edition::manual_2009) == Approx(250.0));
    CHECK(ft(RoadClass::urban_45, Edition::manual_2009) == Approx(350.0));
}

TEST_CASE("faster urban traffic never has signs closer together") {
    for (const Edition edition : both) {
        for (double mph = 5.0; mph < 70.0; mph += 1.0) {
            const auto at = [&](double speed) {
                return advance_warning_length(
                    sign_spacing(urban_class(speed * 1.0_mph, edition), edition));
            };
            CHECK(at(mph + 1.0) >= at(mph));
        }
    }
    CHECK(urban_class(40.0_mph, Edition::manual_2009) == RoadClass::urban_over_25_to_40);
    CHECK(urban_class(40.0_mph, Edition::manual_2023) == RoadClass::urban_40);
    CHECK(urban_class(41.0_mph, Edition::manual_2023) == RoadClass::urban_45);
    CHECK_THROWS_AS(urban_class(0.0_mph, Edition::manual_2009), InputError);
}

TEST_CASE("a driver on a freeway meets the first sign almost a mile ahead") {
    for (const Edition edition : both) {
        CHECK(advance_warning_length(sign_spacing(RoadClass::freeway, edition)).in(1.0_ft) ==
              Approx(1000.0 + 1500.0 + 2640.0));
    }
}
