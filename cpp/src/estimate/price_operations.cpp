#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

/// Time and water of one operation.
template <class T>
struct Effort {
    Time<T> productive{T(0.0)};
    Time<T> clock{T(0.0)};
    Volume<T> water{T(0.0)};
};

/// Productive minutes in a clock hour, as the stage has them; fewer by night.
template <class T>
T productive_share(const Model& model, const PlannedOperation& op, const Inputs<T>& in) {
    const Plan& plan = *model.plan;
    const T& share = in.at(plan.stages[plan.parties[op.party].stage].shift.productive_share);
    return plan.job.work_time == WorkTime::day
               ? share
               : named("productive share by night", share * in.template get<"night.pace">());
}

template <class T>
Effort<T> by_rate(const Model& model, const PlannedOperation& op, const T& quantity,
                  const Inputs<T>& in, const Workspace<T>& ws) {
    const std::size_t row = op.input_row;
    Time<T> worked(quantity * in.template raw<"operation.time_per_unit">(row));
    if (model.posting == Posting::approach && op.method != no_method) {
        worked = worked * ws.slowing[op.method];
    }
    for (const std::size_t pace : op.paces) {
        if (model.active_paces[pace]) {
            worked = worked * in.template get<"pace.factor">(pace);
        }
    }
    Effort<T> effort;
    if (op.timing == Timing::clock_rate) {
        effort.clock = worked;
    } else {
        effort.productive = worked;
        effort.clock = work::clock_time(worked, productive_share(model, op, in));
    }
    effort.water = op.method != no_method
                       ? work::nozzle_water(ws.figures.template get<"nozzle.flow">(op.method),
                                            worked, in.template get<"operation.trigger_share">(row))
                       : Volume<T>(quantity * in.template raw<"operation.water_per_unit">(row));
    return effort;
}

/// The work with a nozzle: while it lasts another tanker may be away.
template <class T>
Time<T> nozzle_work(const Model& model, const Workspace<T>& ws) {
    Time<T> sum(T(0.0));
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        const PlannedOperation& op = model.plan->operations[row];
        if (model.active[row] && op.method != no_method) {
            sum += ws.figures.template get<"operation.time">(row);
        }
    }
    return named("work with a nozzle", sum);
}

template <class T>
Effort<T> by_refill(const Model& model, const T& quantity, const Inputs<T>& in,
                    const Workspace<T>& ws) {
    const Time<T> trips =
        quantity *
        named("one trip to the water", work::trip_time(in.template get<"refill.distance">(),
                                                       in.template get<"refill.speed">(),
                                                       in.template get<"refill.connect_time">()));
    const Volume<T> fetched =
        named("water fetched",
              work::water_fetched(ws.figures.template get<"water.volume">(),
                                  ws.figures.template get<"truck.fill">(), shares_loads(model)));
    Effort<T> effort;
    const Volume<T> water = ws.figures.template get<"water.volume">();
    const Time<T> none(T(0.0));
    const Time<T> work =
        choose(water > Volume<T>(T(0.0)), nozzle_work(model, ws) * (fetched / water), none);
    const Time<T> all = work::waiting_time(trips + fetched / in.template get<"refill.fill_flow">(),
                                           work, in.template get<"refill.tankers">());
    effort.clock = max_of(all - in.template get<"refill.overlap_time">(), Time<T>(T(0.0)));
    return effort;
}

/// Every truck's trips take their own time; those after the shift are not on the clock.
template <class T>
Effort<T> by_dump(const PlannedOperation& op, const Workspace<T>& ws) {
    Effort<T> effort;
    effort.clock = ws.haul.in_shift * op.factor;
    return effort;
}

template <class T>
Effort<T> effort_of(const Model& model, const PlannedOperation& op, const T& quantity,
                    const Inputs<T>& in, const Workspace<T>& ws) {
    switch (op.timing) {
    case Timing::rate:
    case Timing::clock_rate:
        return by_rate(model, op, quantity, in, ws);
    case Timing::refill:
        return by_refill(model, quantity, in, ws);
    case Timing::dump:
        return by_dump(op, ws);
    case Timing::closure:
    case Timing::lost:
        break; // these follow from the shifts
    }
    return {};
}

template <class T>
void price_operation(const Model& model, std::size_t row, const Inputs<T>& in, Workspace<T>& ws) {
    const PlannedOperation& op = model.plan->operations[row];
    const T quantity = ws.figures.template set_raw<"operation.quantity">(
        ws.quantities.by_slot[op.driver] * op.factor, row);
    const Effort<T> effort = effort_of(model, op, quantity, in, ws);
    ws.figures.template set<"operation.productive_time">(effort.productive, row);
    ws.figures.template set<"operation.time">(effort.clock, row);
    ws.figures.template set<"operation.water">(effort.water, row);
}

template <class T>
void price_water(const Model& model, Workspace<T>& ws) {
    Volume<T> water(T(0.0));
    for (std::size_t row = 0; row < model.active.size(); ++row) {
        if (model.active[row]) {
            water += ws.figures.template get<"operation.water">(row);
        }
    }
    water = ws.figures.template set<"water.volume">(water);
    const Count<T> refills = ws.figures.template set<"water.refills">(
        work::refills(water, ws.figures.template get<"truck.fill">(), shares_loads(model)));
    put_quantity(slot("refill_count"), number(refills), ws);
}

/// Whether its quantity follows from the water and the dirt of all the others.
bool follows(const PlannedOperation& op) {
    return op.timing == Timing::refill || follows_from_water(op.driver);
}

} // namespace

template <class T>
void price_operations(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const auto& operations = model.plan->operations;
    const auto run = [&](auto wanted) {
        for (std::size_t row = 0; row < operations.size(); ++row) {
            const PlannedOperation& op = operations[row];
            if (model.active[row] && is_work(op) && wanted(op)) {
                price_operation(model, row, in, ws);
            }
        }
    };
    run([](const PlannedOperation& op) { return !follows(op); });
    price_water(model, ws);
    price_hauls(model, in, ws);
    run(follows);
}

SCUPPER_INSTANTIATE_STEP(price_operations);

} // namespace scupper::estimate::detail
