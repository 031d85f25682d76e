#include "scupper/money/decimal.hpp"

#include "checked.hpp"

#include <algorithm>

namespace scupper {

using detail::checked_product;
using detail::checked_sum;
using detail::ten_to;

namespace {
void require_scale(int scale) {
    if (scale < 0 || scale > Decimal::max_scale) {
        throw MoneyError({"money.scale", "", std::to_string(scale) + " decimals", "0 to 18"});
    }
}

Decimal trimmed(const Decimal& d) {
    std::int64_t coefficient = d.coefficient();
    int scale = d.scale();
    while (scale > 0 && coefficient % 10 == 0) {
        coefficient /= 10;
        --scale;
    }
    return Decimal(coefficient, scale);
}

std::optional<Decimal> sum_at_larger_scale(const Decimal& a, const Decimal& b) {
    const int scale = std::max(a.scale(), b.scale());
    const auto left = checked_product(a.coefficient(), ten_to(scale - a.scale()));
    const auto right = checked_product(b.coefficient(), ten_to(scale - b.scale()));
    const auto sum = left && right ? checked_sum(*left, *right) : std::nullopt;
    return sum ? std::optional(Decimal(*sum, scale)) : std::nullopt;
}
} // namespace

Decimal::Decimal(std::int64_t coefficient, int scale) : coefficient_(coefficient), scale_(scale) {
    require_scale(scale);
    if (coefficient < -detail::largest) {
        detail::throw_overflow("", std::to_string(coefficient));
    }
}

Decimal Decimal::operator-() const {
    return Decimal(-coefficient_, scale_);
}

Decimal operator+(const Decimal& a, const Decimal& b) {
    auto sum = sum_at_larger_scale(a, b);
    if (!sum) {
        sum = sum_at_larger_scale(trimmed(a), trimmed(b));
    }
    if (!sum) {
        detail::throw_overflow("", to_text(a) + " + " + to_text(b));
    }
    return *sum;
}

Decimal operator-(const Decimal& a, const Decimal& b) {
    return a + -b;
}

Decimal operator*(const Decimal& a, const Decimal& b) {
    const Decimal x = trimmed(a);
    const Decimal y = trimmed(b);
    const auto product = checked_product(x.coefficient(), y.coefficient());
    const int scale = x.scale() + y.scale();
    if (product == 0) {
        return Decimal();
    }
    if (!product || scale > Decimal::max_scale) {
        detail::throw_overflow("", to_text(a) + " x " + to_text(b));
    }
    return trimmed(Decimal(*product, scale));
}

// Whole parts first, then decimals at a common scale: neither can leave the range.
std::weak_ordering operator<=>(const Decimal& a, const Decimal& b) {
    const std::int64_t unit_a = ten_to(a.scale_);
    const std::int64_t unit_b = ten_to(b.scale_);
    if (a.coefficient_ / unit_a != b.coefficient_ / unit_b) {
        return a.coefficient_ / unit_a <=> b.coefficient_ / unit_b;
    }
    return a.coefficient_ % unit_a * ten_to(Decimal::max_scale - a.scale_) <=>
           b.coefficient_ % unit_b * ten_to(Decimal::max_scale - b.scale_);
}

bool operator==(const Decimal& a, const Decimal& b) {
    return (a <=> b) == std::weak_ordering::equivalent;
}

Decimal rounded(const Decimal& number, int decimals) {
    require_scale(decimals);
    if (number.scale() <= decimals) {
        return number;
    }
    const std::int64_t divisor = ten_to(number.scale() - decimals);
    return Decimal(detail::divide_half_away(number.coefficient(), divisor), decimals);
}

} // namespace scupper
