#pragma once
// The price of one structure: a pure function of categories and numbers.

#include "scupper/debris.hpp"
#include "scupper/estimate/figures.hpp"
#include "scupper/estimate/inputs.hpp"
#include "scupper/estimate/resolve.hpp"
#include "scupper/hydraulics.hpp"
#include "scupper/work.hpp"

#include <array>
#include <vector>

namespace scupper::estimate {

/// Where the hours of a crew go.
template <class T>
struct CrewHours {
    Time<T> work;                ///< [s] on the clock, without closures
    Time<T> set_up;              ///< [s] of closures
    Time<T> change_sides;        ///< [s] of closures; part of `work`
    Time<T> removal;             ///< [s] of closures
    Count<T> closures{T(0.0)};   ///< [each] set up, of a stage
    work::OutingHours<T> outing; ///< [s] paid hours
    Time<T> unpaid{T(0.0)};      ///< [s] of meals that are not paid; beside `outing`
    T share;                     ///< [-] of a stage: its elapsed work to that of all its parties
};

/// What hauling takes, over all trucks.
template <class T>
struct HaulEffort {
    Time<T> in_shift{T(0.0)};                                ///< [s] dump trips on the clock
    Quantity<dim::count * dim::time, T> after_shift{T(0.0)}; ///< [each s] dump runs
    Amount<T> after_shift_pay{T(0.0)};                       ///< [currency] of their people
    Amount<T> load_charges{T(0.0)};                          ///< [currency]
    Amount<T> wash_water{T(0.0)};                            ///< [currency] for collected water
};

/// Memory a price works in, made once for a plan and used for every structure and draw.
template <class T>
struct Workspace {
    explicit Workspace(const Plan& plan);

    Figures<T> figures;                     ///< [SI unit of each] the result of `price`
    takeoff::Quantities<T> quantities;      ///< [SI unit of each slot] from the take-off
    std::vector<hydraulics::Line<T>> lines; ///< [-, n] by method: pump, hose and nozzle
    std::vector<CrewHours<T>> crews;        ///< [s, n] everyone, then stages, then parties
    std::array<debris::Bulk<T>, dirt_names.size()> dirt; ///< [m3, kg] by place in dirt_names
    std::vector<Volume<T>> picked_up;                    ///< [m3, n] by haul truck
    std::vector<Count<T>> loads;                         ///< [each, n] by haul truck: full ones
    HaulEffort<T> haul;                                  ///< [-] over all haul trucks
    std::vector<T> slowing; ///< [-, n] by method: how much a longer hose slows it
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
