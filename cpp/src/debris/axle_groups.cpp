#include "scupper/debris/axle_groups.hpp"

#include "require.hpp"
#include "scupper/quantity/literals.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace scupper::debris {

namespace {

using namespace literals;

constexpr int most_axles = 20;
constexpr Mass<> single_axle = 20000.0_lb;
constexpr Mass<> tandem_axle = 34000.0_lb;
constexpr Mass<> gross = 80000.0_lb;
constexpr Length<> single_span = 40.0_in;
constexpr Length<> tandem_span = 96.0_in;
constexpr Length<> two_tandems_span = 36.0_ft;
/// A spacing given in another unit is not to miss a limit by its last digit.
constexpr double slack = 1e-9;

bool reaches(const Length<>& span, const Length<>& limit) {
    return span.si() >= limit.si() * (1.0 - slack);
}
bool within(const Length<>& span, const Length<>& limit) {
    return span.si() <= limit.si() * (1.0 + slack);
}

void check_axles(int axles, int least) {
    detail::require(axles >= least && axles <= most_axles, "axles", axles,
                    least == 2 ? "2 to 20" : "1 to 20");
}

/// The axles of a truck by their distance from the first.
class Axles {
  public:
    explicit Axles(const std::vector<Length<>>& spacings) : at_(1) {
        for (const Length<>& spacing : spacings) {
            detail::positive("spacing", spacing);
            at_.push_back(at_.back() + spacing);
        }
        check_axles(static_cast<int>(at_.size()), 1);
    }
    std::size_t count() const { return at_.size(); }
    Length<> span(std::size_t first, std::size_t last) const { return at_[last] - at_[first]; }

    Mass<> limit(std::size_t first, std::size_t last) const {
        const Mass<> by_law =
            axle_group_limit(span(first, last), static_cast<int>(last - first + 1));
        return are_two_tandems(first, last) ? std::max(by_law, 2.0 * tandem_axle) : by_law;
    }

  private:
    bool is_tandem(std::size_t first) const {
        const Length<> s = span(first, first + 1);
        return !within(s, single_span) && within(s, tandem_span);
    }
    bool are_two_tandems(std::size_t first, std::size_t last) const {
        return last - first == 3 && is_tandem(first) && is_tandem(first + 2) &&
               reaches(span(first, last), two_tandems_span);
    }
    std::vector<Length<>> at_;
};

constexpr std::size_t nowhere = std::numeric_limits<std::size_t>::max();

/// The greatest weight in front of each gap between axles, by the shortest way from the front: a
/// group leads from the gap before it to the gap behind it, at its limit; back over an axle costs
/// nothing, for no axle weighs less than nothing.
struct Reach {
    Mass<> weight{std::numeric_limits<double>::infinity()};
    std::size_t from = nowhere;
};

bool relax(const Axles& axles, std::vector<Reach>& reach) {
    bool changed = false;
    const auto better = [&](std::size_t from, std::size_t to, const Mass<>& more) {
        const Mass<> weight = reach[from].weight + more;
        if (weight < reach[to].weight) {
            reach[to] = {weight, from};
            changed = true;
        }
    };
    for (std::size_t first = 0; first < axles.count(); ++first) {
        for (std::size_t last = first; last < axles.count(); ++last) {
            better(first, last + 1, axles.limit(first, last));
        }
        better(first + 1, first, Mass<>());
    }
    return changed;
}

} // namespace

Mass<> bridge_formula(const Length<>& span, int axles) {
    detail::positive("span", span);
    check_axles(axles, 2);
    const double n = axles;
    const double feet = span.in(1.0_ft);
    // In steps of 500 lb; half a step goes down.
    const double steps = feet * n / (n - 1.0) + 12.0 * n + 36.0;
    return std::ceil(steps - 0.5 - slack * steps) * 500.0_lb;
}

Mass<> axle_group_limit(const Length<>& span, int axles) {
    detail::not_negative("span", span);
    check_axles(axles, 1);
    detail::require(axles > 1 || span.si() == 0.0, "span", span.si(), "0 for a single axle");
    if (axles == 1 || within(span, single_span)) {
        return single_axle;
    }
    if (within(span, tandem_span)) {
        return tandem_axle;
    }
    return std::min({bridge_formula(span, axles), axles * single_axle, gross});
}

LegalGross legal_gross(const std::vector<Length<>>& spacings) {
    const Axles axles(spacings);
    std::vector<Reach> reach(axles.count() + 1);
    reach.front().weight = Mass<>();
    while (relax(axles, reach)) {
    }
    LegalGross result{reach.back().weight, {}};
    for (std::size_t gap = axles.count(); gap != 0; gap = reach[gap].from) {
        const std::size_t from = reach[gap].from;
        if (from < gap) {
            result.limits.push_back({from + 1, gap, axles.limit(from, gap - 1)});
        }
    }
    std::reverse(result.limits.begin(), result.limits.end());
    return result;
}

} // namespace scupper::debris
