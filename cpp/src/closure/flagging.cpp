#include "scupper/closure/flagging.hpp"

#include "require.hpp"
#include "scupper/traced.hpp"
#include "words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace scupper::closure {
namespace {

using namespace scupper::literals;

constexpr const char* manual = "Highway Capacity Manual, 7th edition, chapter 26, appendix B";
constexpr NamedConstant green_per_length{0.0375 / factor::foot, dim::time / dim::length,
                                         "green for each length of the shared lane", manual};
constexpr NamedConstant shortest_green{20.0, dim::time, "shortest green", manual};
constexpr NamedConstant longest_green{60.0, dim::time, "longest green", manual};
constexpr NamedConstant slowed_by{2.4 * factor::mile / factor::hour, dim::speed,
                                  "slower beside the work", manual};
constexpr Speed<> slowest = 5.0_mph;

constexpr std::array<std::string_view, 2> terrain_words{"level", "rolling"};
constexpr double table_step = 100.0; // vehicles an hour

// Exhibit 26-B4 from 100 to 900 vehicles an hour; 700 and 800 from memory.
constexpr std::array<std::array<double, 9>, 2> equivalents{
    {{1.9, 1.5, 1.4, 1.3, 1.2, 1.1, 1.1, 1.1, 1.0}, {2.7, 2.3, 2.1, 2.0, 1.8, 1.7, 1.6, 1.4, 1.3}}};

} // namespace

Terrain terrain_by_name(std::string_view word) {
    return static_cast<Terrain>(detail::index_in(terrain_words, word, "terrain"));
}

template <class T>
Time<T> optimal_green(const Length<T>& length) {
    detail::not_negative("length", length);
    const Time<T> best =
        length * Quantity<dim::time / dim::length, T>(constant<T>(green_per_length));
    return min_of(max_of(best, Time<T>(constant<T>(shortest_green))),
                  Time<T>(constant<T>(longest_green)));
}

double truck_equivalent(const TrafficFlow<>& flow, Terrain terrain) {
    detail::not_negative("flow", flow);
    const auto& row = equivalents.at(static_cast<std::size_t>(terrain));
    const double last = static_cast<double>(row.size() - 1);
    const double at = std::clamp(flow.si() * factor::hour / table_step - 1.0, 0.0, last);
    const auto before = static_cast<std::size_t>(std::min(std::floor(at), last - 1.0));
    const double beyond = at - static_cast<double>(before);
    return row.at(before) + beyond * (row.at(before + 1) - row.at(before));
}

double recreational_equivalent(Terrain terrain) {
    return terrain == Terrain::level ? 1.0 : 1.1;
}

template <class T>
TrafficFlow<T> passenger_car_demand(const TrafficFlow<T>& demand, const T& peak_factor,
                                    const T& grade_factor, const T& heavy_factor) {
    detail::not_negative("demand", demand);
    detail::positive("peak_factor", peak_factor);
    detail::positive("grade_factor", grade_factor);
    detail::positive("heavy_factor", heavy_factor);
    return demand / (peak_factor * grade_factor * heavy_factor);
}

template <class T>
Speed<T> one_lane_speed(const Speed<T>& limit) {
    detail::positive("limit", limit);
    return max_of(limit - Speed<T>(constant<T>(slowed_by)), Speed<T>(slowest));
}

#define SCUPPER_INSTANTIATE(T)                                                                     \
    template Time<T> optimal_green(const Length<T>&);                                              \
    template TrafficFlow<T> passenger_car_demand(const TrafficFlow<T>&, const T&, const T&,        \
                                                 const T&);                                        \
    template Speed<T> one_lane_speed(const Speed<T>&);
SCUPPER_INSTANTIATE(double)
SCUPPER_INSTANTIATE(Traced)
#undef SCUPPER_INSTANTIATE

} // namespace scupper::closure
