#include "catch.hpp"
#include "job/refused.hpp"
#include "scupper/error.hpp"
#include "scupper/job.hpp"

using namespace scupper;

namespace {

Operation dry_pick_up(const char* component, Slot driver) {
    Operation op;
    op.name = std::string("dry_pick_up_") + component;
    op.component = component;
    op.levels = {"rinse"};
    op.driver = driver;
    return op;
}

Job dry_job() {
    Job job;
    job.service = {{"gutter", "rinse"}, {"cap", "rinse"}};
    job.operations = {dry_pick_up("gutter", slot("gutter_length")),
                      dry_pick_up("cap", slot("cap_top_area"))};
    return job;
}

double likely(const std::vector<Setting>& settings, const std::string& key) {
    for (const Setting& s : settings) {
        if (s.key == key) {
            return s.value.guess.likely;
        }
    }
    return -1.0;
}

} // namespace

TEST_CASE("a job without haul trucks has one that carries everything, by the short key too") {
    const auto trucks = haul_trucks(dry_job());
    REQUIRE(trucks.size() == 1);
    for (const std::string_view dirt : dirt_names) {
        CHECK(carries(trucks, 0, dirt));
    }
    const Layout layout = input_layout(dry_job());
    CHECK(layout.find("haul.distance") == layout.find("haul[truck].distance"));
    CHECK(layout.find("haul.distance").has_value());
}

TEST_CASE("a truck without components carries what no other names; the drain's takes wash water") {
    const std::vector<Haul> trucks{{"dump_truck", {}, {}, {}}, {"jet_vac", {"drain"}, {}, {}}};
    CHECK(carries(trucks, 0, "gutter"));
    CHECK_FALSE(carries(trucks, 0, "drain"));
    CHECK(carries(trucks, 1, "drain"));
    CHECK(collecting_truck(trucks) == 1);
    CHECK(collecting_truck({{"sweeper", {"gutter"}, {}, {}}}) == 0);
}

TEST_CASE("every truck has a row, and a short key of several is refused") {
    Job job = dry_job();
    job.hauls = {{"dump_truck", {}, {}, {}}, {"jet_vac", {"drain"}, {}, {}}};
    CHECK_NOTHROW(check_job(job));
    const Layout layout = input_layout(job);
    CHECK(layout.find("haul[jet_vac].gross_limit").has_value());
    CHECK_FALSE(layout.find("haul.gross_limit").has_value());
    CHECK_FALSE(layout.find("haul[truck].gross_limit").has_value());
}

TEST_CASE("trucks without name, misspelt components and dirt that nobody carries are refused") {
    Job job = dry_job();
    job.hauls = {{"", {}, {}, {}}};
    CHECK(refused<InputError>(job).path() == "job.hauls[0].name");
    job.hauls = {{"sweeper", {}, {}, {}}, {"sweeper", {"gutter"}, {}, {}}};
    CHECK(refused<InputError>(job).id() == "job.haul");
    job.hauls = {{"sweeper", {}, {}, {}}, {"truck", {"gutter"}, {}, {}}};
    CHECK(refused<InputError>(job).path() == "job.hauls[1].name");
    job.hauls = {{"sweeper", {"guttr"}, {}, {}}};
    CHECK(refused<UnknownNameError>(job).allowed().substr(0, 9) == "\"gutter\"?");
    job.hauls = {{"sweeper", {"gutter"}, {}, {}}};
    CHECK(refused<InputError>(job).found() == "no truck carries the dirt of cap");
}

TEST_CASE("values of all trucks go to every one that has none of its own") {
    Job job = dry_job();
    job.hauls = {{"dump_truck", {}, {}, {}}, {"jet_vac", {"drain"}, {}, {}}};
    job.settings = {make_setting("haul[truck].speed", certain(10.0, Basis::given), {}),
                    make_setting("haul[jet_vac].speed", certain(20.0, Basis::given), {})};
    job.overrides["42"] = {make_setting("haul[truck].distance", certain(5e3, Basis::given), {})};
    spread_haul_values(job);
    CHECK(likely(job.settings, "haul[dump_truck].speed") == 10.0);
    CHECK(likely(job.settings, "haul[jet_vac].speed") == 20.0);
    CHECK(likely(job.settings, "haul[truck].speed") == -1.0);
    CHECK(likely(job.overrides["42"], "haul[jet_vac].distance") == 5e3);
}

TEST_CASE("a gutter is served as the deck is, where its operations offer that") {
    Job job = dry_job();
    job.service["deck_top"] = "rinse";
    Operation hand = dry_pick_up("deck_top", slot("deck_top_area"));
    hand.ways = {"hand_line"};
    Operation broom = hand;
    broom.ways = {"broom"};
    Operation windrow = dry_pick_up("gutter", slot("gutter_length"));
    windrow.ways = {"hand_line", "flusher"};
    Operation sweeper = windrow;
    sweeper.ways = {"broom"};
    job.operations = {hand, broom, windrow, sweeper, dry_pick_up("cap", slot("cap_top_area"))};
    CHECK(way_of(job, "gutter") == "hand_line");
    CHECK(in_scope(job, windrow));
    job.ways = {{"deck_top", "broom"}};
    CHECK(way_of(job, "gutter") == "broom");
    CHECK_FALSE(in_scope(job, windrow));
    CHECK(in_scope(job, sweeper));
    job.ways["gutter"] = "flusher";
    CHECK(in_scope(job, windrow));
}

TEST_CASE("a level that the chosen way does not serve is refused, never priced as nothing") {
    Job job = dry_job();
    job.operations[0].ways = {"hand_line"};
    Operation full = dry_pick_up("gutter", slot("gutter_length"));
    full.levels = {"full_clean"};
    full.ways = {"wand"};
    job.operations.push_back(full);
    job.ways = {{"gutter", "wand"}};
    const auto e = refused<InputError>(job);
    CHECK(e.id() == "job.scope");
    CHECK(e.found().find("by way wand") != std::string::npos);
}

TEST_CASE("dump trips and refills follow from the water: they use none") {
    Job job = dry_job();
    Operation rinse_pad = dry_pick_up("cap", slot("dump_count"));
    rinse_pad.method = "hand_line";
    job.methods = {{"hand_line", {}, {}}};
    job.operations.push_back(rinse_pad);
    CHECK(refused<InputError>(job).id() == "job.driver");
    job.operations.back() = dry_pick_up("cap", slot("visit_count"));
    job.operations.back().timing = Timing::dump;
    CHECK(refused<InputError>(job).allowed() == "dump_count");
}
