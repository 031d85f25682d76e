// Deck, walks, edges, joints, gutters and drains.

#include "parts.hpp"
#include "scupper/takeoff/geometry.hpp"

namespace scupper::takeoff::detail {

namespace {

constexpr double deck_edges = 2.0;

/// A parapet stands along every gutter: a median's barrier or gap adds two.
template <class T>
void take_off_edges(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    const Length<T> lines = static_cast<double>(shape.gutters) * d.deck_length;
    bill.template put<slot("gutter_length")>(shape.open_deck ? Length<T>() : lines);
    const Length<T> faces = bill.template put<slot("parapet_length")>(lines * d.parapet_share);
    bill.template put<slot("parapet_area")>(faces * d.parapet_face_height);
    bill.template put<slot("rail_length")>(deck_edges * d.deck_length * d.rail_share);
}

} // namespace

template <class T>
void take_off_deck(const Shape& shape, const Dimensions<T>& d, Bill<T>& bill) {
    bill.template put<slot("deck_top_area")>(d.deck_length * d.roadway_width);
    bill.template put<slot("sidewalk_area")>(d.deck_length * d.walk_width);
    bill.template put<slot("median_area")>(d.deck_length * d.median_width);
    bill.template put<slot("gutter_pocket_length")>(static_cast<double>(shape.walks) *
                                                    d.deck_length * d.pocket_share);
    bill.template put<slot("soffit_overhang_area")>(
        shape.has_overhang ? deck_edges * d.deck_length * d.overhang_width : Area<T>());
    take_off_edges(shape, d, bill);
    const Count<T> joints = bill.template put<slot("joint_count")>(d.joint_count);
    bill.template put<slot("joint_length")>(number(joints) * skew_length(d.roadway_width, d.skew));
}

template <class T>
void take_off_drains(const Dimensions<T>& d, Bill<T>& bill) {
    constexpr Slot free = slot("drain_free_count");
    constexpr Slot clogged = slot("drain_clogged_count");
    constexpr Slot frozen = slot("drain_frozen_count");
    constexpr Slot all = slot("drain_count");
    const bool counted_by_state =
        bill.is_given(free) && bill.is_given(clogged) && bill.is_given(frozen);
    const Count<T> count = bill.template put<all>(
        counted_by_state ? bill.template given<free>() + bill.template given<clogged>() +
                               bill.template given<frozen>()
                         : d.drains_per_length * d.deck_length);
    const Count<T> plugged = bill.template put<clogged>(count * d.clogged_share);
    // A grate is frozen or the drain merely clogged, never both.
    const T frozen_share = min_of(d.frozen_share, 1.0 - d.clogged_share);
    const Count<T> stuck = bill.template put<frozen>(count * frozen_share);
    bill.template put<free>(max_of(count - plugged - stuck, Count<T>()));
    const Count<T> boxes = bill.template put<slot("drain_box_count")>(count * d.box_share);
    bill.template put<slot("downspout_length")>(number(boxes) * d.downspout_length);
}

template void take_off_deck(const Shape&, const Dimensions<double>&, Bill<double>&);
template void take_off_deck(const Shape&, const Dimensions<Traced>&, Bill<Traced>&);
template void take_off_drains(const Dimensions<double>&, Bill<double>&);
template void take_off_drains(const Dimensions<Traced>&, Bill<Traced>&);

} // namespace scupper::takeoff::detail
