#include "scupper/estimate/surroundings.hpp"

#include "scupper/estimate/show.hpp"
#include "spaced.hpp"

#include <algorithm>
#include <limits>

namespace scupper::estimate {

namespace {

bool is_active(const std::vector<Resource>& rows, const std::vector<char>& active,
               const std::string& name) {
    for (std::size_t row = 0; row < rows.size(); ++row) {
        if (rows[row].name == name && active[row]) {
            return true;
        }
    }
    return false;
}

bool is_priced(const Estimate& e, const std::string& name) {
    const Model& model = e.resolved.model;
    const Job& job = e.plan->job;
    return is_active(job.charges, model.active_charges, name) ||
           is_active(job.labour, model.active_labour, name) ||
           is_active(job.equipment, model.active_equipment, name);
}

double amount_of(const std::vector<PricedLine>& lines, const std::string& name) {
    double sum = 0.0;
    for (const PricedLine& line : lines) {
        sum += line.resource == name ? line.amount : 0.0;
    }
    return sum;
}

std::string usual_text(const Surrounding& s, const std::string& units) {
    const Show show(units, s.currency);
    const ThreePoint& usual = s.usual.value.guess;
    return "usually " + show.text(usual.low, dim::money, "charge.amount") + " to " +
           show.text(usual.high, dim::money, "charge.amount") + " a " +
           std::string(charge_per_names.at(static_cast<std::size_t>(s.per))) + "; " + s.source;
}

} // namespace

std::vector<SurroundingFound> surroundings(const Estimate& e) {
    const std::vector<PricedLine> lines = cost_lines(e);
    std::vector<SurroundingFound> found;
    for (std::size_t i = 0; i < e.plan->surroundings.size(); ++i) {
        const Surrounding& s = e.plan->job.surroundings[i];
        if (holds(e.plan->surroundings[i], e.resolved.model)) {
            const bool priced = is_priced(e, s.name);
            found.push_back(
                {s, priced,
                 priced ? amount_of(lines, s.name) : std::numeric_limits<double>::quiet_NaN()});
        }
    }
    return found;
}

std::vector<std::string> unpriced_surroundings(const Estimate& e) {
    std::vector<std::string> texts;
    for (const SurroundingFound& found : surroundings(e)) {
        if (!found.priced) {
            texts.push_back("not priced: " + spaced(found.surrounding.name) + " (" +
                            usual_text(found.surrounding, e.plan->job.units) + ")");
        }
    }
    return texts;
}

} // namespace scupper::estimate
