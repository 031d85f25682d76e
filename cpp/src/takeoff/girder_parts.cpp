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

/// Surface for each unit of deck length, all lines together.
template <class T>
Length<T> girth_of_all(const Shape& shape, const Dimensions<T>& d, const Count<T>& lines) {
    if (shape.lines == Lines::none) {
        return named("soffit girth", d.deck_width * d.girder_face_factor);
    }
    return number(lines) *
           named("girth of a girder", girder_girth(d.girder_depth, d.girder_face_factor,
                                                   shape.flange_faces, d.flange_width));
}

} // namespace

template <class T>
void take_off_girders(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const Count<T> lines = bill.template put<slot("girder_count")>(girder_lines(shape, d));
    const Length<T> girth = girth_of_all(shape, d, lines);
    bill.template put<slot("girder_area")>(d.deck_length * girth);
    const Count<T> ends = ends_at_joints(bill.template get<slot("joint_count")>());
    // On a short deck the washed ends meet.
    const Length<T> washed =
        named("washed length of a line", min_of(number(ends) * d.girder_end_length, d.deck_length));
    bill.template put<slot("girder_end_area")>(washed * girth);
    const Count<T> bearings = bill.template put<slot("bearing_count")>(
        shape.has_bearings ? number(lines) * d.bearings_per_line : Count<T>());
    bill.template put<slot("pedestal_count")>(bearings * d.pedestals_per_bearing);
}

template void take_off_girders(const Shape&, const Dimensions<double>&, Bill<double>&);
template void take_off_girders(const Shape&, const Dimensions<Traced>&, Bill<Traced>&);

} // namespace scupper::takeoff::detail
