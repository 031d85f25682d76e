#include "scupper/cost/wage.hpp"

#include "require.hpp"

namespace scupper::cost {

template <class T>
T capped_tax_share(const T& tax_rate, const Amount<T>& year_pay, const Amount<T>& cap) {
    detail::not_negative("tax_rate", tax_rate);
    detail::positive("year_pay", year_pay);
    detail::not_negative("cap", cap);
    return tax_rate * min_of(year_pay, cap) / year_pay;
}

template <class T>
Amount<T> capped_tax(const T& tax_rate, const Amount<T>& earned, const Amount<T>& pay,
                     const Amount<T>& cap) {
    detail::not_negative("tax_rate", tax_rate);
    detail::not_negative("earned", earned);
    detail::not_negative("pay", pay);
    detail::not_negative("cap", cap);
    return (min_of(earned + pay, cap) - min_of(earned, cap)) * tax_rate;
}

template <class T>
T leave_factor(const Time<T>& paid, const Time<T>& worked) {
    detail::not_negative("paid", paid);
    detail::positive("worked", worked);
    return paid / worked;
}

template <class T>
AmountPerTime<T> overtime_base(const AmountPerTime<T>& cash, const AmountPerTime<T>& basic) {
    detail::not_negative("cash", cash);
    detail::not_negative("basic", basic);
    return max_of(cash, basic);
}

template <class T>
Amount<T> week_pay(const Time<T>& hours, const AmountPerTime<T>& cash,
                   const AmountPerTime<T>& fringe, const AmountPerTime<T>& basic,
                   const Time<T>& limit, const T& factor) {
    detail::not_negative("hours", hours);
    detail::not_negative("limit", limit);
    detail::not_negative("fringe", fringe);
    const Time<T> overtime = max_of(hours - limit, Time<T>(T(0.0)));
    const AmountPerTime<T> premium = overtime_premium(cash, basic, factor, T(0.0));
    return (cash + fringe) * hours + premium * overtime;
}

template <class T>
AmountPerTime<T> labour_hour(const AmountPerTime<T>& cash, const AmountPerTime<T>& fringe,
                             const T& burden, const T& leave, const AmountPerTime<T>& allowance) {
    detail::not_negative("cash", cash);
    detail::not_negative("fringe", fringe);
    detail::not_negative("burden", burden);
    detail::positive("leave", leave);
    detail::not_negative("allowance", allowance);
    return cash * leave * (1.0 + burden) + fringe + allowance;
}

template <class T>
AmountPerTime<T> overtime_premium(const AmountPerTime<T>& cash, const AmountPerTime<T>& basic,
                                  const T& factor, const T& burden) {
    detail::not_negative("burden", burden);
    detail::at_least_one("factor", factor);
    return overtime_base(cash, basic) * (factor - 1.0) * (1.0 + burden);
}

template <class T>
Time<T> show_up_time(const Time<T>& worked, const Time<T>& least) {
    detail::not_negative("worked", worked);
    detail::not_negative("least", least);
    return max_of(worked, least);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template T capped_tax_share(const T&, const Amount<T>&, const Amount<T>&);                     \
    template Amount<T> capped_tax(const T&, const Amount<T>&, const Amount<T>&, const Amount<T>&); \
    template T leave_factor(const Time<T>&, const Time<T>&);                                       \
    template AmountPerTime<T> overtime_base(const AmountPerTime<T>&, const AmountPerTime<T>&);     \
    template Amount<T> week_pay(const Time<T>&, const AmountPerTime<T>&, const AmountPerTime<T>&,  \
                                const AmountPerTime<T>&, const Time<T>&, const T&);                \
    template AmountPerTime<T> labour_hour(const AmountPerTime<T>&, const AmountPerTime<T>&,        \
                                          const T&, const T&, const AmountPerTime<T>&);            \
    template AmountPerTime<T> overtime_premium(const AmountPerTime<T>&, const AmountPerTime<T>&,   \
                                               const T&, const T&);                                \
    template Time<T> show_up_time(const Time<T>&, const Time<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
