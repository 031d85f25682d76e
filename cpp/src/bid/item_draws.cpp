#include "scupper/bid/item_draws.hpp"

#include "counted.hpp"
#include "scupper/error.hpp"
#include "scupper/simulate/figure_draws.hpp"

#include <string>
#include <vector>

namespace scupper::bid {

namespace {

[[noreturn]] void refuse_simulation(const std::string& found) {
    throw InputError({"bid.simulation", "simulation", found,
                      "a simulation of the structures and the job that the items are made of"});
}

/// Items that are no lump sum: which, by which figure, in what unit.
struct Measured {
    std::vector<std::size_t> items;
    std::vector<std::size_t> places;
    std::vector<double> unit_factors;
};

Measured measured_of(const PayItems& items) {
    std::vector<ItemRule> rules;
    for (const PricedItem& item : items.items) {
        rules.push_back({.item = item.item, .driver = item.driver, .covers = {}});
    }
    const detail::Drivers drivers = detail::drivers_of(rules, *items.plan);
    Measured measured;
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (drivers.unit_factors[i] != 0.0) {
            measured.items.push_back(i);
            measured.places.push_back(drivers.places[i]);
            measured.unit_factors.push_back(drivers.unit_factors[i]);
        }
    }
    return measured;
}

/// Totals of the same draws of the same structures have the same bits.
void require_same(const simulate::FigureDraws& drawn, const simulate::Simulation& simulation) {
    const std::size_t width = drawn.places.size();
    for (std::size_t d = 0; d < simulation.settings.draws; ++d) {
        for (std::size_t f = 0; f < simulate::figure_count; ++f) {
            if (!(drawn.totals[d * width + f] ==
                  simulation.totals[d * simulate::figure_count + f])) {
                refuse_simulation("other totals in draw " + std::to_string(d + 1));
            }
        }
    }
}

} // namespace

QuantityDraws item_draws(const PayItems& items, std::span<const Structure> structures,
                         const simulate::Simulation& simulation, unsigned threads,
                         const estimate::RunProgress& progress) {
    if (simulation.structures != structures.size()) {
        refuse_simulation(std::to_string(simulation.structures) + " structures");
    }
    const Measured measured = measured_of(items);
    const simulate::FigureDraws drawn = simulate::figure_draws(
        structures, *items.plan, measured.places, simulation.settings, threads, progress);
    require_same(drawn, simulation);
    const std::size_t width = drawn.places.size();
    QuantityDraws out{items.items.size(), {}};
    out.values.assign(simulation.settings.draws * out.items, 1.0);
    for (std::size_t d = 0; d < simulation.settings.draws; ++d) {
        const auto* totals = drawn.totals.data() + d * width + simulate::figure_count;
        for (std::size_t k = 0; k < measured.items.size(); ++k) {
            out.values[d * out.items + measured.items[k]] =
                totals[k].value() / measured.unit_factors[k];
        }
    }
    return out;
}

} // namespace scupper::bid
