// A formula over its number type costs nothing in double: against the same by hand; and recorded.
#include "bench.hpp"
#include "scupper/traced.hpp"

#include <cmath>
#include <vector>

namespace {

using namespace scupper;

template <class T>
Mass<T> gutter_dirt(const Length<T>& length, const Length<T>& width, const Length<T>& depth,
                    const Density<T>& density, const Mass<T>& payload) {
    const Volume<T> volume = named("volume", length * width * depth);
    const Mass<T> mass = named("mass", volume * density);
    const T loads = named("loads", count_up(mass / payload));
    return choose(loads > T(1.0), mass, mass + payload * T(0.5));
}

double by_hand(double length, double width, double depth, double density, double payload) {
    const double mass = length * width * depth * density;
    const double loads = std::ceil(mass / payload * (1.0 - 1e-9));
    return loads > 1.0 ? mass : mass + payload * 0.5;
}

constexpr int items = 4096;

double lengths(int i) {
    return 20.0 + 0.1 * i;
}

double time_by_hand() {
    return bench::nanoseconds(200, [] {
        double sum = 0.0;
        for (int i = 0; i < items; ++i) {
            sum += by_hand(lengths(i), 0.45, 0.006, 1500.0, 400.0);
        }
        bench::keep(sum);
    });
}

double time_typed() {
    return bench::nanoseconds(200, [] {
        Mass<> sum;
        for (int i = 0; i < items; ++i) {
            sum += gutter_dirt<double>(Length<>(lengths(i)), Length<>(0.45), Length<>(0.006),
                                       Density<>(1500.0), Mass<>(400.0));
        }
        bench::keep(sum.si());
    });
}

double time_traced() {
    Recording recording;
    return bench::nanoseconds(2, [&] {
        for (int i = 0; i < items; ++i) {
            recording.clear();
            const auto leaf = [&](double v) {
                return Traced(v, &recording, recording.leaf(v, {}));
            };
            bench::keep(gutter_dirt<Traced>(Length<Traced>(leaf(lengths(i))),
                                            Length<Traced>(leaf(0.45)), Length<Traced>(leaf(0.006)),
                                            Density<Traced>(leaf(1500.0)),
                                            Mass<Traced>(leaf(400.0)))
                            .si()
                            .value());
        }
    });
}

} // namespace

int main() {
    const double plain = time_by_hand() / items;
    bench::report("dirt of one gutter, by hand", plain);
    bench::report("dirt of one gutter, the formula in double", time_typed() / items, plain);
    bench::report("dirt of one gutter, the formula recorded", time_traced() / items, plain);
}
