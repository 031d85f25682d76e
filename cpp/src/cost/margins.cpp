#include "scupper/cost/margins.hpp"

#include "scupper/traced.hpp"

namespace scupper::cost {

template <class T>
MarginAmounts<T> add_margins(const Amount<T>& direct, const Margins<T>& margins) {
    MarginAmounts<T> a;
    Amount<T> sum = direct;
    const auto add = [&sum](const char* name, const T& share) {
        const Amount<T> margin = named(name, sum * share);
        sum += margin;
        return margin;
    };
    a.overhead = add("overhead", margins.overhead);
    a.profit = add("profit", margins.profit);
    a.bond = add("bond", margins.bond);
    a.mobilization = add("mobilization", margins.mobilization);
    a.contingency = add("contingency", margins.contingency);
    a.price = sum;
    return a;
}

template MarginAmounts<double> add_margins(const Amount<double>&, const Margins<double>&);
template MarginAmounts<Traced> add_margins(const Amount<Traced>&, const Margins<Traced>&);

} // namespace scupper::cost
