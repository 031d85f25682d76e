#include "price_steps.hpp"
#include "scupper/cost.hpp"

namespace scupper::estimate::detail {

namespace {

/// What a truck picks up of the water used where it works.
template <class T>
Volume<T> own_pick_up(const Model& model, std::size_t row, const Inputs<T>& in,
                      const Workspace<T>& ws) {
    const PlannedHaul& haul = model.plan->hauls[row];
    Volume<T> used(T(0.0));
    for (std::size_t op = 0; op < model.active.size(); ++op) {
        if (model.active[op] && haul.picks_up[op]) {
            used += ws.figures.template get<"operation.water">(op);
        }
    }
    return used * in.template get<"haul.water_share">(row);
}

/// All wash water but what dries or soaks in is vacuumed: one truck takes what the others leave.
template <class T>
void collect_wash_water(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const Volume<T> all =
        named("wash water to collect", ws.figures.template get<"water.volume">() *
                                           (1.0 - in.template get<"water.loss_share">()));
    Volume<T> picked_up(T(0.0));
    for (const Volume<T>& water : ws.picked_up) {
        picked_up += water;
    }
    const Volume<T> rest = max_of(all - picked_up, Volume<T>(T(0.0)));
    put_quantity(slot("collected_water_volume"), rest.si(), ws);
    ws.picked_up[model.plan->collecting_haul] += rest;
}

template <class T>
void pick_up_water(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    for (std::size_t row = 0; row < ws.picked_up.size(); ++row) {
        ws.picked_up[row] = own_pick_up(model, row, in, ws);
    }
    const bool collect = model.plan->job.wash_water == WashWater::collect;
    if (collect) {
        collect_wash_water(model, in, ws);
    }
    Volume<T> all(T(0.0));
    for (std::size_t row = 0; row < ws.picked_up.size(); ++row) {
        all += ws.figures.template set<"haul.water">(ws.picked_up[row], row);
    }
    all = ws.figures.template set<"water.picked_up">(all);
    ws.haul.wash_water = collect ? all * in.template get<"price.wash_water">() : Amount<T>(T(0.0));
}

/// What a truck hauls of the dirt, and the water with it.
template <class T>
debris::Bulk<T> hauled(const Model& model, std::size_t row, const Density<T>& water,
                       Workspace<T>& ws) {
    debris::Bulk<T> dirt;
    for (std::size_t kind = 0; kind < dirt_names.size(); ++kind) {
        if (model.plan->hauls[row].carries[kind]) {
            dirt.volume += ws.dirt[kind].volume;
            dirt.mass += ws.dirt[kind].mass;
        }
    }
    const debris::Bulk<T> all =
        debris::with_water(dirt, ws.figures.template get<"haul.water">(row), water);
    return {ws.figures.template set<"haul.hauled_volume">(all.volume, row),
            ws.figures.template set<"haul.hauled_mass">(all.mass, row)};
}

template <class T>
Count<T> loads_of(const Model& model, std::size_t row, const Inputs<T>& in, Workspace<T>& ws) {
    const Density<T> water =
        hydraulics::water(Temperature<T>(in.template get<"water.temperature">().si())).density;
    const Mass<T> payload = ws.figures.template set<"haul.payload">(
        debris::payload(in.template get<"haul.gross_limit">(row),
                        in.template get<"haul.empty_mass">(row),
                        in.template get<"haul.water_aboard">(row), water),
        row);
    const debris::Bulk<T> truck{in.template get<"haul.volume">(row), payload};
    return debris::loads(hauled(model, row, water, ws), truck, shares_loads(model));
}

/// A wet load decants before it is dumped.
template <class T>
Time<T> dump_trip(std::size_t row, const Inputs<T>& in, const Workspace<T>& ws) {
    const Time<T> dry(T(0.0));
    const Time<T> decant = choose(ws.picked_up[row] > Volume<T>(T(0.0)),
                                  in.template get<"haul.decant_time">(row), dry);
    return named("one dump trip", work::trip_time(in.template get<"haul.distance">(row),
                                                  in.template get<"haul.speed">(row),
                                                  in.template get<"haul.dump_time">(row) + decant));
}

/// The work that brings dirt to a truck: while it lasts another truck may be away.
template <class T>
Time<T> loading_work(const Model& model, std::size_t row, const Workspace<T>& ws) {
    Time<T> sum(T(0.0));
    for (std::size_t op = 0; op < model.active.size(); ++op) {
        if (model.active[op] && model.plan->hauls[row].picks_up[op]) {
            sum += ws.figures.template get<"operation.time">(op);
        }
    }
    return named("work that loads it", sum);
}

template <class T>
void price_trips(const Model& model, std::size_t row, const Count<T>& loads, const Inputs<T>& in,
                 Workspace<T>& ws) {
    const Time<T> time = number(loads) * dump_trip(row, in, ws);
    ws.haul.load_charges += number(loads) * in.template get<"haul.load_charge">(row);
    if (!model.plan->hauls[row].after_shift) {
        ws.haul.in_shift += work::waiting_time(time, loading_work(model, row, ws),
                                               in.template get<"haul.number">(row));
        return;
    }
    const auto labour =
        ws.figures.template set<"haul.labour">(in.template get<"haul.people">(row) * time, row);
    ws.haul.after_shift += labour;
    ws.haul.after_shift_pay +=
        cost::hire(time, in.template get<"haul.people">(row), in.template get<"haul.wage">(row));
}

template <class T>
T shifts_worked(const PlannedHaul& haul, const Plan& plan, const Workspace<T>& ws) {
    T shifts(0.0);
    for (const std::size_t stage : haul.stages) {
        const std::size_t crew = plan.stages[stage].crew;
        shifts = shifts + ws.crews[crew].outing.shifts;
    }
    return named("shifts it works in", shifts);
}

/// The loads of every truck, and of all; the trucks that are emptied after every shift count again
/// once the shifts are known.
template <class T>
void put_loads(Workspace<T>& ws) {
    Count<T> all(T(0.0));
    for (std::size_t row = 0; row < ws.loads.size(); ++row) {
        all += ws.figures.template set<"haul.loads">(ws.loads[row], row);
    }
    all = ws.figures.template set<"debris.loads">(all);
    put_quantity(slot("dump_count"), number(all), ws);
}

} // namespace

template <class T>
void price_hauls(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    ws.haul = {};
    pick_up_water(model, in, ws);
    for (std::size_t row = 0; row < model.plan->hauls.size(); ++row) {
        ws.loads[row] = loads_of(model, row, in, ws);
        if (!model.plan->hauls[row].each_shift) {
            price_trips(model, row, ws.loads[row], in, ws);
        }
    }
    put_loads(ws);
}

template <class T>
void price_shift_dumps(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const T none(0.0);
    bool any = false;
    for (std::size_t row = 0; row < model.plan->hauls.size(); ++row) {
        const PlannedHaul& haul = model.plan->hauls[row];
        if (haul.each_shift) {
            const T full = named("full loads", number(ws.loads[row]));
            const T shifts = shifts_worked(haul, *model.plan, ws);
            ws.loads[row] = Count<T>(choose(full > none, max_of(full, shifts), none));
            price_trips(model, row, ws.loads[row], in, ws);
            any = true;
        }
    }
    if (any) {
        put_loads(ws);
    }
}

SCUPPER_INSTANTIATE_STEP(price_hauls);
SCUPPER_INSTANTIATE_STEP(price_shift_dumps);

} // namespace scupper::estimate::detail
