#include "scupper/simulate/shrinkage.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace scupper::simulate {

namespace {

/// A level seen with a weight; `factor` is the variance about the level above, to that between jobs.
struct Member {
    std::string name;
    double mean = 0.0;
    double weight = 0.0;
    double factor(double between) const { return between + 1.0 / weight; }
};

/// Members of one level put together.
struct Joined {
    double weight = 0.0, mean = 0.0, squares = 0.0;
};

Joined join(const std::vector<Member>& members, double between) {
    Joined j;
    for (const Member& m : members) {
        j.weight += 1.0 / m.factor(between);
        j.mean += m.mean / m.factor(between);
    }
    j.mean /= j.weight;
    for (const Member& m : members) {
        j.squares += (m.mean - j.mean) * (m.mean - j.mean) / m.factor(between);
    }
    return j;
}

/// What groups of members say of the variance between members, by the method of moments.
double ratio_of(const std::vector<std::vector<Member>>& groups, double variance, double believed,
                double worth) {
    double squares = 0.0, freedom = 0.0, scale = 0.0;
    for (const std::vector<Member>& group : groups) {
        const Joined j = join(group, 0.0);
        double w2 = 0.0;
        for (const Member& m : group) {
            w2 += m.weight * m.weight;
        }
        squares += j.squares;
        freedom += static_cast<double>(group.size()) - 1.0;
        scale += j.weight - w2 / j.weight;
    }
    if (!(freedom > 0.0 && scale > 0.0 && variance > 0.0)) {
        return 0.0;
    }
    const double seen = std::max(0.0, (squares / variance - freedom) / scale);
    return (worth * believed + freedom * seen) / (worth + freedom);
}

/// The observations by agency and crew.
class Tree {
  public:
    Tree(const Belief& belief, std::span<const Observed> jobs, const PriorSettings& settings) {
        std::map<std::string, std::map<std::string, std::vector<double>>> logs;
        for (const Observed& o : jobs) {
            if (o.counted) {
                logs[o.agency][o.crew].push_back(o.log);
            }
        }
        for (auto& [agency, crews] : logs) {
            names_.push_back(agency);
            groups_.emplace_back();
            for (auto& [crew, values] : crews) {
                std::sort(values.begin(), values.end()); // the order of the log does not matter
                const Evidence e = evidence_of(values);
                groups_.back().push_back({crew, e.mean, e.weight});
                jobs_ += e.jobs;
                squares_ += e.squares;
            }
            crews_ += groups_.back().size();
        }
        find_ratios(belief, settings);
    }

    Evidence evidence() const {
        if (jobs_ == 0) {
            return {};
        }
        double squares = squares_;
        for (const std::vector<Member>& crews : groups_) {
            squares += join(crews, between_crews).squares;
        }
        const Joined all = join(agencies_, between_agencies);
        return {.jobs = jobs_,
                .weight = all.weight,
                .mean = all.mean,
                .squares = squares + all.squares};
    }
    /// Writes the level of whom it is asked for.
    void to(const Whose& whose, Pooled& p) const;
    std::size_t jobs() const { return jobs_; }
    std::size_t crews() const { return crews_; }
    std::size_t agencies() const { return groups_.size(); }

    double between_crews = 0.0, between_agencies = 0.0;

  private:
    void find_ratios(const Belief& belief, const PriorSettings& settings) {
        const double n = static_cast<double>(jobs_) - static_cast<double>(crews_);
        const double variance =
            (belief.freedom * belief.scale + squares_) / (belief.freedom - 2.0 + n);
        between_crews =
            ratio_of(groups_, variance, settings.between_crews, settings.between_freedom);
        for (std::size_t a = 0; a < groups_.size(); ++a) {
            const Joined j = join(groups_[a], between_crews);
            agencies_.push_back({names_[a], j.mean, j.weight});
        }
        if (!agencies_.empty()) {
            between_agencies = ratio_of({agencies_}, variance, settings.between_agencies,
                                        settings.between_freedom);
        }
    }

    std::vector<std::string> names_;
    std::vector<std::vector<Member>> groups_; ///< crews by agency
    std::vector<Member> agencies_;
    std::size_t jobs_ = 0, crews_ = 0;
    double squares_ = 0.0;
};

/// A level known by a mean and a variance factor, and the part of it that a member contributed.
struct Known {
    double mean, factor;

    /// Without what a member of weight 1 / `of` and mean `seen` said.
    Known without(double seen, double of) const {
        const double precision = 1.0 / factor - 1.0 / of;
        return {(mean / factor - seen / of) / precision, 1.0 / precision};
    }
    /// With an observation of that variance factor.
    Known with(double seen, double of) const {
        const double precision = 1.0 / factor + 1.0 / of;
        return {(mean / factor + seen / of) / precision, 1.0 / precision};
    }
    Known further(double between) const { return {mean, factor + between}; }
};

const Member* member_named(const std::vector<Member>& members, const std::string& name) {
    const auto found = std::find_if(members.begin(), members.end(),
                                    [&](const Member& m) { return m.name == name; });
    return found == members.end() ? nullptr : &*found;
}

/// The level of a member, given that of all of them: its own share taken out, then put back whole.
Known down_to(const Known& above, const Member* member, double between) {
    if (member == nullptr) {
        return above.further(between);
    }
    return above.without(member->mean, member->factor(between))
        .further(between)
        .with(member->mean, 1.0 / member->weight);
}

/// The agency asked for, or the first one that has the crew asked for.
std::string agency_of(const Whose& whose, const std::vector<std::string>& names,
                      const std::vector<std::vector<Member>>& groups) {
    if (whose.agency.empty() && !whose.crew.empty()) {
        for (std::size_t a = 0; a < groups.size(); ++a) {
            if (member_named(groups[a], whose.crew) != nullptr) {
                return names[a];
            }
        }
    }
    return whose.agency;
}

void Tree::to(const Whose& whose, Pooled& p) const {
    const Known level{p.level.mean, 1.0 / p.level.weight};
    const std::string agency = agency_of(whose, names_, groups_);
    const bool named = !whose.crew.empty() || !whose.agency.empty();
    const auto at = std::find(names_.begin(), names_.end(), agency);
    const bool known = named && at != names_.end();
    const std::size_t a = static_cast<std::size_t>(at - names_.begin());
    Known own = down_to(level, known ? &agencies_[a] : nullptr, between_agencies);
    const Member* crew = known ? member_named(groups_[a], whose.crew) : nullptr;
    own = down_to(own, whose.crew.empty() ? nullptr : crew, between_crews);
    p.mean = own.mean;
    p.factor = own.factor;
    for (std::size_t g = 0; g < groups_.size(); ++g) {
        for (const Member& m : groups_[g]) {
            const bool is_asked = !named || (known && g == a && (whose.crew.empty() || &m == crew));
            p.own_jobs += is_asked ? static_cast<std::size_t>(m.weight) : 0;
        }
    }
}

} // namespace

double Pooled::level_sd() const {
    return std::sqrt(level.variance() * factor);
}

double Pooled::job_sd() const {
    return std::sqrt(level.variance() * (1.0 + factor));
}

double Pooled::level_quantile(double u) const {
    return mean + student_quantile(u, level.freedom) * std::sqrt(level.scale * factor);
}

double Pooled::job_quantile(double u) const {
    return mean + student_quantile(u, level.freedom) * std::sqrt(level.scale * (1.0 + factor));
}

Pooled pooled(const Belief& belief, std::span<const Observed> jobs, const Whose& whose,
              const PriorSettings& settings) {
    const Tree tree(belief, jobs, settings);
    Pooled p;
    p.level = updated(belief, tree.evidence());
    p.between_crews = tree.between_crews;
    p.between_agencies = tree.between_agencies;
    p.jobs = tree.jobs();
    p.crews = tree.crews();
    p.agencies = tree.agencies();
    tree.to(whose, p);
    const bool named = !whose.crew.empty() || !whose.agency.empty();
    const double between = p.between_agencies + (whose.crew.empty() ? 0.0 : p.between_crews);
    const double before = 1.0 / belief.weight + (named ? between : 0.0);
    const double after =
        !named ? 1.0 / p.level.weight : p.factor - (whose.crew.empty() ? p.between_crews : 0.0);
    p.gain = 1.0 / after - 1.0 / before;
    p.share = 1.0 - after / before;
    return p;
}

} // namespace scupper::simulate
