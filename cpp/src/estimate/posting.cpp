#include "posting.hpp"

#include "scupper/debris.hpp"
#include "scupper/estimate/estimate.hpp"
#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/show.hpp"
#include "scupper/hydraulics.hpp"
#include "spaced.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate {

namespace {

/// A truck of exactly the posted weight may pass, whatever the units it was entered in.
constexpr double weight_slack = 1e-9;

/// The weights that stand against each other, at the values that are priced.
struct Weights {
    Mass<> limit;  ///< [kg] posted
    Mass<> loaded; ///< [kg] water truck with a full tank
    Mass<> least;  ///< [kg] with the smallest filling that is worth fetching
};

Inputs<double> priced_inputs(const Resolved& r) {
    return {r.model.plan->inputs, r.values.data()};
}

Weights weights_of(const Resolved& r) {
    const Inputs<double> in = priced_inputs(r);
    const auto water = hydraulics::water(Temperature<>(in.get<"water.temperature">().si()));
    const Mass<> empty = in.get<"tank.empty_mass">();
    const Mass<> full = in.get<"tank.volume">() * water.density;
    return {in.get<"posting.limit">(), empty + full, empty + full * in.get<"posting.least_fill">()};
}

bool is_above(const Mass<>& mass, const Mass<>& limit) {
    return mass > limit * (1.0 + weight_slack);
}

Posting decided(const Weights& w, AtPosted wish) {
    if (!is_above(w.loaded, w.limit)) {
        return Posting::carried;
    }
    switch (wish) {
    case AtPosted::half_fill:
        return is_above(w.least, w.limit) ? Posting::too_heavy : Posting::half_fill;
    case AtPosted::refuse:
        return Posting::refused;
    case AtPosted::approach:
        break;
    }
    return Posting::approach;
}

/// A haul truck is weighed at its legal weight: it comes with the dirt of others aboard.
Mass<> loaded_haul(const Resolved& r, std::size_t haul) {
    return priced_inputs(r).get<"haul.gross_limit">(haul);
}

std::size_t limit_place(const Plan& plan) {
    return plan.inputs.place(input_place("posting.limit"), 0);
}

std::string weight(const Resolved& r, const Mass<>& mass) {
    return Show(r.model.plan->job).text(mass.si(), dim::mass, "posting.limit");
}

/// "posted 15 short ton" or, from the record alone, the assumed limit with its range.
std::string limit_text(const Resolved& r) {
    const Uncertain& limit = r.uncertain[limit_place(*r.model.plan)];
    const std::string value = weight(r, priced_inputs(r).get<"posting.limit">());
    return is_certain(limit) ? "posted " + value
                             : "posted, limit " + std::string(basis_name(limit.basis)) + ": " +
                                   value + " (" + weight(r, Mass<>(limit.guess.low)) + " to " +
                                   weight(r, Mass<>(limit.guess.high)) + ")";
}

std::string weights_text(const Resolved& r) {
    return limit_text(r) + "; loaded water truck " + weight(r, weights_of(r).loaded);
}

std::string truck_name(const std::string& haul) {
    return haul == any_haul_name ? "haul truck" : spaced(haul);
}

std::string haul_text(const Resolved& r, std::size_t haul) {
    return "loaded " + truck_name(r.model.plan->hauls[haul].name) + " " +
           weight(r, loaded_haul(r, haul));
}

std::string what_is_done(const Estimate& e) {
    const Show show(e.plan->job);
    switch (e.resolved.model.posting) {
    case Posting::approach: {
        const char* const key = "takeoff[approach_hose_length].quantity";
        return "it stays on the approach, " + show.text(e.figure(key), dim::length, key) +
               " more hose";
    }
    case Posting::half_fill: {
        const char* const key = "truck[water].fill";
        return "its tank is filled to " + show.text(e.figure(key), dim::volume, key) + " only";
    }
    default:
        return "it is within the limit";
    }
}

std::string carried_text(const Estimate& e, std::size_t haul) {
    const char* const key = "takeoff[carried_dirt_volume].quantity";
    return haul_text(e.resolved, haul) + ": it stays on the approach, " +
           Show(e.plan->job).text(e.figure(key), dim::volume, key) + " of dirt carried to it";
}

} // namespace

namespace detail {

void put_posted_limit(const Structure& structure, Resolved& r) {
    const Plan& plan = *r.model.plan;
    const std::size_t place = limit_place(plan);
    if (std::isnan(plan.base[place].guess.likely)) {
        r.uncertain[place] = takeoff::infer_posted_limit(structure);
        r.values[place] = price_value(r.uncertain[place], plan.job.price_at);
    }
}

namespace {

/// Less dirt aboard would mean more trips than carrying it is worth.
void decide_hauls(Resolved& r) {
    Model& model = r.model;
    const Mass<> limit = priced_inputs(r).get<"posting.limit">();
    const bool refuses = model.plan->job.posting == AtPosted::refuse;
    for (std::size_t row = 0; row < model.haul_stays_off.size(); ++row) {
        model.haul_stays_off[row] = is_above(loaded_haul(r, row), limit);
        if (model.haul_stays_off[row] && refuses) {
            model.posting = Posting::refused;
        }
    }
}

} // namespace

void decide_posting(const Structure& structure, Resolved& r) {
    const Inputs<double> in = priced_inputs(r);
    const bool limited = !std::isnan(in.get<"posting.limit">().si());
    const bool has_truck = !std::isnan(in.get<"tank.volume">().si()); // a take-off alone has none
    const auto sign = takeoff::weight_sign(structure.codes.posting);
    r.model.haul_stays_off.assign(r.model.plan->hauls.size(), 0);
    if (limited && has_truck) {
        r.model.posting = decided(weights_of(r), r.model.plan->job.posting);
        decide_hauls(r);
    } else {
        r.model.posting = sign == takeoff::WeightSign::closed ? Posting::closed : Posting::none;
    }
}

void require_hose(Model& model) {
    for (std::size_t row = 0; row < model.plan->methods.size(); ++row) {
        if (model.posting == Posting::approach && model.active_methods[row] &&
            model.plan->methods[row].hose.empty()) {
            model.posting = Posting::no_hose;
        }
    }
}

bool stops_work(Posting posting) {
    return posting == Posting::too_heavy || posting == Posting::no_hose ||
           posting == Posting::refused || posting == Posting::closed;
}

namespace {

std::string heavy_hauls(const Resolved& r) {
    std::string text;
    for (std::size_t row = 0; row < r.model.haul_stays_off.size(); ++row) {
        text += r.model.haul_stays_off[row] ? ", " + haul_text(r, row) : "";
    }
    return text;
}

} // namespace

std::string posting_reason(const Resolved& r) {
    switch (r.model.posting) {
    case Posting::too_heavy:
        return weights_text(r) + ", " + weight(r, weights_of(r).least) +
               " with the least filling worth fetching: too heavy";
    case Posting::no_hose:
        return weights_text(r) +
               ": it stays on the approach, where a method without hose cannot work";
    case Posting::refused:
        return weights_text(r) + heavy_hauls(r) + ": refused by the job";
    case Posting::closed:
        return "closed to all traffic (item 41 K); posting.limit, where the owner admits a truck";
    default:
        return "priced";
    }
}

} // namespace detail

std::vector<std::string> posting_warnings(const Estimate& e) {
    std::vector<std::string> found;
    if (e.resolved.model.posting != Posting::none) {
        found.push_back(weights_text(e.resolved) + ": " + what_is_done(e));
    }
    for (std::size_t row = 0; row < e.plan->hauls.size(); ++row) {
        if (e.resolved.model.haul_stays_off[row]) {
            found.push_back(carried_text(e, row));
        }
    }
    switch (takeoff::weight_sign(e.structure.codes.posting)) {
    case takeoff::WeightSign::recommended:
        found.emplace_back("a posting is recommended but its signs are not all there (item 41 B): "
                           "ask the owner for the limit");
        break;
    case takeoff::WeightSign::other:
        found.emplace_back("posted for something other than weight, as speed or number of "
                           "vehicles (item 41 R): ask the owner");
        break;
    case takeoff::WeightSign::closed:
        found.emplace_back("closed to all traffic (item 41 K): ask the owner before a truck goes "
                           "on it");
        break;
    default:
        break;
    }
    return found;
}

} // namespace scupper::estimate
