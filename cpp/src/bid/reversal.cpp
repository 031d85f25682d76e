#include "scupper/bid/reversal.hpp"

#include "scupper/bid/crossover.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace scupper::bid {

namespace {

constexpr double rounding = 1e-12; // of totals that are equal in exact decimals
constexpr std::size_t most_values = 100'000'000;
constexpr std::uint64_t stream = hash_text("quantities of a contract");

void check(std::size_t draws, std::size_t items, double shared) {
    if (draws == 0 || items == 0 || draws > most_values / items) {
        throw InputError({"bid.draws", "draws",
                          std::to_string(draws) + " of " + std::to_string(items) + " items",
                          "1 and more, at most " + std::to_string(most_values) + " values"});
    }
    if (!(shared >= 0.0 && shared <= 1.0)) {
        throw InputError({"bid.shared", "shared", std::to_string(shared), "0 to 1"});
    }
}

/// The common factor of all items, as a standard normal number a draw.
std::vector<double> common_factor(std::size_t draws, std::uint64_t seed) {
    const Sampler sampler(Sampling::plain, {seed, stream, hash_text("shared")}, draws);
    std::vector<double> out(draws);
    for (std::size_t n = 0; n < draws; ++n) {
        out[n] = normal_quantile(sampler(n));
    }
    return out;
}

/// A bid that takes part, with the prices of base items and 0 for the others.
struct Entrant {
    std::size_t bid;
    std::vector<double> prices;
};

std::vector<Entrant> entrants_of(const PriceTable& table) {
    std::vector<Entrant> out;
    for (std::size_t bid = 0; bid < table.bidders.size(); ++bid) {
        Entrant entrant{bid, std::vector<double>(table.items())};
        bool complete = true;
        for (std::size_t i = 0; i < table.items(); ++i) {
            if (table.form.items[i].kind == ItemKind::base) {
                const auto& price = table.of(bid)[i];
                complete = complete && price.has_value();
                entrant.prices[i] = price ? to_double(*price) : 0.0;
            }
        }
        if (complete) {
            out.push_back(std::move(entrant));
        }
    }
    return out;
}

void check(const QuantityDraws& quantities, std::size_t items) {
    const bool fits = quantities.items == items && quantities.draws() > 0 &&
                      quantities.values.size() % items == 0;
    const bool finite = std::all_of(quantities.values.begin(), quantities.values.end(),
                                    [](double x) { return std::isfinite(x); });
    if (!fits || !finite) {
        throw InputError({"bid.draws", "quantities",
                          std::to_string(quantities.values.size()) + " values for " +
                              std::to_string(quantities.items) + " items",
                          "finite quantities, draws x " + std::to_string(items) + " items"});
    }
}

} // namespace

QuantityDraws draw_quantities(const ItemList& form, std::size_t draws, std::uint64_t seed,
                              double shared) {
    check(draws, form.items.size(), shared);
    const std::size_t items = form.items.size();
    QuantityDraws out{items, std::vector<double>(draws * items)};
    const std::vector<double> common = common_factor(draws, seed);
    const double own_weight = std::sqrt(1.0 - shared);
    const double common_weight = std::sqrt(shared);
    for (std::size_t i = 0; i < items; ++i) {
        const PayItem& item = form.items[i];
        const double likely = to_double(item.quantity);
        const bool certain = item.low == item.high;
        const ThreePoint range{certain ? likely : to_double(item.low), likely,
                               certain ? likely : to_double(item.high)};
        scupper::check(range, "items[" + item.code + "].quantity");
        const FastQuantile quantile(range);
        const Sampler sampler(Sampling::plain, {seed, stream, hash_text(item.code)}, draws);
        for (std::size_t n = 0; n < draws; ++n) {
            const double u = shared > 0.0 ? normal_cdf(common_weight * common[n] +
                                                       own_weight * normal_quantile(sampler(n)))
                                          : sampler(n);
            out.values[n * items + i] = certain ? likely : quantile(u);
        }
    }
    return out;
}

Reversal reversal(const PriceTable& table, const QuantityDraws& quantities) {
    const std::vector<Entrant> entrants = entrants_of(table);
    const std::optional<std::size_t> low = low_bid(table);
    if (!low) {
        throw InputError(
            {"bid.price", "bids", "no bid that prices every base item", "one or more"});
    }
    check(quantities, table.items());
    const std::size_t draws = quantities.draws();
    Reversal out{
        *low,
        draws,
        0.0,
        0.0,
        0.0,
        std::vector<double>(table.bidders.size()),
        std::vector<double>(table.bidders.size(), std::numeric_limits<double>::quiet_NaN())};
    std::vector<double> sums(entrants.size());
    std::size_t reversed = 0;
    for (std::size_t n = 0; n < draws; ++n) {
        const double* q = quantities.values.data() + n * table.items();
        double lows = 0.0;
        double least = std::numeric_limits<double>::infinity();
        std::size_t least_bid = *low;
        for (std::size_t e = 0; e < entrants.size(); ++e) {
            const auto& prices = entrants[e].prices;
            const double total = std::inner_product(prices.begin(), prices.end(), q, 0.0);
            sums[e] += total;
            lows = entrants[e].bid == *low ? total : lows;
            if (total < least || (total == least && entrants[e].bid == *low)) {
                least = total;
                least_bid = entrants[e].bid;
            }
        }
        reversed += lows - least > rounding * std::abs(lows) ? 1 : 0;
        out.regret += lows - least;
        out.lowest[least_bid] += 1.0;
    }
    const double number = static_cast<double>(draws);
    for (std::size_t e = 0; e < entrants.size(); ++e) {
        out.mean_total[entrants[e].bid] = sums[e] / number;
        out.lowest[entrants[e].bid] /= number;
    }
    out.chance = static_cast<double>(reversed) / number;
    out.error = std::sqrt(out.chance * (1.0 - out.chance) / number);
    out.regret /= number;
    return out;
}

} // namespace scupper::bid
