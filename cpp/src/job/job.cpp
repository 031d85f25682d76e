#include "scupper/job/job.hpp"

#include "check_hauls.hpp"
#include "check_site.hpp"
#include "check_stages.hpp"
#include "check_words.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace scupper {

namespace detail {

void require_word(Words words, const std::string& word, const std::string& path,
                  std::string_view also) {
    const bool exception = !also.empty() && word == also;
    if (exception || std::find(words.begin(), words.end(), word) != words.end()) {
        return;
    }
    const std::string near = nearest_name(word, words);
    std::string allowed = near.empty() ? std::string{} : "\"" + near + "\"? one of ";
    for (const std::string_view w : words) {
        allowed += (w == words.front() ? "" : ", ") + std::string(w);
    }
    throw UnknownNameError({"job.word", path, "\"" + word + "\"", allowed});
}

} // namespace detail

namespace {

using detail::check_conditions;
using detail::require_word;

void check_method(const Operation& op, const Job& job, const std::string& path) {
    std::vector<std::string_view> known;
    for (const WashMethod& method : job.methods) {
        known.push_back(method.name);
    }
    if (!op.method.empty()) {
        require_word(known, op.method, path + ".method");
    }
}

std::vector<std::string_view> ways_offered(const Job& job, const std::string& component) {
    std::vector<std::string_view> ways;
    for (const Operation& op : job.operations) {
        for (const std::string& way : op.ways) {
            const bool new_way = std::find(ways.begin(), ways.end(), way) == ways.end();
            if (op.component == component && new_way) {
                ways.push_back(way);
            }
        }
    }
    return ways;
}

void check_planned(const std::vector<Resource>& resources, const std::string& path) {
    for (const Resource& r : resources) {
        if (!r.plan.empty()) {
            require_word(closure_count_names, r.plan, path + "[" + r.name + "].plan");
        }
    }
}

void check_traffic(const Traffic& traffic) {
    require_word(hour_pattern_names, traffic.hours, "job.traffic.hours", "by_record");
    require_word(capacity_method_names, traffic.capacity, "job.traffic.capacity");
}

/// A charge is an amount; nothing of a closure counts it.
void check_charges(const Job& job) {
    for (const Resource& r : job.charges) {
        check_conditions(r.when, "job.charges[" + r.name + "]");
        if (!r.plan.empty()) {
            throw InputError({"job.plan", "job.charges[" + r.name + "].plan", r.plan,
                              "nothing: a charge is an amount by the visit"});
        }
    }
}

void check_ways(const Job& job) {
    for (const auto& [component, way] : job.ways) {
        require_word(component_names, component, "job.ways");
        require_word(ways_offered(job, component), way, "job.ways." + component);
    }
}

/// Whether a component stands for the visit itself rather than for a part of the structure.
bool comes_with_any_scope(const std::string& component) {
    return index_of(component_names, component) >= index_of(component_names, "traffic_control");
}

/// What follows from the water cannot use water, and dump trips are those of the haul trucks.
void check_driver(const Operation& op, const std::string& path) {
    if (follows_from_water(op.driver) && !op.method.empty()) {
        throw InputError({"job.driver", path + ".method",
                          "water by method " + op.method + " for each dump trip or refill",
                          "no method: loads and refills follow from the water of the others"});
    }
    if (op.timing == Timing::dump && op.driver != slot("dump_count")) {
        throw InputError({"job.driver", path + ".driver",
                          "dump trips driven by " + std::string(slot_table[op.driver].key),
                          "dump_count"});
    }
}

void check_operation(const Operation& op, const Job& job) {
    const std::string path = "job.operations[" + op.name + "]";
    require_word(component_names, op.component, path + ".component");
    for (const std::string& level : op.levels) {
        require_word(service_level_names, level, path + ".levels");
    }
    check_conditions(op.when, path);
    if (!op.crew.empty()) {
        require_word(crew_kind_names, op.crew, path + ".crew");
    }
    if (in_scope(job, op)) {
        check_method(op, job, path);
    }
    check_driver(op, path);
    if (!(op.factor > 0.0)) {
        throw InputError(
            {"job.factor", path + ".factor", std::to_string(op.factor), "a number above 0"});
    }
}

void check_scope(const Job& job) {
    bool any = false;
    for (const auto& [component, level] : job.service) {
        const std::string path = "job.service." + component;
        require_word(component_names, component, "job.service");
        require_word(service_level_names, level, path);
        if (level == "none") {
            continue;
        }
        any = true;
        const bool served = std::any_of(job.operations.begin(), job.operations.end(),
                                        [&, c = component](const Operation& op) {
                                            return op.component == c && in_scope(job, op);
                                        });
        if (!served) {
            const std::string way = way_of(job, component);
            throw InputError(
                {"job.scope", path,
                 "no operation of the rate book serves " + component + " at level " + level +
                     (way.empty() ? "" : " by way " + way),
                 "a level and way that an operation serves, or an operation of your own"});
        }
    }
    if (!any) {
        throw InputError({"job.empty", "job.service", "no component to clean",
                          "at least one component, e.g. {\"deck_top\": \"rinse\"}"});
    }
}

std::vector<LayoutRow> haul_rows(const Job& job) {
    const std::vector<Haul> trucks = haul_trucks(job);
    std::vector<LayoutRow> rows;
    for (const Haul& haul : trucks) {
        const bool by_short_key = trucks.size() == 1 || haul.name == any_haul_name;
        rows.push_back({haul.name, {}, {}, by_short_key});
    }
    return rows;
}

std::vector<LayoutRow> rows_of(const std::vector<Resource>& resources) {
    std::vector<LayoutRow> rows;
    for (const Resource& r : resources) {
        rows.push_back({r.name, {}, {}});
    }
    return rows;
}

std::vector<LayoutRow> pace_rows(const Job& job) {
    std::vector<LayoutRow> rows;
    for (const Pace& pace : job.paces) {
        rows.push_back({pace.name, {}, {}});
    }
    return rows;
}

std::vector<LayoutRow> stage_rows(const Job& job) {
    std::vector<LayoutRow> rows;
    for (const Stage& stage : job.stages) {
        rows.push_back({stage.name, {}, {}});
    }
    return rows;
}

std::vector<LayoutRow> party_rows(const Job& job) {
    std::vector<LayoutRow> rows;
    for (const Stage& stage : job.stages) {
        for (const Party& party : stage.parties) {
            rows.push_back({party.name, {}, {}});
        }
    }
    return rows;
}

std::vector<LayoutRow> dirt_rows() {
    return {{"gutter", {}, "gutter"},
            {"joint", {}, "joint gap"},
            {"cap", {}, "cap top"},
            {"seat", {}, "abutment seat"}};
}

std::vector<LayoutRow> pass_rows() {
    return {{"flusher", {}, "flusher pass"}, {"broom", {}, "broom pass"}};
}

std::vector<LayoutRow> drain_rows() {
    return {{"free", {}, "free drain"},
            {"clogged", {}, "clogged drain"},
            {"frozen", {}, "frozen drain"}};
}

bool uses_method(const Job& job, const std::string& name) {
    return std::any_of(job.operations.begin(), job.operations.end(),
                       [&](const Operation& op) { return op.method == name && in_scope(job, op); });
}

std::vector<LayoutRow> method_rows(const Job& job) {
    std::vector<LayoutRow> rows;
    for (const WashMethod& method : job.methods) {
        rows.push_back({method.name, {}, {}, uses_method(job, method.name)});
    }
    return rows;
}

bool uses_segment(const Job& job, const std::string& name) {
    return std::any_of(job.methods.begin(), job.methods.end(), [&](const WashMethod& method) {
        return uses_method(job, method.name) &&
               std::find(method.hose.begin(), method.hose.end(), name) != method.hose.end();
    });
}

std::vector<LayoutRow> hose_rows(const Job& job) {
    std::vector<LayoutRow> rows;
    for (const std::string& name : hose_segments(job)) {
        rows.push_back({name, {}, "hose " + name, uses_segment(job, name)});
    }
    return rows;
}

} // namespace

std::string service_level(const Job& job, const std::string& component) {
    const auto found = job.service.find(component);
    return found == job.service.end() ? "none" : found->second;
}

std::string way_of(const Job& job, const std::string& component) {
    const auto chosen = job.ways.find(component);
    if (chosen != job.ways.end()) {
        return chosen->second;
    }
    const std::vector<std::string_view> offered = ways_offered(job, component);
    if (offered.empty()) {
        return {};
    }
    // A broom on the deck picks up along the gutter too; a flusher leaves a windrow there.
    const std::string deck = component == "deck_top" ? std::string{} : way_of(job, "deck_top");
    const bool follows = std::find(offered.begin(), offered.end(), deck) != offered.end();
    return follows ? deck : std::string(offered.front());
}

bool in_scope(const Job& job, const Operation& op) {
    if (comes_with_any_scope(op.component)) {
        return true;
    }
    const std::string level = service_level(job, op.component);
    const bool called = std::find(op.levels.begin(), op.levels.end(), level) != op.levels.end();
    const std::string way = way_of(job, op.component);
    return called &&
           (op.ways.empty() || std::find(op.ways.begin(), op.ways.end(), way) != op.ways.end());
}

std::vector<std::string> hose_segments(const Job& job) {
    std::vector<std::string> names;
    for (const WashMethod& method : job.methods) {
        for (const std::string& name : method.hose) {
            if (std::find(names.begin(), names.end(), name) == names.end()) {
                names.push_back(name);
            }
        }
    }
    return names;
}

void check_job(const Job& job) {
    static constexpr std::array<std::string_view, 3> unit_systems{"us", "metric", "si"};
    require_word(unit_systems, job.units, "job.units");
    require_word(closure_kind_names, job.closure, "job.closure", "by_record");
    for (const Operation& op : job.operations) {
        check_operation(op, job);
    }
    for (const Resource& r : job.labour) {
        check_conditions(r.when, "job.labour[" + r.name + "]");
    }
    for (const Resource& r : job.equipment) {
        check_conditions(r.when, "job.equipment[" + r.name + "]");
    }
    check_charges(job);
    check_planned(job.labour, "job.labour");
    check_planned(job.equipment, "job.equipment");
    check_traffic(job.traffic);
    for (const Caution& c : job.cautions) {
        check_conditions(c.when, "job.cautions[" + c.id + "]");
    }
    for (const JetLimit& limit : job.jets.limits) {
        check_conditions(limit.when, "job.jets[" + limit.surface + "]");
    }
    for (const Notice& n : job.notices) {
        check_conditions(n.when, "job.notices[" + n.name + "]");
    }
    for (const ClosedSeason& season : job.calendar.closed) {
        check_conditions(season.when, "job.calendar.closed[" + season.name + "]");
    }
    check_ways(job);
    detail::check_stages(job);
    check_scope(job);
    detail::check_hauls(job);
    detail::check_site(job);
}

Layout input_layout(const Job& job) {
    std::vector<LayoutRow> operations;
    for (const Operation& op : job.operations) {
        if (is_rated(op.timing)) {
            operations.push_back({op.name, slot_table[op.driver].dimension, {}});
        }
    }
    const std::vector<LayoutRow> methods = method_rows(job);
    std::vector<LayoutRow> closures;
    for (std::size_t kind = 1; kind < closure_kind_names.size(); ++kind) { // 0 is "none"
        closures.push_back({std::string(closure_kind_names[kind]),
                            {},
                            "closure " + std::string(closure_kind_names[kind])});
    }
    return Layout(Schema::inputs, {{"quantity", slot_layout_rows()},
                                   {"dirt", dirt_rows()},
                                   {"drain_dirt", drain_rows()},
                                   {"pump", methods},
                                   {"hose", hose_rows(job)},
                                   {"nozzle", methods},
                                   {"haul", haul_rows(job)},
                                   {"operation", operations},
                                   {"closure", closures},
                                   {"pass", pass_rows()},
                                   {"stage", stage_rows(job)},
                                   {"party", party_rows(job)},
                                   {"labour", rows_of(job.labour)},
                                   {"equipment", rows_of(job.equipment)},
                                   {"charge", rows_of(job.charges)},
                                   {"pace", pace_rows(job)}});
}

} // namespace scupper
