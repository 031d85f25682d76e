#include "scupper/delivery/discount_rates.hpp"

#include "require.hpp"
#include "scupper/cost.hpp"
#include "scupper/delivery/case.hpp"
#include "scupper/unit.hpp"

#include <string>

namespace scupper::delivery {

namespace {

constexpr double longest_published = 30.0;

} // namespace

double discount_rate(int edition, Prices prices, double years) {
    detail::require(years > 0.0, "years", years, "> 0");
    const DiscountRate* shorter = nullptr;
    const DiscountRate* longer = nullptr;
    for (const DiscountRate& row : discount_rate_table) { // by edition, kind and term, ascending
        if (row.edition != edition || row.prices != prices) {
            continue;
        }
        shorter = row.years <= years || shorter == nullptr ? &row : shorter;
        longer = longer == nullptr && row.years >= years ? &row : longer;
    }
    detail::require(shorter != nullptr, "edition", std::to_string(edition), "2003 or 2021");
    if (longer == nullptr) {
        detail::require(shorter->years >= longest_published, "years", years,
                        "up to " + format_number(shorter->years, 9));
        return shorter->rate;
    }
    if (longer->years <= shorter->years) {
        return longer->rate;
    }
    return cost::rate_for_term(Time<>(years * factor::year), Time<>(shorter->years * factor::year),
                               shorter->rate, Time<>(longer->years * factor::year), longer->rate);
}

} // namespace scupper::delivery
