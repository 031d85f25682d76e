#pragma once
// Exact conversion factors to SI. Literals and the run-time unit table both use these.
//
// Source: NIST SP 811 (2008), appendix B.8 and B.9: the international foot and avoirdupois pound
// are exact by definition; the US gallon is 231 cubic inches; the acre is not needed here; columns
// of mercury (13 595.1 kg/m3) and water (1000 kg/m3) are conventional, at standard gravity; the
// year has 365 days. Standard gravity: 3rd CGPM (1901), exact.

#include <numbers>

namespace scupper::factor {

inline constexpr double inch = 0.0254;
inline constexpr double foot = 12.0 * inch;
inline constexpr double yard = 3.0 * foot;
inline constexpr double mile = 5280.0 * foot;
inline constexpr double pound = 0.45359237;
inline constexpr double ounce_mass = pound / 16.0;
inline constexpr double short_ton = 2000.0 * pound;
inline constexpr double long_ton = 2240.0 * pound;
inline constexpr double tonne = 1000.0;
inline constexpr double standard_gravity = 9.80665;
inline constexpr double pound_force = pound * standard_gravity;
inline constexpr double psi = pound_force / (inch * inch);
inline constexpr double us_gallon = 231.0 * inch * inch * inch;
inline constexpr double fluid_ounce = us_gallon / 128.0;
inline constexpr double litre = 1e-3;
inline constexpr double minute = 60.0;
inline constexpr double hour = 3600.0;
inline constexpr double day = 86400.0;
inline constexpr double week = 7.0 * day;
inline constexpr double year = 365.0 * day;
inline constexpr double bar = 1e5;
inline constexpr double inch_of_mercury = 13595.1 * standard_gravity * inch;
inline constexpr double inch_of_water = 1000.0 * standard_gravity * inch;
inline constexpr double horsepower = 550.0 * foot * pound_force; // mechanical, per second
inline constexpr double degree = std::numbers::pi / 180.0;
inline constexpr double fahrenheit_step = 5.0 / 9.0;
inline constexpr double celsius_zero = 273.15;
inline constexpr double fahrenheit_zero = 459.67; // degrees Fahrenheit below 0 degF

} // namespace scupper::factor
