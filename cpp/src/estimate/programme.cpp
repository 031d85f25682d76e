#include "scupper/estimate/programme.hpp"

#include "figure_keys.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/fixed_total.hpp"
#include "scupper/estimate/run.hpp"

#include <utility>

namespace scupper::estimate {

namespace {

/// Results by position, written by whichever thread gets there.
struct Results {
    std::vector<Outcome> outcomes;
    std::vector<std::string> reasons; ///< empty where there is a price
    std::vector<closure::Kind> closures;
    std::vector<double> table;
};

/// Sums over the priced rows, the same whatever their order.
void add_up(Programme& programme) {
    const std::size_t width = programme.keys.size();
    std::vector<FixedTotal> sums(width);
    for (std::size_t i = 0; i < programme.table.size(); ++i) {
        sums[i % width].add(programme.table[i]);
    }
    programme.totals.clear();
    for (const FixedTotal& sum : sums) {
        programme.totals.push_back(sum.value());
    }
}

void gather(std::span<const Structure> structures, const Results& results, Programme& programme) {
    const std::size_t width = programme.keys.size();
    for (std::size_t i = 0; i < structures.size(); ++i) {
        if (results.outcomes[i] != Outcome::priced) {
            programme.unpriced.push_back(
                {i, structures[i].id, structures[i].state, results.reasons[i]});
            continue;
        }
        programme.priced.push_back(i);
        programme.closures.push_back(results.closures[i]);
        for (std::size_t k = 0; k < width; ++k) {
            programme.table.push_back(results.table[i * width + k]);
        }
    }
    add_up(programme);
}

/// Puts the rows of a part behind those before it.
void append_rows(Programme& whole, const Programme& part) {
    const std::size_t before = whole.priced.size() + whole.unpriced.size();
    for (const std::size_t index : part.priced) {
        whole.priced.push_back(before + index);
    }
    for (Unpriced u : part.unpriced) {
        u.index += before;
        whole.unpriced.push_back(std::move(u));
    }
    whole.closures.insert(whole.closures.end(), part.closures.begin(), part.closures.end());
    whole.table.insert(whole.table.end(), part.table.begin(), part.table.end());
}

} // namespace

std::vector<std::string> programme_keys() {
    std::vector<std::string> keys = detail::single_figure_keys();
    for (Slot s = 0; s < column_count(); ++s) {
        keys.push_back(detail::quantity_key(s));
    }
    return keys;
}

Programme estimate_all(std::span<const Structure> structures, std::shared_ptr<const Plan> plan,
                       unsigned threads, const RunProgress& progress) {
    Programme programme;
    programme.plan = std::move(plan);
    programme.keys = programme_keys();
    const Plan& p = *programme.plan;
    const std::vector<std::size_t> places = detail::figure_places(p, programme.keys);
    Results results;
    results.outcomes.resize(structures.size());
    results.reasons.resize(structures.size());
    results.closures.resize(structures.size());
    results.table.resize(structures.size() * places.size());
    const auto block = [&](std::size_t first, std::size_t last) {
        Resolved resolved;
        Workspace<double> workspace(p);
        for (std::size_t i = first; i < last; ++i) {
            resolve(structures[i], p, resolved);
            price(resolved.model, Inputs<double>(p.inputs, resolved.values.data()), workspace);
            results.outcomes[i] = outcome_of(resolved, workspace.figures.values(), p);
            if (results.outcomes[i] != Outcome::priced) {
                results.reasons[i] = outcome_reason(results.outcomes[i], resolved);
            }
            results.closures[i] = resolved.model.closure;
            for (std::size_t k = 0; k < places.size(); ++k) {
                results.table[i * places.size() + k] = workspace.figures.at(places[k]);
            }
        }
    };
    run_blocks(structures.size(), threads, block, progress);
    gather(structures, results, programme);
    return programme;
}

Programme joined(std::span<const Programme* const> parts) {
    if (parts.empty()) {
        throw InputError({"estimate.merge", "parts", "none", "at least one part"});
    }
    Programme whole;
    whole.plan = parts.front()->plan;
    whole.keys = parts.front()->keys;
    for (const Programme* part : parts) {
        if (part->keys != whole.keys) {
            throw InputError({"estimate.merge", "parts", "other columns", "parts of one list"});
        }
        append_rows(whole, *part);
    }
    add_up(whole);
    return whole;
}

} // namespace scupper::estimate
