#include "scupper/cost/ownership.hpp"

#include "require.hpp"
#include "scupper/cost/interest.hpp"

#include <cmath>

namespace scupper::cost {

namespace {

template <class T>
void check(const Amount<T>& price, const Amount<T>& salvage, const T& years) {
    detail::not_negative("price", price);
    detail::not_negative("salvage", salvage);
    detail::positive("years", years);
}

} // namespace

template <class T>
Amount<T> straight_line(const Amount<T>& price, const Amount<T>& salvage, const T& years) {
    check(price, salvage, years);
    return (price - salvage) / years;
}

template <class T>
Amount<T> declining_balance(const Amount<T>& price, const Amount<T>& salvage, const T& share,
                            const T& year) {
    using std::pow;
    check(price, salvage, year);
    detail::share("share", share);
    detail::at_least_one("year", year);
    const Amount<T> worth = price * pow(1.0 - share, year - 1.0);
    return max_of(min_of(worth * share, worth - salvage), Amount<T>(T(0.0)));
}

template <class T>
Amount<T> sum_of_years(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                       const T& year) {
    check(price, salvage, years);
    detail::at_least_one("year", year);
    const T left = max_of(years - year + 1.0, T(0.0));
    return (price - salvage) * left / (years * (years + 1.0) / 2.0);
}

template <class T>
Amount<T> average_investment(const Amount<T>& price, const Amount<T>& salvage, const T& years) {
    check(price, salvage, years);
    return (price * (years + 1.0) + salvage * (years - 1.0)) / (2.0 * years);
}

template <class T>
Amount<T> ownership_by_investment(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                                  const T& interest, const T& keeping) {
    detail::rate("interest", interest);
    detail::not_negative("keeping", keeping);
    return straight_line(price, salvage, years) +
           average_investment(price, salvage, years) * (interest + keeping);
}

template <class T>
Amount<T> ownership_by_recovery(const Amount<T>& price, const Amount<T>& salvage, const T& years,
                                const T& interest, const T& keeping) {
    check(price, salvage, years);
    detail::not_negative("keeping", keeping);
    return price * capital_recovery_factor(interest, years) -
           salvage * sinking_fund_factor(interest, years) +
           average_investment(price, salvage, years) * keeping;
}

template <class T>
AmountPerTime<T> hourly(const Amount<T>& annual, const Time<T>& hours) {
    detail::positive("hours", hours);
    return annual / hours;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Amount<T> straight_line(const Amount<T>&, const Amount<T>&, const T&);                \
    template Amount<T> declining_balance(const Amount<T>&, const Amount<T>&, const T&, const T&);  \
    template Amount<T> sum_of_years(const Amount<T>&, const Amount<T>&, const T&, const T&);       \
    template Amount<T> average_investment(const Amount<T>&, const Amount<T>&, const T&);           \
    template Amount<T> ownership_by_investment(const Amount<T>&, const Amount<T>&, const T&,       \
                                               const T&, const T&);                                \
    template Amount<T> ownership_by_recovery(const Amount<T>&, const Amount<T>&, const T&,         \
                                             const T&, const T&);                                  \
    template AmountPerTime<T> hourly(const Amount<T>&, const Time<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
