#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

template <class T>
takeoff::Dimensions<T> takeoff_dimensions(const Inputs<T>& in) {
    return {in.template get<"deck.length">(),
            in.template get<"deck.width">(),
            in.template get<"deck.roadway_width">(),
            in.template get<"deck.walk_width">(),
            in.template get<"deck.skew">(),
            in.template get<"deck.overhang_width">(),
            in.template get<"deck.pocket_share">(),
            in.template get<"deck.median_width">(),
            in.template get<"span.longest">(),
            in.template get<"joint.count">(),
            in.template get<"drain.per_length">(),
            in.template get<"drain.clogged_share">(),
            in.template get<"drain.frozen_share">(),
            in.template get<"drain.box_share">(),
            in.template get<"drain.downspout_length">(),
            in.template get<"parapet.face_height">(),
            in.template get<"parapet.share">(),
            in.template get<"rail.share">(),
            in.template get<"girder.spacing">(),
            in.template get<"girder.depth">(),
            in.template get<"girder.face_factor">(),
            in.template get<"girder.floor_factor">(),
            in.template get<"girder.flange_width">(),
            in.template get<"girder.end_length">(),
            in.template get<"diaphragm.spacing">(),
            in.template get<"diaphragm.depth">(),
            in.template get<"bearing.per_line">(),
            in.template get<"cap.width">(),
            in.template get<"cap.depth">(),
            in.template get<"seat.width">(),
            in.template get<"column.spacing">(),
            in.template get<"column.diameter">(),
            in.template get<"column.height">(),
            in.template get<"pier.wall_share">(),
            in.template get<"pier.wall_thickness">(),
            in.template get<"footing.projection">(),
            in.template get<"footing.exposed_share">(),
            in.template get<"abutment.height">(),
            in.template get<"abutment.back_wall_height">(),
            in.template get<"abutment.wing_length">(),
            in.template get<"pedestal.per_bearing">(),
            in.template get<"berm.width">(),
            in.template get<"slope.height">(),
            in.template get<"slope.run">()};
}

template <class T>
takeoff::Given<T> given_quantities(const Model& model, const Inputs<T>& in) {
    takeoff::Given<T> given;
    for (Slot s = 0; s < slot_table.size(); ++s) {
        if (model.given[s]) {
            given.is_given.set(s);
            given.value[s] = in.template raw<"quantity.given">(s);
        }
    }
    return given;
}

/// What the work makes of the structure; a number counted on site stands.
template <class T>
void put_count(const Model& model, const Inputs<T>& in, Slot s, const T& value,
               takeoff::Quantities<T>& q) {
    q.by_slot[s] = model.given[s] ? in.template raw<"quantity.given">(s) : value;
}

template <class T>
void count_passes(const Model& model, const Inputs<T>& in, std::size_t row, Slot count_slot,
                  Slot length_slot, takeoff::Quantities<T>& q) {
    const Count<T> once = work::passes(in.template get<"deck.roadway_width">(),
                                       in.template get<"pass.effective_width">(row),
                                       in.template get<"pass.overlap">(row));
    put_count(model, in, count_slot, number(once) * number(in.template get<"pass.rounds">(row)), q);
    put_count(model, in, length_slot, q.by_slot[count_slot] * in.template get<"deck.length">().si(),
              q);
}

/// Girders washed over their whole length are reached from all over the deck's plan.
bool washes_whole_girders(const Model& model) {
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        if (model.active[row] && model.plan->operations[row].driver == slot("girder_area")) {
            return true;
        }
    }
    return false;
}

/// Along bents and abutments; for whole girders also span by span and across the deck.
template <class T>
void count_positions(const Model& model, const Inputs<T>& in, takeoff::Quantities<T>& q) {
    const Length<T> reach = in.template get<"bucket.reach">();
    T positions = count_up(q.by_slot[slot("support_line_length")] / reach.si());
    if (washes_whole_girders(model)) {
        positions = positions + count_up(in.template get<"deck.length">() / reach) *
                                    count_up(in.template get<"deck.width">() / reach);
    }
    put_count(model, in, slot("bucket_position_count"), positions, q);
}

template <class T>
void measure_hose(const Model& model, const Inputs<T>& in, takeoff::Quantities<T>& q) {
    constexpr Slot hose = slot("approach_hose_length");
    if (model.posting == Posting::approach) {
        put_count(model, in, hose, approach_hose(in).si(), q);
    } else {
        q.by_slot[hose] = T(0.0); // a length measured for a bridge that carries the truck
    }
}

} // namespace

template <class T>
takeoff::Quantities<T> quantities_of(const Model& model, const Inputs<T>& in) {
    return takeoff::take_off(model.shape, takeoff_dimensions(in), given_quantities(model, in));
}

template <class T>
void price_quantities(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    ws.quantities = quantities_of(model, in);
    ws.quantities.by_slot[slot("visit_count")] = T(1.0);
    count_positions(model, in, ws.quantities);
    measure_hose(model, in, ws.quantities);
    count_passes(model, in, 0, slot("flush_pass_count"), slot("flush_length"), ws.quantities);
    count_passes(model, in, 1, slot("broom_pass_count"), slot("broom_length"), ws.quantities);
    for (Slot s = 0; s < slot_table.size(); ++s) {
        ws.quantities.by_slot[s] =
            ws.figures.template set_raw<"takeoff.quantity">(ws.quantities.by_slot[s], s);
    }
}

template takeoff::Quantities<double> quantities_of(const Model&, const Inputs<double>&);
template takeoff::Quantities<Traced> quantities_of(const Model&, const Inputs<Traced>&);
SCUPPER_INSTANTIATE_STEP(price_quantities);

} // namespace scupper::estimate::detail
