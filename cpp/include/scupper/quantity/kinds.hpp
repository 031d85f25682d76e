#pragma once
// The trade's words for quantities.

#include "scupper/quantity/quantity.hpp"

#include <cmath>

namespace scupper {

// clang-format off
template <class T = double> using Length = Quantity<dim::length, T>;
template <class T = double> using Area = Quantity<dim::area, T>;
template <class T = double> using Volume = Quantity<dim::volume, T>;
template <class T = double> using Mass = Quantity<dim::mass, T>;
template <class T = double> using Time = Quantity<dim::time, T>;
template <class T = double> using Angle = Quantity<dim::angle, T>;
template <class T = double> using Speed = Quantity<dim::speed, T>;
template <class T = double> using Acceleration = Quantity<dim::acceleration, T>;
template <class T = double> using Flow = Quantity<dim::flow, T>;
template <class T = double> using Force = Quantity<dim::force, T>;
template <class T = double> using Pressure = Quantity<dim::pressure, T>;
template <class T = double> using Power = Quantity<dim::power, T>;
template <class T = double> using Density = Quantity<dim::density, T>;
template <class T = double> using DynamicViscosity = Quantity<dim::dynamic_viscosity, T>;
template <class T = double> using KinematicViscosity = Quantity<dim::kinematic_viscosity, T>;
template <class T = double> using TemperatureDifference = Quantity<dim::temperature, T>;
template <class T = double> using Amount = Quantity<dim::money, T>;
template <class T = double> using AmountPerTime = Quantity<dim::money_per_time, T>;
template <class T = double> using AmountPerMass = Quantity<dim::money_per_mass, T>;
template <class T = double> using AmountPerVolume = Quantity<dim::money_per_volume, T>;
template <class T = double> using Count = Quantity<dim::count, T>;
template <class T = double> using VolumeEach = Quantity<dim::volume_each, T>;
template <class T = double> using TimeEach = Quantity<dim::time_each, T>;
// clang-format on

/// An absolute temperature. Two of them subtract to a difference; they never add.
template <class T = double>
class Temperature {
  public:
    constexpr Temperature() : kelvin_(0.0) {}
    constexpr explicit Temperature(T kelvin) : kelvin_(std::move(kelvin)) {}
    /// Thermodynamic temperature [K].
    constexpr const T& kelvin() const { return kelvin_; }
    /// Celsius temperature [degC]; exact offset 273.15 (SI brochure, 9th edition, 2.3.1).
    constexpr T celsius() const { return kelvin_ - 273.15; }

    friend constexpr auto operator-(const Temperature& a, const Temperature& b) {
        return TemperatureDifference<T>(a.kelvin_ - b.kelvin_);
    }
    friend constexpr Temperature operator+(const Temperature& a,
                                           const TemperatureDifference<T>& d) {
        return Temperature(a.kelvin_ + d.si());
    }
    friend constexpr auto operator<(const Temperature& a, const Temperature& b) {
        return a.kelvin_ < b.kelvin_;
    }

  private:
    T kelvin_;
};

/// The cosine of an angle, so that a skew needs no conversion before it enters a formula.
///
/// @param a [rad] the angle
/// @return [-] its cosine
/// Range: any angle.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <class T>
auto cos(const Angle<T>& a) {
    using std::cos;
    return cos(a.si());
}

/// The tangent of an angle, so that a skew needs no conversion before it enters a formula.
///
/// @param a [rad] the angle
/// @return [-] its tangent
/// Range: any angle; very large near pi/2.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <class T>
auto tan(const Angle<T>& a) {
    using std::tan;
    return tan(a.si());
}

/// How many items a count holds, where a formula needs the plain number.
///
/// @param c [each] the count
/// @return [-] the same as a plain number
/// Range: any count, fractions included.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <class T>
constexpr const T& number(const Count<T>& c) {
    return c.si();
}

} // namespace scupper
