#include "feasible.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/price.hpp"
#include "scupper/estimate/show.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate::detail {

namespace {

/// What a site measures, as far as it is known.
struct Measured {
    double low, likely, high; ///< SI; NaN where nobody knows
    Dimension dimension;
    const char* key; ///< how it is shown
    const char* what;
};

Measured one(double value, const Dimension& dimension, const char* key, const char* what) {
    return {value, value, value, dimension, key, what};
}

/// Clearance as somebody measured it, else by the record; the bearings lie a girder's depth higher.
Measured reach_height(const Structure& s, const Resolved& r) {
    const Layout& inputs = r.model.plan->inputs;
    Uncertain clearance = r.uncertain[inputs.place(input_place("site.clearance"), 0)];
    if (std::isnan(clearance.guess.likely)) {
        clearance = takeoff::infer_clearance(s);
    }
    const ThreePoint& depth = r.uncertain[inputs.place(input_place("girder.depth"), 0)].guess;
    return {clearance.guess.low + depth.low,
            clearance.guess.likely + depth.likely,
            clearance.guess.high + depth.high,
            dim::length,
            "site.clearance",
            "height to the bearings"};
}

double wider_walk(const RecordedDimensions& d) {
    const auto width = [](const Length<>& w) { return std::isnan(w.si()) ? 0.0 : w.si(); };
    return std::max(width(d.left_walk_width), width(d.right_walk_width));
}

Measured measured(SiteMeasure measure, const Structure& s, const Resolved& r) {
    switch (measure) {
    case SiteMeasure::reach_height:
        return reach_height(s, r);
    case SiteMeasure::walk_width:
        return one(wider_walk(s.dimensions), dim::length, "deck.walk_width", "wider sidewalk");
    case SiteMeasure::daily_traffic:
        return one(s.codes.daily_traffic < 0 ? not_recorded : s.codes.daily_traffic, dim::none, "",
                   "vehicles a day");
    case SiteMeasure::detour:
        return one(s.dimensions.detour.si(), dim::length, "refill.distance", "detour");
    case SiteMeasure::posted_limit:
        break;
    }
    const ThreePoint& limit =
        r.uncertain[r.model.plan->inputs.place(input_place("posting.limit"), 0)].guess;
    return {limit.low, limit.likely, limit.high, dim::mass, "posting.limit", "posted for"};
}

std::string amount(const Measured& m, double si, const Show& show) {
    return m.dimension == dim::none ? format_number(si, 4) : show.text(si, m.dimension, m.key);
}

std::string between(const SiteLimit& limit, const Measured& m, const Show& show) {
    return std::isfinite(limit.most) ? "at most " + amount(m, limit.most, show)
                                     : "at least " + amount(m, limit.least, show);
}

bool is_within(double value, const SiteLimit& limit) {
    constexpr double slack = 1e-9;
    return value >= limit.least * (1.0 - slack) && value <= limit.most * (1.0 + slack);
}

/// A bridge without a posting bears any truck; anything else that nobody knows is a doubt.
void judge_limit(const SiteLimit& limit, const Structure& s, const Resolved& r, const Show& show,
                 AlternativeRow& row) {
    const Measured m = measured(limit.measure, s, r);
    const std::string wanted = between(limit, m, show) + ": " + limit.reason;
    if (std::isnan(m.likely)) {
        if (limit.measure != SiteMeasure::posted_limit) {
            row.doubts.push_back(std::string(m.what) + " not recorded, " + wanted);
        }
        return;
    }
    const std::string found = std::string(m.what) + " " + amount(m, m.likely, show);
    if (!is_within(m.likely, limit)) {
        row.reasons.push_back(found + ", " + wanted);
    } else if (!is_within(m.low, limit) || !is_within(m.high, limit)) {
        row.doubts.push_back(found + " (" + amount(m, m.low, show) + " to " +
                             amount(m, m.high, show) + "), " + wanted);
    }
}

/// Washing that is refused because no water may run is no way to clean.
void judge_water(const Model& model, const Alternative& a, AlternativeRow& row) {
    for (std::size_t i = 0; i < model.refused.size(); ++i) {
        const PlannedOperation& op = model.plan->operations[i];
        if (model.refused[i] && a.ways.contains(op.component)) {
            row.reasons.emplace_back("no wash water may run, and it washes");
            return;
        }
    }
}

bool has_any(const Workspace<double>& ws, const Plan& plan, const std::string& component) {
    return std::any_of(
        plan.operations.begin(), plan.operations.end(), [&](const PlannedOperation& op) {
            return op.component == component && ws.quantities.by_slot[op.driver] > 0.0;
        });
}

bool is_cleaned(const Plan& plan, const Model& model, const std::string& component) {
    for (std::size_t row = 0; row < plan.operations.size(); ++row) {
        if (plan.operations[row].component == component && model.active[row]) {
            return true;
        }
    }
    return false;
}

} // namespace

void judge(const Structure& s, const Resolved& r, const PlannedAlternative& planned,
           AlternativeRow& row) {
    for (const auto& [condition, reason] : planned.needs) {
        if (!holds(condition, r.model)) {
            row.reasons.push_back(reason);
        }
    }
    for (const auto& [condition, reason] : planned.forbids) {
        if (holds(condition, r.model)) {
            row.reasons.push_back(reason);
        }
    }
    judge_water(r.model, planned.alternative, row);
    const Show show(r.model.plan->job);
    for (const SiteLimit& limit : planned.alternative.limits) {
        judge_limit(limit, s, r, show, row);
    }
    row.feasible = row.reasons.empty();
}

void note_misses(const Workspace<double>& ws, const Resolved& r, const PlannedAlternative& planned,
                 AlternativeRow& row) {
    for (const auto& [component, text] : planned.alternative.misses) {
        const Plan& plan = *planned.plan;
        if (has_any(ws, plan, component) && is_cleaned(plan, r.model, component)) {
            row.doubts.push_back(text);
        }
    }
}

} // namespace scupper::estimate::detail
