#include "scupper/hydraulics/pump_curve.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace scupper::hydraulics {
namespace {

using Points = std::vector<CurvePoint>;

[[noreturn]] void refuse(std::string_view path, const std::string& found,
                         const std::string& allowed) {
    throw InputError({"hydraulics.curve", std::string(path), found, allowed});
}

void check_point(const Points& points, std::size_t i, std::string_view path) {
    const std::string where = std::string(path) + "[" + std::to_string(i) + "]";
    const double flow = points[i].flow.si();
    const double head = points[i].head.si();
    if (!(flow >= 0.0) || !std::isfinite(flow) || !std::isfinite(head)) {
        refuse(where, std::to_string(flow) + " m3/s, " + std::to_string(head) + " m",
               "a flow of zero or more and a head");
    }
    if (i == 0) {
        return;
    }
    if (!(points[i].flow > points[i - 1].flow)) {
        refuse(where, std::to_string(flow) + " m3/s", "more flow than at the point before");
    }
    if (points[i].head > points[i - 1].head) {
        refuse(where, std::to_string(head) + " m, more head than with less flow",
               "heads that fall with the flow: a drooping curve has two flows at one head; give it "
               "from its summit on");
    }
}

double secant(const Points& p, std::size_t i) {
    return (p[i + 1].head.si() - p[i].head.si()) / (p[i + 1].flow.si() - p[i].flow.si());
}

double width(const Points& p, std::size_t i) {
    return p[i + 1].flow.si() - p[i].flow.si();
}

/// Three-point slope at an end, cut so that the cubic stays monotone.
double end_slope(double h0, double h1, double d0, double d1) {
    const double s = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    return std::clamp(s, 3.0 * d0, 0.0);
}

double inner_slope(const Points& p, std::size_t i) {
    const double before = secant(p, i - 1);
    const double after = secant(p, i);
    if (before == 0.0 || after == 0.0) {
        return 0.0;
    }
    const double w1 = 2.0 * width(p, i) + width(p, i - 1);
    const double w2 = width(p, i) + 2.0 * width(p, i - 1);
    return (w1 + w2) / (w1 / before + w2 / after);
}

void set_slopes(Points& p) {
    const std::size_t last = p.size() - 1;
    if (last == 1) {
        p[0].slope = p[1].slope = secant(p, 0);
        return;
    }
    for (std::size_t i = 1; i < last; ++i) {
        p[i].slope = inner_slope(p, i);
    }
    p[0].slope = end_slope(width(p, 0), width(p, 1), secant(p, 0), secant(p, 1));
    p[last].slope =
        end_slope(width(p, last - 1), width(p, last - 2), secant(p, last - 1), secant(p, last - 2));
}

/// The cubic between two points.
CurvePoint between(const CurvePoint& a, const CurvePoint& b, double q) {
    const double h = b.flow.si() - a.flow.si();
    const double t = (q - a.flow.si()) / h;
    const double rise = b.head.si() - a.head.si();
    const double c2 = 3.0 * rise - h * (2.0 * a.slope + b.slope);
    const double c3 = h * (a.slope + b.slope) - 2.0 * rise;
    const double head = a.head.si() + t * (h * a.slope + t * (c2 + t * c3));
    const double slope = a.slope + t * (2.0 * c2 + 3.0 * t * c3) / h;
    return {Flow<>(q), Length<>(head), std::min(slope, 0.0)};
}

CurvePoint at_rated_speed(const Points& points, double q) {
    if (q <= points.front().flow.si()) {
        return {Flow<>(q), points.front().head, 0.0};
    }
    const CurvePoint& last = points.back();
    if (q >= last.flow.si()) {
        return {Flow<>(q), last.head + Length<>(last.slope * (q - last.flow.si())), last.slope};
    }
    const auto above =
        std::upper_bound(points.begin(), points.end(), q,
                         [](double x, const CurvePoint& p) { return x < p.flow.si(); });
    return between(*(above - 1), *above, q);
}

template <class T>
void require_ratios(const T& speed, const T& diameter) {
    detail::positive("speed_ratio", speed);
    detail::positive("diameter_ratio", diameter);
}

} // namespace

PumpCurve::PumpCurve(std::vector<CurvePoint> points, std::string_view path)
    : points_(std::move(points)) {
    if (points_.size() < 2) {
        refuse(path, std::to_string(points_.size()) + " points", "two points or more");
    }
    for (std::size_t i = 0; i < points_.size(); ++i) {
        check_point(points_, i, path);
    }
    set_slopes(points_);
}

CurvePoint PumpCurve::at(const Flow<>& flow, double speed) const {
    const CurvePoint rated = at_rated_speed(points_, flow.si() / speed);
    return {flow, affinity_head(rated.head, speed, 1.0), speed * rated.slope};
}

template <class T>
Flow<T> affinity_flow(const Flow<T>& flow, const T& speed_ratio, const T& diameter_ratio) {
    require_ratios(speed_ratio, diameter_ratio);
    return flow * (speed_ratio * (diameter_ratio * diameter_ratio * diameter_ratio));
}

template <class T>
Length<T> affinity_head(const Length<T>& head, const T& speed_ratio, const T& diameter_ratio) {
    require_ratios(speed_ratio, diameter_ratio);
    const T tip_speed = speed_ratio * diameter_ratio;
    return head * (tip_speed * tip_speed);
}

template <class T>
Power<T> affinity_power(const Power<T>& power, const T& speed_ratio, const T& diameter_ratio) {
    require_ratios(speed_ratio, diameter_ratio);
    const T tip_speed = speed_ratio * diameter_ratio;
    return power * (tip_speed * tip_speed * tip_speed * (diameter_ratio * diameter_ratio));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Flow<T> affinity_flow(const Flow<T>&, const T&, const T&);                            \
    template Length<T> affinity_head(const Length<T>&, const T&, const T&);                        \
    template Power<T> affinity_power(const Power<T>&, const T&, const T&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::hydraulics
