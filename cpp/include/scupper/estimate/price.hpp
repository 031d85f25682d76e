#pragma once
// The price of one structure: a pure function of categories and numbers.

#include "scupper/estimate/figures.hpp"
#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/resolve.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/work.hpp"

#include <vector>

namespace scupper::estimate {

/// Where the hours of a crew go.
template <class T>
struct CrewHours {
    Time<T> work;                ///< [s] on the clock, without closures
    Time<T> set_up;              ///< [s] of closures
    Time<T> change_sides;        ///< [s] of closures; part of `work`
    Time<T> removal;             ///< [s] of closures
    work::OutingHours<T> outing; ///< [s] paid hours
    T share;                     ///< [-] of a stage: its elapsed work to that of all its parties
};

/// Memory a price works in, made once for a plan and used for every structure and draw.
template <class T>
struct Workspace {
    explicit Workspace(const Plan& plan);

    Figures<T> figures;                     ///< [SI unit of each] the result of `price`
    takeoff::Quantities<T> quantities;      ///< [SI unit of each slot] from the take-off
    std::vector<hydraulics::Line<T>> lines; ///< [-, n] by method: pump, hose and nozzle
    std::vector<CrewHours<T>> crews;        ///< [s, n] everyone, then stages, then parties
};

/// Prices one structure: take-off, nozzle flow, dirt, operations, outing, cost, cost lines.
///
/// @param model [-] categories
/// @param inputs [SI unit of each] all inputs of the plan's layout
/// @param workspace [-] its figures are written
/// Range: a model that `resolve` made, with a washable shape.
/// Errors: none; a figure that has no value (no flow at the nozzle, a shift without time for work)
/// is NaN or infinite and makes the total so.
/// Source: the parts it calls
/// Verified by: tests/cpp/estimate/test_price.cpp
template <class T>
void price(const Model& model, const Inputs<T>& inputs, Workspace<T>& workspace);

} // namespace scupper::estimate
