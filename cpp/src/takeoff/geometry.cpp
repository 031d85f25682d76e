#include "scupper/takeoff/geometry.hpp"

#include "scupper/traced.hpp"

#include <numbers>

namespace scupper::takeoff {

template <class T>
Length<T> skew_length(const Length<T>& width, const Angle<T>& skew) {
    return width / cos(skew);
}

template <class T>
Length<T> girder_girth(const Length<T>& depth, const T& face_factor, int flange_faces,
                       const Length<T>& flange_width) {
    return 2.0 * depth * face_factor + static_cast<double>(flange_faces) * flange_width;
}

template <class T>
Area<T> upright_surface(const Length<T>& length, const Length<T>& width, const Length<T>& height) {
    return 2.0 * (length + width) * height;
}

template <class T>
Area<T> ledge_surface(const Length<T>& length, const Length<T>& width,
                      const Length<T>& projection) {
    return 2.0 * projection * (length + width + 2.0 * projection);
}

template <class T>
Area<T> column_surface(const Length<T>& diameter, const Length<T>& height) {
    return std::numbers::pi * diameter * height;
}

template <class T>
Count<T> ends_at_joints(const Count<T>& joints) {
    const Count<T> abutments(T(2.0));
    return min_of(joints, abutments) + 2.0 * max_of(joints - abutments, Count<T>());
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Length<T> skew_length(const Length<T>&, const Angle<T>&);                             \
    template Length<T> girder_girth(const Length<T>&, const T&, int, const Length<T>&);            \
    template Area<T> upright_surface(const Length<T>&, const Length<T>&, const Length<T>&);        \
    template Area<T> ledge_surface(const Length<T>&, const Length<T>&, const Length<T>&);          \
    template Area<T> column_surface(const Length<T>&, const Length<T>&);                           \
    template Count<T> ends_at_joints(const Count<T>&);

SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)

#undef SCUPPER_INSTANTIATE

} // namespace scupper::takeoff
