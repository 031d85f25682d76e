#include "figure_keys.hpp"
#include "scupper/estimate/estimate.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace scupper::estimate {

namespace {

/// Prices the same structure again and again with one input changed.
class Repricer {
  public:
    explicit Repricer(const Estimate& e)
        : estimate_(e), model_(e.resolved.model), values_(e.resolved.values), workspace_(*e.plan),
          total_(e.plan->figures.place(figure_place("cost.total"), 0)) {}

    double total_with(std::size_t place, double value) {
        const double before = values_[place];
        values_[place] = value;
        price(model_, Inputs<double>(estimate_.plan->inputs, values_.data()), workspace_);
        values_[place] = before;
        return workspace_.figures.at(total_);
    }

    double total_counted(Slot s, double quantity) {
        const std::size_t place = estimate_.plan->inputs.place(input_place("quantity.given"), s);
        const bool before = model_.given[s];
        model_.given[s] = true;
        const double total = total_with(place, quantity);
        model_.given[s] = before;
        return total;
    }

  private:
    const Estimate& estimate_;
    Model model_;
    std::vector<double> values_;
    Workspace<double> workspace_;
    std::size_t total_;
};

std::vector<std::size_t> uncertain_places(const Resolved& resolved) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
        if (detail::has_range(resolved.uncertain[i])) {
            places.push_back(i);
        }
    }
    return places;
}

/// Every m-th number from an offset on: the draws of one figure.
std::vector<double> column(const std::vector<double>& table, std::size_t offset,
                           std::size_t stride) {
    std::vector<double> values;
    for (std::size_t i = offset; i < table.size(); i += stride) {
        values.push_back(table[i]);
    }
    return values;
}

std::vector<RangedFigure> ranges_of(const Estimate& e, const std::vector<std::string>& keys,
                                    const DrawSettings& settings) {
    std::vector<std::size_t> places;
    for (const std::string& key : keys) {
        places.push_back(figure_place_of(*e.plan, key));
    }
    const std::vector<double> table = draw_group({&e.resolved, 1}, settings, places);
    std::vector<RangedFigure> result;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        std::vector<double> sample = column(table, i, keys.size());
        result.push_back({keys[i], e.figures[places[i]], sample_quantile(sample, 0.05),
                          sample_quantile(sample, 0.5), sample_quantile(sample, 0.95)});
    }
    return result;
}

/// Columns of the take-off that no record can tell.
std::vector<Slot> untold_columns(const Estimate& e) {
    std::vector<Slot> slots;
    for (Slot s = 0; s < column_count(); ++s) {
        if (e.resolved.untold[s]) {
            slots.push_back(s);
        }
    }
    return slots;
}

} // namespace

std::vector<RangedFigure> ranges(const Estimate& e, const DrawSettings& settings) {
    return ranges_of(e, detail::single_figure_keys(), settings);
}

std::vector<Assumption> assumptions(const Estimate& e) {
    Repricer reprice(e);
    std::vector<Assumption> found;
    for (const std::size_t place : uncertain_places(e.resolved)) {
        const Uncertain& input = e.resolved.uncertain[place];
        const LayoutField& field = e.plan->inputs.fields()[place];
        const double at_low = reprice.total_with(place, input.guess.low);
        const double at_high = reprice.total_with(place, input.guess.high);
        const double worth = std::abs(at_high - at_low);
        if (worth > 0.0) {
            found.push_back(
                {field.key, field.label, input, field.dimension, at_low, at_high, worth});
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Assumption& a, const Assumption& b) { return a.worth > b.worth; });
    return found;
}

std::vector<Untold> untold_quantities(const Estimate& e) {
    const std::vector<Slot> slots = untold_columns(e);
    std::vector<std::string> keys;
    for (const Slot s : slots) {
        keys.push_back(detail::quantity_key(s));
    }
    const std::vector<RangedFigure> ranges = ranges_of(e, keys, {});
    Repricer reprice(e);
    std::vector<Untold> found;
    for (std::size_t i = 0; i < slots.size(); ++i) {
        const RangedFigure& range = ranges[i];
        const double worth = std::abs(reprice.total_counted(slots[i], range.high) -
                                      reprice.total_counted(slots[i], range.low));
        if (worth > 0.0) {
            found.push_back({slots[i], range.low, range.value, range.high, worth});
        }
    }
    return found;
}

} // namespace scupper::estimate
