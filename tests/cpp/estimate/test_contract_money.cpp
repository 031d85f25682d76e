// Terms of a contract in a job: hauling by distance, escalation, show-up pay; payments and varied
// quantities beside the price.
#include "catch.hpp"
#include "estimate/structures.hpp"
#include "estimate/worked.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <array>
#include <cmath>
#include <numeric>

using namespace scupper;
using namespace made_up;

namespace test_contract_money {

namespace {

using Keys = std::vector<std::pair<const char*, const char*>>;

Job with(const Keys& keys) {
    Job job = json::demo_job();
    for (const auto& [key, value] : keys) {
        job = json::with_input(job, key, value);
    }
    return job;
}

const Keys hauling{{"mobilization.pieces", "2"},
                   {"mobilization.distance", "\"30 mi\""},
                   {"mobilization.price", "\"4 USD/mi\""},
                   {"mobilization.fixed", "\"60 USD\""},
                   {"mobilization.structures", "3"}};
const Keys rising{{"escalation.rate", "0.04"}, {"escalation.time", "\"1.5 year\""}};
const Keys weather{{"shift.cancelled", "0.1"}, {"shift.show_up_time", "\"4 h\""}};

estimate::Estimate priced(const Job& job) {
    return estimate::estimate(overpass(), estimate::make_plan(job));
}

double lines_sum(const estimate::Estimate& e) {
    double sum = 0.0;
    for (const estimate::PricedLine& line : estimate::cost_lines(e)) {
        sum += line.amount;
    }
    return sum;
}

Terms monthly(double share) {
    Terms terms;
    terms.payment_interval = Time<>(7.0 * factor::day);
    terms.retainage = share;
    terms.retainage_release = Time<>(20.0 * factor::day);
    terms.interest = 0.06;
    return terms;
}

} // namespace

TEST_CASE("terms that a job does not name cost nothing and have no line") {
    const auto e = priced(json::demo_job());
    for (const char* key : {"cost.moving", "cost.escalation", "cost.show_up", "hours.show_up"}) {
        CHECK(e.figure(key) == 0.0);
    }
}

TEST_CASE("hauling by distance is a line of its own, shared by the structures of the contract") {
    const auto e = priced(with(hauling));
    // 2 (2 x 30 mi x 4 USD/mi + 60 USD) / 3
    CHECK(e.figure("cost.moving") == Approx(200.0));
    CHECK(e.figure("cost.direct") - priced(json::demo_job()).figure("cost.direct") ==
          Approx(200.0));
    CHECK(lines_sum(e) == Approx(e.figure("cost.total")));
}

TEST_CASE("escalation multiplies what is priced at the rates' date") {
    const auto before = priced(json::demo_job());
    const auto e = priced(with(rising));
    const double risen = std::pow(1.04, 1.5);
    CHECK(e.figure("cost.direct") == Approx(before.figure("cost.direct") * risen));
    CHECK(e.figure("cost.escalation") == Approx(before.figure("cost.direct") * (risen - 1.0)));
    CHECK(lines_sum(e) == Approx(e.figure("cost.total")));
    CHECK(estimate::explain(e, "cost.escalation").steps.front().value ==
          e.figure("cost.escalation"));
}

TEST_CASE("the time of the escalation follows from the dates of the terms") {
    Job job = json::with_input(json::demo_job(), "escalation.rate", "[0.01, 0.04, 0.06]");
    CHECK_THROWS_AS(estimate::make_plan(job), InputError); // neither time nor dates
    job.terms.rates_of = work::parse_date("2026-01-15", "test");
    job.terms.midpoint = work::parse_date("2027-01-15", "test");
    const auto e = priced(job);
    const auto plan = e.plan;
    CHECK(plan->base[plan->inputs.at("escalation.time", "test")].guess.likely == factor::year);
    const auto ranges = estimate::ranges(e, {});
    for (const estimate::RangedFigure& f : ranges) {
        if (f.key == "cost.escalation") {
            CHECK(f.low < f.high); // it is drawn
        }
    }
}

TEST_CASE("a part of terms that say something only together is refused") {
    CHECK_THROWS_AS(estimate::make_plan(with({{"shift.cancelled", "0.1"}})), InputError);
    CHECK_THROWS_AS(estimate::make_plan(with({{"mobilization.pieces", "2"}})), InputError);
}

TEST_CASE("shifts called off pay their show-up hours as expected cost") {
    const auto e = priced(with(weather));
    const double hours = e.figure("shift.count") * 0.1 * 4.0 * factor::hour;
    CHECK(e.figure("hours.show_up") == Approx(hours));
    double lines = 0.0;
    for (const estimate::PricedLine& line : estimate::cost_lines(e)) {
        lines += line.operation == "show_up" ? line.amount : 0.0;
    }
    CHECK(lines > 0.0);
    CHECK(lines == Approx(e.figure("cost.show_up")));
    CHECK(lines_sum(e) == Approx(e.figure("cost.total")));
    CHECK(e.figure("hours.paid") == priced(json::demo_job()).figure("hours.paid"));
}

TEST_CASE("payments hold back the share and give it back, and their sum is the price") {
    Job job = json::demo_job();
    job.terms = monthly(0.1);
    const auto e = priced(job);
    const estimate::Payments p = estimate::cash_flow(e);
    const double total = e.figure("cost.total");
    const auto sum = [](const std::vector<double>& v) {
        return std::accumulate(v.begin(), v.end(), 0.0);
    };
    CHECK(sum(p.flow.earned) == Approx(total));
    CHECK(sum(p.flow.paid) == Approx(total));
    CHECK(sum(p.flow.kept) == Approx(0.1 * total));
    CHECK(p.flow.outstanding.back() == 0.0);
    CHECK(p.flow.waiting_cost > 0.0);
    // 20 days are three more weeks: 0.1 A held for 3 of them, one shift's work in the first week
    const double week = std::pow(1.06, 7.0 / 365.0);
    if (p.flow.earned.size() == 4) {
        CHECK(p.flow.waiting_cost == Approx(0.1 * total * (1.0 / week - std::pow(week, -4.0))));
    }
    CHECK(priced(json::demo_job()).figure("cost.total") == total); // beside the price
}

TEST_CASE("payments of a calendar begin on the first day of work") {
    Job job = json::demo_job();
    job.terms = monthly(0.05);
    job.notices.clear();
    job.calendar.asked = work::parse_date("2027-03-01", "test"); // a Monday
    CHECK(estimate::cash_flow(priced(job)).first == job.calendar.asked);
}

TEST_CASE("beyond the limit a varied quantity is paid at the renegotiated price") {
    Job job = json::demo_job();
    job.terms.variation_limit = 0.25;
    job.terms.price_over = 0.8;
    job.terms.price_under = 1.3;
    const auto e = priced(job);
    const std::array<double, 4> shares{0.5, 1.0, 1.25, 1.5};
    // 0.5 x 1.3; 1; 1.25; 1.25 + 0.25 x 0.8
    const std::array<double, 4> expected{0.65, 1.0, 1.25, 1.45};
    const auto rows = estimate::quantity_variation(e, shares);
    REQUIRE(!rows.empty());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(rows[i].paid == Approx(expected[i % 4] * rows[i].planned));
        CHECK(rows[i].price == Approx(e.figure("cost.total") + rows[i].paid - rows[i].planned));
    }
    const std::array<double, 1> below{-0.1};
    CHECK_THROWS_AS(estimate::quantity_variation(e, below), InputError);
}

TEST_CASE("without a clause quantities are paid in proportion") {
    const std::array<double, 2> shares{0.5, 2.0};
    for (const auto& row : estimate::quantity_variation(priced(json::demo_job()), shares)) {
        CHECK(row.paid == Approx(row.share * row.planned));
    }
}

TEST_CASE("terms and frequency of a document come back from what is written") {
    const Job job = json::read_job(
        R"({"scupper_job": 1, "frequency": {"drain": 2, "deck_top": "every 2 years"},
        "calendar": {"daylight": true}, "terms": {"rates_of": "2026-01-15",
        "midpoint": "2027-06-01", "payment_interval": "14 day", "retainage": "5 %",
        "retainage_limit": 0.05, "retainage_release": "60 day", "interest": "6 %",
        "variation_limit": "25 %", "price_over": 0.9, "price_under": 1.1}})",
        "test", json::shipped_rates());
    CHECK(job.frequency == std::map<std::string, double>{{"drain", 2.0}, {"deck_top", 0.5}});
    CHECK(job.calendar.daylight);
    CHECK(job.terms.retainage == Approx(0.05));
    CHECK(job.terms.payment_interval.si() == 14.0 * factor::day);
    const Job again = json::read_job(json::write_job(job), "test", RateBook{});
    CHECK(json::write_job(again) == json::write_job(job));
    CHECK(again.terms.midpoint == job.terms.midpoint);
}

TEST_CASE("terms and frequencies that cannot be are refused") {
    for (const char* part :
         {R"("terms": {"retainage": 2})", R"("terms": {"midpoint": "soon"})",
          R"("terms": {"rates_of": "2027-01-01", "midpoint": "2026-01-01"})",
          R"("terms": {"payment_interval": "0 s"})", R"("terms": {"retained": 0.1})",
          R"("frequency": {"drain": 0})", R"("frequency": {"drain": "often"})",
          R"("frequency": {"drain": "every 0 years"})", R"("calendar": {"daylight": "yes"})",
          R"("frequency": {"drains": 1})"}) {
        INFO(part);
        CHECK_THROWS_AS(json::read_job(R"({"scupper_job": 1, )" + std::string(part) + "}", "test",
                                       json::shipped_rates()),
                        Error);
    }
}

} // namespace test_contract_money
