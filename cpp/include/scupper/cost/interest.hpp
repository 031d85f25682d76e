#pragma once
// Money at different times: the factors of engineering economy, real and nominal rates.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// What one unit of money grows to (F/P).
///
/// Formula: (1 + i)^n
/// @param interest [-] i, rate a period; may be below 0
/// @param periods [-] n, number of periods, >= 0
/// @return [-] future amount over present amount
/// Range: i above -1.
/// Errors: InputError `cost.interest`, `cost.periods` where out of range
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T compound_amount_factor(const T& interest, const T& periods);

/// What one unit of money of later is worth now (P/F).
///
/// Formula: (1 + i)^-n
/// @param interest [-] i, rate a period; may be below 0
/// @param periods [-] n, number of periods, >= 0
/// @return [-] present amount over future amount
/// Range: i above -1.
/// Errors: as `compound_amount_factor`
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_interest.cpp
template <class T>
T present_worth_factor(const T& interest, const T& periods);

/// What one unit of money at every period's end grows to (F/A).
///
/// Formula: ((1 + i)^n - 1) / i; n + i n (n - 1) / 2 where i is nearly 0
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, number of periods, > 0
/// @return [-] future amount over the amount of a period
/// Range: i above -1.
/// Errors: InputError `cost.interest`, `cost.periods` where out of range
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T series_amount_factor(const T& interest, const T& periods);

/// What has to be laid aside at every period's end for one unit of money (A/F).
///
/// Formula: i / ((1 + i)^n - 1)
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, number of periods, > 0
/// @return [-] amount of a period over the future amount
/// Range: i above -1.
/// Errors: as `series_amount_factor`
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T sinking_fund_factor(const T& interest, const T& periods);

/// What pays one unit of money back at every period's end (A/P).
///
/// Formula: i (1 + i)^n / ((1 + i)^n - 1)
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, number of periods, > 0
/// @return [-] amount of a period over the present amount
/// Range: i above -1.
/// Errors: as `series_amount_factor`
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T capital_recovery_factor(const T& interest, const T& periods);

/// What one unit of money at every period's end is worth now (P/A).
///
/// Formula: ((1 + i)^n - 1) / (i (1 + i)^n)
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, number of periods, > 0
/// @return [-] present amount over the amount of a period
/// Range: i above -1.
/// Errors: as `series_amount_factor`
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T series_present_worth_factor(const T& interest, const T& periods);

/// What amounts are worth now that grow by one unit of money a period, from 0 at the end of the
/// first (P/G).
///
/// Formula: sum over k = 2 ... n of (k - 1) (1 + i)^-k
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, whole number of periods, 1 to 10,000
/// @return [-] present amount over the growth of a period
/// Range: i above -1.
/// Errors: InputError `cost.interest`, `cost.periods` where out of range or not whole
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T gradient_present_worth_factor(const T& interest, double periods);

/// The even amount a period that growing amounts come to (A/G).
///
/// Formula: (P/G) (A/P)
/// @param interest [-] i, rate a period; may be 0 or below
/// @param periods [-] n, whole number of periods, 1 to 10,000
/// @return [-] even amount over the growth of a period
/// Range: i above -1.
/// Errors: as `gradient_present_worth_factor`
/// Source: engineering economy factor tables
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T gradient_series_factor(const T& interest, double periods);

/// The rate at which money of every year's own prices is discounted.
///
/// Formula: (1 + r) (1 + f) - 1
/// @param real [-] r, rate over inflation; may be below 0
/// @param inflation [-] f, of prices; may be below 0
/// @return [-] nominal rate
/// Range: both above -1.
/// Errors: InputError `cost.real`, `cost.inflation` where out of range
/// Source: definition (Fisher)
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T nominal_rate(const T& real, const T& inflation);

/// The rate at which money of today's prices is discounted.
///
/// Formula: (1 + i) / (1 + f) - 1
/// @param nominal [-] i, rate with inflation
/// @param inflation [-] f, of prices; may be below 0
/// @return [-] real rate; below 0 where prices grow faster than money
/// Range: both above -1.
/// Errors: InputError `cost.nominal`, `cost.inflation` where out of range
/// Source: definition (Fisher)
/// Verified by: tests/cpp/cost/test_interest.cpp
template <class T>
T real_rate(const T& nominal, const T& inflation);

/// The inflation that a nominal and a real rate imply.
///
/// Formula: (1 + i) / (1 + r) - 1
/// @param nominal [-] i, rate with inflation
/// @param real [-] r, rate over inflation
/// @return [-] inflation
/// Range: both above -1.
/// Errors: InputError `cost.nominal`, `cost.real` where out of range
/// Source: definition (Fisher)
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
T implied_inflation(const T& nominal, const T& real);

/// A rate between two terms for which one is published.
///
/// Formula: straight line between the two; beyond them the nearer one's rate
/// @param term [s] length of the project, > 0
/// @param shorter [s] term of the first rate, > 0
/// @param shorter_rate [-] rate of the first
/// @param longer [s] term of the second rate, > the first
/// @param longer_rate [-] rate of the second
/// @return [-] rate of the project
/// Range: any rates.
/// Errors: InputError `cost.term`, `cost.longer` where out of range
/// Source: OMB Circular A-94, appendix C: 4-year term between the 3- and 5-year rates
/// Verified by: tests/cpp/cost/test_published.cpp
double rate_for_term(const Time<>& term, const Time<>& shorter, double shorter_rate,
                     const Time<>& longer, double longer_rate);

} // namespace scupper::cost
