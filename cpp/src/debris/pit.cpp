#include "scupper/debris/pit.hpp"

#include "require.hpp"

#include <numbers>

namespace scupper::debris {

template <class T>
Volume<T> box_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth) {
    detail::not_negative("length", length);
    detail::not_negative("width", width);
    detail::not_negative("depth", depth);
    return length * width * depth;
}

template <class T>
Volume<T> round_pit_volume(const Length<T>& diameter, const Length<T>& depth) {
    detail::not_negative("diameter", diameter);
    detail::not_negative("depth", depth);
    return (std::numbers::pi / 4.0) * power<2>(diameter) * depth;
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Volume<T> box_volume(const Length<T>&, const Length<T>&, const Length<T>&);           \
    template Volume<T> round_pit_volume(const Length<T>&, const Length<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::debris
