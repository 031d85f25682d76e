#include "scupper/cost/operating.hpp"

#include "require.hpp"

namespace scupper::cost {

template <class T>
AmountPerTime<T> fuel(const Power<T>& power, const FuelUse<T>& fuel_use, const T& load,
                      const AmountPerVolume<T>& price) {
    detail::not_negative("power", power);
    detail::not_negative("fuel_use", fuel_use);
    detail::share("load", load);
    detail::not_negative("fuel_price", price);
    return power * load * fuel_use * price;
}

template <class T>
AmountPerTime<T> updated_fuel(const AmountPerTime<T>& fuel, const AmountPerVolume<T>& price,
                              const AmountPerVolume<T>& base) {
    detail::not_negative("fuel_price", price);
    detail::positive("base", base);
    return fuel * (price / base);
}

template <class T>
AmountPerTime<T> tyres(const Amount<T>& set, const Time<T>& life, const T& repair) {
    detail::not_negative("set", set);
    detail::positive("life", life);
    detail::not_negative("repair", repair);
    return set / life * (1.0 + repair);
}

template <class T>
AmountPerTime<T> repair(const AmountPerTime<T>& depreciation, const T& repair) {
    detail::not_negative("depreciation", depreciation);
    detail::not_negative("repair", repair);
    return depreciation * repair;
}

template <class T>
AmountPerTime<T> equipment_hour(const AmountPerTime<T>& ownership,
                                const AmountPerTime<T>& operating, const T& utilisation) {
    detail::not_negative("ownership", ownership);
    detail::not_negative("operating", operating);
    detail::share("utilisation", utilisation);
    return ownership + operating * utilisation;
}

template <class T>
AmountPerTime<T> standby(const AmountPerTime<T>& ownership, const T& share) {
    detail::not_negative("ownership", ownership);
    detail::share("share", share);
    return ownership * share;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template AmountPerTime<T> fuel(const Power<T>&, const FuelUse<T>&, const T&,                   \
                                   const AmountPerVolume<T>&);                                     \
    template AmountPerTime<T> updated_fuel(const AmountPerTime<T>&, const AmountPerVolume<T>&,     \
                                           const AmountPerVolume<T>&);                             \
    template AmountPerTime<T> tyres(const Amount<T>&, const Time<T>&, const T&);                   \
    template AmountPerTime<T> repair(const AmountPerTime<T>&, const T&);                           \
    template AmountPerTime<T> equipment_hour(const AmountPerTime<T>&, const AmountPerTime<T>&,     \
                                             const T&);                                            \
    template AmountPerTime<T> standby(const AmountPerTime<T>&, const T&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
