#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;
using simulate::Belief;
using simulate::Evidence;
using simulate::JobLog;
using simulate::Learned;
using simulate::LearnedRate;
using simulate::LogRow;
using simulate::Observed;
using simulate::Pooled;

namespace {

const Belief belief{.mean = 1.0, .weight = 1.5, .freedom = 6.0, .scale = 0.2};

std::vector<Observed> of_crew(const std::vector<double>& logs, const std::string& crew = "",
                              const std::string& agency = "") {
    std::vector<Observed> jobs;
    for (const double y : logs) {
        jobs.push_back({y, crew, agency, jobs.size()});
    }
    return jobs;
}

/// Logarithm of the density of level and variance, without its constant.
/// Source: Gelman et al., Bayesian Data Analysis, 3rd edition (2013), 3.3 (from memory)
double log_density(const Belief& b, double level, double variance) {
    const double apart = level - b.mean;
    return -(b.freedom / 2.0 + 1.5) * std::log(variance) -
           (b.freedom * b.scale + b.weight * apart * apart) / (2.0 * variance);
}

double log_likelihood(const std::vector<double>& logs, double level, double variance) {
    double sum = 0.0;
    for (const double y : logs) {
        sum -= 0.5 * std::log(variance) + (y - level) * (y - level) / (2.0 * variance);
    }
    return sum;
}

/// Solves a small system by elimination.
std::vector<double> solve(std::vector<std::vector<double>> a, std::vector<double> b) {
    const std::size_t n = b.size();
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t i = k + 1; i < n; ++i) {
            const double by = a[i][k] / a[k][k];
            for (std::size_t j = k; j < n; ++j) {
                a[i][j] -= by * a[k][j];
            }
            b[i] -= by * b[k];
        }
    }
    for (std::size_t k = n; k-- > 0;) {
        for (std::size_t j = k + 1; j < n; ++j) {
            b[k] -= a[k][j] * b[j];
        }
        b[k] /= a[k][k];
    }
    return b;
}

double normal(std::mt19937_64& random) {
    return normal_quantile((static_cast<double>(random() >> 11) + 0.5) * 0x1p-53);
}

inventory::Inventory invented() {
    inventory::Inventory inv;
    inv.structures = {counted_overpass(), creek_bridge(), culvert()};
    inv.reindex();
    return inv;
}

LogRow row_of(std::uint64_t line, const std::string& structure, const std::string& operation) {
    LogRow row;
    row.line = line;
    row.structure = structure;
    row.operation = operation;
    row.crew = "north";
    row.date = "2026-06-0" + std::to_string(1 + line % 9);
    return row;
}

double figure(const char* key) {
    const auto est = estimate::estimate(counted_overpass(), demo_plan());
    return est.figures[estimate::figure_place_of(*demo_plan(), key)];
}

/// Jobs at the overpass that took so many times as long as the job says.
JobLog log_of(const std::vector<double>& factors, const std::string& operation) {
    JobLog log;
    log.name = "logs/season.csv";
    const double hours = figure(("operation[" + operation + "].time").c_str());
    for (const double f : factors) {
        log.rows.push_back(row_of(++log.lines, "Y1", operation));
        log.rows.back().hours = f * hours;
    }
    return log;
}

const LearnedRate& rate_of(const Learned& learned, const std::string& key) {
    const auto at = std::find_if(learned.rates.begin(), learned.rates.end(),
                                 [&](const LearnedRate& r) { return r.key == key; });
    REQUIRE(at != learned.rates.end());
    return *at;
}

double rate_of_job(const std::string& key) {
    return demo_plan()->base[demo_plan()->inputs.at(key, "")].guess.likely;
}

const std::string drain_time = "operation[drain_free].time_per_unit";

} // namespace

TEST_CASE("an update is Bayes' rule: after = before times likelihood, whatever level and spread") {
    const std::vector<double> logs{0.7, 1.9, 1.4, 0.2};
    const Belief after = simulate::updated(belief, simulate::evidence_of(logs));
    const auto constant = [&](double level, double variance) {
        return log_density(after, level, variance) - log_density(belief, level, variance) -
               log_likelihood(logs, level, variance);
    };
    const double expected = constant(1.0, 0.3);
    for (const auto& [level, variance] : {std::pair{0.0, 0.1}, {1.2, 0.5}, {3.0, 2.0}}) {
        CHECK(constant(level, variance) == Approx(expected).margin(1e-12));
    }
}

TEST_CASE("nothing seen changes nothing; much seen is the sample; two steps are one") {
    CHECK(simulate::updated(belief, {}).mean == belief.mean);
    const std::vector<double> first{0.4, 0.6, 0.9}, second{2.0, 1.1}, all{0.4, 0.6, 0.9, 2.0, 1.1};
    const Belief once = simulate::updated(belief, simulate::evidence_of(all));
    const Belief twice = simulate::updated(simulate::updated(belief, simulate::evidence_of(first)),
                                           simulate::evidence_of(second));
    CHECK(twice.mean == Approx(once.mean).epsilon(1e-14));
    CHECK(twice.weight == once.weight);
    CHECK(twice.freedom == once.freedom);
    CHECK(twice.scale == Approx(once.scale).epsilon(1e-13));
    std::mt19937_64 random(7);
    std::vector<double> many(20000);
    std::generate(many.begin(), many.end(), [&] { return 2.0 + 0.4 * normal(random); });
    const Evidence seen = simulate::evidence_of(many);
    const Belief after = simulate::updated(belief, seen);
    CHECK(after.mean == Approx(seen.mean).epsilon(1e-4));
    CHECK(after.variance() == Approx(seen.squares / (seen.weight - 1.0)).epsilon(2e-3));
}

TEST_CASE("a belief has the mean and the spread of its value, and comes back as that value") {
    for (const ThreePoint guess :
         {ThreePoint{.low = 20.0, .likely = 40.0, .high = 90.0},
          ThreePoint{.low = 0.0, .likely = 1.0, .high = 3.0, .family = Family::triangular},
          ThreePoint{.low = 2.0,
          .likely = 3.0,
          .high = 4.0,
          .family = Family::uniform,
          .meaning = Meaning::p10_p90}}) {
        Uncertain value;
        value.guess = guess;
        value.shared_share = 0.4;
        const Belief b = simulate::belief_of(value);
        const double variance = b.variance() * (1.0 + 1.0 / b.weight);
        CHECK(std::exp(b.mean + variance / 2.0) == Approx(guess.mean()).epsilon(1e-12));
        CHECK(std::sqrt(std::expm1(variance)) == Approx(guess.sd() / guess.mean()).epsilon(1e-12));
        CHECK(1.0 / b.weight / (1.0 + 1.0 / b.weight) == Approx(0.4).epsilon(1e-12));
        const ThreePoint same = simulate::restated(guess, b.mean, std::sqrt(variance));
        CHECK(same.low == Approx(guess.low).epsilon(1e-9));
        CHECK(same.likely == Approx(guess.likely).epsilon(1e-9));
        CHECK(same.high == Approx(guess.high).epsilon(1e-9));
        for (const double sd : {0.05, 0.3}) {
            const ThreePoint changed = simulate::restated(guess, 2.0, sd);
            CHECK(changed.mean() == Approx(std::exp(2.0 + sd * sd / 2.0)).epsilon(1e-9));
            CHECK(changed.sd() / changed.mean() ==
                  Approx(std::sqrt(std::expm1(sd * sd))).epsilon(1e-6));
            CHECK((changed.family == guess.family) == (guess.low > 0.0)); // 0 stays 0: too wide
        }
    }
    CHECK(simulate::restated({.low = 1.0, .likely = 2.0, .high = 3.0}, 0.0, 1.5).family ==
          Family::lognormal);
    CHECK_THROWS_AS(simulate::belief_of(certain(0.0, Basis::given)), InputError);
}

TEST_CASE("one crew is the textbook; several are conditioned as one normal vector") {
    const std::vector<double> logs{0.4, 0.6, 0.9, 2.0, 1.1};
    const Belief once = simulate::updated(belief, simulate::evidence_of(logs));
    const Pooled one = simulate::pooled(belief, of_crew(logs, "north"), {"north", ""});
    CHECK(one.mean == Approx(once.mean).epsilon(1e-13));
    CHECK(one.factor == Approx(1.0 / once.weight).epsilon(1e-13));
    CHECK(one.level.scale == Approx(once.scale).epsilon(1e-13));
    CHECK(one.gain == Approx(5.0).epsilon(1e-12));
    CHECK(one.share == Approx(5.0 / 6.5).epsilon(1e-12));

    std::vector<Observed> jobs = of_crew({0.4, 0.6, 0.9}, "a", "state");
    for (const auto& more : {of_crew({2.0, 2.2}, "b", "state"), of_crew({1.4}, "a", "county"),
                             of_crew({3.0, 2.6}, "c", "county")}) {
        jobs.insert(jobs.end(), more.begin(), more.end());
    }
    const Pooled p = simulate::pooled(belief, jobs, {"b", "state"});
    CHECK(p.crews == 4);
    CHECK(p.own_jobs == 2);
    const auto covariance = [&](const Observed& x, const Observed& y) {
        const bool agency = x.agency == y.agency;
        return 1.0 / belief.weight + (agency ? p.between_agencies : 0.0) +
               (agency && x.crew == y.crew ? p.between_crews : 0.0);
    };
    const Observed asked{0.0, "b", "state"};
    std::vector<std::vector<double>> v;
    std::vector<double> apart, with;
    for (const Observed& x : jobs) {
        v.emplace_back();
        for (const Observed& y : jobs) {
            v.back().push_back(covariance(x, y) + (&x == &y ? 1.0 : 0.0));
        }
        apart.push_back(x.log - belief.mean);
        with.push_back(covariance(asked, x));
    }
    const std::vector<double> a = solve(v, apart), c = solve(v, with);
    double mean = belief.mean, factor = covariance(asked, asked), squares = 0.0;
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        mean += with[i] * a[i];
        factor -= with[i] * c[i];
        squares += apart[i] * a[i];
    }
    CHECK(p.mean == Approx(mean).epsilon(1e-11));
    CHECK(p.factor == Approx(factor).epsilon(1e-11));
    CHECK(p.level.freedom * p.level.scale ==
          Approx(belief.freedom * belief.scale + squares).epsilon(1e-11));
    CHECK(p.gain == Approx(1.0 / factor - 1.0 / covariance(asked, asked)).epsilon(1e-10));
    const Pooled any = simulate::pooled(belief, jobs);
    CHECK(any.gain == Approx(any.level.weight - belief.weight).epsilon(1e-12));
    CHECK(any.factor > 1.0 / any.level.weight); // a crew to come may differ
    std::reverse(jobs.begin(), jobs.end());
    CHECK(simulate::pooled(belief, jobs, {"b", "state"}).mean == p.mean);
}

TEST_CASE("known rates come back from simulated logs, and intervals hold what they promise") {
    std::mt19937_64 random(11);
    int level_held = 0, job_held = 0;
    const int logs = 2000;
    for (int k = 0; k < logs; ++k) {
        double chi2 = 0.0;
        for (int i = 0; i < 6; ++i) {
            const double z = normal(random);
            chi2 += z * z;
        }
        const double sd = std::sqrt(belief.freedom * belief.scale / chi2);
        const double level = belief.mean + sd / std::sqrt(belief.weight) * normal(random);
        std::vector<double> jobs(8);
        std::generate(jobs.begin(), jobs.end(), [&] { return level + sd * normal(random); });
        const double next = level + sd * normal(random);
        const Pooled p = simulate::pooled(belief, of_crew(jobs));
        level_held += p.level_quantile(0.1) < level && level < p.level_quantile(0.9) ? 1 : 0;
        job_held += p.job_quantile(0.1) < next && next < p.job_quantile(0.9) ? 1 : 0;
    }
    CHECK(level_held / double(logs) == Approx(0.8).margin(0.03));
    CHECK(job_held / double(logs) == Approx(0.8).margin(0.03));

    // four crews about a level that is a third above what was believed
    double bias = 0.0;
    int crew_held = 0;
    for (int k = 0; k < 300; ++k) {
        std::vector<Observed> jobs;
        double own = 0.0;
        for (const char* crew : {"a", "b", "c", "d"}) {
            const double crew_level = belief.mean + 0.29 + 0.2 * normal(random);
            own = crew_level; // of the last
            for (int i = 0; i < 15; ++i) {
                jobs.push_back({crew_level + 0.4 * normal(random), crew, "", jobs.size()});
            }
        }
        const Pooled all = simulate::pooled(belief, jobs);
        bias += (all.mean - belief.mean - 0.29) / 300.0;
        const Pooled d = simulate::pooled(belief, jobs, {"d", ""});
        crew_held += d.level_quantile(0.1) < own && own < d.level_quantile(0.9) ? 1 : 0;
    }
    CHECK(std::fabs(bias) < 0.06); // shrunk by a belief worth 1.5 jobs
    CHECK(crew_held / 300.0 == Approx(0.8).margin(0.08));
}

TEST_CASE("what lies far out is marked, and counts unless it is left out") {
    std::vector<Observed> jobs = of_crew({1.0, 1.1, 0.9, 1.05, 0.95, 3.3});
    simulate::mark_outliers(jobs);
    CHECK(std::count_if(jobs.begin(), jobs.end(), [](const Observed& o) { return o.far_out; }) ==
          1);
    CHECK(jobs.back().far_out);
    CHECK(jobs.back().counted);
    std::vector<Observed> few = of_crew({1.0, 1.1, 9.0});
    simulate::mark_outliers(few);
    CHECK_FALSE(few.back().far_out);
}

TEST_CASE("a log teaches the time per unit it was worked at, and the price follows") {
    const inventory::Inventory inv = invented();
    std::vector<double> factors(40, 1.5);
    const Learned learned = simulate::learn(log_of(factors, "drain_free"), demo_plan(), inv);
    CHECK(learned.used == 40);
    CHECK(learned.faults.empty());
    const LearnedRate& rate = rate_of(learned, drain_time);
    CHECK(rate.learned);
    const double t = demo_plan()->base_values[demo_plan()->inputs.at(drain_time, "")];
    CHECK(std::exp(rate.jobs[3].log) == Approx(1.5 * t).epsilon(1e-12));
    CHECK(rate.after.guess.mean() / t == Approx(1.5).epsilon(0.03));
    CHECK(rate.after.guess.sd() < rate.before.guess.sd());
    CHECK(rate.pooled.gain == Approx(40.0).epsilon(1e-9));
    const RateBook book = simulate::rates_of(learned);
    REQUIRE(book.settings.size() == 1);
    CHECK(book.settings[0].origin->source == "learned from 40 jobs of season.csv");
    const Job job = json::with_rates(json::demo_job(), book);
    const auto est = estimate::estimate(counted_overpass(), estimate::make_plan(job));
    const std::size_t at = estimate::figure_place_of(*est.plan, "operation[drain_free].time");
    const double ratio = rate.after.guess.mean() / t;
    CHECK(est.figures[at] == Approx(figure("operation[drain_free].time") * ratio).epsilon(1e-9));
    CHECK(est.figures[estimate::figure_place_of(*est.plan, "cost.total")] > figure("cost.total"));
}

TEST_CASE("too few jobs keep the old value to the bit and say so") {
    const inventory::Inventory inv = invented();
    const Learned learned =
        simulate::learn(log_of({1.5, 1.4, 1.6, 1.5}, "drain_free"), demo_plan(), inv);
    const LearnedRate& rate = rate_of(learned, drain_time);
    CHECK_FALSE(rate.learned);
    CHECK(rate.after.guess.likely == rate.before.guess.likely);
    CHECK(rate.after.guess.high == rate.before.guess.high);
    CHECK(rate.reason == "kept: 4 jobs, at least 5 are asked for");
    CHECK(simulate::rates_of(learned).settings.empty());
    simulate::LearningSettings other{.whose = {"south", ""}};
    const Learned nobody =
        simulate::learn(log_of(std::vector<double>(9, 1.2), "drain_free"), demo_plan(), inv, other);
    CHECK(rate_of(nobody, drain_time).reason == "kept: 0 jobs, at least 5 are asked for");
    other.least_gain = std::nan("");
    CHECK_THROWS_AS(simulate::learn({}, demo_plan(), inv, other), InputError);
    other = {};
    other.least_jobs = 0;
    CHECK_THROWS_AS(simulate::learn({}, demo_plan(), inv, other), InputError);
}

TEST_CASE("water and whole visits teach their own inputs") {
    const inventory::Inventory inv = invented();
    JobLog log = log_of(std::vector<double>(6, 1.0), "deck_hand_line");
    for (LogRow& row : log.rows) {
        row.water = 0.8 * figure("operation[deck_hand_line].water");
    }
    const double trips = figure("operation[refill].time") + figure("operation[dump].time");
    double rated = 0.0;
    for (const estimate::PlannedOperation& op : demo_plan()->operations) {
        rated += is_rated(op.timing) ? figure(("operation[" + op.name + "].time").c_str()) : 0.0;
    }
    for (int i = 0; i < 6; ++i) {
        log.rows.push_back(row_of(++log.lines, "Y1", ""));
        log.rows.back().debris_volume = 1.6 * figure("debris.volume");
        log.rows.back().hours = trips + 1.2 * rated;
    }
    const Learned learned = simulate::learn(log, demo_plan(), inv);
    CHECK(learned.faults.empty());
    const std::string share = "operation[deck_hand_line].trigger_share";
    const double stated = demo_plan()->base_values[demo_plan()->inputs.at(share, "")];
    CHECK(std::exp(rate_of(learned, share).jobs[0].log) == Approx(0.8 * stated).epsilon(1e-9));
    const LearnedRate& dirt = rate_of(learned, "debris");
    CHECK(std::exp(dirt.jobs[0].log) == Approx(1.6).epsilon(1e-9));
    CHECK(dirt.learned);
    CHECK_FALSE(dirt.of.empty());
    const LearnedRate& pace = rate_of(learned, "pace");
    CHECK(std::exp(pace.jobs[0].log) == Approx(1.2).epsilon(1e-9));
    const RateBook book = simulate::rates_of(learned);
    const auto scaled = std::find_if(book.settings.begin(), book.settings.end(),
                                     [](const Setting& s) { return s.key == drain_time; });
    REQUIRE(scaled != book.settings.end());
    CHECK(scaled->value.guess.likely / rate_of_job(drain_time) ==
          Approx(pace.after.guess.mean() / pace.before.guess.mean()).epsilon(1e-12));
}

TEST_CASE("a row that says nothing is a fault with its line, and nothing is lost") {
    const inventory::Inventory inv = invented();
    JobLog log = log_of({0.0, -1.0, 1.0}, "drain_free");
    log.rows.push_back(row_of(4, "Y1", "drain_fre"));
    log.rows.push_back(row_of(5, "Y9", "drain_free"));
    log.rows.back().hours = 3600.0;
    log.rows.push_back(row_of(6, "", "drain_free"));
    log.rows.back().quantity = 12.0;
    log.rows.back().quantity_dimension = dim::length;
    log.rows.push_back(row_of(7, "Y1", "refill"));
    log.rows.push_back(row_of(8, "P1", ""));
    log.rows.push_back(row_of(9, "Y1", "drain_free"));
    log.lines = 9;
    const simulate::Observations seen = simulate::observe(log, *demo_plan(), inv);
    CHECK(seen.used == 1);
    std::vector<std::string> columns;
    for (const simulate::LogFault& f : seen.faults) {
        columns.push_back(std::to_string(f.line) + " " + f.column);
        CHECK_FALSE(f.reason.empty());
    }
    CHECK(columns == std::vector<std::string>{"1 hours", "2 hours", "4 operation", "5 quantity",
                                              "6 quantity", "7 operation", "8 structure_id", "9 "});
}
