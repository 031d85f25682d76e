#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

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
void sum_site_hours(const Model& model, Workspace<T>& ws) {
    Time<T> productive(T(0.0));
    Time<T> on_site(T(0.0));
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        if (model.active[row] && model.plan->operations[row].timing != Timing::lost) {
            productive += ws.figures.template get<"operation.productive_time">(row);
            on_site += ws.figures.template get<"operation.time">(row);
        }
    }
    ws.figures.template set<"hours.productive">(productive);
    ws.figures.template set<"hours.on_site">(on_site);
}

/// Travel, briefing, meal and idle time stand among the operations, so that paid hours add up.
template <class T>
void book_lost_hours(const Model& model, Workspace<T>& ws) {
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        const PlannedOperation& op = model.plan->operations[row];
        if (op.timing != Timing::lost || op.name == "overtime") {
            continue; // overtime is worked: its hours stand with the operations
        }
        const Time<T> time = op.name == "travel"     ? ws.hours.travel
                             : op.name == "briefing" ? ws.hours.briefing
                             : op.name == "meal"     ? ws.hours.meal
                                                     : ws.hours.idle;
        ws.figures.template set<"operation.time">(time, row);
    }
}

template <class T>
Count<T> people(const Model& model, const Inputs<T>& in) {
    Count<T> sum(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row]) {
            sum += in.template get<"labour.people">(row);
        }
    }
    return named("people", sum);
}

} // namespace

template <class T>
void price_hours(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    sum_site_hours(model, ws);
    const Time<T> on_site = ws.figures.template get<"hours.on_site">();
    const work::Shift<T> shift{
        in.template get<"shift.length">(), in.template get<"shift.travel_time">(),
        in.template get<"shift.briefing_time">(), in.template get<"shift.meal_time">(),
        in.template get<"shift.overtime_limit">()};
    ws.hours = work::price_outing(on_site, shift, shift_sharing(model.plan->job.sharing),
                                  in.template get<"outing.structures_a_shift">());
    book_lost_hours(model, ws);
    ws.figures.template set<"shift.count">(ws.hours.shifts);
    const Time<T> paid = ws.figures.template set<"hours.paid">(ws.hours.paid);
    ws.figures.template set<"hours.lost">(paid - on_site);
    ws.figures.template set<"hours.overtime">(ws.hours.overtime);
    ws.figures.template set<"hours.labour">(people(model, in) * paid);
}

SCUPPER_INSTANTIATE_STEP(price_hours);

} // namespace scupper::estimate::detail
