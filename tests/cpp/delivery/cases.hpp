#pragma once
// Invented cases that several tests use.

#include "scupper/delivery.hpp"

#include <initializer_list>
#include <utility>

namespace delivery_tests {

namespace d = scupper::delivery;
using d::Input;

inline constexpr double hour = 3600.0;

/// What the table says, but for some inputs.
inline d::Case<double> case_with(std::initializer_list<std::pair<Input, double>> values,
                                 d::Case<double> c = d::empty_case()) {
    for (const auto& [input, value] : values) {
        c[input] = value;
    }
    return c;
}

/// A year of invented work: every line of either way is there and none is alike.
inline d::Case<double> full_case() {
    return case_with({{Input::structures, 40.0},
                      {Input::area, 20000.0},
                      {Input::cost_each, 900.0},
                      {Input::cost_area, 1.5},
                      {Input::labour_share, 0.5},
                      {Input::time_each, 3.0 * hour},
                      {Input::time_area, 0.004 * hour},
                      {Input::price_each, 1200.0},
                      {Input::price_area, 2.0},
                      {Input::kept, 5000.0},
                      {Input::displaced_value, 60.0 / hour},
                      {Input::spare_time, 150.0 * hour},
                      {Input::ownership, 30000.0},
                      {Input::rated_time, 800.0 * hour},
                      {Input::other_time, 300.0 * hour},
                      {Input::supervision, 0.10},
                      {Input::overhead, 0.12},
                      {Input::facilities, 4000.0},
                      {Input::contracts, 2.0},
                      {Input::preparation, 3500.0},
                      {Input::administration, 0.04},
                      {Input::inspection, 0.06},
                      {Input::conversion, 20000.0},
                      {Input::years, 5.0 * scupper::factor::year},
                      {Input::interest, -0.016},
                      {Input::differential_share, 0.10},
                      {Input::differential_most, 10e6}});
}

} // namespace delivery_tests
