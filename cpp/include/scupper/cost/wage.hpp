#pragma once
// What an hour of a person costs: pay, fringe benefits, payroll taxes up to their caps, insurance.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// The part of a year's pay that a payroll tax takes, over all of it.
///
/// Formula: t min(E, C) / E
/// @param tax_rate [-] t, of the pay below the cap, >= 0
/// @param year_pay [currency] E, cash pay of a person in a year, > 0
/// @param cap [currency] C, pay up to which it is taxed, >= 0
/// @return [-] tax over the year's pay; it falls as the pay grows beyond the cap
/// Range: any.
/// Errors: InputError `cost.tax_rate`, `cost.year_pay`, `cost.cap` where out of range
/// Source: definition of a wage base
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T capped_tax_share(const T& tax_rate, const Amount<T>& year_pay, const Amount<T>& cap);

/// The tax on the next pay of somebody who has earned so much in the year.
///
/// Formula: t max(0, min(E + p, C) - min(E, C))
/// @param tax_rate [-] t, of the pay below the cap, >= 0
/// @param earned [currency] E, cash pay of the year so far, >= 0
/// @param pay [currency] p, the next pay, >= 0
/// @param cap [currency] C, pay up to which it is taxed, >= 0
/// @return [currency] tax; 0 once the cap is reached, so that the burden falls during the year
/// Range: any.
/// Errors: InputError `cost.tax_rate`, `cost.earned`, `cost.pay`, `cost.cap` where below 0
/// Source: definition of a wage base
/// Verified by: tests/cpp/cost/test_wage.cpp
template <class T>
Amount<T> capped_tax(const T& tax_rate, const Amount<T>& earned, const Amount<T>& pay,
                     const Amount<T>& cap);

/// Paid hours for every hour worked: leave and holidays are paid too.
///
/// Formula: paid / worked
/// @param paid [s] in a year
/// @param worked [s] in a year, > 0
/// @return [-] >= 1 in practice
/// Range: any.
/// Errors: InputError `cost.paid`, `cost.worked` where out of range
/// Source: construction accounting: annual cost over hours worked, leave excluded
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T leave_factor(const Time<T>& paid, const Time<T>& worked);

/// The rate on which an overtime premium is reckoned.
///
/// Formula: max(cash, basic)
/// @param cash [currency/s] paid in cash
/// @param basic [currency/s] basic rate of the wage determination, without fringe
/// @return [currency/s] the higher one
/// Range: any.
/// Errors: InputError `cost.cash`, `cost.basic` where below 0
/// Source: US DOL prevailing wage resource book; 29 CFR 5.32: the fringe is never paid at a premium
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> overtime_base(const AmountPerTime<T>& cash, const AmountPerTime<T>& basic);

/// The pay of a week under a wage determination, fringe included.
///
/// Formula: (cash + fringe) h + (factor - 1) max(cash, basic) max(0, h - limit)
/// @param hours [s] worked in the week, >= 0
/// @param cash [currency/s] paid in cash
/// @param fringe [currency/s] paid into plans
/// @param basic [currency/s] basic rate of the determination
/// @param limit [s] hours of a week without premium
/// @param factor [-] pay of an overtime hour to a plain one, >= 1
/// @return [currency] pay of the week
/// Range: any.
/// Errors: InputError `cost.hours`, `cost.limit`, `cost.factor` and as `overtime_base`
/// Source: US DOL prevailing wage resource book, overtime examples; 29 CFR 5.32
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> week_pay(const Time<T>& hours, const AmountPerTime<T>& cash,
                   const AmountPerTime<T>& fringe, const AmountPerTime<T>& basic,
                   const Time<T>& limit, const T& factor);

/// What a plain hour costs the employer.
///
/// Formula: cash L (1 + b) + fringe + a
/// @param cash [currency/s] paid in cash
/// @param fringe [currency/s] paid into plans for every hour worked; no tax on it
/// @param burden [-] b, payroll taxes and insurance over cash pay, >= 0
/// @param leave [-] L, paid hours for every hour worked, > 0
/// @param allowance [currency/s] a, per diem over the hours of a day
/// @return [currency/s] cost of an hour worked
/// Range: any.
/// Errors: InputError `cost.cash`, `cost.fringe`, `cost.burden`, `cost.leave`, `cost.allowance`
/// Source: common practice; construction accounting: total annual cost over hours worked
/// Verified by: tests/cpp/cost/test_wage.cpp
template <class T>
AmountPerTime<T> labour_hour(const AmountPerTime<T>& cash, const AmountPerTime<T>& fringe,
                             const T& burden, const T& leave, const AmountPerTime<T>& allowance);

/// What an overtime hour costs beyond a plain one.
///
/// Formula: max(cash, basic) (factor - 1) (1 + b)
/// @param cash [currency/s] paid in cash
/// @param basic [currency/s] basic rate of the wage determination
/// @param factor [-] pay of an overtime hour to a plain one, >= 1
/// @param burden [-] b, what the premium bears: taxes below their caps, and insurance where the
/// insurer rates overtime in full, >= 0
/// @return [currency/s] premium
/// Range: any.
/// Errors: InputError `cost.factor`, `cost.burden` and as `overtime_base`
/// Source: US DOL prevailing wage resource book; 29 CFR 5.32
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> overtime_premium(const AmountPerTime<T>& cash, const AmountPerTime<T>& basic,
                                  const T& factor, const T& burden);

/// Paid time of somebody who is sent for: at least the show-up time.
///
/// Formula: max(worked, least)
/// @param worked [s] time worked, >= 0
/// @param least [s] minimum show-up time, >= 0
/// @return [s] time paid
/// Range: any.
/// Errors: InputError `cost.worked`, `cost.least` where below 0
/// Source: common practice: two to four hours
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Time<T> show_up_time(const Time<T>& worked, const Time<T>& least);

} // namespace scupper::cost
