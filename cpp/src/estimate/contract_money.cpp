#include "scupper/estimate/contract_money.hpp"

#include "scupper/error.hpp"
#include "scupper/estimate/schedule.hpp"
#include "scupper/estimate/unit_costs.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

namespace scupper::estimate {

namespace {

constexpr double most_periods = 10000.0;

/// What is earned, and when, counted from the first day of work.
struct Earned {
    Time<> when;
    double amount;
};

Payments payments_of(const Terms& terms, const std::vector<Earned>& earned) {
    const double interval = terms.payment_interval.si();
    double last = 0.0;
    for (const Earned& e : earned) {
        last = std::max(last, std::floor(e.when.si() / interval));
    }
    const double release = count_up(terms.retainage_release.si() / interval);
    if (last + release > most_periods) {
        throw InputError({"estimate.periods", "job.terms.payment_interval",
                          std::to_string(last + release) + " periods", "10,000 at most"});
    }
    std::vector<double> periods(static_cast<std::size_t>(last) + 1, 0.0);
    for (const Earned& e : earned) {
        periods[static_cast<std::size_t>(std::floor(e.when.si() / interval))] += e.amount;
    }
    const double interest = std::pow(1.0 + terms.interest, interval / factor::year) - 1.0;
    return {.first = {},
            .interval = terms.payment_interval,
            .flow = cost::retainage(periods, terms.retainage, terms.retainage_limit,
                                    static_cast<std::size_t>(release), interest)};
}

/// The day of a shift where no calendar tells: as many a week as there are days of work.
Time<> day_by_rhythm(const Calendar& calendar, std::size_t shift) {
    const double days = std::popcount(calendar.weekdays);
    return Time<>(std::floor(static_cast<double>(shift) * 7.0 / days) * factor::day);
}

Time<> since(Date day, Date first) {
    return Time<>(static_cast<double>((day - first).count()) * factor::day);
}

double paid_of(const Outing& outing) {
    double paid = 0.0;
    for (const Time<>& shift : outing.layout.paid) {
        paid += shift.si();
    }
    return paid;
}

} // namespace

Payments cash_flow(const Estimate& e) {
    const Schedule plan = schedule(e);
    const double shifts = std::max(plan.shifts, 1);
    const double total = e.figure("cost.total");
    std::vector<Earned> earned;
    std::optional<Date> first;
    for (const work::PlannedDay& day : plan.days) {
        if (day.use == work::DayUse::work) {
            first = first.value_or(day.date);
            earned.push_back({since(day.date, *first), total / shifts});
        }
    }
    for (std::size_t s = earned.size(); s < static_cast<std::size_t>(shifts); ++s) {
        earned.push_back({day_by_rhythm(e.plan->job.calendar, s), total / shifts});
    }
    Payments payments = payments_of(e.plan->job.terms, earned);
    payments.first = first;
    return payments;
}

Payments cash_flow(const OutingPlan& plan) {
    double all = 0.0;
    for (const Outing& outing : plan.outings) {
        all += paid_of(outing);
    }
    std::vector<Earned> earned;
    std::optional<Date> first;
    for (const Outing& outing : plan.outings) {
        for (std::size_t s = 0; s < outing.layout.paid.size(); ++s) {
            if (!outing.days.empty()) {
                first = first.value_or(outing.days[s]);
            }
            const Time<> when = outing.days.empty()
                                    ? day_by_rhythm(plan.plan->job.calendar, earned.size())
                                    : since(outing.days[s], *first);
            earned.push_back({when, plan.price * outing.layout.paid[s].si() / all});
        }
    }
    Payments payments = payments_of(plan.plan->job.terms, earned);
    payments.first = first;
    return payments;
}

std::vector<VariedPrice> quantity_variation(const Estimate& e, std::span<const double> shares) {
    const Terms& terms = e.plan->job.terms;
    const double limit = terms.variation_limit.value_or(0.0);
    const double over = terms.variation_limit ? terms.price_over : 1.0;
    const double under = terms.variation_limit ? terms.price_under : 1.0;
    const double total = e.figure("cost.total");
    std::vector<VariedPrice> rows;
    for (const UnitCost& u : unit_costs(e)) {
        if (u.component == "structure" || !(u.quantity > 0.0)) {
            continue;
        }
        const Amount<> price(u.per_unit);
        for (const double share : shares) {
            const double paid = cost::varied_payment<double>(share * u.quantity, u.quantity, price,
                                                             limit, price * over, price * under)
                                    .si();
            rows.push_back({u.component, u.slot, share, u.quantity, u.per_unit, u.total, paid,
                            total + paid - u.total});
        }
    }
    return rows;
}

} // namespace scupper::estimate
