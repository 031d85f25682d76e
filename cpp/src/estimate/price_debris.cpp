#include "price_steps.hpp"
#include "scupper/debris.hpp"

#include <array>

namespace scupper::estimate::detail {

namespace {

constexpr std::size_t gutter_row = 0;
constexpr std::size_t joint_row = 1;
constexpr std::size_t cap_row = 2;
constexpr std::size_t seat_row = 3;
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
void add(const Volume<T>& volume, std::size_t row, const Inputs<T>& in, Dirt<T>& total) {
    total.volume += volume;
    total.mass += volume * in.template get<"dirt.density">(row);
}

/// Dirt along a length: gutters, joint gaps.
template <class T>
void add_strip(std::string_view name, Slot length, std::size_t row, const Inputs<T>& in,
               const Workspace<T>& ws, Dirt<T>& total) {
    const Volume<T> volume = debris::strip_volume(Length<T>(ws.quantities.by_slot[length]),
                                                  in.template get<"dirt.width">(row),
                                                  in.template get<"dirt.depth">(row));
    add(named(name, volume, "debris.part"), row, in, total);
}

/// Dirt on an area: cap tops, seats.
template <class T>
void add_layer(std::string_view name, Slot area, std::size_t row, const Inputs<T>& in,
               const Workspace<T>& ws, Dirt<T>& total) {
    const Volume<T> volume =
        Area<T>(ws.quantities.by_slot[area]) * in.template get<"dirt.depth">(row);
    add(named(name, volume, "debris.part"), row, in, total);
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
        add_strip("gutter dirt", slot("gutter_length"), gutter_row, in, ws, total);
    }
    if (cleans(model, "joint")) {
        add_strip("joint dirt", slot("joint_length"), joint_row, in, ws, total);
    }
    if (cleans(model, "cap")) {
        add_layer("dirt on caps", slot("cap_top_area"), cap_row, in, ws, total);
    }
    if (cleans(model, "seat")) {
        add_layer("dirt on seats", slot("seat_area"), seat_row, in, ws, total);
    }
    if (cleans(model, "drain")) {
        add_drains(in, ws, total);
    }
    ws.figures.template set<"debris.volume">(total.volume);
    const Mass<T> mass = ws.figures.template set<"debris.mass">(total.mass);
    const Count<T> loads = ws.figures.template set<"debris.loads">(
        debris::loads(mass, in.template get<"haul.payload">(), shares_loads(model)));
    put_quantity(slot("dump_count"), number(loads), ws);
}

SCUPPER_INSTANTIATE_STEP(price_debris);

} // namespace scupper::estimate::detail
