#include "scupper/estimate/remedies.hpp"

#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/price.hpp"
#include "scupper/estimate/show.hpp"
#include "scupper/hydraulics.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace scupper::estimate {

namespace {

using namespace literals;

/// Hoses are sold in these bores; common practice.
constexpr std::array<Length<>, 11> trade_bores{0.25_in, 0.375_in, 0.5_in, 0.75_in, 1.0_in, 1.25_in,
                                               1.5_in,  1.75_in,  2.0_in, 2.5_in,  3.0_in};
constexpr double slack = 1e-9;
constexpr std::array<double, 3> shorter_lays{0.75, 0.5, 0.25};
constexpr int tip_steps = 16; // tips are sold by sixteenths of what they are now
constexpr int pump_steps = 10;
constexpr double most_pressure = 2.0;

const JetNeed* need_of(const std::string& method, const Job& job) {
    const auto found = std::find_if(job.jets.needs.begin(), job.jets.needs.end(),
                                    [&](const JetNeed& need) { return need.method == method; });
    return found == job.jets.needs.end() ? nullptr : &*found;
}

bool suffices(const Flow<>& flow, const Pressure<>& pressure, const JetNeed& need) {
    return flow >= need.flow * (1.0 - slack) && pressure >= need.pressure * (1.0 - slack);
}

/// Prices an estimate again with a few inputs changed.
class Trial {
  public:
    Trial(const Estimate& e, std::size_t method, const JetNeed& need)
        : e_(e), method_(method), need_(need), show_(e.plan->job) {}

    std::size_t place(std::string_view key) const { return e_.plan->inputs.at(key, "remedy"); }
    double value(std::size_t place) const { return e_.resolved.values[place]; }

    std::string text(std::size_t place, double si) const {
        const LayoutField& field = e_.plan->inputs.fields()[place];
        return show_.text(si, field.dimension, field.key);
    }

    /// The remedy, where the change suffices.
    std::optional<Remedy> with(const std::string& what,
                               const std::vector<std::pair<std::size_t, double>>& changes) const {
        return priced(what, changes, *e_.plan);
    }

    std::optional<Remedy> on_deck() const {
        Plan plan = *e_.plan;
        plan.methods[method_].from_below = false;
        return priced("the truck on the deck", {}, plan);
    }

  private:
    std::optional<Remedy> priced(const std::string& what,
                                 const std::vector<std::pair<std::size_t, double>>& changes,
                                 const Plan& plan) const {
        std::vector<double> values = e_.resolved.values;
        for (const auto& [place, si] : changes) {
            values[place] = si;
        }
        Model model = e_.resolved.model;
        model.plan = &plan;
        Workspace<double> ws(plan);
        price(model, Inputs<double>(plan.inputs, values.data()), ws);
        const Flow<> flow = ws.figures.get<"nozzle.flow">(method_);
        const Pressure<> pressure = ws.figures.get<"nozzle.pressure">(method_);
        if (!suffices(flow, pressure, need_)) {
            return std::nullopt;
        }
        return Remedy{what, flow, pressure, ws.figures.get<"cost.total">().si()};
    }

    const Estimate& e_;
    std::size_t method_;
    const JetNeed& need_;
    Show show_;
};

void keep(std::optional<Remedy> remedy, std::vector<Remedy>& found) {
    if (remedy) {
        found.push_back(std::move(*remedy));
    }
}

/// The smallest larger hose that suffices, for one segment alone.
void try_larger_hose(const Trial& trial, const std::string& segment, std::vector<Remedy>& found) {
    const std::size_t place = trial.place("hose[" + segment + "].bore");
    for (const Length<>& bore : trade_bores) {
        if (bore.si() <= trial.value(place) * (1.0 + slack)) {
            continue;
        }
        const std::string what = "hose " + segment + " of " + trial.text(place, bore.si()) +
                                 " instead of " + trial.text(place, trial.value(place));
        if (const auto remedy = trial.with(what, {{place, bore.si()}})) {
            found.push_back(*remedy);
            return;
        }
    }
}

/// The longest of some shorter lays that suffices.
void try_shorter_lay(const Trial& trial, const std::vector<std::string>& segments,
                     std::vector<Remedy>& found) {
    for (const double share : shorter_lays) {
        std::vector<std::pair<std::size_t, double>> changes;
        double length = 0.0;
        for (const std::string& segment : segments) {
            const std::size_t place = trial.place("hose[" + segment + "].length");
            changes.emplace_back(place, share * trial.value(place));
            length += changes.back().second;
        }
        const std::string what =
            "a lay of " + trial.text(changes.front().first, length) + " in all";
        if (const auto remedy = trial.with(what, changes)) {
            found.push_back(*remedy);
            return;
        }
    }
}

/// The tip nearest to the one there is that suffices: smaller for pressure, larger for flow.
void try_another_tip(const Trial& trial, const std::string& method, bool smaller,
                     std::vector<Remedy>& found) {
    const std::size_t place = trial.place("nozzle[" + method + "].bore");
    for (int step = 1; step < tip_steps; ++step) {
        const double share = 1.0 + (smaller ? -1.0 : 1.0) * step / tip_steps;
        const double bore = share * trial.value(place);
        const std::string what = "a tip of " + trial.text(place, bore) + " instead of " +
                                 trial.text(place, trial.value(place));
        if (const auto remedy = trial.with(what, {{place, bore}})) {
            found.push_back(*remedy);
            return;
        }
    }
}

void try_more_pressure(const Trial& trial, const std::string& method, std::vector<Remedy>& found) {
    const std::size_t place = trial.place("pump[" + method + "].pressure");
    for (int step = 1; step <= pump_steps; ++step) {
        const double share = 1.0 + (most_pressure - 1.0) * step / pump_steps;
        const double pressure = share * trial.value(place);
        const std::string what =
            "a pump pressure of " + trial.text(place, pressure) + ", where hose and pump bear it";
        if (const auto remedy = trial.with(what, {{place, pressure}})) {
            found.push_back(*remedy);
            return;
        }
    }
}

std::vector<Remedy> remedies(const Estimate& e, std::size_t row, const Shortfall& shortfall) {
    const WashMethod& method = e.plan->job.methods[row];
    const Trial trial(e, row, shortfall.need);
    std::vector<Remedy> found;
    for (const std::string& segment : method.hose) {
        try_larger_hose(trial, segment, found);
    }
    if (!method.hose.empty()) {
        try_shorter_lay(trial, method.hose, found);
    }
    try_another_tip(trial, method.name, shortfall.pressure < shortfall.need.pressure, found);
    try_more_pressure(trial, method.name, found);
    if (e.plan->methods[row].from_below) {
        keep(trial.on_deck(), found);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Remedy& a, const Remedy& b) { return a.total < b.total; });
    return found;
}

Pressure<> tip_pressure(const Estimate& e, std::size_t row) {
    return Pressure<>(e.figures[e.plan->figures.place(figure_place("nozzle.pressure"), row)]);
}

Flow<> tip_flow(const Estimate& e, std::size_t row) {
    return Flow<>(e.figures[e.plan->figures.place(figure_place("nozzle.flow"), row)]);
}

template <class Names>
bool washes(const Estimate& e, std::size_t method, const Names& components) {
    const Model& model = e.resolved.model;
    for (std::size_t i = 0; i < model.active.size(); ++i) {
        const PlannedOperation& op = e.plan->operations[i];
        const bool named =
            std::find(components.begin(), components.end(), op.component) != components.end();
        if (model.active[i] && op.method == method && named) {
            return true;
        }
    }
    return false;
}

} // namespace

std::vector<Shortfall> shortfalls(const Estimate& e) {
    std::vector<Shortfall> found;
    for (std::size_t row = 0; row < e.plan->methods.size(); ++row) {
        const std::string& name = e.plan->methods[row].name;
        const JetNeed* need = need_of(name, e.plan->job);
        const Flow<> flow = tip_flow(e, row);
        const Pressure<> pressure = tip_pressure(e, row);
        if (!e.resolved.model.active_methods[row] || need == nullptr ||
            suffices(flow, pressure, *need)) {
            continue;
        }
        found.push_back({name, flow, pressure, *need, {}});
        found.back().remedies = remedies(e, row, found.back());
    }
    return found;
}

std::vector<TooStrong> too_strong(const Estimate& e) {
    std::vector<TooStrong> found;
    for (std::size_t row = 0; row < e.plan->methods.size(); ++row) {
        for (std::size_t i = 0; i < e.plan->job.jets.limits.size(); ++i) {
            const JetLimit& limit = e.plan->job.jets.limits[i];
            if (e.resolved.model.active_methods[row] && washes(e, row, limit.components) &&
                holds(e.plan->jet_limits[i], e.resolved.model) &&
                tip_pressure(e, row) > limit.from) {
                found.push_back({e.plan->methods[row].name, tip_pressure(e, row), limit});
            }
        }
    }
    return found;
}

std::vector<HardToHold> hard_to_hold(const Estimate& e) {
    std::vector<HardToHold> found;
    for (std::size_t row = 0; row < e.plan->methods.size(); ++row) {
        if (!e.resolved.model.active_methods[row] || !is_hand_held(e.plan->job.methods[row])) {
            continue;
        }
        const Force<> reaction(
            e.figures[e.plan->figures.place(figure_place("nozzle.reaction"), row)]);
        const std::string& name = e.plan->methods[row].name;
        if (reaction.si() > hydraulics::one_person_reaction) {
            found.push_back({name, reaction, Force<>(hydraulics::one_person_reaction), false});
        } else if (reaction.si() > hydraulics::bucket_reaction && washes(e, row, underside_names)) {
            found.push_back({name, reaction, Force<>(hydraulics::bucket_reaction), true});
        }
    }
    return found;
}

} // namespace scupper::estimate
