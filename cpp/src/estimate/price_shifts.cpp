#include "price_steps.hpp"

namespace scupper::estimate::detail {

work::ShiftSharing shift_sharing(Sharing sharing) {
    switch (sharing) {
    case Sharing::own_shifts:
        return work::ShiftSharing::whole;
    case Sharing::count_a_shift:
        return work::ShiftSharing::counted;
    case Sharing::by_the_hour:
        return work::ShiftSharing::hourly;
    case Sharing::pro_rata:
    case Sharing::one_closure:
        break;
    }
    return work::ShiftSharing::pro_rata;
}

template <class T>
work::Shift<T> stage_shift(const Model& model, std::size_t stage, const Inputs<T>& in) {
    const ShiftPlaces& at = model.plan->stages[stage].shift;
    const ClosureTimes<T> closure = closure_times(model, stage, in);
    return {.length = Time<T>(in.at(at.length)),
            .travel = Time<T>(in.at(at.travel)),
            .briefing = Time<T>(in.at(at.briefing)),
            .meal = Time<T>(in.at(at.meal)),
            .overtime = in.template get<"shift.overtime_limit">(),
            .window = Time<T>(in.at(at.window)),
            .closure = closure.set_up + closure.removal};
}

template work::Shift<double> stage_shift(const Model&, std::size_t, const Inputs<double>&);
template work::Shift<Traced> stage_shift(const Model&, std::size_t, const Inputs<Traced>&);

} // namespace scupper::estimate::detail
