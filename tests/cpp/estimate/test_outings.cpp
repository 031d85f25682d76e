#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/outings.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using estimate::Outing;
using estimate::OutingPlan;
using estimate::OutingRules;

namespace {

/// Creek bridges in a row, about 1.1 km apart, and a culvert that is not washed.
std::vector<Structure> row_of(int number) {
    std::vector<Structure> list;
    for (int i = 0; i < number; ++i) {
        Structure s = creek_bridge();
        s.id = s.number = "R" + std::to_string(i);
        s.latitude = 40.0 + 0.01 * i;
        s.longitude = -90.0;
        list.push_back(s);
    }
    list.push_back(culvert());
    return list;
}

Job own_shifts() {
    Job job = json::demo_job();
    job.sharing = Sharing::own_shifts;
    return job;
}

OutingPlan planned(const std::vector<Structure>& structures, const OutingRules& rules,
                   const Job& job = json::demo_job()) {
    return estimate::plan_outings(structures, estimate::make_plan(job), rules);
}

double set_up_time(const Outing& outing) {
    double seconds = 0.0;
    for (const work::Segment& segment : outing.layout.segments) {
        seconds += segment.spent == work::Spent::set_up ? (segment.end - segment.start).si() : 0.0;
    }
    return seconds;
}

std::vector<std::string> visited(const OutingPlan& plan, const std::vector<Structure>& s) {
    std::vector<std::string> ids;
    for (const Outing& o : plan.outings) {
        for (const std::size_t i : o.members) {
            ids.push_back(s[i].id);
        }
    }
    return ids;
}

double shifts_of(const OutingPlan& plan) {
    double all = 0.0;
    for (const Outing& o : plan.outings) {
        all += static_cast<double>(o.layout.paid.size());
    }
    return all;
}

double total(const estimate::OutingCost& c) {
    return c.labour + c.overtime + c.show_up + c.equipment;
}

std::string refused(const OutingRules& rules) {
    try {
        planned(row_of(3), rules);
    } catch (const InputError& e) {
        return e.id();
    }
    return "accepted";
}

OutingRules near_by(double metres) {
    OutingRules rules;
    rules.within = Length<>(metres);
    return rules;
}

} // namespace

TEST_CASE("without neighbours every structure has shifts of its own, and its price") {
    const auto structures = row_of(3);
    const Job job = own_shifts();
    const OutingPlan plan = planned(structures, {}, job);
    CHECK(plan.outings.size() == 3);
    CHECK(plan.price == Approx(plan.price_alone));
    double sum = 0.0;
    for (std::size_t i = 0; i < 3; ++i) {
        sum += estimate::estimate(structures[i], estimate::make_plan(job)).figure("cost.total");
    }
    CHECK(plan.price_shared == Approx(sum));
    CHECK(plan.price == Approx(sum).epsilon(1e-6));
    REQUIRE(plan.unpriced.size() == 1);
    CHECK(plan.unpriced[0].first == 3);
}

TEST_CASE("neighbours share shifts, each structure in one outing, and cost less together") {
    const auto structures = row_of(6);
    const OutingPlan plan = planned(structures, near_by(2000.0));
    const auto ids = visited(plan, structures);
    CHECK(ids.size() == 6);
    CHECK(std::set<std::string>(ids.begin(), ids.end()).size() == 6);
    CHECK(plan.outings.size() < 6);
    CHECK(plan.outings[0].members.size() > 1);
    CHECK(total(plan.cost) < total(plan.alone));
    CHECK(plan.price < plan.price_alone);
    for (const Outing& o : plan.outings) {
        CHECK((o.members.size() == 1 || o.layout.paid.size() == 1));
    }
    CHECK(planned(structures, near_by(500.0)).outings.size() == 6);
    OutingRules pairs = near_by(2000.0);
    pairs.most = 2;
    for (const Outing& o : planned(structures, pairs).outings) {
        CHECK(o.members.size() <= 2);
    }
}

TEST_CASE("the order of the list changes nothing") {
    auto structures = row_of(5);
    const OutingPlan plan = planned(structures, near_by(2000.0));
    const auto ids = visited(plan, structures);
    std::reverse(structures.begin(), structures.end());
    const OutingPlan again = planned(structures, near_by(2000.0));
    CHECK(visited(again, structures) == ids);
    CHECK(again.price == Approx(plan.price).epsilon(1e-12));
}

TEST_CASE("groups put together by hand come first; one closure is set up once") {
    const auto structures = row_of(4);
    OutingRules rules;
    rules.groups = {{"twins", {"R3", "99:R1"}, true}};
    const OutingPlan plan = planned(structures, rules);
    CHECK(plan.outings[0].name == "twins");
    CHECK(visited(plan, structures) == std::vector<std::string>{"R3", "R1", "R0", "R2"});
    rules.groups[0].one_closure = false;
    CHECK(total(plan.cost) <= total(planned(structures, rules).cost));
}

TEST_CASE("twins are found by what their records say, and may stand under one closure") {
    auto list = row_of(4);
    list[1].latitude = list[0].latitude + 0.0002; // about 22 m
    list[0].codes.parallel = 'R';
    list[1].codes.parallel = 'L';
    list[2].codes.parallel = 'L'; // 2 km away
    list[3].codes.parallel = 'N';
    OutingRules rules;
    rules.twins = Length<>(100.0);
    const auto plan = planned(list, rules);
    REQUIRE(plan.outings.size() == 3);
    CHECK(plan.outings.front().name == "R0 and R1");
    CHECK(plan.outings.front().members == std::vector<std::size_t>{0, 1});
    rules.twins_one_closure = true;
    const auto under_one = planned(list, rules);
    CHECK(set_up_time(under_one.outings.front()) < set_up_time(plan.outings.front()));
    CHECK(under_one.price <= plan.price);
    list[1].crosses = "ANOTHER CREEK";
    CHECK(planned(list, rules).outings.size() == 4);
}

TEST_CASE("shifts called off cost their show-up pay, and only people are paid") {
    OutingRules rules = near_by(2000.0);
    const OutingPlan plain = planned(row_of(4), rules);
    CHECK(plain.cost.show_up == 0.0);
    rules.cancelled = 0.1;
    rules.show_up = Time<>(4.0 * 3600.0);
    const OutingPlan plan = planned(row_of(4), rules);
    // Probability x hours x wage: a tenth of four hours to the ten that a shift pays.
    CHECK(plan.cost.show_up == Approx(plan.cost.labour * 0.1 * 4.0 / 10.0));
    CHECK(plan.cost.labour == plain.cost.labour);
    CHECK(plan.cost.equipment == plain.cost.equipment);
    CHECK(plan.price > plain.price);
}

TEST_CASE("the fifth shift of ten hours in a week is overtime") {
    const auto structures = row_of(6);
    OutingRules rules;
    rules.limits.week = Time<>(40.0 * 3600.0);
    const OutingPlan plan = planned(structures, rules);
    REQUIRE(shifts_of(plan) == 6.0); // five in the first week
    double overtime = 0.0;
    for (const Outing& o : plan.outings) {
        for (const Time<>& t : o.overtime) {
            overtime += t.si() / 3600.0;
        }
    }
    CHECK(overtime == Approx(10.0));
    // Half of a plain hour's pay on top, for one shift of six.
    CHECK(plan.cost.overtime == Approx(plan.cost.labour / 6.0 * 0.5));
    CHECK(planned(structures, {}).cost.overtime == 0.0);
}

TEST_CASE("shifts fall on days of work, one a day; dark days are left out where it is asked") {
    const auto structures = row_of(6);
    OutingRules rules;
    rules.first = Date(std::chrono::year(2027) / 12 / 3); // a Friday
    const OutingPlan plan = planned(structures, rules);
    std::vector<Date> days;
    for (const Outing& o : plan.outings) {
        days.insert(days.end(), o.days.begin(), o.days.end());
    }
    REQUIRE(days.size() == 6);
    CHECK(days[0] == *rules.first);
    CHECK(days[1] == Date(std::chrono::year(2027) / 12 / 6));
    CHECK(std::is_sorted(days.begin(), days.end()));
    auto far_north = structures;
    for (Structure& s : far_north) {
        s.latitude = 70.0; // the sun stays down until the middle of January
    }
    rules.daylight = true;
    CHECK(planned(structures, rules).outings[0].days[0] == *rules.first);
    CHECK(planned(far_north, rules).outings[0].days[0] > Date(std::chrono::year(2028) / 1 / 1));
}

TEST_CASE("rules that cannot be are refused") {
    OutingRules unknown;
    unknown.groups = {{"north", {"R9"}, false}};
    CHECK(refused(unknown) == "outing.structure");
    OutingRules twice;
    twice.groups = {{"north", {"R0", "R1"}, false}, {"south", {"R1"}, false}};
    CHECK(refused(twice) == "outing.twice");
    OutingRules backwards = near_by(-1.0);
    CHECK(refused(backwards) == "outing.rules");
    OutingRules standing;
    standing.speed = Speed<>(0.0);
    CHECK(refused(standing) == "outing.rules");
    CHECK(planned({}, {}).outings.empty());
}
