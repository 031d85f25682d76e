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

template <class T>
void price_totals(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    const Time<T> paid = ws.figures.template get<"hours.paid">();
    Amount<T> labour(T(0.0));
    for (std::size_t row = 0; row < model.active_labour.size(); ++row) {
        if (model.active_labour[row]) {
            labour += named(model.plan->labour_labels[row], labour_cost(in, row, paid));
        }
    }
    Amount<T> equipment(T(0.0));
    for (std::size_t row = 0; row < model.active_equipment.size(); ++row) {
        if (model.active_equipment[row]) {
            equipment += named(model.plan->equipment_labels[row], equipment_cost(in, row, paid));
        }
    }
    const Amount<T> materials =
        ws.figures.template get<"water.volume">() * in.template get<"price.water">() +
        ws.figures.template get<"debris.mass">() * in.template get<"price.disposal">();
    const Amount<T> all = ws.figures.template set<"cost.labour">(labour) +
                          ws.figures.template set<"cost.equipment">(equipment) +
                          ws.figures.template set<"cost.materials">(materials);
    ws.figures.template set<"cost.total">(all);
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
        const bool always = lines[row].charge == Charge::disposal;
        if (always || model.active[lines[row].operation]) {
            ws.figures.template set<"line.cost">(line_cost(model, lines[row], in, ws), row);
        }
    }
}

SCUPPER_INSTANTIATE_STEP(price_cost);

} // namespace scupper::estimate::detail
