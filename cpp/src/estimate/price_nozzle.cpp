#include "price_steps.hpp"

namespace scupper::estimate::detail {

namespace {

template <class T>
void fill_line(const Model& model, const Inputs<T>& in, hydraulics::Line<T>& line) {
    line.pump_pressure = in.template get<"pump.pressure">();
    line.flow_limit = in.template get<"pump.flow_limit">();
    line.fluid = hydraulics::water(Temperature<T>(in.template get<"water.temperature">().si()));
    line.rise = Length<T>(T(0.0));
    for (std::size_t i = 0; i < model.plan->job.hose.size(); ++i) {
        hydraulics::Segment<T>& segment = line.hose[i];
        segment.bore = in.template get<"hose.bore">(i);
        segment.length = in.template get<"hose.length">(i);
        segment.roughness = in.template get<"hose.roughness">(i);
        segment.minor_loss = in.template get<"hose.minor_loss">(i);
        line.rise += in.template get<"hose.rise">(i);
    }
    line.nozzle = {in.template get<"nozzle.bore">(),
                   in.template get<"nozzle.discharge_coefficient">()};
}

} // namespace

template <class T>
void price_nozzle(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    fill_line(model, in, ws.line);
    const hydraulics::OperatingPoint<T> point = hydraulics::operating_point(ws.line);
    ws.figures.template set<"nozzle.flow">(point.flow);
    ws.figures.template set<"nozzle.pressure">(point.tip_pressure);
    ws.figures.template set<"nozzle.reaction">(point.reaction);
}

SCUPPER_INSTANTIATE_STEP(price_nozzle);

} // namespace scupper::estimate::detail
