#include "scupper/closure/hours.hpp"

#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "words.hpp"

#include <cmath>
#include <string>

namespace scupper::closure {
namespace {

constexpr int first_urban_class = 11;
constexpr double rounding = 0.02;

// FHWA-SA-98-079 (1998), default hourly distributions, in percent (from memory).
constexpr std::array<HourlyShares, hour_pattern_names.size()> percent{{
    {1.8, 1.5, 1.3, 1.3, 1.5, 1.8, 2.5, 3.5, 4.2, 5.0, 5.4, 5.6,
     5.7, 6.4, 6.8, 7.3, 9.3, 7.0, 5.5, 4.7, 3.8, 3.2, 2.6, 2.3},
    {1.2, 0.8, 0.7, 0.5, 0.7, 1.7, 5.1, 7.8, 6.3, 5.2, 4.7, 5.3,
     5.6, 5.7, 5.9, 6.5, 7.9, 8.5, 5.9, 3.9, 3.3, 2.8, 2.3, 1.7},
}};

[[noreturn]] void refuse(const std::string& found) {
    throw InputError(
        {"closure.hours", "hours", found, "24 shares not below 0 that add up to 1, from midnight"});
}

} // namespace

HourPattern hour_pattern_by_name(std::string_view word) {
    return static_cast<HourPattern>(detail::index_in(hour_pattern_names, word, "hours"));
}

HourPattern hour_pattern_by_record(int functional_class) {
    return functional_class < first_urban_class ? HourPattern::rural : HourPattern::urban;
}

HourlyShares checked_shares(std::span<const double> shares) {
    if (shares.size() != hours_a_day) {
        refuse(std::to_string(shares.size()) + " shares");
    }
    double sum = 0.0;
    for (const double share : shares) {
        if (!(share >= 0.0 && std::isfinite(share))) {
            refuse(std::to_string(share));
        }
        sum += share;
    }
    if (std::abs(sum - 1.0) > rounding) {
        refuse("a sum of " + std::to_string(sum));
    }
    HourlyShares scaled{};
    for (std::size_t hour = 0; hour < hours_a_day; ++hour) {
        scaled.at(hour) = shares[hour] / sum;
    }
    return scaled;
}

const HourlyShares& hourly_shares(HourPattern pattern) {
    static const auto shares = [] {
        std::array<HourlyShares, percent.size()> all = percent;
        for (HourlyShares& one : all) {
            for (double& share : one) {
                share /= 100.0;
            }
        }
        return all;
    }();
    return shares.at(static_cast<std::size_t>(pattern));
}

} // namespace scupper::closure
