#include "scupper/bid/award.hpp"

#include "scupper/bid/comparison.hpp"
#include "scupper/closure/road_user.hpp"
#include "scupper/error.hpp"
#include "scupper/quantity.hpp"

#include <algorithm>

namespace scupper::bid {

namespace {

AwardStage stage_of(const PriceTable& table, const Amounts& base, std::string name,
                    std::vector<std::size_t> added) {
    AwardStage stage{std::move(name), std::move(added), base, {}};
    for (std::size_t bid = 0; bid < base.size(); ++bid) {
        std::optional<Decimal>& total = stage.totals[bid];
        for (const std::size_t item : stage.added) {
            const auto& price = table.of(bid)[item];
            const Decimal& quantity = table.form.items[item].quantity;
            total =
                total && price
                    ? std::optional(
                          *total + extension(Money(*price, table.form.currency), quantity).amount())
                    : std::nullopt;
        }
    }
    stage.ranks = ranks(stage.totals);
    return stage;
}

} // namespace

std::vector<AwardStage> award_stages(const PriceTable& table) {
    const Amounts base = base_totals(table);
    std::vector<AwardStage> stages{stage_of(table, base, "base", {})};
    std::vector<std::size_t> taken;
    std::string name = "base";
    for (std::size_t i = 0; i < table.items(); ++i) {
        if (table.form.items[i].kind == ItemKind::alternate) {
            taken.push_back(i);
            name += " + " + table.form.items[i].code;
            stages.push_back(stage_of(table, base, name, taken));
        }
    }
    for (std::size_t i = 0; i < table.items(); ++i) {
        if (table.form.items[i].kind == ItemKind::optional) {
            stages.push_back(stage_of(table, base, "base + " + table.form.items[i].code, {i}));
        }
    }
    return stages;
}

Amounts with_time(const ItemList& form, std::span<const std::optional<Decimal>> totals,
                  std::span<const std::optional<Decimal>> days, const Decimal& daily_cost) {
    if (daily_cost < Decimal()) {
        throw InputError({"bid.daily_cost", "daily_cost", to_text(daily_cost), "0 or more"});
    }
    const AmountPerTime<> daily(to_double(daily_cost) / factor::day);
    Amounts out(totals.size());
    for (std::size_t bid = 0; bid < totals.size(); ++bid) {
        if (!totals[bid] || bid >= days.size() || !days[bid]) {
            continue;
        }
        if (*days[bid] < Decimal()) {
            throw InputError({"bid.days", "bids[" + std::to_string(bid) + "].days",
                              to_text(*days[bid]), "0 or more"});
        }
        const Amount<> sum = closure::bid_with_time(
            Amount<>(to_double(*totals[bid])), Time<>(to_double(*days[bid]) * factor::day), daily);
        out[bid] = rounded_from_double(sum.si(), minor_digits(form.currency), "bid with time");
    }
    return out;
}

Competition competition(std::span<const std::optional<Decimal>> totals) {
    const Spread spread = spread_of(totals);
    Competition out;
    for (const auto& total : totals) {
        const std::optional<double> over = ratio(total, spread.low);
        for (std::size_t band = 0; over && band < competition_bands.size(); ++band) {
            out.within[band] += *over <= (1.0 + competition_bands[band]) * (1.0 + 1e-12) ? 1 : 0;
        }
    }
    out.excellent = out.within.back() >= 6;
    return out;
}

EstimateAccuracy estimate_accuracy(std::span<const std::pair<Decimal, Decimal>> projects) {
    EstimateAccuracy out;
    const Decimal ten(10);
    for (const auto& [estimate, low] : projects) {
        if (low > Decimal()) {
            const Decimal away = estimate < low ? low - estimate : estimate - low;
            ++out.projects;
            out.near += away * ten <= low ? 1 : 0;
        }
    }
    out.met = out.projects > 0 && 2 * out.near >= out.projects;
    return out;
}

} // namespace scupper::bid
