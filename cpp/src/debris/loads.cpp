#include "scupper/debris/loads.hpp"

#include <limits>

namespace scupper::debris {

template <class T>
Mass<T> payload(const Mass<T>& gross_limit, const Mass<T>& empty_mass,
                const Volume<T>& water_aboard, const Density<T>& water_density) {
    return gross_limit - empty_mass - named("fresh water aboard", water_aboard * water_density);
}

template <class T>
Bulk<T> with_water(const Bulk<T>& debris, const Volume<T>& water, const Density<T>& water_density) {
    return {debris.volume + water, debris.mass + water * water_density};
}

template <class T>
Count<T> loads(const Bulk<T>& debris, const Bulk<T>& truck, bool shared) {
    const T no_payload(std::numeric_limits<double>::quiet_NaN());
    const T by_weight = named("loads by weight", choose(truck.mass > Mass<T>(T(0.0)),
                                                        debris.mass / truck.mass, no_payload));
    const T by_volume = named("loads by volume", debris.volume / truck.volume);
    const T full = max_of(by_weight, by_volume);
    return Count<T>(shared ? full : count_up(full));
}

template Mass<double> payload(const Mass<double>&, const Mass<double>&, const Volume<double>&,
                              const Density<double>&);
template Mass<Traced> payload(const Mass<Traced>&, const Mass<Traced>&, const Volume<Traced>&,
                              const Density<Traced>&);
template Bulk<double> with_water(const Bulk<double>&, const Volume<double>&,
                                 const Density<double>&);
template Bulk<Traced> with_water(const Bulk<Traced>&, const Volume<Traced>&,
                                 const Density<Traced>&);
template Count<double> loads(const Bulk<double>&, const Bulk<double>&, bool);
template Count<Traced> loads(const Bulk<Traced>&, const Bulk<Traced>&, bool);

} // namespace scupper::debris
