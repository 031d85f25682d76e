#include "score_table.hpp"
#include "scupper/simulate/survey_list.hpp"
#include "strata.hpp"
#include "told.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace scupper::simulate {

namespace {

/// "dirt[gutter].width" taken apart.
struct KeyParts {
    std::string_view group, row, field;
};

KeyParts parts_of(std::string_view key) {
    const std::size_t open = key.find('[');
    const std::size_t close = key.find(']');
    const std::size_t dot = key.rfind('.');
    if (open == key.npos) {
        return {key.substr(0, dot), {}, key.substr(dot + 1)};
    }
    return {key.substr(0, open), key.substr(open + 1, close - open - 1), key.substr(dot + 1)};
}

const Measurable* find_measurable(const KeyParts& key) {
    const auto* found =
        std::find_if(measurable_table.begin(), measurable_table.end(), [&](const Measurable& m) {
            return m.group == key.group && m.field == key.field;
        });
    return found == measurable_table.end() ? nullptr : found;
}

/// "gutter dirt depth", "count or measure: drains"; without a row the words alone.
std::string words_of(const Measurable& measurable, const KeyParts& key) {
    const std::string words(measurable.words);
    if (key.group == "quantity") {
        return words + ": " + std::string(slot_table[find_slot(key.row)].label);
    }
    return key.row.empty() ? words : std::string(key.row) + " " + words;
}

bool has_range(const Uncertain& input) {
    return !std::isnan(input.guess.likely) && !is_certain(input);
}

/// Told inputs at the values to be expected with measured scores.
void put_expected(const detail::Told& told, std::span<const double> scores,
                  std::vector<double>& values) {
    for (const detail::ToldInput& input : told.inputs()) {
        values[input.place] =
            detail::expected_at(input.quantile, detail::told_score(input, scores), input.spread);
    }
}

/// Makes independent probabilities of measured inputs vary together, and what they tell with them.
void put_together(const detail::Told& told, std::vector<double>& uniforms,
                  std::vector<double>& values) {
    if (!told.is_joint() && told.inputs().empty()) {
        return;
    }
    std::vector<double> scores(uniforms.size());
    std::transform(uniforms.begin(), uniforms.end(), scores.begin(), normal_quantile);
    told.mix(scores);
    std::transform(scores.begin(), scores.end(), uniforms.begin(), detail::inner_probability);
    put_expected(told, scores, values);
}

} // namespace

/// A measurement with the values it may find.
struct Surveyor::Candidate {
    Measurement measurement;
    FastQuantile values;
};

Surveyor::Surveyor(const estimate::Plan& plan, const SurveySettings& settings)
    : plan_(plan), settings_(settings), workspace_(plan),
      total_(estimate::figure_place_of(plan, "cost.total")) {
    for (const LayoutField& field : plan.inputs.fields()) {
        measurable_.push_back(find_measurable(parts_of(field.key)));
    }
}

double Surveyor::cost_at_values(const estimate::Resolved& resolved) {
    price(resolved.model, estimate::Inputs<double>(plan_.inputs, values_.data()), workspace_);
    return workspace_.figures.at(total_);
}

double Surveyor::cost_with(const estimate::Resolved& resolved, std::size_t place, double value) {
    const double before = std::exchange(values_[place], value);
    const double cost = cost_at_values(resolved);
    values_[place] = before;
    return cost;
}

/// What is believed now, in the terms in which it is written down.
void Surveyor::describe(const estimate::Resolved& resolved, Measurement& m) {
    const Measurable& measurable = *measurable_[m.place];
    const LayoutField& field = plan_.inputs.fields()[m.place];
    const Uncertain& input = resolved.uncertain[m.place];
    m.key = field.key;
    m.words = words_of(measurable, parts_of(field.key));
    m.dimension = field.dimension;
    m.basis = input.basis;
    m.low = input.guess.low;
    m.likely = input.guess.likely;
    m.high = input.guess.high;
    if (measurable.written_as.empty()) {
        return;
    }
    const Slot slot = find_slot(measurable.written_as);
    m.key = plan_.inputs.fields()[plan_.inputs.place(input_place("quantity.given"), slot)].key;
    m.dimension = slot_table[slot].dimension;
    for (double* value : {&m.low, &m.likely, &m.high}) {
        cost_with(resolved, m.place, *value);
        *value = workspace_.quantities.by_slot[slot];
    }
    if (m.high < m.low) {
        std::swap(m.low, m.high); // the wider the spacing, the fewer there are
    }
}

std::optional<Surveyor::Candidate> Surveyor::candidate(const estimate::Resolved& resolved,
                                                       std::size_t place) {
    const Uncertain& input = resolved.uncertain[place];
    const detail::Told told(resolved, {place});
    const double low = cost_with(resolved, place, input.guess.low);
    const double high = cost_with(resolved, place, input.guess.high);
    if (told.inputs().empty() && low == high && low == cost_at_values(resolved)) {
        return std::nullopt;
    }
    Candidate found{{.place = place}, FastQuantile(input.guess)};
    std::vector<double> costs;
    for (std::size_t k = 0; k < detail::strata; ++k) {
        const double u = detail::middle_of(k);
        const double score = normal_quantile(u);
        put_expected(told, {&score, 1}, values_);
        costs.push_back(cost_with(resolved, place, found.values(u)));
    }
    for (const detail::ToldInput& input : told.inputs()) {
        values_[input.place] =
            estimate::price_value(resolved.uncertain[input.place], PriceAt::mean);
    }
    found.measurement.variance = detail::variance_of(costs);
    if (!(found.measurement.variance > 0.0)) {
        return std::nullopt;
    }
    describe(resolved, found.measurement);
    found.measurement.shared = cost_by_shared(resolved, place);
    return found;
}

/// What varies together with other structures, about its mean.
std::vector<double> Surveyor::cost_by_shared(const estimate::Resolved& resolved,
                                             std::size_t place) {
    std::vector<double> costs;
    const Uncertain& input = resolved.uncertain[place];
    for (std::size_t k = 0; input.shared_share > 0.0 && k < detail::strata; ++k) {
        const double expected = detail::expected_of(input, detail::middle_of(k));
        costs.push_back(cost_with(resolved, place, expected));
    }
    const double mean = costs.empty() ? 0.0 : detail::mean_of(costs);
    for (double& cost : costs) {
        cost -= mean;
    }
    return costs;
}

double Surveyor::variance_together(const estimate::Resolved& resolved,
                                   std::span<const Candidate> measured) {
    const auto& [seed, draws, sampling] = settings_.draws;
    std::vector<Sampler> samplers;
    std::vector<std::size_t> places;
    for (const Candidate& c : measured) {
        places.push_back(c.measurement.place);
        const DrawKey key{seed, resolved.stream, plan_.hashes[places.back()]};
        samplers.emplace_back(sampling, key, draws);
    }
    const detail::Told told(resolved, places);
    std::vector<double> costs(draws), uniforms(places.size());
    for (std::size_t d = 0; d < draws; ++d) {
        for (std::size_t i = 0; i < places.size(); ++i) {
            uniforms[i] = samplers[i](d);
        }
        put_together(told, uniforms, values_);
        for (std::size_t i = 0; i < places.size(); ++i) {
            values_.at(places[i]) = measured[i].values(uniforms[i]);
        }
        costs[d] = cost_at_values(resolved);
    }
    return detail::variance_of(costs);
}

Visit Surveyor::visit_to(const estimate::Resolved& resolved) {
    values_ = resolved.values;
    for (std::size_t i = 0; i < values_.size(); ++i) {
        if (has_range(resolved.uncertain[i])) {
            values_[i] = estimate::price_value(resolved.uncertain[i], PriceAt::mean);
        }
    }
    shared_.clear();
    std::vector<Candidate> found;
    double sum = 0.0;
    for (std::size_t i = 0; i < values_.size(); ++i) {
        if (measurable_[i] == nullptr || !has_range(resolved.uncertain[i])) {
            continue;
        }
        if (auto c = candidate(resolved, i)) {
            sum += c->measurement.variance;
            if (!c->measurement.shared.empty()) {
                shared_.emplace_back(i, c->measurement.shared);
            }
            found.push_back(std::move(*c));
        }
    }
    std::erase_if(found, [&](const Candidate& c) {
        return c.measurement.variance < settings_.least_share * sum;
    });
    std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) {
        return a.measurement.variance > b.measurement.variance;
    });
    Visit visit;
    for (const Candidate& c : found) {
        visit.measurements.push_back(c.measurement);
    }
    if (!found.empty()) {
        visit.variance = found.size() == 1 ? found.front().measurement.variance
                                           : variance_together(resolved, found);
    }
    return visit;
}

} // namespace scupper::simulate
