#pragma once
// The steps of a price, in the order in which they run. Internal to the estimate.

#include "scupper/estimate/price.hpp"

namespace scupper::estimate::detail {

/// Whether an operation is work on the structure: not a closure's, not time lost.
inline bool is_work(const PlannedOperation& op) {
    return op.timing != Timing::closure && op.timing != Timing::lost;
}

/// The take-off of a structure alone, given quantities in place of inferred ones.
template <class T>
takeoff::Quantities<T> quantities_of(const Model& model, const Inputs<T>& in);
/// Quantities of every component, given ones in place of inferred ones.
template <class T>
void price_quantities(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// How full the water truck comes, and what it then weighs.
template <class T>
void price_truck(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// How much longer the hose is where the truck stays on the approach.
template <class T>
Length<T> approach_hose(const Inputs<T>& in);
/// Flow and pressure at the nozzle.
template <class T>
void price_nozzle(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Dirt, by component and in all.
template <class T>
void price_debris(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Loads, dump trips and what they cost; needs the water of all operations.
template <class T>
void price_hauls(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Loads and dump trips of the trucks that are emptied after every shift; needs the shifts.
template <class T>
void price_shift_dumps(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Time and water of every operation, the loads in between.
template <class T>
void price_operations(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Shifts and paid hours.
template <class T>
void price_hours(const Model& model, const Inputs<T>& in, Workspace<T>& ws);
/// Cost totals, then cost lines.
template <class T>
void price_cost(const Model& model, const Inputs<T>& in, Workspace<T>& ws);

/// What one closure of a stage takes; nothing where it has none.
template <class T>
struct ClosureTimes {
    Time<T> set_up{T(0.0)};
    Time<T> change_sides{T(0.0)};
    Time<T> removal{T(0.0)};
};

template <class T>
ClosureTimes<T> closure_times(const Model& model, std::size_t stage, const Inputs<T>& in) {
    if (model.closures[stage] == closure::Kind::none) {
        return {};
    }
    const std::size_t row = static_cast<std::size_t>(model.closures[stage]) - 1;
    return {in.template get<"closure.set_up_time">(row),
            in.template get<"closure.change_sides_time">(row),
            in.template get<"closure.removal_time">(row)};
}

/// The shift of a stage: its own values where it has them, and the closure it sets up.
template <class T>
work::Shift<T> stage_shift(const Model& model, std::size_t stage, const Inputs<T>& in);
/// The time of a crew in an operation that follows from its shifts: closures, travel, idle.
template <class T>
Time<T> shift_time(const PlannedOperation& op, const CrewHours<T>& crew);
/// How the shifts of an outing are shared, by the job's setting.
work::ShiftSharing shift_sharing(Sharing sharing);
/// The people who belong to a crew at this structure.
template <class T>
Count<T> people(const Model& model, std::size_t crew, const Inputs<T>& in);

/// What a crew is paid for shifts called off, on average.
template <class T>
Time<T> show_up_time(const Inputs<T>& in, std::size_t crew, const Workspace<T>& ws);

/// Puts a quantity that follows from the work in its slot and among the figures.
template <class T>
void put_quantity(Slot s, const T& value, Workspace<T>& ws) {
    ws.quantities.by_slot[s] = ws.figures.template set_raw<"takeoff.quantity">(value, s);
}

/// Whether the structures of an outing fill tanks and trucks together.
inline bool shares_loads(const Model& model) {
    return model.plan->job.sharing != Sharing::own_shifts;
}

} // namespace scupper::estimate::detail

/// Instantiates a step for the two number types.
#define SCUPPER_INSTANTIATE_STEP(step)                                                             \
    template void step(const Model&, const Inputs<double>&, Workspace<double>&);                   \
    template void step(const Model&, const Inputs<Traced>&, Workspace<Traced>&)
