#include "price_steps.hpp"

#include <algorithm>
#include <array>

namespace scupper::estimate::detail {

namespace {

constexpr std::size_t gutter_row = index_of(dirt_names, "gutter");
constexpr std::size_t joint_row = index_of(dirt_names, "joint");
constexpr std::size_t cap_row = index_of(dirt_names, "cap");
constexpr std::size_t seat_row = index_of(dirt_names, "seat");
constexpr std::size_t drain_row = index_of(dirt_names, "drain");
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

template <class T>
debris::Bulk<T> bulk(std::string_view name, const Volume<T>& volume, std::size_t row,
                     const Inputs<T>& in) {
    const Volume<T> dirt = named(name, volume, "debris.part");
    return {dirt, dirt * in.template get<"dirt.density">(row)};
}

/// Dirt along a length: gutters, joint gaps.
template <class T>
debris::Bulk<T> strip(std::string_view name, Slot length, std::size_t row, const Inputs<T>& in,
                      const Workspace<T>& ws) {
    const Volume<T> volume = debris::strip_volume(Length<T>(ws.quantities.by_slot[length]),
                                                  in.template get<"dirt.width">(row),
                                                  in.template get<"dirt.depth">(row));
    return bulk(name, volume, row, in);
}

/// Dirt on an area: cap tops, seats. Its volume drives the dry pick-up.
template <class T>
debris::Bulk<T> layer(std::string_view name, Slot area, Slot dirt, std::size_t row,
                      const Inputs<T>& in, Workspace<T>& ws) {
    const Volume<T> volume =
        Area<T>(ws.quantities.by_slot[area]) * in.template get<"dirt.depth">(row);
    put_quantity(dirt, volume.si(), ws);
    return bulk(name, volume, row, in);
}

template <class T>
debris::Bulk<T> drains(const Inputs<T>& in, const Workspace<T>& ws) {
    debris::Bulk<T> total;
    for (std::size_t row = 0; row < drain_slots.size(); ++row) {
        const Count<T> count(ws.quantities.by_slot[drain_slots[row]]);
        const Volume<T> volume =
            debris::drain_volume(count, in.template get<"drain_dirt.volume">(row));
        total.volume += volume;
        total.mass += volume * in.template get<"drain_dirt.density">(row);
    }
    return total;
}

bool is_any_off(const Model& model) {
    return std::find(model.haul_stays_off.begin(), model.haul_stays_off.end(), 1) !=
           model.haul_stays_off.end();
}

/// Whether a kind of dirt is carried to a truck that may not come onto the bridge.
bool is_carried(const Model& model, std::size_t kind) {
    for (std::size_t row = 0; row < model.haul_stays_off.size(); ++row) {
        if (model.haul_stays_off[row] && model.plan->hauls[row].carries[kind]) {
            return true;
        }
    }
    return false;
}

template <class T>
Volume<T> carried(const Model& model, const Workspace<T>& ws) {
    Volume<T> sum(T(0.0));
    for (std::size_t kind = 0; kind < ws.dirt.size(); ++kind) {
        if (is_carried(model, kind)) {
            sum += ws.dirt[kind].volume;
        }
    }
    return sum;
}

} // namespace

template <class T>
void price_debris(const Model& model, const Inputs<T>& in, Workspace<T>& ws) {
    ws.dirt.fill({});
    if (cleans(model, "gutter")) {
        ws.dirt[gutter_row] = strip("gutter dirt", slot("gutter_length"), gutter_row, in, ws);
    }
    if (cleans(model, "joint")) {
        ws.dirt[joint_row] = strip("joint dirt", slot("joint_length"), joint_row, in, ws);
    }
    if (cleans(model, "cap")) {
        ws.dirt[cap_row] =
            layer("dirt on caps", slot("cap_top_area"), slot("cap_dirt_volume"), cap_row, in, ws);
    }
    if (cleans(model, "seat")) {
        ws.dirt[seat_row] =
            layer("dirt on seats", slot("seat_area"), slot("seat_dirt_volume"), seat_row, in, ws);
    }
    if (cleans(model, "drain")) {
        ws.dirt[drain_row] = drains(in, ws);
    }
    if (is_any_off(model)) {
        put_quantity(slot("carried_dirt_volume"), carried(model, ws).si(), ws);
    }
    debris::Bulk<T> total;
    for (const debris::Bulk<T>& dirt : ws.dirt) {
        total.volume += dirt.volume;
        total.mass += dirt.mass;
    }
    ws.figures.template set<"debris.volume">(total.volume);
    ws.figures.template set<"debris.mass">(total.mass);
}

SCUPPER_INSTANTIATE_STEP(price_debris);

} // namespace scupper::estimate::detail
