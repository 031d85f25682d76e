#include "price_steps.hpp"
#include "scupper/cost.hpp"

namespace scupper::estimate::detail {

namespace {

template <class T>
Amount<T> labour_cost(const Inputs<T>& in, std::size_t row, const Time<T>& time) {
    return cost::hire(time, in.template get<"labour.people">(row),
                      in.template get<"labour.wage">(row));
}

template <class T>
Amount<T> equipment_cost(const Inputs<T>& in, std::size_t row, const Time<T>& time) {
    return cost::hire(time, in.template get<"equipment.number">(row),
                      in.template get<"equipment.rate">(row));
}

/// What overtime costs beyond the plain wage, which stands with the paid hours.
template <class T>
Amount<T> overtime_premium(const Inputs<T>& in, std::size_t row, const Workspace<T>& ws) {
    return labour_cost(in, row, ws.hours.overtime) *
           (in.template get<"shift.overtime_factor">() - 1.0);
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

template <class T>
void price_totals(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const Time<T> paid = ws.figures.template get<"hours.paid">();
    Amount<T> labour(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row]) {
            labour += named(model.plan->labour_labels[row],
                            labour_cost(in, row, paid) + overtime_premium(in, row, ws));
        }
    }
    Amount<T> equipment(T(0.0));
    for (std::size_t row = 0; row < model.active_equipment.size(); ++row) {
        if (model.active_equipment[row]) {
            equipment += named(model.plan->equipment_labels[row], equipment_cost(in, row, paid));
        }
    }
    Amount<T> charges(T(0.0));
    for (std::size_t row = 0; row < model.active_charges.size(); ++row) {
        if (model.active_charges[row]) {
            charges += named(model.plan->charge_labels[row], in.template get<"charge.amount">(row));
        }
    }
    const Amount<T> materials =
        ws.figures.template get<"water.volume">() * in.template get<"price.water">() +
        ws.figures.template get<"debris.mass">() * in.template get<"price.disposal">();
    const Amount<T> direct = ws.figures.template set<"cost.labour">(labour) +
                             ws.figures.template set<"cost.equipment">(equipment) +
                             ws.figures.template set<"cost.materials">(materials) +
                             ws.figures.template set<"cost.charges">(charges);
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
    const Amount<T> none(T(0.0));
    switch (line.charge) {
    case Charge::labour:
        return model.active_labour[line.resource]
                   ? labour_cost(in, line.resource,
                                 ws.figures.template get<"operation.time">(line.operation))
                   : none;
    case Charge::overtime:
        return model.active_labour[line.resource] ? overtime_premium(in, line.resource, ws) : none;
    case Charge::fixed:
        return model.active_charges[line.resource] ? in.template get<"charge.amount">(line.resource)
                                                   : none;
    case Charge::margin:
        return margin_cost(line.resource, ws);
    case Charge::equipment:
        return model.active_equipment[line.resource]
                   ? equipment_cost(in, line.resource,
                                    ws.figures.template get<"operation.time">(line.operation))
                   : none;
    case Charge::water:
        return ws.figures.template get<"operation.water">(line.operation) *
               in.template get<"price.water">();
    case Charge::disposal:
        return ws.figures.template get<"debris.mass">() * in.template get<"price.disposal">();
    }
    return none;
}

} // namespace

template <class T>
void price_cost(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    price_totals(model, in, ws);
    const auto& lines = model.plan->lines;
    for (std::size_t row = 0; row < lines.size(); ++row) {
        const bool always = lines[row].charge == Charge::disposal ||
                            lines[row].charge == Charge::fixed ||
                            lines[row].charge == Charge::margin;
        if (always || model.active[lines[row].operation]) {
            ws.figures.template set<"line.cost">(line_cost(model, lines[row], in, ws), row);
        }
    }
}

SCUPPER_INSTANTIATE_STEP(price_cost);

} // namespace scupper::estimate::detail
