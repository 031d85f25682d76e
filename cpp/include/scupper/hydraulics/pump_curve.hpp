#pragma once
// The curve of a centrifugal pump, and what speed and size make of it.

#include "scupper/quantity.hpp"

#include <string_view>
#include <vector>

namespace scupper::hydraulics {

/// One point of a curve, or its value and slope at a flow.
struct CurvePoint {
    Flow<> flow;        ///< [m3/s]
    Length<> head;      ///< [m] gained by the water
    double slope = 0.0; ///< [s/m2] change of the head with flow, <= 0
};

/// Head over flow, falling from point to point; between them a cubic that neither overshoots nor
/// turns, so that a flow has one head and a head one flow.
class PumpCurve {
  public:
    PumpCurve() = default;
    /// Takes the points of a curve in the order of their flow.
    ///
    /// Formula: cubic Hermite with the weighted harmonic mean of the slopes beside each point
    /// @param points [m3/s and m, n] flow and head at rated speed; slopes are not read
    /// @param path [text] what the list is called in the error
    /// Range: at least two points, flows >= 0 and growing, heads falling or level. A curve that
    ///        droops towards no flow is refused: at a head above the shut-off it has two flows, and
    ///        the pump may hunt between them. Give the falling part, from its summit on.
    /// Errors: InputError `hydraulics.curve` with the place in the list
    /// Source: F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238; slopes of
    ///         F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300
    /// Verified by: tests/cpp/hydraulics/test_pump.cpp
    explicit PumpCurve(std::vector<CurvePoint> points, std::string_view path = "curve");

    /// Head and slope at a flow.
    ///
    /// Formula: the cubic between the points; before the first its head; after the last its tangent
    /// @param flow [m3/s] any
    /// @param speed [-] of the rated speed, > 0: H(Q) = s^2 H1(Q / s)
    /// @return [-] flow [m3/s], head [m] and slope [s/m2]
    /// Range: a curve with points. Outside the points it is a guess.
    /// Errors: none
    /// Source: affinity laws for speed
    /// Verified by: tests/cpp/hydraulics/test_pump.cpp
    CurvePoint at(const Flow<>& flow, double speed = 1.0) const;

    /// Flow of the first point at rated speed [m3/s].
    Flow<> first_flow() const { return points_.front().flow; }
    /// Flow of the last point at rated speed [m3/s].
    Flow<> last_flow() const { return points_.back().flow; }
    /// The points with their slopes [-, n].
    const std::vector<CurvePoint>& points() const { return points_; }

  private:
    std::vector<CurvePoint> points_;
};

/// What flow becomes with speed and impeller diameter.
///
/// Formula: Q2 = Q1 s d^3
/// @param flow [m3/s] at the first speed and diameter
/// @param speed_ratio [-] s, second speed over first, > 0
/// @param diameter_ratio [-] d of pumps of like shape, > 0; a trimmed impeller follows it roughly
/// @return [m3/s] at the second
/// Range: pumps of like shape at like points of their curves; losses of the hose do not follow.
/// Errors: InputError `hydraulics.speed_ratio`, `hydraulics.diameter_ratio` where not > 0
/// Source: affinity laws, e.g. Crane TP-410, example 7-33
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Flow<T> affinity_flow(const Flow<T>& flow, const T& speed_ratio, const T& diameter_ratio);

/// What head becomes with speed and impeller diameter.
///
/// Formula: H2 = H1 s^2 d^2
/// @param head [m] at the first speed and diameter
/// @param speed_ratio [-] s, second speed over first, > 0
/// @param diameter_ratio [-] d of pumps of like shape, > 0
/// @return [m] at the second
/// Range: as affinity_flow.
/// Errors: as affinity_flow
/// Source: affinity laws, e.g. Crane TP-410, example 7-33
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Length<T> affinity_head(const Length<T>& head, const T& speed_ratio, const T& diameter_ratio);

/// What power becomes with speed and impeller diameter.
///
/// Formula: P2 = P1 s^3 d^5
/// @param power [W] at the first speed and diameter
/// @param speed_ratio [-] s, second speed over first, > 0
/// @param diameter_ratio [-] d of pumps of like shape, > 0
/// @return [W] at the second
/// Range: as affinity_flow, at the same efficiency.
/// Errors: as affinity_flow
/// Source: affinity laws, e.g. Crane TP-410, example 7-33
/// Verified by: tests/cpp/hydraulics/test_pump.cpp
template <class T>
Power<T> affinity_power(const Power<T>& power, const T& speed_ratio, const T& diameter_ratio);

} // namespace scupper::hydraulics
