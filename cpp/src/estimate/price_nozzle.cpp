#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

/// A truck on the ground lifts the water to the girders, or over their depth to the deck, through as
/// much more hose.
template <class T>
void lift_from_below(const PlannedMethod& method, const Inputs<T>& in, hydraulics::Line<T>& line) {
    if (!method.from_below || line.hose.empty()) {
        return;
    }
    const Length<T> to_girders = in.template get<"site.clearance">();
    const Length<T> height =
        named("height above the truck",
              method.underside ? to_girders : to_girders + in.template get<"girder.depth">());
    line.rise += height;
    line.hose.back().length += height;
}

template <class T>
void fill_line(std::size_t row, const PlannedMethod& method, const Inputs<T>& in,
               hydraulics::Line<T>& line) {
    line.pump_pressure = in.template get<"pump.pressure">(row);
    line.flow_limit = in.template get<"pump.flow_limit">(row);
    line.fluid = hydraulics::water(Temperature<T>(in.template get<"water.temperature">().si()));
    line.rise = Length<T>(T(0.0));
    for (std::size_t i = 0; i < method.hose.size(); ++i) {
        const std::size_t hose = method.hose[i];
        hydraulics::Segment<T>& segment = line.hose[i];
        segment.bore = in.template get<"hose.bore">(hose);
        segment.length = in.template get<"hose.length">(hose);
        segment.roughness = in.template get<"hose.roughness">(hose);
        segment.minor_loss = in.template get<"hose.minor_loss">(hose);
        line.rise += in.template get<"hose.rise">(hose);
    }
    lift_from_below(method, in, line);
    line.nozzle = {in.template get<"nozzle.bore">(row),
                   in.template get<"nozzle.discharge_coefficient">(row)};
}

/// Where the truck stays on the approach the first segment is longer. The wash takes the same water
/// as it would from the deck, and longer for it.
template <class T>
hydraulics::OperatingPoint<T> point_of(const Model& model, std::size_t row, Workspace<T>& ws) {
    hydraulics::Line<T>& line = ws.lines[row];
    const auto on_deck = hydraulics::operating_point(line);
    if (model.posting != Posting::approach || line.hose.empty()) {
        return on_deck;
    }
    line.hose.front().length += Length<T>(ws.quantities.by_slot[slot("approach_hose_length")]);
    const auto on_approach = hydraulics::operating_point(line);
    ws.slowing[row] = named("slower through the longer hose", on_deck.flow / on_approach.flow);
    return on_approach;
}

} // namespace

template <class T>
void price_nozzle(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    for (std::size_t row = 0; row < model.plan->methods.size(); ++row) {
        if (!model.active_methods[row]) {
            continue;
        }
        fill_line(row, model.plan->methods[row], in, ws.lines[row]);
        const hydraulics::OperatingPoint<T> point = point_of(model, row, ws);
        ws.figures.template set<"nozzle.flow">(point.flow, row);
        ws.figures.template set<"nozzle.pressure">(point.tip_pressure, row);
        ws.figures.template set<"nozzle.reaction">(point.reaction, row);
    }
}

SCUPPER_INSTANTIATE_STEP(price_nozzle);

} // namespace scupper::estimate::detail
