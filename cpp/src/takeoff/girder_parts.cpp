// Girders, boxes, slabs, trusses, and the bearings they stand on.

#include "parts.hpp"
#include "scupper/takeoff/geometry.hpp"

namespace scupper::takeoff::detail {

namespace {

template <class T>
Count<T> girder_lines(const Shape& shape, const Dimensions<T>& d) {
    switch (shape.lines) {
    case Lines::none:
        return {};
    case Lines::pair:
        return count_of<T>(2);
    case Lines::strips:
        return Count<T>(count_up(d.deck_width / d.girder_spacing));
    case Lines::spaced:
        break;
    }
    const Length<T> between = max_of(d.deck_width - 2.0 * d.overhang_width, Length<T>());
    return Count<T>(count_up(between / d.girder_spacing) + 1.0);
}

/// Surface for each unit of deck length that goes with the width: a soffit, or the floorbeams and
/// stringers between two girders or trusses.
template <class T>
Length<T> girth_across(const Shape& shape, const Dimensions<T>& d) {
    const T& factor = shape.lines == Lines::none ? d.girder_face_factor : d.floor_factor;
    return named("surface across the width", d.deck_width * factor);
}

template <class T>
Length<T> girth_of_line(const Shape& shape, const Dimensions<T>& d) {
    return named("girth of a girder", girder_girth(d.girder_depth, d.girder_face_factor,
                                                   shape.flange_faces, d.flange_width));
}

template <class T>
void take_off_surfaces(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const T lines = number(bill.template get<slot("girder_count")>());
    const Length<T> across = girth_across(shape, d);
    const Length<T> line = girth_of_line(shape, d);
    bill.template put<slot("girder_area")>(d.deck_length * (lines * line + across));
    const Count<T> ends = ends_at_joints(bill.template get<slot("joint_count")>());
    const Count<T> all_ends = bill.template put<slot("girder_end_count")>(lines * ends);
    // On a short deck the washed ends meet.
    const Length<T> washed_lines =
        min_of(number(all_ends) * d.girder_end_length, lines * d.deck_length);
    const Length<T> washed =
        named("washed length of a line", min_of(number(ends) * d.girder_end_length, d.deck_length));
    bill.template put<slot("girder_end_area")>(washed_lines * line + washed * across);
}

/// Rows between the outer girders, one at each end of every continuous length.
template <class T>
void take_off_diaphragms(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const T rows = count_up(d.deck_length / d.diaphragm_spacing) + static_cast<double>(shape.units);
    const Length<T> between = max_of(d.deck_width - 2.0 * d.overhang_width, Length<T>());
    constexpr double faces = 2.0;
    bill.template put<slot("diaphragm_area")>(faces * rows * between * d.diaphragm_depth);
}

} // namespace

template <class T>
void take_off_girders(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const Count<T> lines = bill.template put<slot("girder_count")>(girder_lines(shape, d));
    take_off_surfaces(shape, d, bill);
    take_off_diaphragms(shape, d, bill);
    const Count<T> bearings = bill.template put<slot("bearing_count")>(
        shape.has_bearings ? number(lines) * d.bearings_per_line : Count<T>());
    bill.template put<slot("pedestal_count")>(bearings * d.pedestals_per_bearing);
}

template void take_off_girders(const Shape&, const Dimensions<double>&, Bill<double>&);
template void take_off_girders(const Shape&, const Dimensions<Traced>&, Bill<Traced>&);

} // namespace scupper::takeoff::detail
