#pragma once
// Ranges of figures as columns, in the units of the job.

#include "convert.hpp"
#include "scupper/estimate.hpp"

namespace scupper::python {

/// Columns key, label, unit, value, P5, P50 and P95.
inline Columns ranged_columns(const std::vector<estimate::RangedFigure>& rows,
                              const estimate::Plan& plan) {
    using estimate::RangedFigure;
    const estimate::Show show(plan.job);
    const auto field = [&](const RangedFigure& r) -> const LayoutField& {
        return plan.figures.fields()[estimate::figure_place_of(plan, r.key)];
    };
    const auto shown = [&](double RangedFigure::*member) {
        return numbers<double>(rows, [&, member](const RangedFigure& r) {
            return show.number(r.*member, field(r).dimension, r.key);
        });
    };
    Columns columns;
    columns["key"] = texts(rows, [](const RangedFigure& r) { return r.key; });
    columns["label"] = texts(rows, [&](const RangedFigure& r) { return field(r).label; });
    columns["unit"] = texts(
        rows, [&](const RangedFigure& r) { return show.unit(field(r).dimension, r.key).name; });
    columns["value"] = shown(&RangedFigure::value);
    columns["P5"] = shown(&RangedFigure::low);
    columns["P50"] = shown(&RangedFigure::middle);
    columns["P95"] = shown(&RangedFigure::high);
    return columns;
}

} // namespace scupper::python
