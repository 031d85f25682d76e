#include "catch.hpp"
#include "scupper/rates.hpp"
#include "scupper/schema.hpp"

#include <algorithm>

using namespace scupper;

TEST_CASE("what one crew and one contract bring is shared, what the structure is is its own") {
    CHECK(usual_shared_share("labour[wash_crew].wage") == 1.0);
    CHECK(usual_shared_share("price.water") == 1.0);
    CHECK(usual_shared_share("operation[deck_hand_line].time_per_unit") == 0.5);
    CHECK(usual_shared_share("shift.briefing_time") == 0.7);
    CHECK(usual_shared_share("shift.travel_time") == 0.0); // a field beats its group
    CHECK(usual_shared_share("haul[truck].wage") == 1.0);
    CHECK(usual_shared_share("haul[truck].distance") == 0.0);
    CHECK(usual_shared_share("dirt[gutter].depth") == 0.3);
    CHECK(usual_shared_share("deck.length") == 0.0);
    CHECK(usual_shared_share("no such key") == 0.0);
}

TEST_CASE("every shared share names an input of the schema, once") {
    for (const SharedShare& row : shared_shares) {
        INFO(row.group << "." << row.field);
        CHECK(std::any_of(input_table.begin(), input_table.end(), [&](const InputField& f) {
            return f.group == row.group && (row.field.empty() || f.field == row.field);
        }));
        CHECK(std::count_if(shared_shares.begin(), shared_shares.end(), [&](const auto& other) {
                  return other.group == row.group && other.field == row.field;
              }) == 1);
        CHECK((row.share >= 0.0 && row.share <= 1.0));
    }
}
