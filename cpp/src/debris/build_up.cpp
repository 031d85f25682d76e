#include "scupper/debris/build_up.hpp"

#include "require.hpp"

namespace scupper::debris {

template <class T>
Volume<T> strip_volume(const Length<T>& length, const Length<T>& width, const Length<T>& depth) {
    detail::not_negative("length", length);
    detail::not_negative("width", width);
    detail::not_negative("depth", depth);
    return length * width * depth;
}

template <class T>
Volume<T> drain_volume(const Count<T>& drains, const VolumeEach<T>& volume_each) {
    detail::not_negative("drains", drains);
    detail::not_negative("volume_each", volume_each);
    return drains * volume_each;
}

template <class T>
Mass<T> strip_mass(const Length<T>& length, const LineMass<T>& line_mass) {
    detail::not_negative("length", length);
    detail::not_negative("line_mass", line_mass);
    return length * line_mass;
}

template <class T>
Length<T> build_up_depth(const LineMass<T>& line_mass, const Length<T>& width,
                         const Density<T>& density) {
    detail::not_negative("line_mass", line_mass);
    detail::positive("width", width);
    detail::positive("density", density);
    return line_mass / (width * density);
}

template Volume<double> strip_volume(const Length<double>&, const Length<double>&,
                                     const Length<double>&);
template Volume<Traced> strip_volume(const Length<Traced>&, const Length<Traced>&,
                                     const Length<Traced>&);
template Volume<double> drain_volume(const Count<double>&, const VolumeEach<double>&);
template Volume<Traced> drain_volume(const Count<Traced>&, const VolumeEach<Traced>&);
template Mass<double> strip_mass(const Length<double>&, const LineMass<double>&);
template Mass<Traced> strip_mass(const Length<Traced>&, const LineMass<Traced>&);
template Length<double> build_up_depth(const LineMass<double>&, const Length<double>&,
                                       const Density<double>&);
template Length<Traced> build_up_depth(const LineMass<Traced>&, const Length<Traced>&,
                                       const Density<Traced>&);

} // namespace scupper::debris
