#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/work/shift_layout.hpp"

#include <map>
#include <numeric>
#include <set>
#include <string>
#include <vector>

using namespace scupper;
using work::Shift;
using work::ShiftLayout;
using work::Site;
using work::Spent;

namespace test_shift_layout {

namespace {

Time<> hours(double h) {
    return Time<>(3600.0 * h);
}

/// Ten hours, of which 1 h travel, 0.5 h briefing and 0.5 h meal: 8 h on site.
Shift<double> ten_hours(double overtime = 0.0, double window = 24.0) {
    return {.length = hours(10.0),
            .travel = hours(1.0),
            .briefing = hours(0.5),
            .meal = hours(0.5),
            .overtime = hours(overtime),
            .window = hours(window),
            .closure = hours(0.0)};
}

Site site(const std::string& name, double work, double set_up = 0.5, double removal = 0.25) {
    return {.name = name,
            .parties = {{"", {{"wash", hours(work)}}}},
            .set_up = hours(set_up),
            .removal = hours(removal),
            .move = hours(0.25)};
}

double spent(const ShiftLayout& layout, Spent what, std::string_view party = "") {
    return work::spent_times(layout, party)[static_cast<std::size_t>(what)].si() / 3600.0;
}

double sum(const std::vector<Time<>>& times) {
    double all = 0.0;
    for (const Time<>& t : times) {
        all += t.si() / 3600.0;
    }
    return all;
}

double all_spent(const ShiftLayout& layout, std::string_view party = "") {
    const auto times = work::spent_times(layout, party);
    return std::accumulate(times.begin(), times.end(), 0.0,
                           [](double s, const Time<>& t) { return s + t.si() / 3600.0; });
}

/// Whether a party's segments follow each other without gap from the start to the paid end.
bool is_gapless(const ShiftLayout& layout) {
    std::map<std::pair<std::size_t, std::string>, double> end;
    for (const auto& s : layout.segments) {
        double& last = end[{s.shift, s.party}];
        if (std::abs(s.start.si() - last) > 1e-3 || !(s.end > s.start)) {
            return false;
        }
        last = s.end.si();
    }
    for (const auto& [key, last] : end) {
        if (std::abs(last - layout.paid[key.first].si()) > 1e-3) {
            return false;
        }
    }
    return true;
}

} // namespace

TEST_CASE("the hours of a shift add up, whatever the work") {
    for (const double work : {0.5, 3.0, 7.2, 7.25, 7.3, 9.0, 20.0, 41.7}) {
        for (const double overtime : {0.0, 1.0}) {
            INFO(work << " h, overtime " << overtime);
            const auto layout =
                work::lay_out_shifts(std::vector{site("A", work)}, ten_hours(overtime));
            CHECK(is_gapless(layout));
            CHECK(spent(layout, Spent::work) == Approx(work));
            CHECK(all_spent(layout) == Approx(sum(layout.paid)));
            CHECK(sum(layout.paid) ==
                  Approx(10.0 * static_cast<double>(layout.paid.size()) + sum(layout.overtime)));
        }
    }
}

TEST_CASE("one structure in shifts of its own takes what the price counts") {
    for (const double work : {0.5, 3.0, 7.2, 7.3, 9.0, 20.0, 41.7}) {
        for (const double overtime : {0.0, 1.0}) {
            INFO(work << " h, overtime " << overtime);
            Shift<double> rules = ten_hours(overtime);
            const auto layout = work::lay_out_shifts(std::vector{site("A", work)}, rules);
            rules.closure = hours(0.75);
            const Count<> closures =
                work::closures(hours(work), rules, work::ShiftSharing::whole, Count<>(1.0));
            const Time<> on_site = hours(work) + number(closures) * rules.closure;
            const auto priced =
                work::price_outing(on_site, rules, work::ShiftSharing::whole, Count<>(1.0));
            CHECK(static_cast<double>(layout.paid.size()) == priced.shifts);
            CHECK(sum(layout.paid) == Approx(priced.paid.si() / 3600.0));
            CHECK(sum(layout.overtime) == Approx(priced.overtime.si() / 3600.0).margin(1e-5));
            CHECK(spent(layout, Spent::travel) == Approx(priced.travel.si() / 3600.0));
            CHECK(spent(layout, Spent::briefing) == Approx(priced.briefing.si() / 3600.0));
            CHECK(spent(layout, Spent::meal) == Approx(priced.meal.si() / 3600.0));
            CHECK(spent(layout, Spent::idle) + spent(layout, Spent::wait) ==
                  Approx(priced.idle.si() / 3600.0).margin(1e-5));
        }
    }
}

TEST_CASE("the window bounds the time on site, and the rest is a wait") {
    const auto layout =
        work::lay_out_shifts(std::vector{site("A", 5.0)}, ten_hours(0.0, 7.0)); // 6.5 h on site
    CHECK(layout.paid.size() == 1);
    CHECK(spent(layout, Spent::wait) == Approx(1.5));
    CHECK(all_spent(layout) == Approx(10.0));
    CHECK(work::lay_out_shifts(std::vector{site("A", 5.8)}, ten_hours(0.0, 7.0)).paid.size() == 2);
}

TEST_CASE("several small structures share a shift, one that fits is not split") {
    // 8 h on site: A and B take 0.75 + 2 h each and 0.25 h between; C would be split.
    const std::vector<Site> three{site("A", 2.0), site("B", 2.0), site("C", 3.0)};
    const auto layout = work::lay_out_shifts(three, ten_hours());
    REQUIRE(layout.paid.size() == 2);
    CHECK(layout.stops == std::vector<std::size_t>{2, 1});
    CHECK(spent(layout, Spent::travel) == Approx(2.0 + 0.25));
    CHECK(spent(layout, Spent::set_up) == Approx(1.5));
    const std::vector<Site> alone{site("A", 2.0)};
    const auto one = work::lay_out_shifts(alone, ten_hours());
    CHECK(sum(layout.paid) < 3.0 * sum(one.paid));
}

TEST_CASE("twins under one closure set it up once") {
    std::vector<Site> twins{site("A", 2.0), site("B", 2.0)};
    const auto apart = work::lay_out_shifts(twins, ten_hours());
    twins[1].closure_stands = true;
    const auto together = work::lay_out_shifts(twins, ten_hours());
    CHECK(spent(apart, Spent::set_up) == Approx(1.0));
    CHECK(spent(together, Spent::set_up) == Approx(0.5));
    CHECK(spent(together, Spent::removal) == Approx(0.25));
    CHECK(together.segments.back().end == hours(10.0));
    std::string order;
    for (const auto& s : together.segments) {
        order += s.spent == Spent::removal ? "r" + s.site : s.spent == Spent::work ? s.site : "";
    }
    CHECK(order.back() == 'B'); // it comes down at the second
    CHECK(order.substr(0, 1) == "A");
}

TEST_CASE("parties work side by side, the faster stands by") {
    Site both = site("A", 0.0);
    both.parties = {{"deck", {{"wash", hours(2.0)}, {"drains", hours(1.0)}}},
                    {"under", {{"caps", hours(5.0)}}}};
    const auto layout = work::lay_out_shifts(std::vector{both}, ten_hours());
    CHECK(is_gapless(layout));
    CHECK(spent(layout, Spent::work, "deck") == Approx(3.0));
    CHECK(spent(layout, Spent::standby, "deck") == Approx(2.0));
    CHECK(spent(layout, Spent::standby, "under") == Approx(0.0));
    CHECK(all_spent(layout, "deck") == Approx(all_spent(layout, "under")));
    CHECK(all_spent(layout, "nobody") == 0.0);
}

TEST_CASE("a party that is done stays away from the next shift") {
    Site both = site("A", 0.0);
    both.parties = {{"deck", {{"wash", hours(2.0)}}}, {"under", {{"caps", hours(12.0)}}}};
    const auto layout = work::lay_out_shifts(std::vector{both}, ten_hours());
    CHECK(all_spent(layout, "under") == Approx(20.0));
    CHECK(all_spent(layout, "deck") == Approx(10.0));
}

TEST_CASE("a closure that takes the whole shift is refused by name") {
    try {
        work::lay_out_shifts(std::vector{site("A", 1.0), site("B", 1.0, 6.0, 2.5)}, ten_hours());
        FAIL("was accepted");
    } catch (const InputError& e) {
        CHECK(e.id() == "work.no_time");
        CHECK(e.path() == "B");
    }
    CHECK(work::lay_out_shifts({}, ten_hours()).paid.empty());
}

} // namespace test_shift_layout
