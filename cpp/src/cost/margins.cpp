#include "scupper/cost/margins.hpp"

namespace scupper::cost {

template <class T>
MarginAmounts<T> add_margins(const Amount<T>& direct, const Margins<T>& margins) {
    MarginAmounts<T> a;
    Amount<T> sum = direct;
    const auto add = [&sum](const T& share) {
        const Amount<T> margin = sum * share;
        sum += margin;
        return margin;
    };
    a.overhead = add(margins.overhead);
    a.profit = add(margins.profit);
    a.bond = add(margins.bond);
    a.mobilization = add(margins.mobilization);
    a.contingency = add(margins.contingency);
    a.price = sum;
    return a;
}

template MarginAmounts<double> add_margins(const Amount<double>&, const Margins<double>&);
template MarginAmounts<Traced> add_margins(const Amount<Traced>&, const Margins<Traced>&);

} // namespace scupper::cost
