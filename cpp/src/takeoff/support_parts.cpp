// Bent caps, columns, abutments, benches and slope protection.

#include "parts.hpp"
#include "scupper/takeoff/geometry.hpp"

namespace scupper::takeoff::detail {

namespace {

constexpr double abutments = 2.0;

template <class T>
void take_off_bents(const Shape& shape, const Dimensions<T>& d, const Length<T>& line,
                    Bill<T>& bill) {
    const Count<T> caps =
        bill.template put<slot("cap_count")>(count_of<T>(shape.has_caps ? shape.piers : 0));
    bill.template put<slot("cap_area")>(number(caps) * cap_surface(line, d.cap_width, d.cap_depth));
    const Count<T> columns = bill.template put<slot("column_count")>(
        shape.has_columns ? caps * count_up(line / d.column_spacing) : Count<T>());
    bill.template put<slot("column_area")>(number(columns) *
                                           column_surface(d.column_diameter, d.column_height));
}

} // namespace

template <class T>
void take_off_supports(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const Length<T> line = named("support line on the skew", skew_length(d.deck_width, d.skew));
    take_off_bents(shape, d, line, bill);
    const Length<T> ends = (shape.has_abutments ? abutments : 0.0) * line;
    bill.template put<slot("abutment_area")>(ends * d.abutment_height);
    bill.template put<slot("berm_area")>(ends * d.berm_width);
    using std::sqrt;
    const T slant = sqrt(1.0 + d.slope_run * d.slope_run);
    bill.template put<slot("slope_protection_area")>(ends * (d.slope_height * slant));
}

template void take_off_supports(const Shape&, const Dimensions<double>&, Bill<double>&);
template void take_off_supports(const Shape&, const Dimensions<Traced>&, Bill<Traced>&);

} // namespace scupper::takeoff::detail
