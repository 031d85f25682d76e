#include "scupper/money/apportion.hpp"

#include "checked.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <tuple>

namespace scupper {

namespace {
constexpr int micro_digits = 6;
constexpr std::int64_t micro = detail::ten_to(micro_digits);

struct Part {
    std::int64_t exact;   // millionths of a minor unit
    std::int64_t rounded; // minor units
    std::size_t index;

    std::int64_t lack() const { return exact - rounded * micro; }
};

std::int64_t millionths(double part, int decimals, std::string_view path) {
    if (!std::isfinite(part)) {
        throw MoneyError(
            {"money.number", std::string(path), std::to_string(part), "a finite amount"});
    }
    const double scaled = part * static_cast<double>(detail::ten_to(decimals + micro_digits));
    if (std::abs(scaled) >= 9.2e18) {
        detail::throw_overflow(path, std::to_string(part));
    }
    return std::llround(scaled);
}

std::vector<Part> nearest_cents(std::span<const double> parts, int decimals,
                                std::string_view path) {
    if (decimals < 0 || decimals > 3) {
        throw MoneyError(
            {"money.scale", std::string(path), std::to_string(decimals) + " decimals", "0 to 3"});
    }
    std::vector<Part> all;
    for (const double part : parts) {
        const std::int64_t exact = millionths(part, decimals, path);
        all.push_back({exact, detail::divide_half_away(exact, micro), all.size()});
    }
    return all;
}

std::int64_t exact_sum(const std::vector<Part>& parts, std::string_view path) {
    std::int64_t sum = 0;
    for (const Part& part : parts) {
        const auto next = detail::checked_sum(sum, part.exact);
        if (!next) {
            detail::throw_overflow(path, "the sum of " + std::to_string(parts.size()) + " parts");
        }
        sum = *next;
    }
    return sum;
}

/// The order in which parts take a cent of sign `step`: the greatest lack first; a part that
/// grows before one that shrinks; among those that grow the greatest and earliest first, among
/// those that shrink the smallest and latest.
auto precedence(const Part& part, std::int64_t step) {
    const bool grows = part.exact * step > 0;
    const std::int64_t size = detail::magnitude(part.exact);
    const auto index = static_cast<std::int64_t>(part.index);
    return std::tuple(-part.lack() * step, !grows, grows ? -size : size, grows ? index : -index);
}

void settle(std::vector<Part>& parts, std::int64_t surplus, std::string_view path) {
    const std::int64_t step = surplus > 0 ? 1 : -1;
    const std::int64_t needed = detail::magnitude(surplus);
    const auto able = std::count_if(parts.begin(), parts.end(),
                                    [step](const Part& p) { return p.lack() * step > 0; });
    if (needed > able) {
        throw MoneyError({"money.total", std::string(path),
                          "a total " + std::to_string(needed) + " minor units from the parts",
                          "at most " + std::to_string(able) +
                              ", one for each part rounded the "
                              "other way"});
    }
    std::sort(parts.begin(), parts.end(), [step](const Part& a, const Part& b) {
        return precedence(a, step) < precedence(b, step);
    });
    for (std::size_t i = 0; i < static_cast<std::size_t>(needed); ++i) {
        parts[i].rounded += step;
    }
}

std::vector<std::int64_t> apportioned(std::vector<Part> parts, std::int64_t total,
                                      std::string_view path) {
    std::int64_t sum = 0;
    for (const Part& part : parts) {
        sum += part.rounded;
    }
    const auto surplus = detail::checked_sum(total, -sum);
    if (!surplus) {
        detail::throw_overflow(path, "the total " + std::to_string(total));
    }
    settle(parts, *surplus, path);
    std::vector<std::int64_t> cents(parts.size());
    for (const Part& part : parts) {
        cents[part.index] = part.rounded;
    }
    return cents;
}
} // namespace

std::vector<std::int64_t> apportion(std::span<const double> parts, int decimals,
                                    std::string_view path) {
    std::vector<Part> all = nearest_cents(parts, decimals, path);
    const std::int64_t total = detail::divide_half_away(exact_sum(all, path), micro);
    return apportioned(std::move(all), total, path);
}

std::vector<std::int64_t> apportion(std::span<const double> parts, std::int64_t total, int decimals,
                                    std::string_view path) {
    std::vector<Part> all = nearest_cents(parts, decimals, path);
    exact_sum(all, path);
    return apportioned(std::move(all), total, path);
}

} // namespace scupper
