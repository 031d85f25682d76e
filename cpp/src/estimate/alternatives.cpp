#include "scupper/estimate/alternatives.hpp"

#include "feasible.hpp"
#include "posting.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/inputs.hpp"
#include "spaced.hpp"
#include "users_past.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::estimate {

namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

constexpr std::size_t criterion(std::string_view word) {
    return static_cast<std::size_t>(index_of(criterion_names, word));
}

using Reasons = std::vector<std::pair<Condition, std::string>>;

Reasons looked_up(const std::map<std::string, std::string>& reasons) {
    Reasons list;
    for (const auto& [word, reason] : reasons) {
        list.emplace_back(condition_of({word}), reason);
    }
    return list;
}

bool has_work(const Job& job, Question question) {
    const auto asks = [question](const std::string& component) {
        return question == Question::underside ? index_of(underside_names, component) >= 0
                                               : component == "deck_top" || component == "gutter";
    };
    return question == Question::closure ||
           std::any_of(job.service.begin(), job.service.end(),
                       [&](const auto& s) { return s.second != "none" && asks(s.first); });
}

PlannedAlternative planned(const Job& job, const Alternative& alternative) {
    PlannedAlternative result;
    result.alternative = alternative;
    result.current = works_as(job, alternative);
    result.in_scope = has_work(job, alternative.question);
    result.needs = looked_up(alternative.needs);
    result.forbids = looked_up(alternative.forbids);
    try {
        result.plan = make_plan(with_alternative(job, alternative));
    } catch (const InputError& e) {
        result.reason = e.id() == "job.missing" ? e.found() : e.path() + ": " + e.found();
    }
    return result;
}

/// Hours for which a road is closed: on site in every stage that has a closure.
double closed_time(const Model& model, const Workspace<double>& ws) {
    double sum = 0.0;
    for (std::size_t row = 0; row < model.plan->stages.size(); ++row) {
        const CrewHours<double>& crew = ws.crews[model.plan->stages[row].crew];
        if (model.closures[row] != closure::Kind::none) {
            sum += (crew.work + crew.set_up + crew.removal).si();
        }
    }
    return sum;
}

double passes_of(const Removal& removes, const Inputs<double>& in) {
    if (removes.passes.empty()) {
        return 1.0;
    }
    return number(in.get<"pass.rounds">(removes.passes == "flusher" ? 0 : 1));
}

double mass_of(const Removal& removes, const Workspace<double>& ws) {
    double sum = 0.0;
    for (const std::string& kind : removes.dirt) {
        sum += ws.dirt.at(static_cast<std::size_t>(index_of(dirt_names, kind))).mass.si();
    }
    return sum;
}

void put_amounts(const Resolved& r, const Workspace<double>& ws, const Removal& removes,
                 AlternativeRow& row) {
    const Inputs<double> in(r.model.plan->inputs, r.values.data());
    const double passes = passes_of(removes, in);
    const ThreePoint& removed = removes.share.value.guess;
    row.amount[criterion("cost")] = ws.figures.get<"cost.total">().si();
    row.amount[criterion("labour")] = ws.figures.get<"hours.labour">().si();
    row.amount[criterion("elapsed")] = ws.figures.get<"hours.on_site">().si();
    row.amount[criterion("water")] = ws.figures.get<"water.volume">().si();
    row.amount[criterion("closure")] = closed_time(r.model, ws);
    row.amount[criterion("dirt_left")] = share_left(removed.likely, passes);
    row.shifts = ws.figures.get<"shift.count">();
    row.left_low = share_left(removed.high, passes);
    row.left_high = share_left(removed.low, passes);
    row.left_mass = row.amount[criterion("dirt_left")] * mass_of(removes, ws);
}

void put_road_users(const Structure& structure, const Resolved& r, const Workspace<double>& ws,
                    AlternativeRow& row) {
    RoadUsers users = detail::users_past(structure, r, ws);
    row.amount[criterion("road_users")] = users.total.si();
    row.not_figured = std::move(users.not_figured);
}

AlternativeRow without_price(std::size_t index, std::string reason) {
    AlternativeRow row;
    row.alternative = index;
    row.no_price = std::move(reason);
    row.shifts = row.left_low = row.left_high = row.left_mass = row.score = nothing;
    row.amount.fill(nothing);
    return row;
}

AlternativeRow row_of(const Structure& structure, const PlannedAlternative& planned,
                      std::size_t index, const Plan& otherwise) {
    AlternativeRow row = without_price(index, planned.reason);
    Resolved r;
    resolve(structure, planned.plan ? *planned.plan : otherwise, r);
    detail::judge(structure, r, planned, row);
    if (!planned.plan) {
        return row;
    }
    Workspace<double> ws(*planned.plan);
    price(r.model, Inputs<double>(planned.plan->inputs, r.values.data()), ws);
    const Outcome outcome = outcome_of(r, ws.figures.values(), *planned.plan);
    if (outcome != Outcome::priced) {
        row.no_price = outcome_reason(outcome, r);
        return row;
    }
    put_amounts(r, ws, planned.alternative.removes, row);
    put_road_users(structure, r, ws, row);
    detail::note_misses(ws, r, planned, row);
    return row;
}

bool competes(const AlternativeRow& row, const PlannedAlternative& planned, Question question) {
    return row.feasible && row.no_price.empty() && planned.in_scope &&
           planned.alternative.question == question;
}

Criteria mean_of(std::span<AlternativeRow* const> rows) {
    Criteria mean{};
    for (const AlternativeRow* row : rows) {
        for (std::size_t i = 0; i < mean.size(); ++i) {
            mean[i] += row->amount[i] / static_cast<double>(rows.size());
        }
    }
    return mean;
}

double score_of(const Criteria& amount, const Criteria& mean, const Criteria& weights) {
    double sum = 0.0;
    double all = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        if (mean[i] > 0.0) { // a criterion of which nobody has any tells nothing
            sum += weights[i] * amount[i] / mean[i];
            all += weights[i];
        }
    }
    return all > 0.0 ? sum / all : 1.0;
}

std::string percent(double share) {
    return format_number(100.0 * share, 2) + " %";
}

/// "12 % less cost, 3 % more closure" of what counts and differs.
std::string difference(const Criteria& best, const Criteria& next, const Criteria& weights) {
    std::string text;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        const double change = next[i] > 0.0 ? best[i] / next[i] - 1.0 : 0.0;
        if (weights[i] > 0.0 && std::abs(change) >= 0.005) {
            text += (text.empty() ? "" : ", ") + percent(std::abs(change)) +
                    (change < 0.0 ? " less " : " more ") + spaced(std::string(criterion_names[i]));
        }
    }
    return text.empty() ? "the same in all that counts" : text;
}

std::string why(std::span<AlternativeRow* const> ranked,
                std::span<const PlannedAlternative> alternatives, const Criteria& weights) {
    if (ranked.size() == 1) {
        return "the only one that can be done and has a price";
    }
    const AlternativeRow& next = *ranked[1];
    return "of " + std::to_string(ranked.size()) +
           " that can be done the least by these weights; " + "against " +
           spaced(alternatives[next.alternative].alternative.name) + " " +
           difference(ranked[0]->amount, next.amount, weights);
}

void recommend(std::vector<AlternativeRow>& rows, std::span<const PlannedAlternative> alternatives,
               Question question, const Criteria& weights) {
    std::vector<AlternativeRow*> ranked;
    for (AlternativeRow& row : rows) {
        if (competes(row, alternatives[row.alternative], question)) {
            ranked.push_back(&row);
        }
    }
    if (ranked.empty()) {
        return;
    }
    const Criteria mean = mean_of(ranked);
    for (AlternativeRow* row : ranked) {
        row->score = score_of(row->amount, mean, weights);
    }
    std::stable_sort(
        ranked.begin(), ranked.end(),
        [](const AlternativeRow* a, const AlternativeRow* b) { return a->score < b->score; });
    ranked.front()->recommended = true;
    ranked.front()->why = why(ranked, alternatives, weights);
}

void check_weights(const Criteria& weights) {
    double sum = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        if (!(weights[i] >= 0.0) || !std::isfinite(weights[i])) {
            throw InputError({"alternatives.weights",
                              "weights[" + std::string(criterion_names[i]) + "]",
                              std::to_string(weights[i]), "a number of at least 0"});
        }
        sum += weights[i];
    }
    if (!(sum > 0.0)) {
        throw InputError({"alternatives.weights", "weights", "nothing that counts",
                          "at least one weight above 0"});
    }
}

} // namespace

double share_left(double removed, double passes) {
    return std::pow(1.0 - removed, passes);
}

std::vector<PlannedAlternative> plan_alternatives(const Job& job) {
    std::vector<PlannedAlternative> list;
    for (const Alternative& alternative : job.alternatives) {
        list.push_back(planned(job, alternative));
    }
    Job plain = job;
    plain.alternatives.clear();
    const auto plan = make_plan(plain);
    for (PlannedAlternative& p : list) {
        p.otherwise = plan;
    }
    return list;
}

std::vector<AlternativeRow> compare_alternatives(const Structure& structure,
                                                 std::span<const PlannedAlternative> alternatives,
                                                 const Criteria& weights) {
    check_weights(weights);
    std::vector<AlternativeRow> rows;
    for (std::size_t i = 0; i < alternatives.size(); ++i) {
        rows.push_back(row_of(structure, alternatives[i], i, *alternatives[i].otherwise));
    }
    for (const Question question : {Question::deck, Question::underside, Question::closure}) {
        recommend(rows, alternatives, question, weights);
    }
    return rows;
}

} // namespace scupper::estimate
