// Bent caps, columns, pier walls, footings, abutments, benches and slope protection.

#include "parts.hpp"
#include "scupper/takeoff/geometry.hpp"

namespace scupper::takeoff::detail {

namespace {

constexpr double wings_of_an_abutment = 2.0;

template <class T>
void take_off_caps(const Shape& shape, const Dimensions<T>& d, const Length<T>& line,
                   Bill<T>& bill) {
    const Count<T> caps =
        bill.template put<slot("cap_count")>(count_of<T>(shape.has_caps ? shape.piers : 0));
    const Area<T> tops = bill.template put<slot("cap_top_area")>(number(caps) * line * d.cap_width);
    const T on_columns = number(caps) * (1.0 - d.wall_share);
    bill.template put<slot("cap_area")>(
        on_columns * upright_surface(line, d.cap_width, d.cap_depth) + tops);
    const Count<T> columns = bill.template put<slot("column_count")>(
        Count<T>(shape.has_columns ? on_columns * count_up(line / d.column_spacing) : T(0.0)));
    bill.template put<slot("column_area")>(number(columns) *
                                           column_surface(d.column_diameter, d.column_height));
}

/// Piers of a vault have no caps, yet they are walls.
template <class T>
T piers_of(const Shape& shape, const Bill<T>& bill) {
    return number(shape.has_caps ? bill.template get<slot("cap_count")>()
                                 : count_of<T>(shape.piers));
}

template <class T>
void take_off_walls(const Shape& shape, const Dimensions<T>& d, const Length<T>& line,
                    Bill<T>& bill) {
    const T walls = named("pier walls", piers_of(shape, bill) * d.wall_share);
    bill.template put<slot("wall_pier_area")>(
        walls * upright_surface(line, d.wall_thickness, d.column_height + d.cap_depth));
    const T columns = number(bill.template get<slot("column_count")>());
    const Area<T> ledges =
        walls * ledge_surface(line, d.wall_thickness, d.footing_projection) +
        columns * ledge_surface(d.column_diameter, d.column_diameter, d.footing_projection);
    bill.template put<slot("footing_area")>(d.footing_exposed_share * ledges);
}

template <class T>
void take_off_abutments(const Dimensions<T>& d, const Length<T>& ends, double abutments,
                        Bill<T>& bill) {
    bill.template put<slot("seat_area")>(ends * d.seat_width);
    const Area<T> stems = bill.template put<slot("abutment_stem_area")>(ends * d.abutment_height);
    const Area<T> back_walls = bill.template put<slot("back_wall_area")>(ends * d.back_wall_height);
    bill.template put<slot("abutment_area")>(stems + back_walls);
    // A wing falls from the height of the abutment to nothing.
    const Length<T> mean_height = 0.5 * (d.abutment_height + d.back_wall_height);
    const double wings = wings_of_an_abutment * abutments;
    bill.template put<slot("wing_wall_area")>(wings * d.wing_length * mean_height);
    bill.template put<slot("berm_area")>(ends * d.berm_width);
    using std::sqrt;
    const T slant = sqrt(1.0 + d.slope_run * d.slope_run);
    bill.template put<slot("slope_protection_area")>(ends * (d.slope_height * slant));
}

} // namespace

template <class T>
void take_off_supports(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const Length<T> line = named("support line on the skew", skew_length(d.deck_width, d.skew));
    take_off_caps(shape, d, line, bill);
    take_off_walls(shape, d, line, bill);
    const double abutments = shape.abutments;
    take_off_abutments(d, abutments * line, abutments, bill);
    constexpr double faces_of_a_bent = 2.0;
    bill.template put<slot("support_line_length")>(
        (faces_of_a_bent * piers_of(shape, bill) + abutments) * line);
}

template void take_off_supports(const Shape&, const Dimensions<double>&, Bill<double>&);
template void take_off_supports(const Shape&, const Dimensions<Traced>&, Bill<Traced>&);

} // namespace scupper::takeoff::detail
