#include "scupper/estimate/resolve.hpp"

#include "plan_parts.hpp"
#include "posting.hpp"
#include "resolve_parts.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace scupper::estimate {

namespace {

closure::Kind closure_of(const std::string& word, const Structure& structure) {
    const int named_kind = index_of(closure_kind_names, word);
    return named_kind >= 0 ? static_cast<closure::Kind>(named_kind)
                           : closure::kind_by_record({structure.codes.lanes_on,
                                                      structure.codes.traffic_direction,
                                                      structure.codes.functional_class});
}

void decide_closures(const Structure& structure, const Plan& plan, Model& model) {
    model.closures.clear();
    model.closure = closure::Kind::none;
    for (const PlannedStage& stage : plan.stages) {
        model.closures.push_back(closure_of(stage.closure, structure));
        if (model.closure == closure::Kind::none) {
            model.closure = model.closures.back();
        }
    }
}

bool operation_runs(std::size_t row, const Model& model) {
    const PlannedOperation& op = model.plan->operations[row];
    const PlannedParty& party = model.plan->parties[op.party];
    const bool visit = op.timing == Timing::closure || op.timing == Timing::lost;
    if (!op.in_scope || model.refused[row] ||
        !holds(op.when, model, visit ? everyone : party.crew)) {
        return false;
    }
    if (op.timing == Timing::closure) {
        return model.closure != closure::Kind::none;
    }
    return op.name != "overtime" || model.plan->job.sharing == Sharing::own_shifts;
}

bool reaches_underside(const Plan& plan, const Model& model) {
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        const PlannedOperation& op = plan.operations[i];
        if (op.in_scope && !model.refused[i] && index_of(underside_names, op.component) >= 0) {
            return true;
        }
    }
    return false;
}

/// Equipment that no operation names is there for all of them.
bool is_used(const std::vector<std::size_t>& users, const Model& model) {
    return users.empty() || std::any_of(users.begin(), users.end(), [&](std::size_t operation) {
               return model.active[operation] != 0;
           });
}

/// Terms that nobody gives are no part of the price.
void decide_contract(const Plan& plan, Resolved& r) {
    const auto given = [&](std::size_t place) {
        return !std::isnan(r.uncertain[place].guess.likely);
    };
    r.model.occupancy = given(plan.inputs.place(input_place("contract.occupancy_charge"), 0));
    r.model.damages = given(plan.inputs.place(input_place("contract.damages"), 0));
    r.model.show_up = given(plan.inputs.place(input_place("shift.cancelled"), 0));
    r.model.unpaid_meal = given(plan.inputs.place(input_place("shift.unpaid_meal_share"), 0));
    r.model.moving = given(plan.inputs.place(input_place("mobilization.pieces"), 0));
    r.model.escalation = given(plan.inputs.place(input_place("escalation.rate"), 0));
}

constexpr std::uint32_t site_bit(std::string_view word) {
    return 1u << static_cast<unsigned>(index_of(site_word_names, word));
}

std::uint32_t site_of(const Structure& structure, const std::string& key, const Plan& plan) {
    std::uint32_t bits = plan.site;
    for (const std::string& id : {structure.id, key}) {
        const auto found = plan.sites.find(id);
        bits |= found == plan.sites.end() ? 0u : found->second;
    }
    return bits;
}

/// What the record says lies below, unless somebody knows better.
void decide_site(const Structure& structure, const std::string& key, const Plan& plan,
                 Model& model) {
    model.site = plan.site == 0 && plan.sites.empty() ? 0u : site_of(structure, key, plan);
    const bool by_record = !model.beneath.water || model.beneath.road;
    model.ground_below = (model.site & site_bit("no_ground_access")) == 0 &&
                         (by_record || (model.site & site_bit("ground_access")) != 0);
    model.old_paint = model.steel && takeoff::may_hold_lead(structure.codes.year_built) &&
                      (model.site & site_bit("no_lead_paint")) == 0;
}

void decide_paces(const Plan& plan, Model& model) {
    model.active_paces.resize(plan.paces.size());
    for (std::size_t i = 0; i < plan.paces.size(); ++i) {
        model.active_paces[i] = holds(plan.paces[i], model);
    }
}

void decide_activity(const Plan& plan, Model& model) {
    model.underside = reaches_underside(plan, model);
    if (model.old_paint && model.underside) {
        model.site |= site_bit("lead_paint");
    }
    decide_paces(plan, model);
    model.active.resize(plan.operations.size());
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        model.active[i] = operation_runs(i, model);
    }
    model.active_methods.assign(plan.methods.size(), 0);
    for (std::size_t i = 0; i < plan.operations.size(); ++i) {
        if (model.active[i] && plan.operations[i].method != no_method) {
            model.active_methods[plan.operations[i].method] = 1;
        }
    }
    model.active_labour.resize(plan.labour.size());
    for (std::size_t i = 0; i < plan.labour.size(); ++i) {
        model.active_labour[i] = holds(plan.labour[i], model, plan.labour_crews[i]);
    }
    model.active_charges.resize(plan.charges.size());
    for (std::size_t i = 0; i < plan.charges.size(); ++i) {
        model.active_charges[i] = holds(plan.charges[i], model);
    }
    model.active_equipment.resize(plan.equipment.size());
    for (std::size_t i = 0; i < plan.equipment.size(); ++i) {
        model.active_equipment[i] = holds(plan.equipment[i], model, plan.equipment_crews[i]) &&
                                    is_used(plan.equipment_users[i], model);
    }
}

void put(const Plan& plan, std::size_t place, const Uncertain& value, Resolved& r) {
    r.uncertain[place] = value;
    r.values[place] = price_value(value, plan.job.price_at);
}

/// Whether records give a dimension: measuring it again tells nothing of what they do not give.
bool is_recorded(std::size_t place) {
    return place == takeoff::dimension("deck.length") ||
           place == takeoff::dimension("deck.width") ||
           place == takeoff::dimension("deck.roadway_width") ||
           place == takeoff::dimension("deck.skew") || place == takeoff::dimension("span.longest");
}

/// A counted quantity is told; so is one that rests on a dimension somebody measured.
void mark_told(std::size_t place, const Plan& plan, Resolved& r) {
    const std::size_t first = plan.inputs.place(input_place("quantity.given"), 0);
    if (place >= first && place < first + slot_table.size()) {
        r.model.given[place - first] = true;
        r.untold[place - first] = false;
    }
    if (place >= takeoff::dimension_count || is_recorded(place)) {
        return;
    }
    for (Slot s = 0; s < slot_table.size(); ++s) {
        r.untold[s] = r.untold[s] && !takeoff::rests_on(s, place);
    }
}

void put_measured(std::size_t place, const Uncertain& value, const Plan& plan, Resolved& r) {
    put(plan, place, value, r);
    mark_told(place, plan, r);
}

const Provenance& counted_origin() {
    static const Provenance origin{
        "counted in the record; FHWA, Specifications for the National Bridge Inventory (2022)",
        {},
        {}};
    return origin;
}

void put_inferred(const takeoff::Inferred& inferred, const Plan& plan, Resolved& r) {
    for (std::size_t i = 0; i < takeoff::dimension_count; ++i) {
        if (std::isnan(plan.base[i].guess.likely)) {
            put(plan, i, inferred.dimensions[i], r);
        } else {
            mark_told(i, plan, r); // the job gives this dimension for every structure
        }
    }
    for (Slot s = 0; s < slot_table.size(); ++s) {
        const std::size_t place = plan.inputs.place(input_place("quantity.given"), s);
        if (!std::isnan(plan.base[place].guess.likely)) {
            mark_told(place, plan, r); // and this quantity
        } else if (!std::isnan(inferred.counted[s])) {
            put(plan, place, certain(inferred.counted[s], Basis::recorded, &counted_origin()), r);
            mark_told(place, plan, r);
        }
    }
}

/// The height over which a line from below lifts its water, unless the job gives it.
void put_clearance(const Structure& structure, const Plan& plan, Resolved& r) {
    const std::size_t place = plan.inputs.place(input_place("site.clearance"), 0);
    if (plan.lifts_from_below && std::isnan(plan.base[place].guess.likely)) {
        put(plan, place, takeoff::infer_clearance(structure), r);
    }
}

/// Everything measured at this structure: its own values first, the job's after.
Overrides measured_values(const Structure& structure, const std::string& key, const Plan& plan) {
    Overrides values;
    for (const GivenValue& given : structure.given) {
        const std::size_t place = plan.inputs.at(full_key(given.key), key);
        values.emplace_back(place, detail::checked(given.value, plan.inputs.fields()[place], key));
    }
    for (const std::string& id : {structure.id, key}) {
        const auto found = plan.overrides.find(id);
        if (found != plan.overrides.end()) {
            values.insert(values.end(), found->second.begin(), found->second.end());
        }
    }
    return values;
}

/// What the job gives for every structure, and in its place what was measured at this one.
takeoff::Measured known_better(const Plan& plan, const Overrides& measured) {
    takeoff::Measured known;
    const std::size_t clearance = plan.inputs.place(input_place("site.clearance"), 0);
    for (std::size_t i = 0; i < takeoff::dimension_count; ++i) {
        known.dimensions[i] = plan.base[i].guess.likely;
    }
    known.clearance = plan.base[clearance].guess.likely;
    for (const auto& [place, value] : measured) {
        if (place < takeoff::dimension_count) {
            known.dimensions[place] = value.guess.likely;
        } else if (place == clearance) {
            known.clearance = value.guess.likely;
        }
    }
    return known;
}

/// One bit for each closure kind that the crew, or anyone, works in.
std::uint32_t closures_around(const Model& model, std::size_t crew) {
    const auto bit = [&](std::size_t stage) {
        return 1u << static_cast<unsigned>(model.closures[stage]);
    };
    const std::size_t stages = model.closures.size();
    if (crew != everyone) {
        return bit(crew <= stages ? crew - 1 : model.plan->parties[crew - 1 - stages].stage);
    }
    std::uint32_t bits = 0;
    for (std::size_t stage = 0; stage < stages; ++stage) {
        bits |= bit(stage);
    }
    return bits;
}

} // namespace

Beneath beneath(int service_under) {
    const auto is_any_of = [service_under](std::initializer_list<int> codes) {
        return std::find(codes.begin(), codes.end(), service_under) != codes.end();
    };
    return {.water = is_any_of({5, 6, 7, 8, 9}),
            .road = is_any_of({1, 4, 6, 8}),
            .rail = is_any_of({2, 4, 7, 8})};
}

bool holds(const Condition& c, const Model& model, std::size_t crew) {
    const bool dry = model.beneath.water || model.plan->job.wash_water == WashWater::none;
    return c.always || (c.over_water && model.beneath.water) ||
           (c.not_over_water && !model.beneath.water) || (c.over_road && model.beneath.road) ||
           (c.navigable && model.beneath.navigable) || (c.dry_removal && dry) ||
           (c.wet_removal && !dry) || (c.over_rail && model.beneath.rail) ||
           (c.underside && model.underside) ||
           (c.steel_underside && model.underside && model.steel) ||
           (c.posted && model.posting != Posting::none) ||
           (c.night && model.plan->job.work_time == WorkTime::night) ||
           (c.underside_over_road && model.underside && model.beneath.road) ||
           (c.underside_over_water && model.underside && model.beneath.water) ||
           (c.ground_below && model.ground_below) || (c.site & model.site) != 0 ||
           (c.build_ups & model.plan->build_up) != 0 ||
           (c.closures & closures_around(model, crew)) != 0;
}

void resolve(const Structure& structure, const Plan& plan, Resolved& r) {
    const std::string key = structure_key(structure);
    const Overrides measured = measured_values(structure, key, plan);
    const takeoff::Inferred inferred = takeoff::infer(structure, known_better(plan, measured));
    r.model.plan = &plan;
    r.model.shape = inferred.shape;
    r.model.given.fill(false);
    r.model.beneath = beneath(structure.codes.service_under);
    r.model.beneath.navigable = structure.codes.navigation == 1;
    r.model.steel = is_steel(structure.codes.material);
    decide_site(structure, key, plan, r.model);
    r.verdict = inferred.verdict;
    r.untold = inferred.untold;
    r.uncertain = plan.base;
    r.values = plan.base_values;
    r.stream = hash_text(key);
    put_inferred(inferred, plan, r);
    detail::put_posted_limit(structure, r);
    put_clearance(structure, plan, r);
    for (const auto& [place, value] : measured) {
        put_measured(place, value, plan, r);
    }
    decide_closures(structure, plan, r.model);
    detail::refuse_wash_water(plan, r);
    detail::decide_posting(structure, r);
    detail::put_counts(structure, r);
    detail::put_window(structure, r);
    decide_contract(plan, r);
    decide_activity(plan, r.model);
    detail::require_hose(r.model);
}

} // namespace scupper::estimate
