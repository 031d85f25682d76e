#include "scupper/debris/build_up.hpp"

namespace scupper::debris {

template <class T>
Volume<T> strip_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth) {
    return length * width * depth;
}

template <class T>
Volume<T> drain_volume(const Count<T>& drains, const VolumeEach<T>& volume_each) {
    return drains * volume_each;
}

template Volume<double> strip_volume(const Length<double>&, const Length<double>&,
                                     const Length<double>&);
template Volume<Traced> strip_volume(const Length<Traced>&, const Length<Traced>&,
                                     const Length<Traced>&);
template Volume<double> drain_volume(const Count<double>&, const VolumeEach<double>&);
template Volume<Traced> drain_volume(const Count<Traced>&, const VolumeEach<Traced>&);

} // namespace scupper::debris
