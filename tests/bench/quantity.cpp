// A quantity is a number at run time: areas from lengths, against the same in plain doubles.
#include "scupper/quantity.hpp"

#include "bench.hpp"

#include <vector>

namespace {

template <class Number>
auto total(const std::vector<Number>& lengths, const std::vector<Number>& widths) {
    auto sum = lengths[0] * widths[0];
    for (std::size_t i = 1; i < lengths.size(); ++i) {
        sum += lengths[i] * widths[i];
    }
    return sum;
}

template <class Number>
double time_total() {
    const std::vector<Number> lengths(4096, Number(36.0)), widths(4096, Number(12.5));
    return bench::nanoseconds(200, [&] { bench::keep(total(lengths, widths)); });
}

} // namespace

int main() {
    const double plain = time_total<double>();
    bench::report("4096 areas, double", plain);
    bench::report("4096 areas, Length", time_total<scupper::Length<>>(), plain);
}
