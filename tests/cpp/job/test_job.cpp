#include "catch.hpp"
#include "job/refused.hpp"
#include "scupper/error.hpp"
#include "scupper/job.hpp"

using namespace scupper;

namespace {

Operation rinse_deck() {
    Operation op;
    op.name = "deck_hand_line";
    op.component = "deck_top";
    op.levels = {"rinse"};
    op.driver = slot("deck_top_area");
    return op;
}

Job small_job() {
    Job job;
    job.service = {{"deck_top", "rinse"}};
    job.operations = {rinse_deck()};
    return job;
}

} // namespace

TEST_CASE("a job whose scope an operation serves is accepted") {
    CHECK_NOTHROW(check_job(small_job()));
    CHECK(service_level(small_job(), "deck_top") == "rinse");
    CHECK(service_level(small_job(), "girder") == "none");
}

TEST_CASE("a component that no operation serves is refused, never priced as nothing") {
    Job job = small_job();
    job.service["girder"] = "full_clean";
    const auto e = refused<InputError>(job);
    CHECK(e.id() == "job.scope");
    CHECK(e.path() == "job.service.girder");
}

TEST_CASE("an empty scope and misspelt words are refused") {
    Job job = small_job();
    job.service = {{"deck_top", "none"}};
    CHECK(refused<InputError>(job).id() == "job.empty");
    job.service = {{"deck_top", "rins"}};
    CHECK(refused<UnknownNameError>(job).allowed().substr(0, 8) == "\"rinse\"?");
    job = small_job();
    job.closure = "sholder";
    CHECK(refused<UnknownNameError>(job).allowed().substr(0, 11) == "\"shoulder\"?");
    job = small_job();
    job.operations[0].when = {"over_watr"};
    CHECK(refused<UnknownNameError>(job).path() == "job.operations[deck_hand_line].when");
    job = small_job();
    job.operations[0].method = "hand_lime";
    CHECK(refused<UnknownNameError>(job).path() == "job.operations[deck_hand_line].method");
    job = small_job();
    job.operations[0].factor = 0.0;
    CHECK(refused<InputError>(job).id() == "job.factor");
    job = small_job();
    job.units = "imperial";
    CHECK(refused<UnknownNameError>(job).path() == "job.units");
}

TEST_CASE("a component with several ways is served in the one chosen, else in the first") {
    Job job = small_job();
    job.operations[0].ways = {"hand_line"};
    Operation bar = rinse_deck();
    bar.name = "flush_pass";
    bar.ways = {"flusher"};
    job.operations.push_back(bar);
    CHECK(way_of(job, "deck_top") == "hand_line");
    CHECK(in_scope(job, job.operations[0]));
    CHECK_FALSE(in_scope(job, bar));
    job.ways = {{"deck_top", "flusher"}};
    CHECK(in_scope(job, bar));
    CHECK_FALSE(in_scope(job, job.operations[0]));
    job.ways = {{"deck_top", "flushr"}};
    CHECK(refused<UnknownNameError>(job).allowed().substr(0, 10) == "\"flusher\"?");
    CHECK(way_of(job, "girder").empty());
}

TEST_CASE("the layout has a row for every operation, hose, person and piece of equipment") {
    Job job = small_job();
    job.methods = {{"hand_line", {"supply", "reel"}, {}}, {"wand", {"supply"}, {}}};
    job.labour = {{"wash_crew", {}, {}}};
    const Layout layout = input_layout(job);
    CHECK(layout.find("operation[deck_hand_line].time_per_unit"));
    CHECK(layout.find("hose[reel].bore"));
    CHECK(layout.row_names("hose") == std::vector<std::string>{"supply", "reel"});
    CHECK(layout.find("nozzle[wand].bore"));
    CHECK(layout.find("labour[wash_crew].wage"));
    CHECK(layout.find("quantity[drain_count].given"));
    CHECK_FALSE(layout.find("closure[none].set_up_time"));
    const auto place = layout.find("operation[deck_hand_line].time_per_unit");
    CHECK(layout.fields()[*place].dimension == dim::time / dim::area);
}
