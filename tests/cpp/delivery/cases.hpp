#pragma once
// Invented cases that several tests use.

#include "scupper/delivery.hpp"

namespace delivery_tests {

namespace d = scupper::delivery;
using d::Input;

inline constexpr double hour = 3600.0;

/// A year of invented work: every line of either way is there and none is alike.
inline d::Case<double> full_case() {
    d::Case<double> c = d::empty_case();
    c[Input::structures] = 40.0;
    c[Input::area] = 20000.0;
    c[Input::cost_each] = 900.0;
    c[Input::cost_area] = 1.5;
    c[Input::labour_share] = 0.5;
    c[Input::time_each] = 3.0 * hour;
    c[Input::time_area] = 0.004 * hour;
    c[Input::price_each] = 1200.0;
    c[Input::price_area] = 2.0;
    c[Input::kept] = 5000.0;
    c[Input::displaced_value] = 60.0 / hour;
    c[Input::spare_time] = 150.0 * hour;
    c[Input::ownership] = 30000.0;
    c[Input::rated_time] = 800.0 * hour;
    c[Input::other_time] = 300.0 * hour;
    c[Input::supervision] = 0.10;
    c[Input::overhead] = 0.12;
    c[Input::facilities] = 4000.0;
    c[Input::contracts] = 2.0;
    c[Input::preparation] = 3500.0;
    c[Input::administration] = 0.04;
    c[Input::inspection] = 0.06;
    c[Input::conversion] = 20000.0;
    c[Input::years] = 5.0 * scupper::factor::year;
    c[Input::interest] = -0.016;
    c[Input::differential_share] = 0.10;
    c[Input::differential_most] = 10e6;
    return c;
}

} // namespace delivery_tests
