// What the people and the equipment of outings cost.

#include "outing_parts.hpp"
#include "price_steps.hpp"
#include "scupper/cost.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>

namespace scupper::estimate::detail {

namespace {

/// Who is there in one shift of an outing.
struct Shift {
    std::set<std::size_t> members; ///< positions of the structures served
    std::set<std::size_t> crews;   ///< everyone, the stage, the parties with work
};

std::vector<Shift> shifts_of(const Plan& plan, const Outing& outing) {
    std::vector<Shift> shifts(outing.layout.paid.size());
    for (const work::Segment& segment : outing.layout.segments) {
        Shift& shift = shifts[segment.shift];
        shift.crews.insert({everyone, plan.stages[outing.stage_row].crew});
        for (const std::size_t p : plan.stages[outing.stage_row].parties) {
            if (plan.parties[p].name == segment.party) {
                shift.crews.insert(plan.parties[p].crew);
            }
        }
        if (segment.site_number < outing.members.size()) {
            shift.members.insert(outing.members[segment.site_number]);
        }
    }
    return shifts;
}

/// The first structure of a shift that needs a row of people or equipment; null where none does.
const Estimate* who_needs(const Priced& priced, const Shift& shift, std::size_t crew,
                          std::vector<char> Model::*active, std::size_t row) {
    if (shift.crews.count(crew) == 0) {
        return nullptr;
    }
    for (const std::size_t i : shift.members) {
        if ((priced[i]->resolved.model.*active)[row] != 0) {
            return &*priced[i];
        }
    }
    return nullptr;
}

Inputs<double> inputs_of(const Estimate& e) {
    return {e.plan->inputs, e.resolved.values.data()};
}

/// The hours of a shift that are paid: without the part of the meal that is not.
Time<> paid_time(const Estimate& e, const Outing& outing, std::size_t shift) {
    const Time<> all = outing.layout.paid[shift];
    if (!e.resolved.model.unpaid_meal) {
        return all;
    }
    std::map<std::string, double> meals; // of each party
    for (const work::Segment& s : outing.layout.segments) {
        if (s.shift == shift && s.spent == work::Spent::meal) {
            meals[s.party] += (s.end - s.start).si();
        }
    }
    double longest = 0.0;
    for (const auto& [party, time] : meals) {
        longest = std::max(longest, time);
    }
    return all - Time<>(longest * inputs_of(e).get<"shift.unpaid_meal_share">());
}

/// A value of the job, or another where it has none.
double known_or(double value, double otherwise) {
    return std::isnan(value) ? otherwise : value;
}

/// Paid for shifts called off, for each one worked: by the rules, else by the job.
Time<> show_up_of(const Estimate& e, const OutingRules& rules) {
    constexpr double usual = 3.0 * factor::hour;
    const Inputs<double> in = inputs_of(e);
    const double cancelled = rules.cancelled.value_or(known_or(in.get<"shift.cancelled">(), 0.0));
    const Time<> each =
        rules.show_up.value_or(Time<>(known_or(in.get<"shift.show_up_time">().si(), usual)));
    return work::expected_show_up(1.0, cancelled, each);
}

/// Adds the people of one shift.
void add_labour(const Plan& plan, const Priced& priced, const OutingRules& rules,
                const Shift& shift, const Time<>& paid, const Time<>& overtime, Outing& outing) {
    for (std::size_t row = 0; row < plan.labour.size(); ++row) {
        const Estimate* e =
            who_needs(priced, shift, plan.labour_crews[row], &Model::active_labour, row);
        if (e == nullptr) {
            continue;
        }
        const Inputs<double> in = inputs_of(*e);
        const Count<> people = in.get<"labour.people">(row);
        const AmountPerTime<> wage = in.get<"labour.wage">(row);
        const Time<> show_up = show_up_of(*e, rules);
        const double premium = in.get<"shift.overtime_factor">() - 1.0;
        outing.cost.labour += cost::hire(paid, people, wage).si();
        outing.cost.overtime += premium * cost::hire(overtime, people, wage).si();
        outing.cost.show_up += cost::hire(show_up, people, wage).si();
        outing.labour_hours += (people * (paid + show_up)).si();
    }
}

void add_equipment(const Plan& plan, const Priced& priced, const Shift& shift, const Time<>& paid,
                   Outing& outing) {
    for (std::size_t row = 0; row < plan.equipment.size(); ++row) {
        const Estimate* e =
            who_needs(priced, shift, plan.equipment_crews[row], &Model::active_equipment, row);
        if (e != nullptr) {
            const Inputs<double> in = inputs_of(*e);
            outing.cost.equipment +=
                cost::hire(paid, in.get<"equipment.number">(row), in.get<"equipment.rate">(row))
                    .si();
        }
    }
}

} // namespace

void put_cost(const Priced& priced, const OutingRules& rules, std::vector<Outing>& outings) {
    for (Outing& outing : outings) {
        const Plan& plan = *priced[outing.members.front()]->plan;
        const std::vector<Shift> shifts = shifts_of(plan, outing);
        for (std::size_t s = 0; s < shifts.size(); ++s) {
            const Time<> paid = paid_time(*priced[outing.members.front()], outing, s);
            add_labour(plan, priced, rules, shifts[s], paid, outing.overtime[s], outing);
            add_equipment(plan, priced, shifts[s], paid, outing);
        }
    }
}

OutingCost total_of(const std::vector<Outing>& outings) {
    OutingCost sum;
    for (const Outing& outing : outings) {
        sum.labour += outing.cost.labour;
        sum.overtime += outing.cost.overtime;
        sum.show_up += outing.cost.show_up;
        sum.equipment += outing.cost.equipment;
    }
    return sum;
}

} // namespace scupper::estimate::detail
