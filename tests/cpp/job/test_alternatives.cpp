#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/job.hpp"

#include <algorithm>

using namespace scupper;

namespace {

Operation operation(const char* name, const char* component, std::vector<std::string> equipment) {
    Operation op;
    op.name = name;
    op.component = component;
    op.levels = {"full_clean"};
    op.driver = slot("girder_end_area");
    op.equipment = std::move(equipment);
    return op;
}

Setting value(const char* key, double number) {
    return make_setting(key, certain(number, Basis::given), {"rule", {}, {}});
}

Job lifted() {
    Job job;
    job.service = {{"girder", "full_clean"}};
    job.operations = {operation("set_up", "visit", {"lift"}),
                      operation("wash", "girder", {"lift", "pump"})};
    job.equipment = {{"lift", {"underside"}, {}, "under"}, {"pump", {}, {}}};
    job.stages = {{"all", {}, {{"under", {"set_up", "girder"}}}}};
    job.settings = {value("equipment[lift].rate", 1.0), value("equipment[pump].rate", 2.0),
                    value("operation[set_up].time_per_unit", 3.0)};
    job.overrides["B1"] = {value("equipment[lift].rate", 5.0)};
    return job;
}

bool has_value(const Job& job, const std::string& key) {
    return std::any_of(job.settings.begin(), job.settings.end(),
                       [&](const Setting& s) { return s.key == key; });
}

} // namespace

TEST_CASE("equipment that takes another's place stands where it stood, without its values") {
    Alternative a;
    a.instead = {{"lift", "unit"}};
    a.settings = {value("equipment[unit].rate", 9.0), value("equipment[pump].rate", 9.0)};
    const Job changed = with_alternative(lifted(), a);
    CHECK(changed.operations[0].equipment == std::vector<std::string>{"unit"});
    CHECK(changed.operations[1].equipment == std::vector<std::string>{"unit", "pump"});
    REQUIRE(changed.equipment.size() == 2);
    CHECK(changed.equipment[0].name == "unit");
    CHECK(changed.equipment[0].party == "under");
    CHECK_FALSE(has_value(changed, "equipment[lift].rate"));
    CHECK(has_value(changed, "equipment[unit].rate"));
    CHECK(changed.overrides.at("B1").empty());
    const auto pump =
        std::find_if(changed.settings.begin(), changed.settings.end(),
                     [](const Setting& s) { return s.key == "equipment[pump].rate"; });
    CHECK(pump->value.guess.likely == 2.0); // the job's own stands
}

TEST_CASE("equipment without a successor and operations left out are gone with their values") {
    Alternative a;
    a.instead = {{"lift", ""}};
    a.without = {"set_up"};
    const Job changed = with_alternative(lifted(), a);
    REQUIRE(changed.operations.size() == 1);
    CHECK(changed.operations[0].equipment == std::vector<std::string>{"pump"});
    CHECK(changed.equipment.size() == 1);
    CHECK_FALSE(has_value(changed, "operation[set_up].time_per_unit"));
    CHECK(changed.stages[0].parties[0].work == std::vector<std::string>{"girder"});
}

TEST_CASE("a closure stands in the job and in every stage that has one of its own") {
    Job job = lifted();
    job.stages.push_back({"night", "freeway_lane", {}});
    Alternative a;
    a.closure = "full_closure";
    const Job changed = with_alternative(job, a);
    CHECK(changed.closure == "full_closure");
    CHECK(changed.stages[0].closure.empty());
    CHECK(changed.stages[1].closure == "full_closure");
}

TEST_CASE("a job works as an alternative that changes nothing, and as none that does") {
    Alternative a;
    CHECK(works_as(lifted(), a));
    a.instead = {{"lift", "unit"}};
    CHECK_FALSE(works_as(lifted(), a));
    CHECK(works_as(with_alternative(lifted(), a), a));
    Alternative shorter;
    shorter.without = {"set_up"};
    CHECK_FALSE(works_as(lifted(), shorter));
    Alternative closed;
    closed.closure = "shoulder";
    CHECK_FALSE(works_as(lifted(), closed));
}

TEST_CASE("words of sites, surroundings, paces and alternatives are checked, the nearest named") {
    const auto refused = [](const auto& spoil) {
        Job job = lifted();
        job.stages.clear();
        job.equipment[0].party.clear();
        spoil(job);
        try {
            check_job(job);
        } catch (const InputError& e) {
            return e.path() + ": " + e.allowed();
        }
        return std::string("accepted");
    };
    CHECK(refused([](Job&) {}) == "accepted");
    CHECK(refused([](Job& j) { j.site["B1"] = {"lead_pain"}; }).find("\"lead_paint\"?") !=
          std::string::npos);
    CHECK(refused([](Job& j) {
              j.paces = {{"slow", {"girdr"}, {}, value("pace[slow].factor", 1.5), {}, {}}};
          }).find("\"girder\"?") != std::string::npos);
    CHECK(refused([](Job& j) {
              Alternative a;
              a.name = "odd";
              a.needs = {{"over_watr", "why"}};
              j.alternatives = {a};
          }).find("\"over_water\"?") != std::string::npos);
    CHECK(refused([](Job& j) {
              Alternative a;
              a.name = "odd";
              a.limits = {{SiteMeasure::detour, 5.0, 1.0, "why"}};
              j.alternatives = {a};
          }).find("not above the most") != std::string::npos);
    CHECK(refused([](Job& j) {
              j.surroundings = {{}, {}};
          }).find("a name of its own") != std::string::npos);
}

TEST_CASE("a way brings the machines of the alternative that chooses it, and no other") {
    Job job = lifted();
    job.ways = {{"girder", "broom"}};
    Alternative broom;
    broom.ways = {{"girder", "broom"}};
    broom.equipment = {{"broom", {}, {}}};
    broom.settings = {value("equipment[broom].number", 1.0)};
    Alternative other = broom;
    other.ways = {{"girder", "flusher"}};
    other.equipment = {{"flusher", {}, {}}};
    Alternative swap = broom;
    swap.instead = {{"lift", "unit"}};
    swap.equipment = {{"unit", {}, {}}};
    job.alternatives = {broom, other, swap};
    const Job with = with_means(job);
    REQUIRE(with.equipment.size() == 3);
    CHECK(with.equipment[2].name == "broom");
    CHECK(has_value(with, "equipment[broom].number"));
    CHECK(with.alternatives.size() == 3);
    CHECK(with_means(with).equipment.size() == 3); // nothing comes twice
}

TEST_CASE("a closure brings the charges of the alternative that chooses it") {
    Job job = lifted();
    job.closure = "full_closure";
    Alternative detour;
    detour.closure = "full_closure";
    detour.charges = {{"detour_signs", {}, {}}};
    job.alternatives = {detour};
    CHECK(with_means(job).charges.size() == 1);
    job.closure = "by_record";
    CHECK(with_means(job).charges.empty());
}
