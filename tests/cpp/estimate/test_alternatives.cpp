// Which method: every alternative at a structure with its price, what speaks against it, and the
// choice by weights.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace scupper;
using namespace made_up;

namespace {

using estimate::AlternativeRow;
using estimate::Criteria;
using estimate::PlannedAlternative;

const std::vector<PlannedAlternative>& of_demo() {
    static const auto list = estimate::plan_alternatives(json::demo_job());
    return list;
}

const std::vector<PlannedAlternative>& of_full_clean() {
    static const auto list = estimate::plan_alternatives(full_job());
    return list;
}

const AlternativeRow& row(const std::vector<AlternativeRow>& rows,
                          const std::vector<PlannedAlternative>& list, const std::string& name) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const AlternativeRow& r) {
        return list[r.alternative].alternative.name == name;
    });
    REQUIRE(found != rows.end());
    return *found;
}

AlternativeRow at(const Structure& s, const std::string& name,
                  const std::vector<PlannedAlternative>& list = of_full_clean()) {
    return row(estimate::compare_alternatives(s, list), list, name);
}

Criteria weight(const char* criterion) {
    Criteria weights{};
    weights[static_cast<std::size_t>(index_of(criterion_names, criterion))] = 1.0;
    return weights;
}

std::string recommended(const std::vector<PlannedAlternative>& list, Question question,
                        const Criteria& weights, const Structure& s = counted_overpass()) {
    std::string name;
    for (const AlternativeRow& r : estimate::compare_alternatives(s, list, weights)) {
        if (r.recommended && list[r.alternative].alternative.question == question) {
            CHECK(name.empty());
            name = list[r.alternative].alternative.name;
        }
    }
    return name;
}

std::string joined(const std::vector<std::string>& texts) {
    std::string all;
    for (const std::string& text : texts) {
        all += text + "; ";
    }
    return all;
}

bool mentions(const std::vector<std::string>& texts, const std::string& part) {
    return joined(texts).find(part) != std::string::npos;
}

Job with_site(Job job, std::vector<std::string> words) {
    job.site["every"] = std::move(words);
    return job;
}

} // namespace

TEST_CASE("passes leave what each of them leaves of the rest") {
    CHECK(estimate::share_left(0.65, 2.0) == Approx(0.1225)); // 0.35 x 0.35, by hand
    CHECK(estimate::share_left(0.65, 0.0) == 1.0);
    CHECK(estimate::share_left(1.0, 1.0) == 0.0);
    CHECK(estimate::share_left(0.0, 3.0) == 1.0);
}

TEST_CASE("every alternative has a row at every structure, and every row a reason or a price") {
    for (const auto* list : {&of_demo(), &of_full_clean()}) {
        for (const Structure& s : {overpass(), creek_bridge(), culvert()}) {
            const auto rows = estimate::compare_alternatives(s, *list);
            REQUIRE(rows.size() == json::demo_job().alternatives.size());
            for (const AlternativeRow& r : rows) {
                INFO((*list)[r.alternative].alternative.name);
                CHECK(r.feasible == r.reasons.empty());
                CHECK(r.no_price.empty() == std::isfinite(r.amount[0]));
                CHECK_FALSE((r.recommended && (!r.feasible || !r.no_price.empty())));
                CHECK(r.recommended != r.why.empty());
            }
        }
    }
    CHECK(at(culvert(), "flush_and_vacuum", of_demo()).no_price.find("culvert") !=
          std::string::npos);
}

TEST_CASE("what a row takes is the price of the job with the alternative") {
    const auto rows = estimate::compare_alternatives(counted_overpass(), of_full_clean());
    for (const AlternativeRow& r : rows) {
        const Alternative& a = of_full_clean()[r.alternative].alternative;
        INFO(a.name);
        const auto e = estimate::estimate(counted_overpass(),
                                          estimate::make_plan(with_alternative(full_job(), a)));
        CHECK(r.amount[0] == e.figure("cost.total"));
        CHECK(r.amount[1] == e.figure("hours.labour"));
        CHECK(r.amount[2] == e.figure("hours.on_site"));
        CHECK(r.amount[3] == e.figure("water.volume"));
        CHECK(r.amount[4] == Approx(e.figure("hours.on_site"))); // one stage, one closure
        CHECK(r.shifts == e.figure("shift.count"));
    }
}

TEST_CASE("the least weighted score is recommended, and the weights decide") {
    CHECK(recommended(of_demo(), Question::deck, weight("water")) == "broom_and_pick_up");
    CHECK(recommended(of_demo(), Question::deck, weight("dirt_left")) == "flush_and_vacuum");
    for (const char* criterion : {"cost", "labour", "elapsed", "closure"}) {
        const std::string best = recommended(of_demo(), Question::deck, weight(criterion));
        const auto rows = estimate::compare_alternatives(counted_overpass(), of_demo());
        const auto at = static_cast<std::size_t>(index_of(criterion_names, criterion));
        const double least = row(rows, of_demo(), best).amount[at];
        for (const AlternativeRow& r : rows) {
            const bool rival =
                r.feasible && of_demo()[r.alternative].alternative.question == Question::deck;
            CHECK((!rival || r.amount[at] >= least));
        }
    }
    CHECK(recommended(of_demo(), Question::underside, estimate::usual_weights).empty());
    CHECK(!recommended(of_full_clean(), Question::underside, estimate::usual_weights).empty());
}

TEST_CASE("the scores of what competes have the mean 1, whatever the scale of the weights") {
    Criteria weights{2.0, 1.0, 0.5, 0.25, 3.0, 1.0};
    Criteria tenfold = weights;
    for (double& w : tenfold) {
        w *= 10.0;
    }
    const auto rows = estimate::compare_alternatives(overpass(), of_full_clean(), weights);
    const auto scaled = estimate::compare_alternatives(overpass(), of_full_clean(), tenfold);
    double sum = 0.0;
    int count = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(rows[i].recommended == scaled[i].recommended);
        if (of_full_clean()[i].alternative.question == Question::deck &&
            std::isfinite(rows[i].score)) {
            sum += rows[i].score;
            ++count;
            CHECK(rows[i].score == Approx(scaled[i].score));
        }
    }
    REQUIRE(count == 4);
    CHECK(sum / count == Approx(1.0));
}

TEST_CASE("weights that count nothing or less than nothing are refused") {
    CHECK_THROWS_AS(estimate::compare_alternatives(overpass(), of_demo(), Criteria{}), InputError);
    Criteria negative = estimate::usual_weights;
    negative[0] = -1.0;
    try {
        estimate::compare_alternatives(overpass(), of_demo(), negative);
        FAIL("should have been refused");
    } catch (const InputError& e) {
        CHECK(e.id() == "alternatives.weights");
        CHECK(e.path() == "weights[cost]");
    }
}

TEST_CASE("an alternative without prices keeps its row and names what is missing") {
    Job job = json::demo_job();
    for (Alternative& a : job.alternatives) {
        std::erase_if(a.settings, [](const Setting& s) { return s.key.ends_with(".rate"); });
    }
    const auto list = estimate::plan_alternatives(job);
    const AlternativeRow broom = at(overpass(), "broom_and_pick_up", list);
    CHECK(broom.feasible);
    CHECK(std::isnan(broom.amount[0]));
    CHECK(broom.no_price.find("equipment[power_broom].rate") != std::string::npos);
    CHECK_FALSE(broom.recommended);
    CHECK(std::isfinite(at(overpass(), "hand_spray_and_vacuum", list).amount[0]));
}

TEST_CASE("water below: no ground for a bucket truck, a boat instead; a road below: the reverse") {
    CHECK(mentions(at(creek_bridge(), "bucket_truck").reasons, "no ground"));
    CHECK(at(creek_bridge(), "from_a_boat").feasible);
    CHECK(at(overpass(), "bucket_truck").feasible);
    CHECK(mentions(at(overpass(), "from_a_boat").reasons, "no water below"));
    // Somebody who has been there knows better.
    const auto dry = estimate::plan_alternatives(with_site(full_job(), {"ground_access"}));
    CHECK(at(creek_bridge(), "bucket_truck", dry).feasible);
    const auto shut = estimate::plan_alternatives(with_site(full_job(), {"no_ground_access"}));
    CHECK_FALSE(at(overpass(), "from_the_ground", shut).feasible);
    const auto shoal = estimate::plan_alternatives(with_site(full_job(), {"no_boat"}));
    CHECK(mentions(at(creek_bridge(), "from_a_boat", shoal).reasons, "no boat"));
}

TEST_CASE("an under-bridge unit needs a clear edge, a closed lane and a bridge that bears it") {
    CHECK(at(overpass(), "under_bridge_unit").feasible);
    Structure walk = overpass();
    walk.dimensions.right_walk_width = Length<>(3.0);
    CHECK(mentions(at(walk, "under_bridge_unit").reasons, "wider sidewalk"));
    walk.dimensions.right_walk_width = Length<>(2.0);
    CHECK(at(walk, "under_bridge_unit").feasible);
    const auto fenced = estimate::plan_alternatives(with_site(full_job(), {"edge_blocked"}));
    CHECK(mentions(at(overpass(), "under_bridge_unit", fenced).reasons, "fence"));
    Structure posted = overpass();
    posted.codes.posting = 'P';
    CHECK(mentions(at(posted, "under_bridge_unit").reasons, "posted for 1"));
    Structure footbridge = overpass();
    footbridge.codes.lanes_on = 0;
    CHECK(mentions(at(footbridge, "under_bridge_unit").reasons, "closes none"));
}

TEST_CASE("height decides who reaches the bearings; an assumed height is a doubt") {
    Structure low = overpass();
    low.dimensions.clearance_under = Length<>(4.0);
    low.given.push_back({"girder.depth", certain(1.0, Basis::measured)});
    CHECK(at(low, "from_the_ground").feasible); // 4.2 m + 1.0 m, under 20 ft
    Structure high = low;
    high.dimensions.clearance_under = Length<>(8.0);
    CHECK(mentions(at(high, "from_the_ground").reasons, "extension wand"));
    CHECK(at(high, "bucket_truck").feasible);
    high.dimensions.clearance_under = Length<>(20.0);
    CHECK(mentions(at(high, "bucket_truck").reasons, "height to the bearings"));
    CHECK(at(high, "under_bridge_unit").feasible);
    const AlternativeRow boat = at(creek_bridge(), "from_a_boat"); // no clearance recorded
    CHECK(mentions(boat.doubts, "height to the bearings"));
}

TEST_CASE("full closure is a choice on a quiet road with a way around") {
    Structure quiet = overpass();
    quiet.codes.daily_traffic = 300;
    quiet.dimensions.detour = Length<>(4000.0);
    CHECK(at(quiet, "full_closure_with_detour").feasible);
    Structure busy = quiet;
    busy.codes.daily_traffic = 4000;
    CHECK(mentions(at(busy, "full_closure_with_detour").reasons, "vehicles a day 4,000"));
    Structure remote = quiet;
    remote.dimensions.detour = Length<>(60000.0);
    CHECK(mentions(at(remote, "full_closure_with_detour").reasons, "detour"));
    Structure unknown = quiet;
    unknown.codes.daily_traffic = no_code;
    unknown.dimensions.detour = Length<>(not_recorded);
    const AlternativeRow row = at(unknown, "full_closure_with_detour");
    CHECK(row.feasible);
    CHECK(row.doubts.size() == 2);
    CHECK(std::isfinite(at(busy, "full_closure_with_detour").amount[0])); // its price is shown
}

TEST_CASE("where no wash water may run only the broom is a way to clean the deck") {
    Job job = json::demo_job();
    job.wash_water = WashWater::none;
    const auto list = estimate::plan_alternatives(job);
    CHECK(mentions(at(overpass(), "flush_and_vacuum", list).reasons, "no wash water"));
    CHECK_FALSE(at(overpass(), "hand_spray_and_vacuum", list).feasible);
    CHECK(at(overpass(), "broom_and_pick_up", list).feasible);
    CHECK(recommended(list, Question::deck, estimate::usual_weights).rfind("broom", 0) == 0);
}

TEST_CASE("a broom does not reach beneath an overhanging walk, and its row says so") {
    Structure walk = overpass();
    walk.given.push_back({"gutter_pocket_length", certain(100.0, Basis::measured)});
    CHECK(mentions(at(walk, "broom_and_pick_up").doubts, "does not reach beneath"));
    CHECK_FALSE(mentions(at(walk, "broom_and_pick_up", of_demo()).doubts, "does not reach"));
    CHECK_FALSE(mentions(at(walk, "hand_spray_and_vacuum").doubts, "does not reach"));
    Structure none = overpass();
    none.given.push_back({"gutter_pocket_length", certain(0.0, Basis::measured)});
    CHECK_FALSE(mentions(at(none, "broom_and_pick_up").doubts, "does not reach"));
}

TEST_CASE("an alternative of one's own is an entry like the shipped ones") {
    Job job = json::demo_job();
    Alternative own;
    own.name = "two_rounds_by_hand";
    own.ways = {{"deck_top", "hand_line"}, {"gutter", "hand_line"}};
    own.removes.share =
        make_setting("share", certain(0.99, Basis::given), {"the crew's log", {}, {}});
    own.removes.dirt = {"gutter"};
    job.alternatives.push_back(own);
    const auto list = estimate::plan_alternatives(job);
    CHECK(at(overpass(), "two_rounds_by_hand", list).amount[5] == Approx(0.01));
    CHECK(recommended(list, Question::deck, weight("dirt_left")) == "two_rounds_by_hand");
}
