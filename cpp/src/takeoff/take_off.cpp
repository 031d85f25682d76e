#include "parts.hpp"

namespace scupper::takeoff {

namespace {

/// The fixed sum of all surfaces, free of any job's scope. Girder ends are part of the girders, cap
/// tops of the caps, stems and back walls of the abutments.
template <class T>
Area<T> washable_area(const Bill<T>& bill) {
    const Area<T> deck = bill.template get<slot("deck_top_area")>() +
                         bill.template get<slot("sidewalk_area")>() +
                         bill.template get<slot("median_area")>() +
                         bill.template get<slot("soffit_overhang_area")>() +
                         bill.template get<slot("parapet_area")>();
    const Area<T> girders =
        bill.template get<slot("girder_area")>() + bill.template get<slot("diaphragm_area")>();
    const Area<T> piers =
        bill.template get<slot("cap_area")>() + bill.template get<slot("column_area")>() +
        bill.template get<slot("wall_pier_area")>() + bill.template get<slot("footing_area")>();
    const Area<T> ends =
        bill.template get<slot("seat_area")>() + bill.template get<slot("abutment_area")>() +
        bill.template get<slot("wing_wall_area")>() + bill.template get<slot("berm_area")>() +
        bill.template get<slot("slope_protection_area")>();
    return deck + girders + piers + ends;
}

} // namespace

template <class T>
Quantities<T> take_off(const Shape& shape, const Dimensions<T>& dimensions, const Given<T>& given) {
    Bill<T> bill(given);
    bill.template put<slot("deck_total_area")>(dimensions.deck_length * dimensions.deck_width);
    if (shape.washable) {
        detail::take_off_deck(shape, dimensions, bill);
        detail::take_off_drains(dimensions, bill);
        detail::take_off_girders(shape, dimensions, bill);
        detail::take_off_supports(shape, dimensions, bill);
        bill.template put<slot("wash_area_total")>(washable_area(bill));
    }
    return bill.quantities();
}

template Quantities<double> take_off(const Shape&, const Dimensions<double>&, const Given<double>&);
template Quantities<Traced> take_off(const Shape&, const Dimensions<Traced>&, const Given<Traced>&);

} // namespace scupper::takeoff
