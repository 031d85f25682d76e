#include "scupper/debris/swell.hpp"

#include "require.hpp"

namespace scupper::debris {

template <class T>
Volume<T> loose_volume(const Volume<T>& volume, const T& swell) {
    detail::not_negative("volume", volume);
    detail::not_negative("swell", swell);
    return volume * (1.0 + swell);
}

template <class T>
T load_factor(const T& swell) {
    detail::not_negative("swell", swell);
    return 1.0 / (1.0 + swell);
}

template <class T>
T swell_voids(const T& swell) {
    detail::not_negative("swell", swell);
    return swell / (1.0 + swell);
}

template <class T>
Density<T> wet_density(const Density<T>& dry, const T& gain) {
    detail::positive("density", dry);
    detail::not_negative("gain", gain);
    return dry * (1.0 + gain);
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Volume<T> loose_volume(const Volume<T>&, const T&);                                   \
    template T load_factor(const T&);                                                              \
    template T swell_voids(const T&);                                                              \
    template Density<T> wet_density(const Density<T>&, const T&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::debris
