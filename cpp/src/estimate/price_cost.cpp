#include "price_steps.hpp"
#include "scupper/cost.hpp"

namespace scupper::estimate::detail {

namespace {

template <class T>
Time<T> paid_time(const Workspace<T>& ws, std::size_t crew) {
    return ws.crews[crew].outing.paid;
}

/// The pay of one person; by night with its premium.
template <class T>
AmountPerTime<T> wage(const Model& model, const Inputs<T>& in, std::size_t row) {
    const AmountPerTime<T> by_day = in.template get<"labour.wage">(row);
    return model.plan->job.work_time == WorkTime::day
               ? by_day
               : named("pay by night", by_day * (1.0 + in.template get<"night.premium">()));
}

template <class T>
Amount<T> labour_cost(const Model& model, const Inputs<T>& in, std::size_t row,
                      const Time<T>& time) {
    return cost::hire(time, in.template get<"labour.people">(row), wage(model, in, row));
}

template <class T>
Amount<T> equipment_cost(const Inputs<T>& in, std::size_t row, const Time<T>& time) {
    return cost::hire(time, in.template get<"equipment.number">(row),
                      in.template get<"equipment.rate">(row));
}

/// What overtime costs beyond the plain wage, which stands with the paid hours. Fringe benefits and
/// what else a premium does not raise are kept out of it by the share.
template <class T>
Amount<T> overtime_premium(const Model& model, const Inputs<T>& in, std::size_t row,
                           const Workspace<T>& ws) {
    const std::size_t crew = model.plan->labour_crews[row];
    return labour_cost(model, in, row, ws.crews[crew].outing.overtime) *
           in.template get<"labour.overtime_share">(row) *
           (in.template get<"shift.overtime_factor">() - 1.0);
}

template <class T>
Amount<T> occupancy_cost(const Inputs<T>& in, const Workspace<T>& ws) {
    return named("lane occupancy", cost::occupancy(ws.figures.template get<"hours.closed">(),
                                                   in.template get<"contract.occupancy_charge">()));
}

template <class T>
Amount<T> damages_cost(const Inputs<T>& in) {
    return named("liquidated damages, expected",
                 cost::expected_damages(in.template get<"contract.late_chance">(),
                                        in.template get<"contract.late_time">(),
                                        in.template get<"contract.damages">()));
}

/// What the contract charges; nothing of what it does not name.
template <class T>
Amount<T> contract_cost(const Model& model, const Inputs<T>& in, const Workspace<T>& ws) {
    Amount<T> sum(T(0.0));
    if (model.occupancy) {
        sum += occupancy_cost(in, ws);
    }
    if (model.damages) {
        sum += damages_cost(in);
    }
    return sum;
}

/// What people are paid on average for shifts that are called off.
template <class T>
Amount<T> show_up_cost(const Model& model, const Inputs<T>& in, std::size_t row,
                       const Workspace<T>& ws) {
    return labour_cost(model, in, row, show_up_time(in, model.plan->labour_crews[row], ws));
}

template <class T>
Amount<T> all_show_up(const Model& model, const Inputs<T>& in, const Workspace<T>& ws) {
    Amount<T> sum(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row]) {
            sum += show_up_cost(model, in, row, ws);
        }
    }
    return sum;
}

/// Hauling to the work and back, shared by the structures of the contract.
template <class T>
Amount<T> moving_cost(const Inputs<T>& in) {
    return cost::mobilization(
               in.template get<"mobilization.pieces">(), in.template get<"mobilization.distance">(),
               in.template get<"mobilization.price">(), in.template get<"mobilization.fixed">()) /
           number(in.template get<"mobilization.structures">());
}

/// What an amount at the rates' own prices is more at the midpoint of the work.
template <class T>
Amount<T> escalation_of(const Inputs<T>& in, const Amount<T>& amount) {
    return cost::escalated(amount, in.template get<"escalation.rate">(),
                           in.template get<"escalation.time">(), Time<T>(T(0.0))) -
           amount;
}

/// What is priced at the rates' own date; what the contract charges is in money of its day.
template <class T>
Amount<T> price_at_rates(const Model& model, const Inputs<T>& in, const Amount<T>& known,
                         Workspace<T>& ws) {
    Amount<T> sum = known;
    if (model.show_up) {
        sum += ws.figures.template set<"cost.show_up">(all_show_up(model, in, ws));
    }
    if (model.moving) {
        sum += ws.figures.template set<"cost.moving">(moving_cost(in));
    }
    if (model.escalation) {
        sum += ws.figures.template set<"cost.escalation">(escalation_of(in, sum));
    }
    return sum;
}

template <class T>
void price_margins(const Inputs<T>& in, const Amount<T>& direct, Workspace<T>& ws) {
    const auto a = cost::add_margins<T>(
        direct, {in.template get<"margin.overhead">(), in.template get<"margin.profit">(),
                 in.template get<"margin.bond">(), in.template get<"margin.mobilization">(),
                 in.template get<"margin.contingency">()});
    ws.figures.template set<"cost.overhead">(a.overhead);
    ws.figures.template set<"cost.profit">(a.profit);
    ws.figures.template set<"cost.bond">(a.bond);
    ws.figures.template set<"cost.mobilization">(a.mobilization);
    ws.figures.template set<"cost.contingency">(a.contingency);
    ws.figures.template set<"cost.total">(a.price);
}

/// The time of a crew in an operation. Those who belong to no party share the elapsed time of its
/// stage out over the operations that ran side by side.
template <class T>
Time<T> charged_time(const Model& model, std::size_t row, std::size_t crew,
                     const Workspace<T>& ws) {
    const Plan& plan = *model.plan;
    const PlannedOperation& op = plan.operations[row];
    if (op.timing == Timing::closure || op.timing == Timing::lost) {
        return shift_time(op, ws.crews[crew]);
    }
    const Time<T> time = ws.figures.template get<"operation.time">(row);
    const PlannedParty& party = plan.parties[op.party];
    const PlannedStage& stage = plan.stages[party.stage];
    if (crew == party.crew) {
        return time;
    }
    return crew == everyone || crew == stage.crew ? time * ws.crews[stage.crew].share
                                                  : Time<T>(T(0.0));
}

/// A charge by the shift counts the shifts as the outing shares them.
template <class T>
Amount<T> charge_amount(const Model& model, std::size_t row, const Inputs<T>& in,
                        const Workspace<T>& ws) {
    const Amount<T> amount = in.template get<"charge.amount">(row);
    return model.plan->job.charges[row].per == ChargePer::shift
               ? amount * ws.figures.template get<"shift.count">()
               : amount;
}

template <class T>
void price_totals(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const Plan& plan = *model.plan;
    Amount<T> labour(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row]) {
            const Time<T> paid = paid_time(ws, plan.labour_crews[row]);
            labour += named(plan.labour_labels[row], labour_cost(model, in, row, paid) +
                                                         overtime_premium(model, in, row, ws));
        }
    }
    labour += named("dump runs, cost", ws.haul.after_shift_pay);
    Amount<T> equipment(T(0.0));
    for (std::size_t row = 0; row < model.active_equipment.size(); ++row) {
        if (model.active_equipment[row]) {
            const Time<T> paid = paid_time(ws, plan.equipment_crews[row]);
            equipment += named(plan.equipment_labels[row], equipment_cost(in, row, paid));
        }
    }
    Amount<T> charges(T(0.0));
    for (std::size_t row = 0; row < model.active_charges.size(); ++row) {
        if (model.active_charges[row]) {
            charges += named(model.plan->charge_labels[row], charge_amount(model, row, in, ws));
        }
    }
    const Amount<T> materials =
        ws.figures.template get<"water.volume">() * in.template get<"price.water">() +
        ws.figures.template get<"debris.mass">() * in.template get<"price.disposal">() +
        named("charges by the load", ws.haul.load_charges) +
        named("disposal of wash water", ws.haul.wash_water);
    const Amount<T> known = ws.figures.template set<"cost.labour">(labour) +
                            ws.figures.template set<"cost.equipment">(equipment) +
                            ws.figures.template set<"cost.materials">(materials) +
                            ws.figures.template set<"cost.charges">(charges);
    Amount<T> direct = price_at_rates(model, in, known, ws);
    if (model.occupancy || model.damages) {
        direct += ws.figures.template set<"cost.contract">(contract_cost(model, in, ws));
    }
    price_margins(in, ws.figures.template set<"cost.direct">(direct), ws);
}

template <class T>
Amount<T> margin_cost(std::size_t which, const Workspace<T>& ws) {
    switch (which) {
    case 0:
        return ws.figures.template get<"cost.overhead">();
    case 1:
        return ws.figures.template get<"cost.profit">();
    case 2:
        return ws.figures.template get<"cost.bond">();
    case 3:
        return ws.figures.template get<"cost.mobilization">();
    default:
        return ws.figures.template get<"cost.contingency">();
    }
}

template <class T>
Amount<T> line_cost(const Model& model, const CostLine& line, const Inputs<T>& in,
                    const Workspace<T>& ws) {
    const Plan& plan = *model.plan;
    const std::size_t r = line.resource;
    switch (line.charge) {
    case Charge::labour:
        return labour_cost(model, in, r,
                           charged_time(model, line.operation, plan.labour_crews[r], ws));
    case Charge::overtime:
        return overtime_premium(model, in, r, ws);
    case Charge::fixed:
        return charge_amount(model, r, in, ws);
    case Charge::margin:
        return margin_cost(r, ws);
    case Charge::equipment:
        return equipment_cost(in, r,
                              charged_time(model, line.operation, plan.equipment_crews[r], ws));
    case Charge::water:
        return ws.figures.template get<"operation.water">(line.operation) *
               in.template get<"price.water">();
    case Charge::disposal:
        break;
    case Charge::dump_run:
        return ws.haul.after_shift_pay;
    case Charge::load_charge:
        return ws.haul.load_charges;
    case Charge::wash_water:
        return ws.haul.wash_water;
    case Charge::occupancy:
        return occupancy_cost(in, ws);
    case Charge::damages:
        return damages_cost(in);
    case Charge::show_up:
        return show_up_cost(model, in, r, ws);
    case Charge::moving:
        return ws.figures.template get<"cost.moving">();
    case Charge::escalation:
        return ws.figures.template get<"cost.escalation">();
    }
    return ws.figures.template get<"debris.mass">() * in.template get<"price.disposal">();
}

/// Whether the structure has any of what a line charges for.
bool is_charged(const Model& model, const CostLine& line) {
    switch (line.charge) {
    case Charge::labour:
    case Charge::overtime:
        return model.active[line.operation] && model.active_labour[line.resource];
    case Charge::equipment:
        return model.active[line.operation] && model.active_equipment[line.resource];
    case Charge::water:
        return model.active[line.operation];
    case Charge::fixed:
        return model.active_charges[line.resource];
    case Charge::occupancy:
        return model.occupancy;
    case Charge::damages:
        return model.damages;
    case Charge::show_up:
        return model.show_up && model.active_labour[line.resource];
    case Charge::moving:
        return model.moving;
    case Charge::escalation:
        return model.escalation;
    case Charge::margin:
    case Charge::disposal:
    case Charge::dump_run:
    case Charge::load_charge:
    case Charge::wash_water:
        break;
    }
    return true;
}

} // namespace

template <class T>
void price_cost(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    price_totals(model, in, ws);
    const auto& lines = model.plan->lines;
    for (std::size_t row = 0; row < lines.size(); ++row) {
        if (is_charged(model, lines[row])) {
            ws.figures.template set<"line.cost">(line_cost(model, lines[row], in, ws), row);
        }
    }
}

SCUPPER_INSTANTIATE_STEP(price_cost);

} // namespace scupper::estimate::detail
