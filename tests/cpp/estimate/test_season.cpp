#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/season.hpp"

#include <algorithm>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using estimate::Frequency;
using estimate::Round;

namespace {

double figure(const estimate::Year& year, const std::string& key) {
    const auto at = std::find(year.keys.begin(), year.keys.end(), key);
    return year.totals[static_cast<std::size_t>(at - year.keys.begin())];
}

double cost_of(const std::vector<Structure>& structures, const Job& job) {
    double sum = 0.0;
    for (const Structure& s : structures) {
        sum += estimate::estimate(s, estimate::make_plan(job)).figure("cost.total");
    }
    return sum;
}

Date day(int year, int month, int day_of_month) {
    return std::chrono::year(year) / month / day_of_month;
}

std::string refused(const Frequency& frequency) {
    try {
        estimate::rounds_of(full_job(), frequency);
    } catch (const InputError& e) {
        return e.id();
    }
    return "accepted";
}

} // namespace

TEST_CASE("what nobody names is cleaned once a year, in one round") {
    const auto rounds = estimate::rounds_of(json::demo_job(), {});
    REQUIRE(rounds.size() == 1);
    CHECK(rounds[0].per_year == 1.0);
    CHECK(rounds[0].components.size() == 4); // what the demo rinses
    const std::vector<Structure> two{overpass(), creek_bridge()};
    const auto year = estimate::year_of(two, json::demo_job(), {});
    CHECK(figure(year, "cost.total") == Approx(cost_of(two, json::demo_job())).epsilon(1e-9));
}

TEST_CASE("seldom work is done along with frequent work") {
    // Drains three times a year, the deck once, girder ends every other year.
    const Frequency frequency{{"drain", 3.0}, {"girder", 0.5}};
    Job job = json::demo_job();
    job.service["girder"] = "full_clean";
    const auto rounds = estimate::rounds_of(job, frequency);
    REQUIRE(rounds.size() == 3);
    CHECK(rounds[0].per_year == Approx(2.0)); // 3 - 1: drains alone
    CHECK(rounds[0].components == std::vector<std::string>{"drain"});
    CHECK(rounds[1].per_year == Approx(0.5)); // 1 - 0.5: with the deck
    CHECK(rounds[2].per_year == Approx(0.5)); // everything
    CHECK(rounds[2].components.size() == 5);
    const std::vector<Structure> one{overpass()};
    double sum = 0.0;
    for (const Round& r : rounds) {
        sum += r.per_year * cost_of(one, estimate::job_of(job, r));
    }
    CHECK(figure(estimate::year_of(one, job, frequency), "cost.total") == Approx(sum));
}

TEST_CASE("twice as often is twice the year, and never cheaper") {
    const std::vector<Structure> two{overpass(), creek_bridge(), culvert()};
    const Job job = json::demo_job();
    Frequency twice;
    for (const auto& [component, level] : job.service) {
        twice[component] = 2.0;
    }
    const double once = figure(estimate::year_of(two, job, {}), "cost.total");
    CHECK(figure(estimate::year_of(two, job, twice), "cost.total") == Approx(2.0 * once));
    CHECK(figure(estimate::year_of(two, job, {{"drain", 1.5}}), "cost.total") > once);
    CHECK(estimate::year_of(two, job, {}).priced.size() == 2); // the culvert is not washed
}

TEST_CASE("a season's days of work") {
    Calendar calendar; // Monday to Friday
    CHECK(estimate::days_of_work(calendar, day(2027, 3, 1), day(2027, 3, 7)) == 5);
    CHECK(estimate::days_of_work(calendar, day(2027, 3, 1), day(2027, 3, 1)) == 1);
    calendar.holidays = {day(2027, 3, 3)};
    CHECK(estimate::days_of_work(calendar, day(2027, 3, 1), day(2027, 3, 7)) == 4);
    calendar.closed = {{"winter", std::chrono::month(3) / 4, std::chrono::month(3) / 31, {}, {}}};
    CHECK(estimate::days_of_work(calendar, day(2027, 3, 1), day(2027, 3, 31)) == 2);
    CHECK_THROWS_AS(estimate::days_of_work(calendar, day(2027, 3, 2), day(2027, 3, 1)), InputError);
}

TEST_CASE("a year's work against the crews of a season") {
    const std::vector<Structure> two{overpass(), creek_bridge()};
    const auto year = estimate::year_of(two, json::demo_job(), {});
    const auto load = [&](double crews, double lost) {
        return estimate::season_load(year, Calendar{}, day(2027, 4, 5), day(2027, 4, 16), crews,
                                     lost, Time<>(36000.0));
    };
    const auto one = load(1.0, 0.0);
    CHECK(one.days == 10);
    CHECK(one.shifts_there == 10.0);
    CHECK(one.hours_there == 10.0 * 36000.0);
    CHECK(one.hours_needed == Approx(figure(year, "hours.paid")));
    CHECK(one.shifts_needed == Approx(figure(year, "shift.count")));
    CHECK(load(2.0, 0.0).share == Approx(one.share / 2.0));
    CHECK(load(1.0, 0.2).share == Approx(one.share / 0.8));
    CHECK_THROWS_AS(load(0.0, 0.0), InputError);
    CHECK_THROWS_AS(load(1.0, 1.0), InputError);
    CHECK_THROWS_AS(estimate::season_load(year, Calendar{}, day(2027, 4, 3), day(2027, 4, 4), 1.0,
                                          0.0, Time<>(36000.0)),
                    InputError);
}

TEST_CASE("frequencies that cannot be are refused") {
    CHECK(refused({{"drians", 2.0}}) == "season.component");
    CHECK(refused({{"drain", 0.0}}) == "season.frequency");
    CHECK(refused({{"drain", -1.0}}) == "season.frequency");
}
