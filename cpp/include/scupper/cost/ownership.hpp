#pragma once
// What owning equipment costs: depreciation and the cost of the money in it, by the year.

#include "scupper/quantity.hpp"
#include "scupper/traced.hpp"

namespace scupper::cost {

/// Depreciation of a year in equal parts.
///
/// Formula: (P - S) / N
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, sold for at the end, >= 0
/// @param years [-] N, years of service, > 0
/// @return [currency] depreciation a year
/// Range: any.
/// Errors: InputError `cost.price`, `cost.salvage`, `cost.years` where out of range
/// Source: definition; open course lecture on equipment cost
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> straight_line(const Amount<T>& price, const Amount<T>& salvage, const T& years);

/// Depreciation of one year as a share of what the equipment was worth at its beginning.
///
/// Formula: min(P (1 - d)^(k-1) d, P (1 - d)^(k-1) - S), not below 0
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, below which it is not depreciated, >= 0
/// @param share [-] d, of the value at the year's beginning, 0 to 1; 2 / N is called double
/// @param year [-] k, the year, >= 1
/// @return [currency] depreciation of that year
/// Range: any.
/// Errors: InputError `cost.price`, `cost.salvage`, `cost.share`, `cost.year` where out of range
/// Source: definition
/// Verified by: tests/cpp/cost/test_ownership.cpp
template <class T>
Amount<T> declining_balance(const Amount<T>& price, const Amount<T>& salvage, const T& share,
                            const T& year);

/// Depreciation of one year by the sum of the years' digits.
///
/// Formula: (P - S) (N - k + 1) / (N (N + 1) / 2)
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, sold for at the end, >= 0
/// @param years [-] N, years of service, >= 1
/// @param year [-] k, the year; beyond N there is none
/// @return [currency] depreciation of that year
/// Range: any.
/// Errors: InputError `cost.price`, `cost.salvage`, `cost.years`, `cost.year` where out of range
/// Source: definition
/// Verified by: tests/cpp/cost/test_ownership.cpp
template <class T>
Amount<T> sum_of_years(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                       const T& year);

/// What is tied up in equipment on the average over its life, counted at the years' beginnings.
///
/// Formula: (P (N + 1) + S (N - 1)) / (2 N)
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, sold for at the end, >= 0
/// @param years [-] N, years of service, > 0
/// @return [currency] average annual investment
/// Range: any.
/// Errors: as `straight_line`
/// Source: construction equipment textbooks, from memory
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> average_investment(const Amount<T>& price, const Amount<T>& salvage, const T& years);

/// What owning costs a year by average annual investment.
///
/// Formula: (P - S) / N + (i + k) AAI
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, sold for at the end, >= 0
/// @param years [-] N, years of service, > 0
/// @param interest [-] i, a year; may be below 0
/// @param keeping [-] k, insurance, taxes and storage a year over the investment, >= 0
/// @return [currency] ownership a year
/// Range: any.
/// Errors: InputError `cost.interest`, `cost.keeping` and as `straight_line`
/// Source: construction equipment textbooks, from memory
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
Amount<T> ownership_by_investment(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                                  const T& interest, const T& keeping);

/// What owning costs a year by capital recovery.
///
/// Formula: P (A/P) - S (A/F) + k AAI
/// @param price [currency] P, bought for, >= 0
/// @param salvage [currency] S, sold for at the end, >= 0
/// @param years [-] N, years of service, > 0
/// @param interest [-] i, a year; may be below 0
/// @param keeping [-] k, insurance, taxes and storage a year over the average investment, >= 0
/// @return [currency] ownership a year
/// Range: any.
/// Errors: InputError `cost.interest`, `cost.keeping` and as `straight_line`
/// Source: engineering economy; definition
/// Verified by: tests/cpp/cost/test_ownership.cpp
template <class T>
Amount<T> ownership_by_recovery(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                                const T& interest, const T& keeping);

/// A yearly cost spread over the hours of the year.
///
/// Formula: A / h
/// @param annual [currency] A, cost of a year
/// @param hours [s] h, hours used or charged in a year, > 0
/// @return [currency/s] cost of an hour
/// Range: any.
/// Errors: InputError `cost.hours` where not above 0
/// Source: definition
/// Verified by: tests/cpp/cost/test_published.cpp
template <class T>
AmountPerTime<T> hourly(const Amount<T>& annual, const Time<T>& hours);

} // namespace scupper::cost
