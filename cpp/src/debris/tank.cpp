#include "scupper/debris/tank.hpp"

#include "require.hpp"

namespace scupper::debris {

namespace {

template <class T>
void check_truck(const Bulk<T>& truck) {
    detail::positive("room", truck.volume);
    detail::positive("payload", truck.mass);
}

template <class T>
void check_debris(const Bulk<T>& debris) {
    detail::not_negative("volume", debris.volume);
    detail::not_negative("mass", debris.mass);
}

/// A liquid cannot weigh more than the load that it is part of.
void check_left(const Mass<double>& left, double free_share) {
    detail::require(left.si() >= 0.0, "free_share", free_share,
                    "liquid that weighs less than the load");
}
void check_left(const Mass<Traced>&, const Traced&) {}

} // namespace

template <class T>
Bulk<T> tank_fill(const Bulk<T>& truck, const Density<T>& density) {
    check_truck(truck);
    detail::positive("density", density);
    const Volume<T> by_weight = named("volume at the legal weight", truck.mass / density);
    const Volume<T> volume = named("volume loaded", min_of(truck.volume, by_weight));
    return {volume, volume * density};
}

template <class T>
Density<T> balanced_density(const Bulk<T>& truck) {
    check_truck(truck);
    return truck.mass / truck.volume;
}

template <class T>
Bulk<T> decanted(const Bulk<T>& load, const T& free_share, const Density<T>& water_density) {
    check_debris(load);
    detail::share("free_share", free_share);
    detail::positive("density", water_density);
    const Volume<T> liquid = named("free liquid", load.volume * free_share);
    const Bulk<T> left{load.volume - liquid, load.mass - liquid * water_density};
    check_left(left.mass, free_share);
    return left;
}

bool weight_governs(const Bulk<>& truck, const Density<>& density) {
    return tank_fill(truck, density).volume < truck.volume;
}

Count<> truck_loads(const Bulk<>& debris, const Bulk<>& truck, bool shared) {
    check_debris(debris);
    check_truck(truck);
    return loads(debris, truck, shared);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Bulk<T> tank_fill(const Bulk<T>&, const Density<T>&);                                 \
    template Density<T> balanced_density(const Bulk<T>&);                                          \
    template Bulk<T> decanted(const Bulk<T>&, const T&, const Density<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::debris
