#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

/// What the closure of a stage costs in time, and for how many structures it stands.
template <class T>
struct StageClosure {
    ClosureTimes<T> once;
    Count<T> structures{T(1.0)};
    T changes{0.0};
    Time<T> change_sides{T(0.0)};
};

template <class T>
StageClosure<T> stage_closure(const Model& model, std::size_t stage, const Inputs<T>& in) {
    StageClosure<T> closure{.once = closure_times(model, stage, in)};
    if (model.plan->job.sharing == Sharing::one_closure) {
        closure.structures = in.template get<"outing.structures_a_closure">();
    }
    if (model.closures[stage] != closure::Kind::none) {
        closure.changes = T(1.0) / number(closure.structures);
        closure.change_sides = closure.changes * closure.once.change_sides;
    }
    return closure;
}

template <class T>
Time<T> party_work(const Model& model, std::size_t party, const Workspace<T>& ws) {
    Time<T> work(T(0.0));
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        const PlannedOperation& op = model.plan->operations[row];
        if (model.active[row] && is_work(op) && op.party == party) {
            work += ws.figures.template get<"operation.time">(row);
        }
    }
    return work;
}

/// A party that has nothing to do waits for nobody.
template <class T>
Time<T> party_wait(const Model& model, std::size_t party, const Time<T>& work,
                   const Inputs<T>& in) {
    const Time<T> none(T(0.0));
    const std::size_t place = model.plan->parties[party].wait_place;
    return place == no_place ? none : choose(work > none, Time<T>(in.at(place)), none);
}

/// Shifts and closures of a crew whose work on the clock is known.
template <class T>
Count<T> book_outing(const Model& model, const work::Shift<T>& shift,
                     const StageClosure<T>& closure, const Inputs<T>& in, CrewHours<T>& crew) {
    const work::ShiftSharing sharing = shift_sharing(model.plan->job.sharing);
    const Count<T> closures = work::closures(crew.work, shift, sharing, closure.structures);
    crew.set_up = number(closures) * closure.once.set_up;
    crew.removal = number(closures) * closure.once.removal;
    crew.change_sides = closure.change_sides;
    crew.outing = work::price_outing(crew.work + crew.set_up + crew.removal, shift, sharing,
                                     in.template get<"outing.structures_a_shift">());
    if (model.unpaid_meal) {
        crew.unpaid = crew.outing.meal * in.template get<"shift.unpaid_meal_share">();
        crew.outing.meal -= crew.unpaid;
        crew.outing.paid -= crew.unpaid;
    }
    return closures;
}

/// In whole shifts a party that is done stays away; in shared ones it stands by.
template <class T>
void book_party(const Model& model, const work::Shift<T>& shift, const StageClosure<T>& closure,
                const Inputs<T>& in, const CrewHours<T>& stage, CrewHours<T>& party) {
    const Time<T> wait = party.outing.idle;
    if (shift_sharing(model.plan->job.sharing) == work::ShiftSharing::whole) {
        book_outing(model, shift, closure, in, party);
        party.outing.idle += wait;
        return;
    }
    const Time<T> work = party.work;
    party = stage;
    party.work = work;
    party.outing.idle = stage.outing.idle + (stage.work - work) + wait;
}

/// Work of the parties, and how long the slowest of them keeps the stage going.
template <class T>
Time<T> book_work(const Model& model, const PlannedStage& stage, const StageClosure<T>& closure,
                  const Inputs<T>& in, Workspace<T>& ws) {
    Time<T> longest(T(0.0));
    Time<T> all(T(0.0));
    bool plain = stage.parties.size() == 1;
    for (const std::size_t p : stage.parties) {
        const bool first = p == stage.parties.front();
        const Time<T> work = party_work(model, p, ws);
        const Time<T> wait = party_wait(model, p, work, in);
        plain = plain && model.plan->parties[p].wait_place == no_place;
        longest = first ? work + wait : max_of(longest, work + wait);
        all = first ? work : all + work;
        CrewHours<T>& party = ws.crews[model.plan->parties[p].crew];
        party.work = work + wait + closure.change_sides;
        party.outing.idle = wait;
    }
    const Time<T> none(T(0.0));
    ws.crews[stage.crew].share = plain ? T(1.0) : choose(all > none, longest / all, T(1.0));
    return longest;
}

/// The stage lasts as long as its slowest party. Gives back how often its closure is set up.
template <class T>
Count<T> book_stage(const Model& model, std::size_t row, const Inputs<T>& in, Workspace<T>& ws) {
    const PlannedStage& stage = model.plan->stages[row];
    const StageClosure<T> closure = stage_closure(model, row, in);
    const work::Shift<T> shift = stage_shift(model, row, in);
    CrewHours<T>& crew = ws.crews[stage.crew];
    crew.work = book_work(model, stage, closure, in, ws) + closure.change_sides;
    const Count<T> closures = book_outing(model, shift, closure, in, crew);
    for (const std::size_t p : stage.parties) {
        book_party(model, shift, closure, in, crew, ws.crews[model.plan->parties[p].crew]);
    }
    ws.quantities.by_slot[slot("side_change_count")] =
        ws.quantities.by_slot[slot("side_change_count")] + closure.changes;
    return closures;
}

template <class T>
void add(const CrewHours<T>& stage, CrewHours<T>& sum) {
    sum.work += stage.work;
    sum.set_up += stage.set_up;
    sum.change_sides += stage.change_sides;
    sum.removal += stage.removal;
    sum.unpaid += stage.unpaid;
    sum.outing.shifts = sum.outing.shifts + stage.outing.shifts;
    sum.outing.paid += stage.outing.paid;
    sum.outing.travel += stage.outing.travel;
    sum.outing.briefing += stage.outing.briefing;
    sum.outing.meal += stage.outing.meal;
    sum.outing.idle += stage.outing.idle;
    sum.outing.overtime += stage.outing.overtime;
}

template <class T>
void book_crews(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    ws.quantities.by_slot[slot("side_change_count")] = T(0.0);
    Count<T> closures(T(0.0));
    for (std::size_t row = 0; row < model.plan->stages.size(); ++row) {
        const Count<T> own = book_stage(model, row, in, ws);
        CrewHours<T>& stage = ws.crews[model.plan->stages[row].crew];
        stage.closures = own;
        if (row == 0) {
            ws.crews[everyone] = stage;
        } else {
            add(stage, ws.crews[everyone]);
        }
        if (model.closures[row] != closure::Kind::none) {
            closures += own;
        }
    }
    put_quantity(slot("closure_count"), number(closures), ws);
    put_quantity(slot("side_change_count"), ws.quantities.by_slot[slot("side_change_count")], ws);
}

/// Closures, travel, briefing, meal and idle time stand among the operations, so that paid hours
/// add up; the hours of overtime stand with the work done in them.
template <class T>
void book_operations(const Model& model, Workspace<T>& ws) {
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        const PlannedOperation& op = model.plan->operations[row];
        if (!model.active[row] || is_work(op) || op.name == "overtime") {
            continue;
        }
        if (op.timing == Timing::closure) {
            ws.figures.template set_raw<"operation.quantity">(ws.quantities.by_slot[op.driver],
                                                              row);
        }
        ws.figures.template set<"operation.time">(shift_time(op, ws.crews[everyone]), row);
    }
}

template <class T>
void write_crews(const Model& model, Workspace<T>& ws) {
    if (model.plan->job.stages.empty()) {
        return; // one party does all: its hours are the visit's
    }
    for (std::size_t row = 0; row + 1 < ws.crews.size(); ++row) {
        const CrewHours<T>& crew = ws.crews[row + 1];
        ws.figures.template set<"crew.work">(crew.work, row);
        ws.figures.template set<"crew.shifts">(crew.outing.shifts, row);
        ws.figures.template set<"crew.paid">(crew.outing.paid, row);
    }
}

template <class T>
auto labour_hours(const Model& model, const Inputs<T>& in, const Workspace<T>& ws) {
    auto sum = people(model, everyone, in) * ws.crews[everyone].outing.paid;
    const bool one_crew = model.plan->job.stages.empty();
    for (std::size_t crew = 1; crew < ws.crews.size() && !one_crew; ++crew) {
        sum += people(model, crew, in) * ws.crews[crew].outing.paid;
    }
    return sum;
}

/// How long lanes are closed: the closures' set-up, the work and the meals under them.
template <class T>
Time<T> closed_time(const Model& model, const Workspace<T>& ws) {
    Time<T> closed(T(0.0));
    for (std::size_t row = 0; row < model.plan->stages.size(); ++row) {
        if (closure::takes_a_lane(model.closures[row])) {
            const CrewHours<T>& crew = ws.crews[model.plan->stages[row].crew];
            closed += crew.work + crew.set_up + crew.removal + crew.outing.meal;
            if (model.unpaid_meal) {
                closed += crew.unpaid;
            }
        }
    }
    return closed;
}

template <class T>
void write_productive_hours(const Model& model, Workspace<T>& ws) {
    Time<T> productive(T(0.0));
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        if (model.active[row] && is_work(model.plan->operations[row])) {
            productive += ws.figures.template get<"operation.productive_time">(row);
        }
    }
    ws.figures.template set<"hours.productive">(productive);
}

} // namespace

template <class T>
Count<T> people(const Model& model, std::size_t crew, const Inputs<T>& in) {
    Count<T> sum(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row] && model.plan->labour_crews[row] == crew) {
            sum += in.template get<"labour.people">(row);
        }
    }
    return named("people", sum);
}

template <class T>
Time<T> shift_time(const PlannedOperation& op, const CrewHours<T>& crew) {
    if (op.timing == Timing::closure) {
        return op.name == "closure_set_up"    ? crew.set_up
               : op.name == "closure_removal" ? crew.removal
                                              : crew.change_sides;
    }
    return op.name == "travel"     ? crew.outing.travel
           : op.name == "briefing" ? crew.outing.briefing
           : op.name == "meal"     ? crew.outing.meal
                                   : crew.outing.idle;
}

template <class T>
Time<T> show_up_time(const Inputs<T>& in, std::size_t crew, const Workspace<T>& ws) {
    return work::expected_show_up(ws.crews[crew].outing.shifts,
                                  in.template get<"shift.cancelled">(),
                                  in.template get<"shift.show_up_time">());
}

template <class T>
void price_hours(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    book_crews(model, in, ws);
    book_operations(model, ws);
    price_shift_dumps(model, in, ws);
    write_crews(model, ws);
    write_productive_hours(model, ws);
    const CrewHours<T>& all = ws.crews[everyone];
    const Time<T> on_site =
        ws.figures.template set<"hours.on_site">(all.work + all.set_up + all.removal);
    ws.figures.template set<"shift.count">(all.outing.shifts);
    const Time<T> paid = ws.figures.template set<"hours.paid">(all.outing.paid);
    ws.figures.template set<"hours.lost">(paid - on_site);
    ws.figures.template set<"hours.overtime">(all.outing.overtime);
    if (model.show_up) {
        ws.figures.template set<"hours.show_up">(show_up_time(in, everyone, ws));
    }
    ws.figures.template set<"hours.closed">(closed_time(model, ws));
    ws.figures.template set<"hours.labour">(labour_hours(model, in, ws) + ws.haul.after_shift);
}

template Time<double> show_up_time(const Inputs<double>&, std::size_t, const Workspace<double>&);
template Time<Traced> show_up_time(const Inputs<Traced>&, std::size_t, const Workspace<Traced>&);
template Count<double> people(const Model&, std::size_t, const Inputs<double>&);
template Count<Traced> people(const Model&, std::size_t, const Inputs<Traced>&);
template Time<double> shift_time(const PlannedOperation&, const CrewHours<double>&);
template Time<Traced> shift_time(const PlannedOperation&, const CrewHours<Traced>&);
SCUPPER_INSTANTIATE_STEP(price_hours);

} // namespace scupper::estimate::detail
