#include "scupper/simulate/learning.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::simulate {

namespace {

/// What is believed of a common factor: P10 and P90 of it, from memory.
constexpr double pace_reach = 1.4;
constexpr double debris_reach = 2.0;

void require(bool holds, const char* path, double found, const char* allowed) {
    if (!holds) {
        throw InputError({"learning.settings", path, std::to_string(found), allowed}); // NaN too
    }
}

void check_settings(const LearningSettings& s) {
    require(s.least_jobs >= 2, "least_jobs", static_cast<double>(s.least_jobs), "2 or more");
    require(s.least_gain > 0.0 && std::isfinite(s.least_gain), "least_gain", s.least_gain,
            "above 0");
    require(s.outlier_limit > 0.0, "outlier_limit", s.outlier_limit, "above 0");
    const PriorSettings& p = s.prior;
    require(p.freedom > 2.0 && std::isfinite(p.freedom), "freedom", p.freedom, "above 2");
    require(p.level_share > 0.0 && p.level_share < 1.0, "level_share", p.level_share,
            "between 0 and 1");
    require(p.unstated_spread > 0.0 && std::isfinite(p.unstated_spread), "unstated_spread",
            p.unstated_spread, "above 0");
}

std::string jobs_text(std::size_t jobs) {
    return std::to_string(jobs) + (jobs == 1 ? " job" : " jobs");
}

bool is_factor(const LearnedRate& rate) {
    return rate.key == pace_key || rate.key == debris_key;
}

/// A factor about 1.
Uncertain factor_between(double reach) {
    Uncertain u;
    u.guess = {.low = 1.0 / reach,
               .likely = 1.0,
               .high = reach,
               .family = Family::lognormal,
               .meaning = Meaning::p10_p90};
    return u;
}

/// Learns one row after the other.
class Learner {
  public:
    Learner(Learned& learned, const LearningSettings& settings)
        : learned_(learned), plan_(*learned.plan), settings_(settings) {}

    void learn(const std::string& key, std::vector<Observed> jobs) {
        LearnedRate rate = started(key);
        rate.jobs = std::move(jobs);
        mark_outliers(rate.jobs, settings_.outlier_limit);
        for (Observed& o : rate.jobs) {
            o.counted = !(o.far_out && settings_.leave_out_outliers);
        }
        rate.pooled = pooled(belief_of(rate.before, settings_.prior), rate.jobs, settings_.whose,
                             settings_.prior);
        rate.learned = is_enough(rate);
        if (rate.learned) {
            restate(rate);
        }
        learned_.rates.push_back(std::move(rate));
    }

  private:
    LearnedRate started(const std::string& key) const {
        LearnedRate rate;
        rate.key = key;
        if (key == pace_key) {
            rate.label = "time of all other operations, factor";
            rate.before = factor_between(pace_reach);
        } else if (key == debris_key) {
            rate.label = "build-up of dirt, factor";
            rate.before = factor_between(debris_reach);
        } else {
            const std::size_t place = plan_.inputs.at(key, "learning");
            rate.label = plan_.inputs.fields()[place].label;
            rate.dimension = plan_.inputs.fields()[place].dimension;
            rate.before = plan_.base[place];
        }
        rate.after = rate.before;
        return rate;
    }

    /// Writes the reason either way.
    bool is_enough(LearnedRate& rate) const {
        const Pooled& p = rate.pooled;
        if (p.own_jobs < settings_.least_jobs) {
            rate.reason = "kept: " + jobs_text(p.own_jobs) + ", at least " +
                          std::to_string(settings_.least_jobs) + " are asked for";
            return false;
        }
        if (!(p.gain >= settings_.least_gain)) {
            rate.reason = "kept: the log is worth " + format_number(p.gain, 2) +
                          " jobs for the level, at least " +
                          format_number(settings_.least_gain, 2) + " are asked for";
            return false;
        }
        rate.reason = "learned from " + jobs_text(p.jobs);
        if (p.crews > 1) {
            rate.reason += " of " + std::to_string(p.crews) + " crews";
        }
        return true;
    }

    void restate(LearnedRate& rate) const {
        const Pooled& p = rate.pooled;
        ThreePoint& guess = rate.after.guess;
        guess = restated(rate.before.guess, p.mean, p.job_sd());
        if (guess.family != rate.before.guess.family) {
            rate.reason += "; now log-normal, low and high its P10 and P90";
        }
        rate.after.shared_share = p.factor / (1.0 + p.factor);
        rate.after.basis = Basis::given;
        rate.after.origin = nullptr;
        const auto place = plan_.inputs.find(rate.key);
        const double most = place ? plan_.inputs.fields()[*place].greatest : guess.high;
        if (guess.high > most) {
            guess = {.low = std::min(guess.low, most),
                     .likely = std::min(guess.likely, most),
                     .high = most,
                     .family = Family::pert};
            rate.reason += "; cut off at " + format_number(most, 3);
        }
    }

    Learned& learned_;
    const estimate::Plan& plan_;
    const LearningSettings& settings_;
};

bool has_key(const Learned& learned, const std::string& key) {
    return std::any_of(learned.rates.begin(), learned.rates.end(),
                       [&](const LearnedRate& r) { return r.key == key && r.learned; });
}

/// Which values of the job a common factor changes: those that were not learned for themselves.
std::vector<std::string> keys_of(const Learned& learned, const std::string& factor) {
    std::vector<std::string> keys;
    for (const Setting& s : learned.plan->job.settings) {
        const bool time = s.key.starts_with("operation[") && s.key.ends_with("].time_per_unit");
        const bool dirt = (s.key.starts_with("dirt[") && s.key.ends_with("].depth")) ||
                          (s.key.starts_with("drain_dirt[") && s.key.ends_with("].volume"));
        if ((factor == pace_key ? time && !has_key(learned, s.key) : dirt) &&
            learned.plan->inputs.find(s.key)) {
            keys.push_back(s.key);
        }
    }
    return keys;
}

void note_dates(Learned& learned) {
    for (const LogRow& row : learned.log) {
        if (!row.date.empty()) {
            learned.first = learned.first.empty() ? row.date : std::min(learned.first, row.date);
            learned.last = std::max(learned.last, row.date);
        }
    }
}

/// A log is cited by its file, whatever folder it lay in.
std::string cited(const std::string& name) {
    return name.substr(name.find_last_of("/\\") + 1); // npos + 1 is 0
}

ThreePoint times(ThreePoint guess, double factor) {
    guess.low *= factor;
    guess.likely *= factor;
    guess.high *= factor;
    return guess;
}

} // namespace

double LearnedRate::level() const {
    return std::exp(pooled.mean);
}

double LearnedRate::level_quantile(double u) const {
    return std::exp(pooled.level_quantile(u));
}

double LearnedRate::job_quantile(double u) const {
    return std::exp(pooled.job_quantile(u));
}

Learned learn(const JobLog& log, std::shared_ptr<const estimate::Plan> plan,
              const inventory::Inventory& inventory, const LearningSettings& settings) {
    check_settings(settings);
    Observations seen = observe(log, *plan, inventory);
    Learned learned;
    learned.plan = std::move(plan);
    learned.name = log.name;
    learned.lines = log.lines;
    learned.used = seen.used;
    learned.log = log.rows;
    learned.faults = log.faults;
    learned.faults.insert(learned.faults.end(), seen.faults.begin(), seen.faults.end());
    std::stable_sort(learned.faults.begin(), learned.faults.end(),
                     [](const LogFault& a, const LogFault& b) { return a.line < b.line; });
    note_dates(learned);
    Learner learner(learned, settings);
    for (const LayoutField& field : learned.plan->inputs.fields()) {
        if (const auto found = seen.by_key.find(field.key); found != seen.by_key.end()) {
            learner.learn(found->first, std::move(found->second));
        }
    }
    for (const std::string_view key : {pace_key, debris_key}) {
        if (const auto found = seen.by_key.find(std::string(key)); found != seen.by_key.end()) {
            learner.learn(found->first, std::move(found->second));
            learned.rates.back().of = keys_of(learned, found->first);
        }
    }
    return learned;
}

RateBook rates_of(const Learned& learned) {
    const Job& job = learned.plan->job;
    RateBook book;
    const std::string log = cited(learned.name);
    book.name = "learned from " + log;
    book.date = learned.last;
    book.currency = job.currency;
    book.source = log;
    book.note = "laid over the rates of " + job.name;
    const auto put = [&](const std::string& key, const Uncertain& value, const LearnedRate& rate) {
        const Provenance origin{.source =
                                    "learned from " + jobs_text(rate.pooled.jobs) + " of " + log,
                                .date = learned.last,
                                .note = format_number(100.0 * rate.pooled.share, 2) +
                                        " % from the log, the rest as it was before"};
        put_setting(book.settings, make_setting(key, value, origin));
    };
    for (const Operation& op : job.operations) {
        if (has_key(learned, "operation[" + op.name + "].time_per_unit") ||
            has_key(learned, "operation[" + op.name + "].water_per_unit") ||
            has_key(learned, "operation[" + op.name + "].trigger_share")) {
            book.operations.push_back(op);
        }
    }
    for (const LearnedRate& rate : learned.rates) {
        if (rate.learned && !is_factor(rate)) {
            put(rate.key, rate.after, rate);
        }
        const double factor = rate.after.guess.mean() / rate.before.guess.mean();
        for (const std::string& key : rate.of) {
            if (rate.learned) {
                Uncertain value = learned.plan->base[learned.plan->inputs.at(key, "learning")];
                value.guess = times(value.guess, factor);
                value.basis = Basis::given;
                put(key, value, rate);
            }
        }
    }
    return book;
}

} // namespace scupper::simulate
