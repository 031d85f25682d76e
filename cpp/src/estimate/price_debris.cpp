#include "price_steps.hpp"
#include "scupper/debris.hpp"

#include <array>

namespace scupper::estimate::detail {

namespace {

constexpr std::size_t gutter_row = 0;
constexpr std::array<Slot, 3> drain_slots{slot("drain_free_count"), slot("drain_clogged_count"),
                                          slot("drain_frozen_count")};

bool cleans(const Model& model, std::string_view component) {
    for (std::size_t i = 0; i < model.active.size(); ++i) {
        if (model.active[i] && model.plan->operations[i].component == component) {
            return true;
        }
    }
    return false;
}

/// Dirt of one kind, both as volume and as mass.
template <class T>
struct Dirt {
    Volume<T> volume{T(0.0)};
    Mass<T> mass{T(0.0)};
};

template <class T>
void add_gutters(const Inputs<T>& in, const Workspace<T>& ws, Dirt<T>& total) {
    const Length<T> length(ws.quantities.by_slot[slot("gutter_length")]);
    const Volume<T> volume =
        named("gutter dirt",
              debris::strip_volume(length, in.template get<"dirt.width">(gutter_row),
                                   in.template get<"dirt.depth">(gutter_row)),
              "debris.part");
    total.volume += volume;
    total.mass += volume * in.template get<"dirt.density">(gutter_row);
}

template <class T>
void add_drains(const Inputs<T>& in, const Workspace<T>& ws, Dirt<T>& total) {
    for (std::size_t row = 0; row < drain_slots.size(); ++row) {
        const Count<T> drains(ws.quantities.by_slot[drain_slots[row]]);
        const Volume<T> volume =
            debris::drain_volume(drains, in.template get<"drain_dirt.volume">(row));
        total.volume += volume;
        total.mass += volume * in.template get<"drain_dirt.density">(row);
    }
}

} // namespace

template <class T>
void price_debris(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    Dirt<T> total;
    if (cleans(model, "gutter")) {
        add_gutters(in, ws, total);
    }
    if (cleans(model, "drain")) {
        add_drains(in, ws, total);
    }
    ws.figures.template set<"debris.volume">(total.volume);
    const Mass<T> mass = ws.figures.template set<"debris.mass">(total.mass);
    const Count<T> loads = ws.figures.template set<"debris.loads">(
        debris::loads(mass, in.template get<"haul.payload">(), shares_loads(model)));
    ws.quantities.by_slot[slot("dump_count")] = number(loads);
}

SCUPPER_INSTANTIATE_STEP(price_debris);

} // namespace scupper::estimate::detail
