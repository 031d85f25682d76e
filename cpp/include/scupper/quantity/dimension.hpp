#pragma once
// Which physical dimension a number has, known at compile time.

namespace scupper {

/// Exponents of the base dimensions of a quantity; money and items are dimensions of their own,
/// so that a price is not a length and drains are not metres.
struct Dimension {
    int length = 0;      ///< [-] exponent of the metre
    int mass = 0;        ///< [-] exponent of the kilogram
    int time = 0;        ///< [-] exponent of the second
    int temperature = 0; ///< [-] exponent of the kelvin
    int money = 0;       ///< [-] exponent of the currency unit
    int count = 0;       ///< [-] exponent of the item counted
    int angle = 0;       ///< [-] exponent of the radian

    friend constexpr bool operator==(const Dimension&, const Dimension&) = default;
};

constexpr Dimension operator*(const Dimension& a, const Dimension& b) {
    return {a.length + b.length, a.mass + b.mass,   a.time + b.time,  a.temperature + b.temperature,
            a.money + b.money,   a.count + b.count, a.angle + b.angle};
}

constexpr Dimension operator/(const Dimension& a, const Dimension& b) {
    return {a.length - b.length, a.mass - b.mass,   a.time - b.time,  a.temperature - b.temperature,
            a.money - b.money,   a.count - b.count, a.angle - b.angle};
}

/// The dimension of a quantity raised to a whole power: a length cubed is a volume.
///
/// Formula: every exponent times n
/// @param d [-] dimension of the base
/// @param n [-] the power; negative and zero too
/// @return [-] dimension of the power
/// Range: any whole number.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
constexpr Dimension power(const Dimension& d, int n) {
    return {d.length * n, d.mass * n,  d.time * n, d.temperature * n,
            d.money * n,  d.count * n, d.angle * n};
}

/// Whether a quantity of this dimension has a square root: an area has, a volume has not.
///
/// Formula: every exponent is even
/// @param d [-] dimension of the radicand
/// @return [-] true where `root` gives its dimension
/// Range: any dimension.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
constexpr bool has_root(const Dimension& d) {
    return d.length % 2 == 0 && d.mass % 2 == 0 && d.time % 2 == 0 && d.temperature % 2 == 0 &&
           d.money % 2 == 0 && d.count % 2 == 0 && d.angle % 2 == 0;
}

/// The dimension of a square root: an area's root is a length.
///
/// Formula: every exponent halved
/// @param d [-] dimension of the radicand
/// @return [-] dimension of the root
/// Range: dimensions that `has_root` accepts; an odd exponent would be cut off.
/// Errors: none; `sqrt` of another dimension does not compile.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
constexpr Dimension root(const Dimension& d) {
    return {d.length / 2, d.mass / 2,  d.time / 2, d.temperature / 2,
            d.money / 2,  d.count / 2, d.angle / 2};
}

/// The dimensions that the trade works with.
namespace dim {
inline constexpr Dimension none{};
inline constexpr Dimension length{.length = 1};
inline constexpr Dimension mass{.mass = 1};
inline constexpr Dimension time{.time = 1};
inline constexpr Dimension temperature{.temperature = 1};
inline constexpr Dimension money{.money = 1};
inline constexpr Dimension count{.count = 1};
inline constexpr Dimension angle{.angle = 1};
inline constexpr Dimension area = length * length;
inline constexpr Dimension volume = area * length;
inline constexpr Dimension speed = length / time;
inline constexpr Dimension acceleration = speed / time;
inline constexpr Dimension flow = volume / time;
inline constexpr Dimension force = mass * acceleration;
inline constexpr Dimension pressure = force / area;
inline constexpr Dimension energy = force * length;
inline constexpr Dimension power = energy / time;
inline constexpr Dimension density = mass / volume;
inline constexpr Dimension dynamic_viscosity = pressure * time;
inline constexpr Dimension kinematic_viscosity = area / time;
inline constexpr Dimension volume_each = volume / count;
inline constexpr Dimension time_each = time / count;
inline constexpr Dimension money_per_time = money / time;
inline constexpr Dimension money_per_mass = money / mass;
inline constexpr Dimension money_per_volume = money / volume;
} // namespace dim

} // namespace scupper
