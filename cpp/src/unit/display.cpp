#include "scupper/unit/display.hpp"

#include "words.hpp"

#include <array>
#include <cstdlib>
#include <utility>

namespace scupper {

namespace {
struct BasePower {
    std::string_view name;
    int exponent;
};

/// The base units of a system in the order in which they are written.
std::array<BasePower, 7> base_powers(const Dimension& d, UnitSystem system) {
    const bool si = system == UnitSystem::si;
    const bool us = system == UnitSystem::us;
    const std::string_view temperature = us ? "delta_degF" : "delta_degC";
    return {{{"currency", d.money},
             {us ? "lb" : "kg", d.mass},
             {us ? "ft" : "m", d.length},
             {si ? "s" : "h", d.time},
             {si ? "K" : temperature, d.temperature},
             {"each", d.count},
             {si ? "rad" : "deg", d.angle}}};
}

std::string raised_name(const BasePower& base) {
    const int n = std::abs(base.exponent);
    return std::string(base.name) + (n > 1 ? std::to_string(n) : "");
}

std::string composed_name(const Dimension& dimension, UnitSystem system) {
    std::string above;
    std::string below;
    for (const BasePower& base : base_powers(dimension, system)) {
        if (base.exponent > 0) {
            above += (above.empty() ? "" : "*") + raised_name(base);
        } else if (base.exponent < 0) {
            below += '/' + raised_name(base);
        }
    }
    return (above.empty() ? "1" : above) + below;
}

std::string name_in(const Dimension& dimension, UnitSystem system) {
    const detail::DimensionWords* words = detail::words_for(dimension);
    if (words == nullptr) {
        return composed_name(dimension, system);
    }
    if (system == UnitSystem::si) {
        return std::string(words->si);
    }
    return std::string(system == UnitSystem::us ? words->us : words->metric);
}
} // namespace

Unit display_unit(Dimension dimension, UnitSystem system, std::string_view currency) {
    static constexpr std::string_view word = "currency";
    std::string name = name_in(dimension, system);
    if (const std::size_t at = name.find(word); at != std::string::npos) {
        name.replace(at, word.size(), currency);
    }
    return parse_unit(name, "currency");
}

std::string si_unit_name(Dimension dimension) {
    return name_in(dimension, UnitSystem::si);
}

std::string us_unit_name(Dimension dimension) {
    return name_in(dimension, UnitSystem::us);
}

std::string metric_unit_name(Dimension dimension) {
    return name_in(dimension, UnitSystem::metric);
}

std::string dimension_phrase(Dimension dimension) {
    const detail::DimensionWords* words = detail::words_for(dimension);
    if (words == nullptr) {
        const std::string unit = display_unit(dimension, UnitSystem::us, "USD").name;
        return "a quantity in units such as \"" + unit + "\", e.g. \"1 " + unit + "\"";
    }
    return std::string(words->noun) + ", e.g. \"" + std::string(words->example) + "\"";
}

} // namespace scupper
