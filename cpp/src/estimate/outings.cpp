#include "scupper/estimate/outings.hpp"

#include "outing_parts.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/shift_plan.hpp"

#include <algorithm>

namespace scupper::estimate {

namespace detail {

std::vector<Outing> lay_out(const Priced& priced, const std::vector<Together>& groups,
                            const OutingRules& rules) {
    std::vector<Outing> outings;
    for (const Together& group : groups) {
        const Estimate& first = *priced[group.members.front()];
        for (std::size_t stage = 0; stage < first.plan->stages.size(); ++stage) {
            Outing outing;
            outing.name = group.name;
            outing.stage = first.plan->stages[stage].name;
            outing.stage_row = stage;
            outing.members = group.members;
            outing.layout = work::lay_out_shifts(sites_of(priced, group, stage, rules),
                                                 shift_rules(first, stage));
            if (!outing.layout.paid.empty()) {
                outings.push_back(std::move(outing));
            }
        }
    }
    return outings;
}

} // namespace detail

namespace {

void check_rules(const OutingRules& rules) {
    const auto require = [](bool right, const char* name, double found, const char* allowed) {
        if (!right) {
            throw InputError({"outing.rules", name, std::to_string(found), allowed});
        }
    };
    require(rules.within.si() >= 0.0, "within", rules.within.si(), "0 m or more");
    require(rules.detour >= 1.0, "detour", rules.detour, "1 or more");
    require(rules.speed.si() > 0.0, "speed", rules.speed.si(), "above 0 m/s");
    require(rules.move.si() >= 0.0, "move", rules.move.si(), "0 s or more");
    const double cancelled = rules.cancelled.value_or(0.0);
    require(cancelled >= 0.0, "cancelled", cancelled, "0 or more");
    const double show_up = rules.show_up.value_or(Time<>(0.0)).si();
    require(show_up >= 0.0, "show_up", show_up, "0 s or more");
}

detail::Priced price_each(std::span<const Structure> structures,
                          const std::shared_ptr<const Plan>& plan, OutingPlan& result) {
    detail::Priced priced(structures.size());
    for (std::size_t i = 0; i < structures.size(); ++i) {
        try {
            priced[i] = estimate(structures[i], plan);
            priced[i]->resolved.model.plan = priced[i]->plan.get();
        } catch (const InputError& e) {
            if (e.id() != "estimate.unpriced") {
                throw;
            }
            result.unpriced.emplace_back(i, e.found());
        }
    }
    return priced;
}

double dump_pay(const Estimate& e) {
    double pay = 0.0;
    for (std::size_t row = 0; row < e.plan->lines.size(); ++row) {
        if (e.plan->lines[row].charge == Charge::dump_run) {
            pay += e.figures[e.plan->figures.place(figure_place("line.cost"), row)];
        }
    }
    return pay;
}

/// Direct cost with the margins of the job.
double price_of(const Estimate& e, const OutingCost& c, double visits) {
    const Inputs<double> in(e.plan->inputs, e.resolved.values.data());
    Amount<> direct(c.labour + c.overtime + c.show_up + c.equipment + visits);
    if (e.resolved.model.escalation) {
        direct = cost::escalated<double>(direct, in.get<"escalation.rate">(),
                                         in.get<"escalation.time">(), Time<>(0.0));
    }
    const cost::Margins<double> margins{in.get<"margin.overhead">(), in.get<"margin.profit">(),
                                        in.get<"margin.bond">(), in.get<"margin.mobilization">(),
                                        in.get<"margin.contingency">()};
    return cost::add_margins<double>(direct, margins).price.si();
}

std::vector<Outing> finished(const detail::Priced& priced, const Plan& plan,
                             const std::vector<detail::Together>& groups,
                             const OutingRules& rules) {
    std::vector<Outing> outings = detail::lay_out(priced, groups, rules);
    detail::put_days(priced, rules, outings);
    detail::put_overtime(plan, rules, outings);
    detail::put_cost(priced, rules, outings);
    return outings;
}

} // namespace

OutingPlan plan_outings(std::span<const Structure> structures, std::shared_ptr<const Plan> plan,
                        const OutingRules& rules) {
    check_rules(rules);
    OutingPlan result;
    result.plan = plan;
    const detail::Priced priced = price_each(structures, plan, result);
    result.outings =
        finished(priced, *plan, detail::put_together(priced, structures, rules), rules);
    result.cost = detail::total_of(result.outings);
    result.alone = detail::total_of(finished(priced, *plan, detail::each_alone(priced), rules));
    const Estimate* first = nullptr;
    for (const auto& e : priced) {
        if (e) {
            first = first == nullptr ? &*e : first;
            result.visits += e->figure("cost.materials") + e->figure("cost.charges") +
                             e->figure("cost.moving") + dump_pay(*e);
            result.price_shared += e->figure("cost.total");
        }
    }
    if (first != nullptr) {
        result.price = price_of(*first, result.cost, result.visits);
        result.price_alone = price_of(*first, result.alone, result.visits);
    }
    return result;
}

} // namespace scupper::estimate
