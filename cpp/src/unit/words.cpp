#include "words.hpp"

#include <algorithm>
#include <array>

namespace scupper::detail {

namespace {
constexpr Dimension labour = dim::count * dim::time;
constexpr Dimension money_each = dim::money / dim::count;

constexpr auto words = std::to_array<DimensionWords>({
    {dim::none, "a plain number", "1", "1", "1", "0.5"},
    {dim::length, "a length", "m", "ft", "m", "12 ft 6 in"},
    {dim::area, "an area", "m2", "ft2", "m2", "850 ft2"},
    {dim::volume, "a volume", "m3", "gal", "m3", "1,200 gal"},
    {dim::mass, "a mass", "kg", "short ton", "t", "1.2 short ton"},
    {dim::time, "a time", "s", "h", "h", "1.5 h"},
    {dim::speed, "a speed", "m/s", "mph", "km/h", "45 mph"},
    {dim::flow, "a flow", "m3/s", "gpm", "L/min", "250 gpm"},
    {dim::force, "a force", "N", "lbf", "N", "25 lbf"},
    {dim::pressure, "a pressure", "Pa", "psi", "kPa", "100 psi"},
    {dim::energy, "an energy", "J", "kWh", "kWh", "5 kWh"},
    {dim::power, "a power", "W", "hp", "kW", "20 hp"},
    {dim::density, "a density", "kg/m3", "lb/ft3", "kg/m3", "95 lb/ft3"},
    {dim::dynamic_viscosity, "a viscosity", "Pa*s", "cP", "cP", "1.1 cP"},
    {dim::kinematic_viscosity, "an area per time", "m2/s", "ft2/h", "m2/h", "1,000 ft2/h"},
    {dim::temperature, "a temperature", "K", "degF", "degC", "59 degF"},
    {dim::angle, "an angle", "rad", "deg", "deg", "20 deg"},
    {dim::count, "a count", "each", "each", "each", "4 each"},
    {labour, "an amount of labour", "s*each", "labour-h", "labour-h", "24 labour-h"},
    {dim::count / dim::time, "a count per time", "each/s", "each/h", "each/h", "20 each/h"},
    {dim::time_each, "a time per item", "s/each", "min/each", "min/each", "10 min/each"},
    {dim::volume_each, "a volume per item", "m3/each", "gal/each", "L/each", "120 gal/each"},
    {dim::mass / dim::count, "a mass per item", "kg/each", "lb/each", "kg/each", "54 lb/each"},
    {dim::time / dim::area, "a time per area", "s/m2", "h/ft2", "h/m2", "0.001 h/ft2"},
    {dim::time / dim::length, "a time per length", "s/m", "h/ft", "h/m", "0.01 h/ft"},
    {dim::mass / dim::length, "a mass per length", "kg/m", "lb/ft", "kg/m", "1.5 lb/ft"},
    {dim::mass / dim::area, "a mass per area", "kg/m2", "lb/ft2", "kg/m2", "0.5 lb/ft2"},
    {dim::money, "an amount of money", "currency", "currency", "currency", "USD 1,250"},
    {money_each, "a price per item", "currency/each", "currency/each", "currency/each",
     "USD 40/each"},
    {dim::money_per_time, "a price per time", "currency/s", "currency/h", "currency/h", "USD 85/h"},
    {dim::money / labour, "a wage", "currency/s/each", "currency/labour-h", "currency/labour-h",
     "USD 38/labour-h"},
    {dim::money_per_mass, "a price per mass", "currency/kg", "currency/short ton", "currency/t",
     "USD 65/short ton"},
    {dim::money_per_volume, "a price per volume", "currency/m3", "currency/kgal", "currency/m3",
     "USD 8/kgal"},
    {dim::money / dim::area, "a price per area", "currency/m2", "currency/ft2", "currency/m2",
     "USD 1.20/ft2"},
    {dim::volume / dim::energy, "a fuel use", "m3/J", "gal/hp/h", "L/kWh", "0.04 gal/hp/h"},
    {dim::money / dim::length, "a price per length", "currency/m", "currency/ft", "currency/m",
     "USD 2.10/ft"},
});
} // namespace

const DimensionWords* words_for(Dimension dimension) {
    const auto row = std::find_if(words.begin(), words.end(), [&](const DimensionWords& w) {
        return w.dimension == dimension;
    });
    return row == words.end() ? nullptr : &*row;
}

} // namespace scupper::detail
