#include "scupper/cost/materials.hpp"

#include "require.hpp"
#include "scupper/cost/interest.hpp"

namespace scupper::cost {

namespace {

/// In how many years something is due.
template <class T>
T in_years(const Time<T>& time) {
    return time / Time<T>(T(factor::year));
}

} // namespace

template <class T>
Amount<T> hydrant_water(const Volume<T>& volume, const AmountPerVolume<T>& price,
                        const Amount<T>& fee) {
    detail::not_negative("volume", volume);
    detail::not_negative("price", price);
    detail::not_negative("fee", fee);
    return fee + volume * price;
}

template <class T>
Amount<T> hauled_water(const Volume<T>& volume, const AmountPerVolume<T>& price,
                       const Volume<T>& tank, const Time<T>& trip, const AmountPerTime<T>& rate) {
    detail::not_negative("volume", volume);
    detail::not_negative("price", price);
    detail::positive("tank", tank);
    detail::not_negative("trip", trip);
    detail::not_negative("rate", rate);
    return volume * price + trip * rate * count_up(volume / tank);
}

template <class T>
Amount<T> disposal_by_mass(const Mass<T>& mass, const AmountPerMass<T>& price,
                           const Amount<T>& least) {
    detail::not_negative("mass", mass);
    detail::not_negative("price", price);
    detail::not_negative("least", least);
    const Amount<T> nothing(T(0.0));
    return choose(mass > Mass<T>(T(0.0)), max_of(mass * price, least), nothing);
}

template <class T>
Amount<T> disposal_by_load(const Count<T>& loads, const Amount<T>& charge) {
    detail::not_negative("loads", loads);
    detail::not_negative("charge", charge);
    return charge * count_up(number(loads));
}

template <class T>
Amount<T> mobilization(const Count<T>& pieces, const Length<T>& distance,
                       const AmountPerLength<T>& price, const Amount<T>& fixed) {
    detail::not_negative("pieces", pieces);
    detail::not_negative("distance", distance);
    detail::not_negative("price", price);
    detail::not_negative("fixed", fixed);
    return (distance * price * 2.0 + fixed) * number(pieces);
}

template <class T>
Amount<T> escalated(const Amount<T>& amount, const T& inflation, const Time<T>& start,
                    const Time<T>& length) {
    detail::rate("inflation", inflation);
    detail::not_negative("start", start);
    detail::not_negative("length", length);
    return amount * compound_amount_factor(inflation, in_years(start + length / 2.0));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Amount<T> hydrant_water(const Volume<T>&, const AmountPerVolume<T>&,                  \
                                     const Amount<T>&);                                            \
    template Amount<T> hauled_water(const Volume<T>&, const AmountPerVolume<T>&, const Volume<T>&, \
                                    const Time<T>&, const AmountPerTime<T>&);                      \
    template Amount<T> disposal_by_mass(const Mass<T>&, const AmountPerMass<T>&,                   \
                                        const Amount<T>&);                                         \
    template Amount<T> disposal_by_load(const Count<T>&, const Amount<T>&);                        \
    template Amount<T> mobilization(const Count<T>&, const Length<T>&, const AmountPerLength<T>&,  \
                                    const Amount<T>&);                                             \
    template Amount<T> escalated(const Amount<T>&, const T&, const Time<T>&, const Time<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
