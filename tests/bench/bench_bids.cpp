// Comparing many bids of many items, exact to the cent: 10,000 bids of 500 items where not told.
#include "bench.hpp"
#include "scupper/bid.hpp"
#include "scupper/random.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>

namespace {

using namespace scupper;
using namespace scupper::bid;

/// A made-up contract: quantities with and without decimals, prices in cents about an estimate.
PriceTable made_up(std::size_t bids, std::size_t items) {
    PriceTable table{{parse_currency("USD", "bench"), {}}, {}, {}, {}};
    auto any = [n = std::uint64_t{0}](std::int64_t most) mutable {
        return 1 + static_cast<std::int64_t>(mix64(++n) % static_cast<std::uint64_t>(most));
    };
    for (std::size_t i = 0; i < items; ++i) {
        const Decimal quantity(any(500000), i % 3 == 0 ? 1 : 0);
        table.form.items.push_back(
            {"I" + std::to_string(i), "", "SY", quantity, quantity, quantity});
        table.estimate.push_back(Decimal(any(20000), 2));
    }
    for (std::size_t bid = 0; bid < bids; ++bid) {
        table.bidders.push_back(std::to_string(bid));
        for (std::size_t i = 0; i < items; ++i) {
            const std::int64_t estimate = table.estimate[i]->coefficient();
            table.prices.push_back(Decimal(estimate / 2 + any(estimate), 2));
        }
    }
    return table;
}

template <class Work>
void time(const char* what, Work work) {
    const auto start = std::chrono::steady_clock::now();
    const std::clock_t begun = std::clock(); // what one core spends, whoever else is at work
    bench::keep(work());
    const double busy = static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    std::printf("%-36s %8.3f s of a core, %8.3f s in all\n", what, busy, spent.count());
}

} // namespace

int main(int argc, char** argv) {
    const std::size_t bids = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 10000;
    const std::size_t items = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 500;
    const PriceTable table = made_up(bids, items);
    time("totals", [&] { return base_totals(table); });
    time("compare: totals, medians, outliers", [&] { return compare(table); });
    time("flags by the estimate", [&] { return unbalanced_items(table, table.estimate); });
    time("crossovers with the low bid", [&] { return crossovers(table, low_bid(table).value()); });
    return 0;
}
