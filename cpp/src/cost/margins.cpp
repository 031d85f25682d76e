#include "scupper/cost/margins.hpp"

#include "scupper/traced.hpp"

namespace scupper::cost {

template <class T>
MarginAmounts<T> add_margins(const Amount<T>& direct, const Margins<T>& margins) {
    MarginAmounts<T> a;
    Amount<T> sum = direct;
    const auto add = [&sum](const char* name, const T& share, const char* so_far) {
        const Amount<T> margin = named(name, sum * share);
        sum = named(so_far, sum + margin);
        return margin;
    };
    a.overhead = add("overhead", margins.overhead, "cost with overhead");
    a.profit = add("profit", margins.profit, "cost with overhead and profit");
    a.bond = add("bond", margins.bond, "price before mobilization");
    a.mobilization = add("mobilization", margins.mobilization, "price before contingency");
    a.contingency = add("contingency", margins.contingency, "price");
    a.price = sum;
    return a;
}

template MarginAmounts<double> add_margins(const Amount<double>&, const Margins<double>&);
template MarginAmounts<Traced> add_margins(const Amount<Traced>&, const Margins<Traced>&);

} // namespace scupper::cost
