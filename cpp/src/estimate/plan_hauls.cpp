#include "plan_parts.hpp"
#include "scupper/debris.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/show.hpp"
#include "scupper/hydraulics.hpp"

#include <algorithm>
#include <string>

namespace scupper::estimate::detail {

namespace {

/// Water used from below falls to the ground: no vacuum on the deck reaches it.
bool runs_on_the_deck(const PlannedOperation& op) {
    return index_of(underside_names, op.component) < 0;
}

void add_stage(std::size_t stage, std::vector<std::size_t>& stages) {
    if (std::find(stages.begin(), stages.end(), stage) == stages.end()) {
        stages.push_back(stage);
    }
}

PlannedHaul planned(const std::vector<Haul>& trucks, std::size_t row, const Plan& plan) {
    PlannedHaul result;
    result.name = trucks[row].name;
    result.after_shift = trucks[row].dump != DumpWhen::in_shift;
    result.each_shift = trucks[row].dump == DumpWhen::each_shift;
    for (std::size_t kind = 0; kind < dirt_names.size(); ++kind) {
        result.carries[kind] = carries(trucks, row, dirt_names[kind]);
    }
    const bool carries_the_rest = trucks[row].components.empty();
    for (const PlannedOperation& op : plan.operations) {
        const bool has_dirt = index_of(dirt_names, op.component) >= 0;
        const bool its_own = carries(trucks, row, op.component) && (has_dirt || !carries_the_rest);
        result.picks_up.push_back(its_own && runs_on_the_deck(op));
        if (has_dirt && op.in_scope && carries(trucks, row, op.component)) {
            add_stage(plan.parties[op.party].stage, result.stages);
        }
    }
    return result;
}

const ThreePoint& guess(const Plan& plan, const FieldPlace& field, std::size_t row) {
    return plan.base[plan.inputs.place(field, row)].guess;
}

void require_payload_of(const Plan& plan, std::size_t row) {
    const double gross = guess(plan, input_place("haul.gross_limit"), row).low;
    const double empty = guess(plan, input_place("haul.empty_mass"), row).high;
    const double aboard = guess(plan, input_place("haul.water_aboard"), row).high;
    const Density<> density = hydraulics::water_density(
        Temperature<>(guess(plan, input_place("water.temperature"), 0).low));
    const Mass<> payload = debris::payload(Mass<>(gross), Mass<>(empty), Volume<>(aboard), density);
    if (payload > Mass<>(0.0)) {
        return;
    }
    const Show show(plan.job);
    const std::string truck = "haul[" + plan.hauls[row].name + "].";
    const auto mass = [&](double si) { return show.text(si, dim::mass, "haul.payload"); };
    throw InputError({"job.payload", "job.inputs." + truck + "gross_limit",
                      mass(gross) + ", of which the empty truck takes " + mass(empty) +
                          " and the water aboard " + mass(aboard * density.si()),
                      "more than " + mass(gross - payload.si()) + ", so that it may carry debris"});
}

void require_no_water(const Plan& plan, const PlannedOperation& op) {
    if (guess(plan, input_place("operation.water_per_unit"), op.input_row).high > 0.0) {
        throw InputError({"job.driver", "job.inputs.operation[" + op.name + "].water_per_unit",
                          "water for each dump trip or refill",
                          "none: loads and refills follow from the water of the others"});
    }
}

} // namespace

void plan_hauls(Plan& plan) {
    const std::vector<Haul> trucks = haul_trucks(plan.job);
    for (std::size_t row = 0; row < trucks.size(); ++row) {
        plan.hauls.push_back(planned(trucks, row, plan));
    }
    plan.collecting_haul = collecting_truck(trucks);
}

void require_payload(const Plan& plan) {
    for (std::size_t row = 0; row < plan.hauls.size(); ++row) {
        require_payload_of(plan, row);
    }
}

void require_dry_trips(const Plan& plan) {
    for (const PlannedOperation& op : plan.operations) {
        if (op.in_scope && follows_from_water(op.driver) && is_rated(op.timing)) {
            require_no_water(plan, op);
        }
    }
}

bool haul_needs(const Job& job, const std::string& key) {
    if (key == "water.loss_share" || key == "price.wash_water") {
        return job.wash_water == WashWater::collect;
    }
    for (const Haul& haul : haul_trucks(job)) {
        const std::string row = "haul[" + haul.name + "].";
        if (key == row + "people" || key == row + "wage") {
            return haul.dump != DumpWhen::in_shift;
        }
    }
    return true;
}

} // namespace scupper::estimate::detail
