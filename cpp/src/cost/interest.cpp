#include "scupper/cost/interest.hpp"

#include "require.hpp"

#include <cmath>

namespace scupper::cost {

namespace {

using std::abs;
using std::pow;

/// Below this rate the closed forms lose digits and the first terms of their series do not.
constexpr double nearly_zero = 1e-6;

template <class T>
void check(const T& interest, const T& periods) {
    detail::rate("interest", interest);
    detail::positive("periods", periods);
}

double whole_periods(double periods) {
    detail::require(periods >= 1.0 && periods <= 1e4 && periods == std::floor(periods), "periods",
                    periods, "a whole number from 1 to 10,000");
    return periods;
}

} // namespace

template <class T>
T compound_amount_factor(const T& interest, const T& periods) {
    detail::rate("interest", interest);
    detail::not_negative("periods", periods);
    return pow(1.0 + interest, periods);
}

template <class T>
T present_worth_factor(const T& interest, const T& periods) {
    return 1.0 / compound_amount_factor(interest, periods);
}

template <class T>
T series_amount_factor(const T& interest, const T& periods) {
    check(interest, periods);
    const T series = periods + interest * periods * (periods - 1.0) / 2.0;
    const T closed = (pow(1.0 + interest, periods) - 1.0) / interest;
    return choose(abs(interest) < T(nearly_zero), series, closed);
}

template <class T>
T sinking_fund_factor(const T& interest, const T& periods) {
    return 1.0 / series_amount_factor(interest, periods);
}

template <class T>
T capital_recovery_factor(const T& interest, const T& periods) {
    return compound_amount_factor(interest, periods) / series_amount_factor(interest, periods);
}

template <class T>
T series_present_worth_factor(const T& interest, const T& periods) {
    return series_amount_factor(interest, periods) / compound_amount_factor(interest, periods);
}

template <class T>
T gradient_present_worth_factor(const T& interest, double periods) {
    detail::rate("interest", interest);
    const double last = whole_periods(periods);
    const T step = 1.0 / (1.0 + interest);
    T discount = step;
    T sum = 0.0;
    for (double k = 2.0; k <= last; k += 1.0) {
        discount = discount * step;
        sum = sum + (k - 1.0) * discount;
    }
    return sum;
}

template <class T>
T gradient_series_factor(const T& interest, double periods) {
    return gradient_present_worth_factor(interest, periods) *
           capital_recovery_factor(interest, T(periods));
}

template <class T>
T nominal_rate(const T& real, const T& inflation) {
    detail::rate("real", real);
    detail::rate("inflation", inflation);
    return (1.0 + real) * (1.0 + inflation) - 1.0;
}

template <class T>
T real_rate(const T& nominal, const T& inflation) {
    detail::rate("nominal", nominal);
    detail::rate("inflation", inflation);
    return (1.0 + nominal) / (1.0 + inflation) - 1.0;
}

template <class T>
T implied_inflation(const T& nominal, const T& real) {
    detail::rate("nominal", nominal);
    detail::rate("real", real);
    return (1.0 + nominal) / (1.0 + real) - 1.0;
}

double rate_for_term(const Time<>& term, const Time<>& shorter, double shorter_rate,
                     const Time<>& longer, double longer_rate) {
    detail::positive("term", term);
    detail::positive("shorter", shorter);
    detail::require(longer > shorter, "longer", longer.si(), "more than the shorter term");
    detail::rate("shorter_rate", shorter_rate);
    detail::rate("longer_rate", longer_rate);
    const Time<> within = min_of(max_of(term, shorter), longer);
    const double along = (within - shorter) / (longer - shorter);
    return shorter_rate * (1.0 - along) + longer_rate * along;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template T compound_amount_factor(const T&, const T&);                                         \
    template T present_worth_factor(const T&, const T&);                                           \
    template T series_amount_factor(const T&, const T&);                                           \
    template T sinking_fund_factor(const T&, const T&);                                            \
    template T capital_recovery_factor(const T&, const T&);                                        \
    template T series_present_worth_factor(const T&, const T&);                                    \
    template T gradient_present_worth_factor(const T&, double);                                    \
    template T gradient_series_factor(const T&, double);                                           \
    template T nominal_rate(const T&, const T&);                                                   \
    template T real_rate(const T&, const T&);                                                      \
    template T implied_inflation(const T&, const T&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
