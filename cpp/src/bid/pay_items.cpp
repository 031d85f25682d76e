#include "scupper/bid/pay_items.hpp"

#include "claims.hpp"
#include "counted.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <map>

namespace scupper::bid {

namespace {

using detail::Claims;
using detail::LineSums;

/// Every priced structure as an estimate of its own.
std::vector<estimate::Estimate> estimates_of(const estimate::Programme& programme,
                                             std::span<const Structure> structures,
                                             unsigned threads) {
    std::vector<estimate::Estimate> all(programme.priced.size());
    const auto block = [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) {
            const std::size_t row = programme.priced[i];
            all[i] = estimate::estimate(structures[row], programme.plan);
        }
    };
    estimate::run_blocks(all.size(), threads, block, {}, 8);
    return all;
}

/// One lump price for every structure, beside the items that stay contract-wide.
ItemScheme by_structure(ItemScheme list, const std::vector<estimate::Estimate>& estimates) {
    std::erase_if(list.rules, [&](const ItemRule& rule) {
        const auto& wide = list.contract_wide;
        return std::find(wide.begin(), wide.end(), rule.item.code) == wide.end();
    });
    std::map<std::string, int> seen;
    for (const ItemRule& rule : list.rules) {
        ++seen[rule.item.code];
    }
    for (const estimate::Estimate& e : estimates) {
        ItemRule rule;
        rule.item.code = e.structure.id;
        if (const int before = seen[e.structure.id]++; before > 0) {
            rule.item.code += "/" + std::to_string(before + 1); // ids are unique within a state
        }
        rule.item.description =
            "Cleaning of the structure, " + e.structure.carries + " over " + e.structure.crosses;
        rule.item.unit = "LS";
        list.rules.push_back(std::move(rule));
    }
    return list;
}

/// What is gathered of all structures before anything is rounded.
struct Gathered {
    std::vector<PricedItem> items;
    detail::Lines spread;
    double spread_sum = 0.0;
};

class Gatherer {
  public:
    Gatherer(const ItemScheme& list, Contract contract, std::size_t structures)
        : list_(list), claims_(list), contract_(contract), structures_(structures),
          sums_(list.rules.size()), direct_(list.rules.size(), 0.0) {}

    void add(const estimate::Estimate& e, std::size_t row) {
        for (const estimate::PricedLine& line : estimate::cost_lines(e)) {
            std::size_t owner = claims_.owner(line);
            if (contract_ == Contract::by_structure && stays_with_structure(line, owner)) {
                owner = list_.rules.size() - structures_ + row;
            }
            if (owner == detail::nobody) {
                claims_.leave(line);
            } else if (owner == detail::spread_out) {
                spread_.add(line);
                spread_sum_ += line.amount;
            } else {
                sums_[owner].add(line);
                direct_[owner] += line.amount;
            }
        }
    }

    Gathered take() {
        claims_.require_single();
        claims_.require_none_left();
        Gathered all;
        for (std::size_t i = 0; i < list_.rules.size(); ++i) {
            PricedItem item;
            item.item = list_.rules[i].item;
            item.driver = list_.rules[i].driver;
            item.direct = direct_[i];
            item.lines = sums_[i].take();
            all.items.push_back(std::move(item));
        }
        all.spread = spread_.take();
        all.spread_sum = spread_sum_;
        return all;
    }

  private:
    /// A lump price holds all of its structure's cost; of what an item beside it carries, it leaves
    /// a share of the margins there.
    bool stays_with_structure(const estimate::PricedLine& line, std::size_t owner) const {
        const bool margins_shared =
            list_.rules.size() > structures_ && line.component == "indirect";
        return owner == detail::nobody || (owner == detail::spread_out && !margins_shared);
    }

    const ItemScheme& list_;
    Claims claims_;
    Contract contract_;
    std::size_t structures_;
    std::vector<LineSums> sums_;
    std::vector<double> direct_;
    LineSums spread_;
    double spread_sum_ = 0.0;
};

void share_out(Gathered& all) {
    double direct = 0.0;
    for (const PricedItem& item : all.items) {
        direct += item.direct;
    }
    if (direct == 0.0 && all.spread_sum != 0.0) {
        throw InputError({"bid.no_item", "items", "nothing but cost that is spread",
                          "an item that has cost of its own"});
    }
    for (PricedItem& item : all.items) {
        item.spread = direct == 0.0
                          ? 0.0
                          : cost::distributed<double>(Amount<>(all.spread_sum),
                                                      Amount<>(item.direct), Amount<>(direct))
                                .si();
    }
}

/// Quantities as stated, with their range; a lump sum is one.
void count(PricedItem& item, const ItemRule& rule, double factor, std::size_t place,
           const std::vector<estimate::Estimate>& estimates) {
    if (factor == 0.0) {
        item.counted = 1.0;
        item.item.quantity = item.item.low = item.item.high = Decimal(1);
        return;
    }
    for (const estimate::Estimate& e : estimates) {
        item.quantities.push_back(e.figures[place] / factor);
        item.counted += item.quantities.back();
    }
    const std::string path = "items[" + rule.item.code + "].quantity";
    if (!(item.counted > 0.0)) {
        throw InputError({"bid.no_quantity", path, "cost and no quantity of " + rule.driver,
                          "a driver that is there wherever the item's work is"});
    }
    const int decimals = rule.decimals.value_or(usual_decimals(rule.item.unit));
    item.item.quantity = detail::stated(item.counted, decimals, path);
    item.item.low = item.item.high = item.item.quantity;
}

void set_range(PricedItem& item, const ItemRule& rule, const detail::Range& range) {
    const int decimals = rule.decimals.value_or(usual_decimals(rule.item.unit));
    const std::string path = "items[" + rule.item.code + "].range";
    const Decimal low = rounded_from_double(range.low, decimals, path);
    const Decimal high = rounded_from_double(range.high, decimals, path);
    item.item.low = std::min(low, item.item.quantity);
    item.item.high = std::max(high, item.item.quantity);
}

Decimal in_cents(std::int64_t units, const Currency& currency) {
    return from_minor_units(units, currency).amount();
}

void set_price(PricedItem& item, const Decimal& amount, int decimals, const Currency& currency) {
    item.unit_price = rounded_from_double(to_double(amount) / to_double(item.item.quantity),
                                          decimals, "items[" + item.item.code + "].unit_price");
    const Decimal cents(0, minor_digits(currency)); // keeps "2.10" from becoming "2.1"
    item.extension =
        extension(Money(item.unit_price, currency), item.item.quantity).amount() + cents;
    item.difference = item.extension - item.amount;
}

/// Amounts to the cent that add up to the estimate, then unit prices.
void price(PayItems& contract, const ItemSettings& settings) {
    std::vector<double> parts;
    for (const PricedItem& item : contract.items) {
        parts.push_back(item.direct + item.spread);
    }
    const std::vector<std::int64_t> cents =
        apportion(parts, minor_digits(contract.currency), "pay items");
    contract.estimated = contract.total = Decimal();
    for (std::size_t i = 0; i < cents.size(); ++i) {
        PricedItem& item = contract.items[i];
        item.amount = in_cents(cents[i], contract.currency);
        const bool lump = item.item.unit == "LS" || item.item.unit == "ALLOW";
        set_price(item, item.amount,
                  lump ? minor_digits(contract.currency) : settings.price_decimals,
                  contract.currency);
        contract.estimated = contract.estimated + item.amount;
        contract.total = contract.total + item.extension;
    }
    contract.residue = contract.total - contract.estimated;
}

/// What rounding leaves goes into the lump sum named for it, while that stays a price.
void place_residue(PayItems& contract, const std::string& code) {
    for (PricedItem& item : contract.items) {
        const Decimal settled = item.amount - contract.residue;
        if (item.item.code == code && item.item.unit == "LS" && settled > Decimal()) {
            set_price(item, settled, minor_digits(contract.currency), contract.currency);
            contract.total = contract.estimated;
            contract.residue = Decimal();
            contract.rounding = code;
        }
    }
}

/// Leaves out rules that no cost line fell to.
void keep_used(ItemScheme& list, Gathered& all, std::vector<std::string>& unused) {
    std::vector<ItemRule> rules;
    std::vector<PricedItem> items;
    for (std::size_t i = 0; i < all.items.size(); ++i) {
        if (all.items[i].lines.empty()) {
            unused.push_back(list.rules[i].item.code);
        } else {
            rules.push_back(std::move(list.rules[i]));
            items.push_back(std::move(all.items[i]));
        }
    }
    list.rules = std::move(rules);
    all.items = std::move(items);
}

void count_all(Gathered& all, const ItemScheme& list, const estimate::Programme& programme,
               std::span<const Structure> structures,
               const std::vector<estimate::Estimate>& estimates, const ItemSettings& settings) {
    const detail::Drivers drivers = detail::drivers_of(list.rules, *programme.plan);
    for (std::size_t i = 0; i < all.items.size(); ++i) {
        count(all.items[i], list.rules[i], drivers.unit_factors[i], drivers.places[i], estimates);
    }
    const bool measured = std::any_of(drivers.unit_factors.begin(), drivers.unit_factors.end(),
                                      [](double factor) { return factor != 0.0; });
    if (!measured) {
        return;
    }
    const auto ranges = detail::drawn_ranges(programme, structures, drivers, settings);
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        if (drivers.unit_factors[i] != 0.0) {
            set_range(all.items[i], list.rules[i], ranges[i]);
        }
    }
}

} // namespace

PayItems pay_items(const estimate::Programme& programme, std::span<const Structure> structures,
                   const ItemScheme& scheme, const ItemSettings& settings) {
    if (settings.price_decimals < 0 || settings.price_decimals > 6) {
        throw InputError(
            {"bid.decimals", "price_decimals", std::to_string(settings.price_decimals), "0 to 6"});
    }
    const auto estimates = estimates_of(programme, structures, settings.threads);
    if (estimates.empty()) {
        throw InputError({"bid.no_item", "programme", "no priced structure", "at least one"});
    }
    ItemScheme list = chosen(scheme, settings.options, "options");
    const bool lump = settings.contract == Contract::by_structure;
    if (lump) {
        list = by_structure(std::move(list), estimates);
    }
    Gatherer gatherer(list, settings.contract, estimates.size());
    for (std::size_t row = 0; row < estimates.size(); ++row) {
        gatherer.add(estimates[row], row);
    }
    Gathered all = gatherer.take();
    PayItems contract{.currency = parse_currency(programme.plan->job.currency, "job.currency"),
                      .plan = programme.plan};
    keep_used(list, all, contract.unused);
    share_out(all);
    count_all(all, list, programme, structures, estimates, settings);
    contract.items = std::move(all.items);
    contract.spread = std::move(all.spread);
    price(contract, settings);
    place_residue(contract, list.rounding);
    return contract;
}

ItemList form_of(const PayItems& items) {
    ItemList form{.currency = items.currency, .items = {}};
    for (const PricedItem& item : items.items) {
        form.items.push_back(item.item);
    }
    return form;
}

Bid engineer_of(const PayItems& items) {
    Bid bid;
    bid.bidder = "engineer's estimate";
    bid.total = items.total;
    for (const PricedItem& item : items.items) {
        BidLine line;
        line.code = item.item.code;
        line.quantity = item.item.quantity;
        line.unit_price = item.unit_price;
        line.extension = item.extension;
        bid.lines.push_back(std::move(line));
    }
    return bid;
}

} // namespace scupper::bid
