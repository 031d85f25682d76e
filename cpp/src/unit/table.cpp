#include "scupper/unit/table.hpp"

#include "scupper/quantity/factors.hpp"

#include <array>

namespace scupper {

namespace {
namespace f = factor;

constexpr Dimension labour = dim::count * dim::time;
constexpr double square_foot = f::foot * f::foot;
constexpr double cubic_foot = square_foot * f::foot;
constexpr double cubic_yard = f::yard * f::yard * f::yard;
constexpr double viscosity_factor = 1e-3; // centipoise in Pa*s, exact

// Upper-case aliases are the abbreviations of bid schedules (LF, SY, EA).
constexpr auto units = std::to_array<UnitRow>({
    {"%", "percent", dim::none, 0.01, 0.0, "percent"},

    {"m", "metre|metres|meter|meters", dim::length, 1.0, 0.0, "meter"},
    {"km", "kilometre|kilometres|kilometer|kilometers", dim::length, 1e3, 0.0, "kilometer"},
    {"cm", "centimetre|centimetres|centimeter|centimeters", dim::length, 1e-2, 0.0, "centimeter"},
    {"mm", "millimetre|millimetres|millimeter|millimeters", dim::length, 1e-3, 0.0, "millimeter"},
    {"um", "micrometre|micrometres|micrometer|micrometers", dim::length, 1e-6, 0.0, "micrometer"},
    {"in", "inch|inches|\"|IN", dim::length, f::inch, 0.0, "inch"},
    {"ft", "foot|feet|'|FT|LF|linear foot|linear feet", dim::length, f::foot, 0.0, "foot"},
    {"yd", "yard|yards|YD", dim::length, f::yard, 0.0, "yard"},
    {"mi", "mile|miles|MI", dim::length, f::mile, 0.0, "mile"},

    {"sq ft", "sqft|SF|square foot|square feet", dim::area, square_foot, 0.0, "foot**2"},
    {"sq yd", "SY|square yard|square yards", dim::area, f::yard* f::yard, 0.0, "yard**2"},

    {"L", "l|litre|litres|liter|liters", dim::volume, f::litre, 0.0, "liter"},
    {"mL", "ml|millilitre|millilitres|milliliter|milliliters", dim::volume, 1e-3 * f::litre, 0.0,
     "milliliter"},
    {"gal", "gallon|gallons|GAL|US gal|US gallon|US gallons", dim::volume, f::us_gallon, 0.0,
     "gallon"},
    {"kgal", "thousand gallons", dim::volume, 1e3 * f::us_gallon, 0.0, "kilogallon"},
    {"US fl oz", "", dim::volume, f::fluid_ounce, 0.0, "fluid_ounce"},
    {"cu ft", "CF|cubic foot|cubic feet", dim::volume, cubic_foot, 0.0, "foot**3"},
    {"cu yd", "CY|cubic yard|cubic yards", dim::volume, cubic_yard, 0.0, "yard**3"},

    {"kg", "kilogram|kilograms", dim::mass, 1.0, 0.0, "kilogram"},
    {"g", "gram|grams", dim::mass, 1e-3, 0.0, "gram"},
    {"mg", "milligram|milligrams", dim::mass, 1e-6, 0.0, "milligram"},
    {"t", "tonne|tonnes|metric ton|metric tons", dim::mass, f::tonne, 0.0, "metric_ton"},
    {"lb", "lbs|pound|pounds|LB|LBS", dim::mass, f::pound, 0.0, "pound"},
    {"oz av", "", dim::mass, f::ounce_mass, 0.0, "ounce"},
    {"short ton", "short tons|short_ton|US ton|US tons", dim::mass, f::short_ton, 0.0, "short_ton"},
    {"long ton", "long tons|long_ton", dim::mass, f::long_ton, 0.0, "long_ton"},

    {"s", "sec|second|seconds", dim::time, 1.0, 0.0, "second"},
    {"min", "minute|minutes", dim::time, f::minute, 0.0, "minute"},
    {"h", "hr|hrs|hour|hours|HR", dim::time, f::hour, 0.0, "hour"},
    {"day", "days|d", dim::time, f::day, 0.0, "day"},
    {"week", "weeks", dim::time, f::week, 0.0, "week"},
    {"year", "years|yr", dim::time, f::year, 0.0, "common_year"},

    {"mph", "MPH", dim::speed, f::mile / f::hour, 0.0, "mile/hour"},

    {"gpm", "GPM", dim::flow, f::us_gallon / f::minute, 0.0, "gallon/minute"},
    {"cfm", "CFM", dim::flow, cubic_foot / f::minute, 0.0, "foot**3/minute"},
    {"cfs", "CFS", dim::flow, cubic_foot, 0.0, "foot**3/second"},

    {"N", "newton|newtons", dim::force, 1.0, 0.0, "newton"},
    {"kN", "kilonewton|kilonewtons", dim::force, 1e3, 0.0, "kilonewton"},
    {"lbf", "", dim::force, f::pound_force, 0.0, "pound_force"},
    {"kip", "kips", dim::force, 1e3 * f::pound_force, 0.0, "kip"},

    {"Pa", "pascal|pascals", dim::pressure, 1.0, 0.0, "pascal"},
    {"kPa", "kilopascal|kilopascals", dim::pressure, 1e3, 0.0, "kilopascal"},
    {"MPa", "megapascal|megapascals", dim::pressure, 1e6, 0.0, "megapascal"},
    {"bar", "bars", dim::pressure, f::bar, 0.0, "bar"},
    {"mbar", "millibar|millibars", dim::pressure, 1e-3 * f::bar, 0.0, "millibar"},
    {"psi", "PSI|psig", dim::pressure, f::psi, 0.0, "psi"},
    {"ksi", "", dim::pressure, 1e3 * f::psi, 0.0, "ksi"},
    {"inHg", "in Hg", dim::pressure, f::inch_of_mercury, 0.0, "inch_Hg"},
    {"inH2O", "in H2O", dim::pressure, f::inch_of_water, 0.0, ""},
    {"ftH2O", "ft H2O", dim::pressure, 12.0 * f::inch_of_water, 0.0, ""},

    {"J", "joule|joules", dim::energy, 1.0, 0.0, "joule"},
    {"kJ", "kilojoule|kilojoules", dim::energy, 1e3, 0.0, "kilojoule"},
    {"kWh", "", dim::energy, 1e3 * f::hour, 0.0, "kilowatt_hour"},

    {"W", "watt|watts", dim::power, 1.0, 0.0, "watt"},
    {"kW", "kilowatt|kilowatts", dim::power, 1e3, 0.0, "kilowatt"},
    {"hp", "HP|horsepower", dim::power, f::horsepower, 0.0, "horsepower"},

    {"pcf", "PCF", dim::density, f::pound / cubic_foot, 0.0, "pound/foot**3"},

    {"cP", "centipoise", dim::dynamic_viscosity, viscosity_factor, 0.0, "centipoise"},
    {"cSt", "centistokes", dim::kinematic_viscosity, 1e-6, 0.0, "centistokes"},

    {"K", "kelvin|kelvins", dim::temperature, 1.0, 0.0, "kelvin"},
    {"degC", "deg C|Celsius|degree Celsius|degrees Celsius", dim::temperature, 1.0, f::celsius_zero,
     "degC"},
    {"degF", "deg F|Fahrenheit|degree Fahrenheit|degrees Fahrenheit", dim::temperature,
     f::fahrenheit_step, f::fahrenheit_zero, "degF"},
    {"delta_degC", "", dim::temperature, 1.0, 0.0, "delta_degC"},
    {"delta_degF", "", dim::temperature, f::fahrenheit_step, 0.0, "delta_degF"},

    {"rad", "radian|radians", dim::angle, 1.0, 0.0, "radian"},
    {"deg", "degree|degrees", dim::angle, f::degree, 0.0, "degree"},

    {"each",
     "ea|EA|item|items|drain|drains|bearing|bearings|girder|girders|joint|joints|column|columns|"
     "structure|structures|bridge|bridges|shift|shifts|visit|visits|trip|trips|load|loads|pass|"
     "passes|set-up|set-ups|vehicle|vehicles|person|persons",
     dim::count, 1.0, 0.0, ""},
    {"labour-h",
     "labor-h|labour-hour|labour-hours|labor-hour|labor-hours|person-h|person-hour|person-hours",
     labour, f::hour, 0.0, ""},

    {"currency", "", dim::money, 1.0, 0.0, ""},
});
} // namespace

std::span<const UnitRow> unit_table() {
    return units;
}

} // namespace scupper
