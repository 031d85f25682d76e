// Which structures are served together.

#include "outing_parts.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/shift_plan.hpp"
#include "scupper/work/great_circle.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string_view>

namespace scupper::estimate::detail {

namespace {

constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

work::Place place_of(const Structure& s) {
    constexpr double degree = std::numbers::pi / 180.0;
    return {Angle<>(s.latitude * degree), Angle<>(s.longitude * degree)};
}

/// Takes structures into groups, each once.
class Gathering {
  public:
    Gathering(const Priced& priced, std::span<const Structure> structures, const OutingRules& rules)
        : priced_(priced), structures_(structures), rules_(rules), taken_(structures.size(), 0) {}

    std::vector<Together> gather() {
        for (const OutingGroup& group : rules_.groups) {
            take_group(group);
        }
        const std::vector<std::size_t> order = by_number();
        for (const std::size_t first : order) {
            if (is_left(first) && rules_.twins > Length<>(0.0)) {
                take_twin(first);
            }
        }
        for (const std::size_t first : order) {
            if (is_left(first)) {
                take_neighbours(first);
            }
        }
        return std::move(groups_);
    }

  private:
    std::vector<std::size_t> by_number() const {
        std::vector<std::pair<std::string, std::size_t>> keys;
        for (std::size_t i = 0; i < structures_.size(); ++i) {
            keys.emplace_back(structure_key(structures_[i]), i);
        }
        std::sort(keys.begin(), keys.end());
        std::vector<std::size_t> order;
        for (const auto& [key, i] : keys) {
            order.push_back(i);
        }
        return order;
    }

    std::size_t position_of(const std::string& id, const std::string& group) const {
        std::vector<std::string_view> known;
        for (std::size_t i = 0; i < structures_.size(); ++i) {
            if (structures_[i].id == id || structure_key(structures_[i]) == id) {
                return i;
            }
            known.push_back(structures_[i].id);
        }
        throw UnknownNameError({"outing.structure", "groups." + group, "\"" + id + "\"",
                                "\"" + nearest_name(id, known) + "\"?"});
    }

    void take_group(const OutingGroup& listed) {
        Together group{listed.name, {}, listed.one_closure};
        for (const std::string& id : listed.structures) {
            const std::size_t i = position_of(id, listed.name);
            if (taken_[i] != 0) {
                throw InputError({"outing.twice", "groups." + listed.name, "\"" + id + "\" again",
                                  "every structure in one group"});
            }
            taken_[i] = 1;
            if (priced_[i]) {
                group.members.push_back(i);
            }
        }
        if (!group.members.empty()) {
            groups_.push_back(std::move(group));
        }
    }

    bool is_left(std::size_t i) const { return priced_[i] && taken_[i] == 0; }

    /// Item 101 calls one of a pair R, the other L; the number alone does not tell whose twin it is.
    bool are_twins(std::size_t a, std::size_t b) const {
        const char one = structures_[a].codes.parallel;
        const char other = structures_[b].codes.parallel;
        return ((one == 'R' && other == 'L') || (one == 'L' && other == 'R')) &&
               structures_[a].crosses == structures_[b].crosses;
    }

    void take_twin(std::size_t first) {
        const std::size_t twin =
            nearest(first, rules_.twins, [&](std::size_t i) { return are_twins(first, i); });
        if (twin == nowhere) {
            return;
        }
        taken_[first] = taken_[twin] = 1;
        groups_.push_back({structures_[first].id + " and " + structures_[twin].id,
                           {first, twin},
                           rules_.twins_one_closure});
    }

    void take_neighbours(std::size_t first) {
        Together group{structures_[first].id, {first}, false};
        taken_[first] = 1;
        while (rules_.within > Length<>(0.0) && has_room(group)) {
            const std::size_t next =
                nearest(group.members.back(), rules_.within, [](std::size_t) { return true; });
            if (next == nowhere) {
                break;
            }
            group.members.push_back(next);
            if (!fits_a_shift(group)) {
                group.members.pop_back();
                break;
            }
            taken_[next] = 1;
        }
        groups_.push_back(std::move(group));
    }

    bool has_room(const Together& group) const {
        return rules_.most == 0 || group.members.size() < rules_.most;
    }

    /// The nearest that is left, within reach; of equally near ones the one first by number.
    template <class Fits>
    std::size_t nearest(std::size_t from, const Length<>& within, Fits fits) const {
        std::size_t best = nowhere;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < structures_.size(); ++i) {
            if (!is_left(i) || i == from || !fits(i)) {
                continue;
            }
            const double distance =
                work::great_circle(place_of(structures_[from]), place_of(structures_[i])).si();
            const bool nearer = distance < least ||
                                (distance == least &&
                                 structure_key(structures_[i]) < structure_key(structures_[best]));
            if (distance <= within.si() && nearer) {
                best = i;
                least = distance;
            }
        }
        return best;
    }

    bool fits_a_shift(const Together& group) const {
        const Estimate& first = *priced_[group.members.front()];
        for (std::size_t stage = 0; stage < first.plan->stages.size(); ++stage) {
            work::Shift<double> rules = shift_rules(first, stage);
            rules.overtime = Time<>(0.0);
            const auto sites = sites_of(priced_, group, stage, rules_);
            if (work::lay_out_shifts(sites, rules).paid.size() > 1) {
                return false;
            }
        }
        return true;
    }

    const Priced& priced_;
    std::span<const Structure> structures_;
    const OutingRules& rules_;
    std::vector<char> taken_;
    std::vector<Together> groups_;
};

} // namespace

std::vector<Together> put_together(const Priced& priced, std::span<const Structure> structures,
                                   const OutingRules& rules) {
    return Gathering(priced, structures, rules).gather();
}

std::vector<Together> each_alone(const Priced& priced) {
    std::vector<Together> groups;
    for (std::size_t i = 0; i < priced.size(); ++i) {
        if (priced[i]) {
            groups.push_back({priced[i]->structure.id, {i}, false});
        }
    }
    return groups;
}

std::vector<work::Site> sites_of(const Priced& priced, const Together& group, std::size_t stage,
                                 const OutingRules& rules) {
    std::vector<work::Site> sites;
    const Structure* before = nullptr;
    for (const std::size_t i : group.members) {
        const Structure& here = priced[i]->structure;
        sites.push_back(site_of(*priced[i], stage));
        if (before != nullptr) {
            const Length<> distance = work::great_circle(place_of(*before), place_of(here));
            sites.back().move =
                std::isnan(distance.si()) ? rules.move : rules.detour * distance / rules.speed;
            sites.back().closure_stands = group.one_closure;
        }
        before = &here;
    }
    return sites;
}

} // namespace scupper::estimate::detail
