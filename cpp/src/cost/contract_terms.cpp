#include "scupper/cost/contract_terms.hpp"

namespace scupper::cost {

template <class T>
Amount<T> occupancy(const Time<T>& time, const AmountPerTime<T>& charge) {
    return time * charge;
}

template <class T>
Amount<T> expected_damages(const T& chance, const Time<T>& late, const AmountPerTime<T>& damages) {
    return chance * (late * damages);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Amount<T> occupancy(const Time<T>&, const AmountPerTime<T>&);                         \
    template Amount<T> expected_damages(const T&, const Time<T>&, const AmountPerTime<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::cost
