#include "scupper/estimate/show.hpp"

#include "scupper/error.hpp"
#include "scupper/schema.hpp"

#include <cmath>
#include <utility>

namespace scupper::estimate {

namespace {

constexpr int digits = 4;

/// Work by area or length is known by its rate; drains by minutes each.
bool is_shown_as_rate(const Dimension& d, std::string_view key) {
    return key.ends_with(".time_per_unit") &&
           (d == dim::time / dim::area || d == dim::time / dim::length ||
            d == dim::time / dim::volume);
}

/// Water is counted in gallons or litres, dirt in feet or metres.
bool is_dirt(std::string_view key) {
    return key.find("dirt") != key.npos || key.find("dry_pick_up") != key.npos;
}

/// A unit of the table, with the currency in place of the word for it.
std::string in_currency(std::string_view unit, const std::string& currency) {
    static constexpr std::string_view word = "currency";
    std::string text(unit);
    if (const std::size_t at = text.find(word); at != std::string::npos) {
        text.replace(at, word.size(), currency);
    }
    return text;
}

std::string_view rate_unit(const Dimension& d, std::string_view key, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    if (d == dim::time / dim::volume) {
        return is_dirt(key) ? (us ? "ft3/h" : "m3/h") : (us ? "gal/min" : "L/min");
    }
    if (d == dim::time / dim::area) {
        return us ? "ft2/h" : "m2/h";
    }
    return us ? "ft/h" : "m/h";
}

/// Water by area, length or dirt is no length, area or number; none for water of any other kind.
std::string_view water_unit(const Dimension& d, std::string_view key, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    if (!key.ends_with(".water_per_unit")) {
        return {};
    }
    if (d == dim::volume / dim::area) {
        return us ? "gal/ft2" : "L/m2";
    }
    if (d == dim::volume / dim::length) {
        return us ? "gal/ft" : "L/m";
    }
    if (d == dim::none) {
        return us ? "gal/ft3" : "L/m3";
    }
    return {};
}

} // namespace

UnitSystem unit_system(std::string_view word) {
    if (word == "us") {
        return UnitSystem::us;
    }
    if (word == "metric") {
        return UnitSystem::metric;
    }
    if (word == "si") {
        return UnitSystem::si;
    }
    throw UnknownNameError(
        {"unit.system", "units", "\"" + std::string(word) + "\"", "us, metric or si"});
}

Show::Show(const Job& job) : Show(job.units, job.currency) {}

Show::Show(std::string_view units, std::string currency)
    : system_(unit_system(units)), currency_(std::move(currency)) {}

Unit Show::unit(const Dimension& dimension, std::string_view key) const {
    if (system_ == UnitSystem::si) {
        return display_unit(dimension, system_, currency_);
    }
    if (is_shown_as_rate(dimension, key)) {
        return parse_unit(rate_unit(dimension, key, system_), key);
    }
    if (const std::string_view water = water_unit(dimension, key, system_); !water.empty()) {
        return parse_unit(water, key);
    }
    if (const ShownIn* row = shown_in(key)) {
        return parse_unit(in_currency(system_ == UnitSystem::us ? row->us : row->metric, currency_),
                          key);
    }
    if (dimension == dim::volume && key.ends_with("].quantity") && is_dirt(key)) {
        return parse_unit(system_ == UnitSystem::us ? "ft3" : "m3", key);
    }
    if (dimension == dim::time && split_key(key)[0] == minutes_group) {
        return parse_unit("min", key);
    }
    return display_unit(dimension, system_, currency_);
}

double Show::number(double si, const Dimension& dimension, std::string_view key) const {
    const bool rate = system_ != UnitSystem::si && is_shown_as_rate(dimension, key);
    return to_unit(rate ? 1.0 / si : si, unit(dimension, key));
}

std::string Show::text(double si, const Dimension& dimension, std::string_view key) const {
    const Unit shown = unit(dimension, key);
    const double value = number(si, dimension, key);
    return std::isfinite(value) ? format_quantity(from_unit(value, shown), shown, digits)
                                : "no value";
}

ValueWriter Show::writer() const {
    return [show = *this](double si, const Dimension& d, std::string_view key) {
        return show.text(si, d, key);
    };
}

} // namespace scupper::estimate
