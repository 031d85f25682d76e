#include "scupper/delivery/break_even.hpp"

#include "require.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::delivery {

namespace {

constexpr double nowhere = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t parts_of_a_side = 400; ///< below the value, and above it
constexpr double many_times = 10.0;          ///< the value, as far as it is looked
constexpr double usual_share = 0.2;          ///< moved where nobody gave limits

/// Regula falsi and halving in turn: fast where the function is smooth, safe where it jumps.
double root_between(const std::function<double(double)>& f, double a, double fa, double b,
                    double fb, double wide) {
    for (int i = 0; i < 200 && b - a > wide; ++i) {
        const double x = i % 2 == 0 ? (a * fb - b * fa) / (fb - fa) : 0.5 * (a + b);
        const double fx = f(x);
        if (fx == 0.0) {
            return x;
        }
        if ((fx > 0.0) == (fa > 0.0)) {
            a = x;
            fa = fx;
        } else {
            b = x;
            fb = fx;
        }
    }
    return (a * fb - b * fa) / (fb - fa);
}

double advantage_with(const Case<double>& given, Input input, double value, Basis basis) {
    Case<double> changed = given;
    changed[input] = value;
    return advantage(compare_ways(changed), basis).si();
}

/// Something of the size of a quantity where the input itself is 0.
double size_of(const Case<double>& given, const CaseField& field) {
    const Ways<double> ways = compare_ways(given);
    if (field.dimension == dim::money) {
        return std::max(ways.full.si(), ways.contract.si());
    }
    if (field.dimension == dim::money_per_time) {
        return ways.full.si() / std::max(ways.crew_time.si(), 1.0);
    }
    return field.dimension == dim::time ? std::max(ways.crew_time.si(), 3600.0) : 1.0;
}

double upper_limit(const Case<double>& given, Input input) {
    const CaseField& field = case_table[static_cast<std::size_t>(input)];
    if (field.dimension == dim::none) {
        return std::min(field.most, 1.0);
    }
    const double value = std::abs(given[input]);
    const bool unlimited = value >= no_most;
    const double size = value > 0.0 && !unlimited ? value : size_of(given, field);
    return std::min(field.most, many_times * size);
}

double lower_limit(const Case<double>& given, Input input) {
    const CaseField& field = case_table[static_cast<std::size_t>(input)];
    const double least = std::max(field.least, -upper_limit(given, input));
    // equipment that is owned has to be spread over some use
    return input == Input::rated_time ? std::max(least, 1e-3 * given[input]) : least;
}

} // namespace

std::optional<double> linear_break_even(double fixed, double unit, double other_fixed,
                                        double other_unit) {
    const double amount = (fixed - other_fixed) / (other_unit - unit);
    return std::isfinite(amount) && amount >= 0.0 ? std::optional(amount) : std::nullopt;
}

std::vector<double> crossings(const std::function<double(double)>& f, double low, double high,
                              std::size_t parts, double tolerance) {
    const double wide = tolerance * (high - low);
    detail::require(std::isfinite(high), "limits", high, "a number");
    detail::require(std::isfinite(low) && low <= high, "limits", low,
                    "no more than " + format_number(high, 9));
    detail::require(parts >= 1, "parts", "0", ">= 1");
    std::vector<double> found;
    const auto at = [&](std::size_t i) {
        return low + (high - low) * static_cast<double>(i) / static_cast<double>(parts);
    };
    double before = f(low);
    if (before == 0.0) {
        found.push_back(low);
    }
    for (std::size_t i = 1; i <= parts; ++i) {
        const double here = f(at(i));
        if (here == 0.0 && before != 0.0) {
            found.push_back(at(i));
        } else if ((before < 0.0 && here > 0.0) || (before > 0.0 && here < 0.0)) {
            found.push_back(root_between(f, at(i - 1), before, at(i), here, wide));
        }
        before = here;
    }
    return found;
}

Flip flip_of(const Case<double>& given, Input input, Basis basis) {
    check(given);
    const auto f = [&](double x) { return advantage_with(given, input, x, basis); };
    Flip flip{nowhere, nowhere, {}, lower_limit(given, input), upper_limit(given, input)};
    const double value = std::clamp(given[input], flip.low, flip.high);
    flip.all = crossings(f, flip.low, value, parts_of_a_side);
    for (const double x : crossings(f, value, flip.high, parts_of_a_side)) {
        if (flip.all.empty() || x > flip.all.back()) {
            flip.all.push_back(x);
        }
    }
    for (const double x : flip.all) {
        if (std::isnan(flip.nearest) || std::abs(x - value) < std::abs(flip.nearest - value)) {
            flip.nearest = x;
        }
    }
    flip.away = std::abs((flip.nearest - given[input]) / given[input]);
    return flip;
}

Length<> one_way_distance(const Time<>& travel, const Speed<>& speed) {
    detail::require(travel.si() >= 0.0, "travel", travel.si(), ">= 0 s");
    detail::require(speed.si() > 0.0, "speed", speed.si(), "> 0 m/s");
    return 0.5 * (speed * travel);
}

namespace {

Sensitivity moved(const Case<double>& given, Input input, Basis basis,
                  const std::vector<GivenRange>& ranges) {
    const CaseField& field = case_table[static_cast<std::size_t>(input)];
    Sensitivity row{.input = input, .value = given[input]};
    const double by = usual_share * std::abs(row.value);
    row.low = std::max(field.least, row.value - by);
    row.high = std::min(field.most, row.value + by);
    for (const GivenRange& range : ranges) {
        if (range.input == input) {
            const std::string around = std::string(field.key) + " between limits around " +
                                       format_number(row.value, 9) + " (SI)";
            detail::require(field.least <= range.low && range.low <= row.value, "range", range.low,
                            around);
            detail::require(row.value <= range.high && range.high <= field.most, "range",
                            range.high, around);
            row.low = range.low;
            row.high = range.high;
            row.ranged = true;
        }
    }
    row.at_low = advantage_with(given, input, row.low, basis);
    row.at_high = advantage_with(given, input, row.high, basis);
    row.flip = flip_of(given, input, basis);
    row.turns = std::any_of(row.flip.all.begin(), row.flip.all.end(),
                            [&](double x) { return x >= row.low && x <= row.high; });
    return row;
}

} // namespace

std::vector<Sensitivity> sensitivity(const Case<double>& given, Basis basis,
                                     const std::vector<GivenRange>& ranges) {
    check(given);
    std::vector<Sensitivity> rows;
    for (std::size_t i = 0; i < case_table.size(); ++i) {
        Sensitivity row = moved(given, static_cast<Input>(i), basis, ranges);
        if (row.at_low != row.at_high || !row.flip.all.empty()) {
            rows.push_back(std::move(row));
        }
    }
    const auto width = [](const Sensitivity& s) { return std::abs(s.at_high - s.at_low); };
    std::stable_sort(rows.begin(), rows.end(), [&](const Sensitivity& a, const Sensitivity& b) {
        return width(a) > width(b);
    });
    return rows;
}

} // namespace scupper::delivery
