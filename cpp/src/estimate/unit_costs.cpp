#include "scupper/estimate/unit_costs.hpp"

#include "scupper/cost.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <map>
#include <string_view>

namespace scupper::estimate {

namespace {

/// The quantity by which the trade counts a component.
struct Measure {
    std::string_view component;
    Slot slot;
};

constexpr std::array<Measure, 25> measures{{
    {"deck_top", slot("deck_top_area")},
    {"sidewalk", slot("sidewalk_area")},
    {"median", slot("median_area")},
    {"gutter", slot("gutter_length")},
    {"gutter_pocket", slot("gutter_pocket_length")},
    {"soffit_overhang", slot("soffit_overhang_area")},
    {"parapet", slot("parapet_length")},
    {"rail", slot("rail_length")},
    {"joint", slot("joint_length")},
    {"drain", slot("drain_count")},
    {"girder", slot("girder_area")}, // where it is washed whole
    {"girder", slot("girder_end_area")},
    {"diaphragm", slot("diaphragm_area")},
    {"bearing", slot("bearing_count")},
    {"cap", slot("cap_area")},
    {"seat", slot("seat_area")},
    {"column", slot("column_area")},
    {"wall_pier", slot("wall_pier_area")},
    {"footing", slot("footing_area")},
    {"abutment_stem", slot("abutment_stem_area")},
    {"back_wall", slot("back_wall_area")},
    {"wing_wall", slot("wing_wall_area")},
    {"pedestal", slot("pedestal_count")},
    {"berm", slot("berm_area")},
    {"slope_protection", slot("slope_protection_area")},
}};

bool drives_work(const Estimate& e, Slot driver) {
    const Plan& plan = *e.plan;
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        if (e.resolved.model.active[i] && plan.operations[i].driver == driver) {
            return true;
        }
    }
    return false;
}

/// The measure of a component; of two the first that drives work, else the last.
const Measure* measure_of(const Estimate& e, std::string_view component) {
    const Measure* found = nullptr;
    for (const Measure& m : measures) {
        if (m.component == component && (found == nullptr || !drives_work(e, found->slot))) {
            found = &m;
        }
    }
    return found;
}

double quantity_of(const Estimate& e, Slot s) {
    return e.figures[e.plan->figures.place(figure_place("takeoff.quantity"), s)];
}

/// Direct cost by component; what belongs to none of them, and margins, apart.
struct Sums {
    std::map<std::string, double> direct;
    double indirect = 0.0;
    double margins = 0.0;
    double all_direct = 0.0;
};

Sums sums_of(const Estimate& e) {
    Sums sums;
    for (std::size_t row = 0; row < e.plan->lines.size(); ++row) {
        const CostLine& line = e.plan->lines[row];
        const double amount = e.figures[e.plan->figures.place(figure_place("line.cost"), row)];
        if (line.charge == Charge::margin) {
            sums.margins += amount;
        } else if (measure_of(e, line.component) == nullptr) {
            sums.indirect += amount;
        } else if (amount != 0.0) {
            sums.direct[line.component] += amount;
            sums.all_direct += amount;
        }
    }
    return sums;
}

void finish(UnitCost& u) {
    u.total = u.direct + u.distributed + u.margins;
    u.per_unit = u.quantity > 0.0 ? cost::unit_cost<double>(Amount<>(u.total), u.quantity).si()
                                  : std::numeric_limits<double>::quiet_NaN();
}

double part(double whole, double direct, double all) {
    return cost::distributed<double>(Amount<>(whole), Amount<>(direct), Amount<>(all)).si();
}

} // namespace

std::vector<UnitCost> unit_costs(const Estimate& e) {
    const Sums sums = sums_of(e);
    std::vector<UnitCost> rows;
    for (const std::string_view component : component_names) {
        const auto found = sums.direct.find(std::string(component));
        if (found == sums.direct.end()) {
            continue;
        }
        const Slot s = measure_of(e, component)->slot;
        UnitCost row{.component = found->first, .slot = s, .quantity = quantity_of(e, s)};
        row.direct = found->second;
        row.distributed = part(sums.indirect, row.direct, sums.all_direct);
        row.margins = part(sums.margins, row.direct, sums.all_direct);
        finish(row);
        rows.push_back(row);
    }
    constexpr Slot deck = slot("deck_total_area");
    UnitCost whole{.component = "structure", .slot = deck, .quantity = quantity_of(e, deck)};
    whole.direct = sums.all_direct;
    whole.distributed = sums.indirect;
    whole.margins = sums.margins;
    finish(whole);
    rows.push_back(whole);
    return rows;
}

} // namespace scupper::estimate
