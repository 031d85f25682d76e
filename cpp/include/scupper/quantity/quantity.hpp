#pragma once
// Numbers that know their dimension. Stored in SI; any number type.

#include <cmath>
#include <concepts>
#include <type_traits>
#include <utility>

#include "scupper/quantity/dimension.hpp"

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
    /// A constant of the trade, widened to the number type of the formula.
    template <class S>
        requires(!std::same_as<S, T> && std::convertible_to<S, T>)
    constexpr Quantity(const Quantity<D, S>& other) : value_(other.si()) {}

    /// The value in the SI coherent unit of D.
    constexpr const T& si() const { return value_; }
    /// The value in another unit of the same dimension: q.in(1.0_psi).
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

/// The square root; compiles only where every exponent of the dimension is even.
template <Dimension D, class T>
auto sqrt(const Quantity<D, T>& q) {
    static_assert(has_root(D), "the square root of this dimension is not a dimension");
    using std::sqrt;
    return detail::wrap<root(D)>(sqrt(q.si()));
}

/// q raised to the whole power N >= 1, by multiplication.
template <int N, Dimension D, class T>
constexpr auto power(const Quantity<D, T>& q) {
    static_assert(N >= 1, "a power of at least one");
    if constexpr (N == 1) {
        return q;
    } else {
        return power<N - 1>(q) * q;
    }
}

/// The magnitude of a quantity.
template <Dimension D, class T>
auto abs(const Quantity<D, T>& q) {
    using std::abs;
    return Quantity<D, T>(abs(q.si()));
}

} // namespace scupper
