#pragma once
// Numbers that know their dimension. Stored in SI; any number type.

#include "scupper/quantity/dimension.hpp"

#include <cmath>
#include <concepts>
#include <type_traits>
#include <utility>

namespace scupper {

template <Dimension D, class T = double>
class Quantity;

namespace detail {
template <class X>
inline constexpr bool is_quantity = false;
template <Dimension D, class T>
inline constexpr bool is_quantity<Quantity<D, T>> = true;

/// A product or quotient without dimension is a plain number again.
template <Dimension D, class T>
constexpr auto wrap(T value) {
    if constexpr (D == dim::none) {
        return value;
    } else {
        return Quantity<D, T>(std::move(value));
    }
}

template <class S, class T>
concept PlainFor = !is_quantity<std::remove_cvref_t<S>> && std::convertible_to<S, T>;
} // namespace detail

/// A number of dimension D in SI coherent units. A bare number does not become one by accident,
/// and quantities of different dimension neither add nor compare.
template <Dimension D, class T>
class Quantity {
    static_assert(!(D == dim::none), "a number without dimension is a plain number");

  public:
    using number_type = T;
    static constexpr Dimension dimension = D;

    constexpr Quantity() : value_(0.0) {}
    constexpr explicit Quantity(T si) : value_(std::move(si)) {}
    // clang-format off
    /// A constant of the trade, widened to the number type of the formula.
    template <class S>
        requires(!std::same_as<S, T> && std::convertible_to<S, T>)
    constexpr Quantity(const Quantity<D, S>& other) : value_(other.si()) {}
    // clang-format on

    /// The value as a plain number [SI coherent unit of D].
    constexpr const T& si() const { return value_; }
    /// How many of another unit make the quantity up: q.in(1.0_psi).
    ///
    /// Formula: value / unit
    /// @param unit [any unit of D] one of the unit, as a quantity; not zero
    /// @return [-] the value counted in that unit
    /// Range: any unit of the same dimension.
    /// Errors: none; a unit of another dimension does not compile.
    /// Source: definition
    template <class S>
    constexpr auto in(const Quantity<D, S>& unit) const {
        return value_ / unit.si();
    }

    constexpr Quantity operator-() const { return Quantity(-value_); }
    constexpr Quantity& operator+=(const Quantity& b) { return *this = *this + b; }
    constexpr Quantity& operator-=(const Quantity& b) { return *this = *this - b; }

    friend constexpr Quantity operator+(const Quantity& a, const Quantity& b) {
        return Quantity(a.value_ + b.value_);
    }
    friend constexpr Quantity operator-(const Quantity& a, const Quantity& b) {
        return Quantity(a.value_ - b.value_);
    }
    friend constexpr auto operator<(const Quantity& a, const Quantity& b) {
        return a.value_ < b.value_;
    }
    friend constexpr auto operator>(const Quantity& a, const Quantity& b) {
        return a.value_ > b.value_;
    }
    friend constexpr auto operator<=(const Quantity& a, const Quantity& b) {
        return a.value_ <= b.value_;
    }
    friend constexpr auto operator>=(const Quantity& a, const Quantity& b) {
        return a.value_ >= b.value_;
    }
    friend constexpr auto operator==(const Quantity& a, const Quantity& b) {
        return a.value_ == b.value_;
    }

    template <detail::PlainFor<T> S>
    friend constexpr Quantity operator*(const Quantity& a, const S& s) {
        return Quantity(a.value_ * s);
    }
    template <detail::PlainFor<T> S>
    friend constexpr Quantity operator*(const S& s, const Quantity& a) {
        return Quantity(s * a.value_);
    }
    template <detail::PlainFor<T> S>
    friend constexpr Quantity operator/(const Quantity& a, const S& s) {
        return Quantity(a.value_ / s);
    }
    template <detail::PlainFor<T> S>
    friend constexpr auto operator/(const S& s, const Quantity& a) {
        return detail::wrap<dim::none / D, T>(s / a.value_);
    }

  private:
    T value_;
};

template <Dimension A, class T, Dimension B, class S>
constexpr auto operator*(const Quantity<A, T>& a, const Quantity<B, S>& b) {
    return detail::wrap<A * B>(a.si() * b.si());
}
template <Dimension A, class T, Dimension B, class S>
constexpr auto operator/(const Quantity<A, T>& a, const Quantity<B, S>& b) {
    return detail::wrap<A / B>(a.si() / b.si());
}

/// The square root of a quantity, with the dimension that belongs to it.
///
/// @param q [SI unit of D] the radicand, >= 0
/// @return [SI unit of the root of D] its root
/// Range: q >= 0; NaN below.
/// Errors: none; a dimension with an odd exponent does not compile.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <Dimension D, class T>
auto sqrt(const Quantity<D, T>& q) {
    static_assert(has_root(D), "the square root of this dimension is not a dimension");
    using std::sqrt;
    return detail::wrap<root(D)>(sqrt(q.si()));
}

/// A quantity raised to a whole power, with the dimension that belongs to it.
///
/// Formula: q^N, by repeated multiplication
/// @param q [SI unit of D] the base
/// @return [SI unit of D to the power N] the power
/// Range: N >= 1.
/// Errors: none; N < 1 does not compile.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <int N, Dimension D, class T>
constexpr auto power(const Quantity<D, T>& q) {
    static_assert(N >= 1, "a power of at least one");
    if constexpr (N == 1) {
        return q;
    } else {
        return power<N - 1>(q) * q;
    }
}

/// The magnitude of a quantity, for a difference whose sign does not matter.
///
/// @param q [SI unit of D] any value
/// @return [SI unit of D] q without its sign
/// Range: any value; NaN gives NaN.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/quantity/test_quantity.cpp
template <Dimension D, class T>
auto abs(const Quantity<D, T>& q) {
    using std::abs;
    return Quantity<D, T>(abs(q.si()));
}

} // namespace scupper
