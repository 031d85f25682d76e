#include "scupper/bid/daily_cost.hpp"

#include "scupper/error.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::bid {

namespace {

using estimate::RoadUsers;

void add_new(const std::vector<std::string>& texts, std::vector<std::string>& all) {
    for (const std::string& text : texts) {
        if (std::find(all.begin(), all.end(), text) == all.end()) {
            all.push_back(text);
        }
    }
}

void require_figured(const RoadUsers& users) {
    if (std::isfinite(users.total.si())) {
        return;
    }
    std::string missing;
    for (const std::string& text : users.not_figured) {
        missing += (missing.empty() ? "" : " ") + text;
    }
    throw InputError({"bid.daily_cost", "daily_cost",
                      missing.empty() ? "a closure whose cost is not known" : missing,
                      "road-user costs of every closure, or a daily cost by hand"});
}

/// A stage's closures all begin at one hour.
void add_stage(const RoadUsers& stage, DailyCost& cost, Quantity<dim::count * dim::time>& stood) {
    const bool first = cost.closures.si() == 0.0;
    cost.closures += stage.closures;
    stood += stage.closures * stage.closed;
    cost.earliest = first ? stage.start : std::min(cost.earliest, stage.start);
    cost.latest = first ? stage.start : std::max(cost.latest, stage.start);
    add_new(stage.sources, cost.sources);
    add_new(stage.cautions, cost.cautions);
}

} // namespace

DailyCost daily_cost(std::span<const RoadUsers> users, const Currency& currency,
                     std::optional<double> days) {
    DailyCost cost;
    Quantity<dim::count * dim::time> stood;
    for (const RoadUsers& one : users) {
        if (one.kind == closure::Kind::none || !(one.closures.si() > 0.0)) {
            continue;
        }
        require_figured(one);
        ++cost.structures;
        cost.total += one.total;
        if (one.stages.empty()) {
            add_stage(one, cost, stood);
        }
        for (const RoadUsers& stage : one.stages) {
            add_stage(stage, cost, stood);
        }
    }
    if (!(cost.closures.si() > 0.0)) {
        throw InputError({"bid.daily_cost", "daily_cost", "no closure",
                          "work under a closure, or a daily cost by hand"});
    }
    cost.closed = stood / cost.closures;
    cost.days = days.value_or(cost.closures.si());
    if (!(cost.days > 0.0 && std::isfinite(cost.days))) {
        throw InputError({"bid.daily_cost", "days", std::to_string(cost.days), "above 0"});
    }
    cost.amount =
        rounded_from_double(cost.total.si() / cost.days, minor_digits(currency), "daily_cost");
    return cost;
}

} // namespace scupper::bid
