#include "scupper/cost/hire.hpp"

namespace scupper::cost {

template <class T>
Amount<T> hire(const Time<T>& time, const Count<T>& pieces, const AmountPerTime<T>& rate) {
    return time * number(pieces) * rate;
}

template Amount<double> hire(const Time<double>&, const Count<double>&,
                             const AmountPerTime<double>&);
template Amount<Traced> hire(const Time<Traced>&, const Count<Traced>&,
                             const AmountPerTime<Traced>&);
} // namespace scupper::cost
