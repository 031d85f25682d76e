#include "scupper/cost/contract.hpp"

#include "require.hpp"
#include "scupper/cost/interest.hpp"

#include <numeric>

namespace scupper::cost {

template <class T>
Amount<T> occupancy(const Time<T>& time, const AmountPerTime<T>& charge) {
    return time * charge;
}

template <class T>
Amount<T> expected_damages(const T& chance, const Time<T>& late, const AmountPerTime<T>& damages) {
    return chance * (late * damages);
}

template <class T>
Amount<T> varied_payment(const T& quantity, const T& planned, const Amount<T>& price,
                         const T& limit, const Amount<T>& price_over,
                         const Amount<T>& price_under) {
    detail::not_negative("quantity", quantity);
    detail::positive("planned", planned);
    detail::not_negative("price", price);
    detail::not_negative("limit", limit);
    detail::not_negative("price_over", price_over);
    detail::not_negative("price_under", price_under);
    const T most = planned * (1.0 + limit);
    const T least = planned * (1.0 - limit);
    const Amount<T> within = price * min_of(quantity, most);
    const Amount<T> over = price_over * max_of(quantity - most, T(0.0));
    return choose(quantity < least, price_under * quantity, within + over);
}

template <class T>
Amount<T> retained(const Amount<T>& earned, const T& share, const Amount<T>& kept,
                   const Amount<T>& limit) {
    detail::not_negative("earned", earned);
    detail::share("share", share);
    detail::not_negative("kept", kept);
    detail::not_negative("limit", limit);
    return min_of(earned * share, max_of(limit - kept, Amount<T>(T(0.0))));
}

CashFlow retainage(std::span<const double> earned, double share, double limit_share,
                   std::size_t release_after, double interest) {
    const auto count = static_cast<double>(earned.size());
    detail::require(count >= 1.0, "periods", count, "at least one period");
    detail::share("limit_share", limit_share);
    const Amount<> limit(std::accumulate(earned.begin(), earned.end(), 0.0) * limit_share);
    CashFlow flow;
    Amount<> outstanding;
    for (std::size_t k = 0; k < earned.size() + release_after; ++k) {
        const Amount<> work(k < earned.size() ? earned[k] : 0.0);
        const Amount<> kept = retained(work, share, outstanding, limit);
        outstanding += kept;
        const bool last = k + 1 == earned.size() + release_after;
        const Amount<> paid = work - kept + (last ? outstanding : Amount<>());
        outstanding = last ? Amount<>() : outstanding;
        flow.earned.push_back(work.si());
        flow.kept.push_back(kept.si());
        flow.paid.push_back(paid.si());
        flow.outstanding.push_back(outstanding.si());
        flow.waiting_cost += ((work - paid) * present_worth_factor(interest, double(k + 1))).si();
    }
    return flow;
}

template <class T>
Amount<T> present_worth(const Amount<T>& annual, const T& interest, const T& years) {
    return annual * series_present_worth_factor(interest, years);
}

template <class T>
Time<T> break_even_time(const Amount<T>& fixed, const AmountPerTime<T>& own_rate,
                        const AmountPerTime<T>& hire_rate) {
    detail::not_negative("fixed", fixed);
    detail::not_negative("own_rate", own_rate);
    detail::positive("hire_rate", hire_rate - own_rate);
    return fixed / (hire_rate - own_rate);
}

template <class T>
Amount<T> conversion_differential(const Amount<T>& personnel_cost, const T& share,
                                  const Amount<T>& most) {
    detail::not_negative("personnel_cost", personnel_cost);
    detail::not_negative("share", share);
    detail::not_negative("most", most);
    return min_of(personnel_cost * share, most);
}

template <class T>
Amount<T> distributed(const Amount<T>& indirect, const Amount<T>& direct, const Amount<T>& all) {
    detail::not_negative("direct", direct);
    detail::positive("all", all);
    return indirect * (direct / all);
}

template <class T>
Amount<T> unit_cost(const Amount<T>& amount, const T& quantity) {
    detail::positive("quantity", quantity);
    return amount / quantity;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Amount<T> occupancy(const Time<T>&, const AmountPerTime<T>&);                         \
    template Amount<T> expected_damages(const T&, const Time<T>&, const AmountPerTime<T>&);        \
    template Amount<T> varied_payment(const T&, const T&, const Amount<T>&, const T&,              \
                                      const Amount<T>&, const Amount<T>&);                         \
    template Amount<T> retained(const Amount<T>&, const T&, const Amount<T>&, const Amount<T>&);   \
    template Amount<T> present_worth(const Amount<T>&, const T&, const T&);                        \
    template Time<T> break_even_time(const Amount<T>&, const AmountPerTime<T>&,                    \
                                     const AmountPerTime<T>&);                                     \
    template Amount<T> conversion_differential(const Amount<T>&, const T&, const Amount<T>&);      \
    template Amount<T> distributed(const Amount<T>&, const Amount<T>&, const Amount<T>&);          \
    template Amount<T> unit_cost(const Amount<T>&, const T&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
