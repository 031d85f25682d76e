#pragma once
// Terms of a contract that cost money or move it in time, and make-or-buy in its simplest form:
// closed lanes, damages, varied quantities, retainage.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

#include <span>
#include <vector>

namespace scupper::cost {

/// What an owner charges for the time that lanes are closed.
///
/// Formula: amount = time x charge
/// @param time [s] that lanes are closed
/// @param charge [currency/s] of the contract
/// @return [currency] amount
/// Range: any; a contract may charge by lane or by the hour of the day, then take its mean.
/// Errors: none.
/// Source: lane rental, common practice
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Amount<T> occupancy(const Time<T>& time, const AmountPerTime<T>& charge);

/// What liquidated damages come to on average.
///
/// Formula: amount = chance x time late x damages
/// @param chance [-] of finishing late, 0 to 1
/// @param late [s] how late on average, if late
/// @param damages [currency/s] of the contract
/// @return [currency] expected cost
/// Range: any.
/// Errors: none.
/// Source: definition of the expected value
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Amount<T> expected_damages(const T& chance, const Time<T>& late, const AmountPerTime<T>& damages);

/// What is paid of an item whose quantity came out otherwise than planned.
///
/// Formula: inside the limits q p; above, (1 + v) Q p + (q - (1 + v) Q) p_over; below, q p_under
/// @param quantity [unit of the item] q, as built, >= 0
/// @param planned [unit of the item] Q, in the contract, > 0
/// @param price [currency] p, unit price of the contract, >= 0
/// @param limit [-] v, variation that changes no price, >= 0; 0.25 in federal-aid contracts
/// @param price_over [currency] p_over, agreed for what is above the limit, >= 0
/// @param price_under [currency] p_under, agreed for all where the quantity is below, >= 0
/// @return [currency] amount paid
/// Range: any.
/// Errors: InputError `cost.quantity`, `cost.planned`, `cost.price`, `cost.limit`
/// Source: 23 CFR 635.109(a)(3): only what is above 125 %; below 75 % the actual work (from memory)
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Amount<T> varied_payment(const T& quantity, const T& planned, const Amount<T>& price,
                         const T& limit, const Amount<T>& price_over, const Amount<T>& price_under);

/// What is kept back of a payment.
///
/// Formula: r A, until the sum kept back is the limit
/// @param earned [currency] A, of the period, >= 0
/// @param share [-] r, 0 to 1; 5 % is usual
/// @param kept [currency] kept back so far, >= 0
/// @param limit [currency] most that is kept back, >= 0
/// @return [currency] kept back of this payment
/// Range: any.
/// Errors: InputError `cost.earned`, `cost.share`, `cost.kept`, `cost.limit` where out of range
/// Source: common practice
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Amount<T> retained(const Amount<T>& earned, const T& share, const Amount<T>& kept,
                   const Amount<T>& limit);

/// Payments of a contract with retainage, period by period.
struct CashFlow {
    std::vector<double> earned;      ///< [currency, n] worth of the work of the period
    std::vector<double> kept;        ///< [currency, n] kept back of it
    std::vector<double> paid;        ///< [currency, n] paid, the release in the last period
    std::vector<double> outstanding; ///< [currency, n] kept back so far, after payment
    double waiting_cost = 0.0;       ///< [currency] present worth lost by waiting for it
};

/// The payments of a contract with retainage, and what waiting costs.
///
/// Formula: waiting = sum of (earned - paid) (1 + i)^-k over the periods k
/// @param earned [currency, n] worth of the work, period by period, each >= 0
/// @param share [-] kept back of every payment, 0 to 1
/// @param limit_share [-] most that is kept back, over the contract, 0 to 1
/// @param release_after [each] periods from the last of the work to the release, >= 0
/// @param interest [-] i, rate a period; may be below 0
/// @return [currency, n] n + release_after periods
/// Range: n >= 1.
/// Errors: InputError `cost.periods`, `cost.earned`, `cost.share`, `cost.limit_share`,
/// `cost.interest`
/// Source: definition
/// Verified by: tests/cpp/cost/test_contract.cpp
CashFlow retainage(std::span<const double> earned, double share, double limit_share,
                   std::size_t release_after, double interest);

/// Present worth of an even yearly cost.
///
/// Formula: A (P/A)
/// @param annual [currency] A, at every year's end
/// @param interest [-] i, a year, real for costs in prices of today; may be below 0
/// @param years [-] n, > 0
/// @return [currency] present worth
/// Range: any.
/// Errors: as `series_present_worth_factor`
/// Source: OMB Circular A-94: real rates on real costs, nominal on nominal ones
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> present_worth(const Amount<T>& annual, const T& interest, const T& years);

/// The hours a year at which owning costs as much as hiring.
///
/// Formula: F / (r - v)
/// @param fixed [currency] F, ownership of a year, >= 0
/// @param own_rate [currency/s] v, running the own equipment an hour, >= 0
/// @param hire_rate [currency/s] r, hire of an hour; > v
/// @return [s] hours a year; with more of them owning is cheaper
/// Range: any.
/// Errors: InputError `cost.fixed`, `cost.own_rate`, `cost.hire_rate` where out of range
/// Source: definition
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Time<T> break_even_time(const Amount<T>& fixed, const AmountPerTime<T>& own_rate,
                        const AmountPerTime<T>& hire_rate);

/// By how much a contract has to be cheaper before work leaves an agency's own people.
///
/// Formula: min(s C, M)
/// @param personnel_cost [currency] C, personnel-related cost in-house, all periods, >= 0
/// @param share [-] s, >= 0; 10 % in 10 U.S.C. 2461
/// @param most [currency] M, >= 0; 10 million dollars in 10 U.S.C. 2461
/// @return [currency] least difference
/// Range: any.
/// Errors: InputError `cost.personnel_cost`, `cost.share`, `cost.most` where below 0
/// Source: 10 U.S.C. 2461(a)(1)(F)
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> conversion_differential(const Amount<T>& personnel_cost, const T& share,
                                  const Amount<T>& most);

/// The part of an indirect cost that a direct cost bears, in proportion.
///
/// Formula: I D / sum of D
/// @param indirect [currency] I, to be shared out
/// @param direct [currency] D, of the component, >= 0
/// @param all [currency] sum of D over all that bear it, > 0
/// @return [currency] the component's part
/// Range: any.
/// Errors: InputError `cost.direct`, `cost.all` where out of range
/// Source: common practice
/// Verified by: tests/cpp/cost/test_contract.cpp
template <class T>
Amount<T> distributed(const Amount<T>& indirect, const Amount<T>& direct, const Amount<T>& all);

/// What one unit of a quantity costs.
///
/// Formula: A / q
/// @param amount [currency] A
/// @param quantity [unit of the quantity] q, > 0
/// @return [currency] for one unit
/// Range: any.
/// Errors: InputError `cost.quantity` where not above 0
/// Source: definition
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> unit_cost(const Amount<T>& amount, const T& quantity);

} // namespace scupper::cost
