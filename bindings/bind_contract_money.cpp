// What a contract's terms do beside the price, and where paid hours go.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/estimate/contract_money.hpp"
#include "scupper/estimate/hours_table.hpp"
#include "scupper/work/calendar.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Estimate;
using estimate::HoursRow;
using estimate::Payments;
using estimate::Show;
using estimate::VariedPrice;

/// First day or "", columns by period, cost of the money held.
using PaymentTable = std::tuple<std::string, double, Columns, double>;

PaymentTable payment_table(const Payments& p) {
    Columns columns;
    columns["earned"] = p.flow.earned;
    columns["kept"] = p.flow.kept;
    columns["paid"] = p.flow.paid;
    columns["outstanding"] = p.flow.outstanding;
    return {p.first ? work::date_text(*p.first) : std::string(), p.interval.si(), columns,
            p.flow.waiting_cost};
}

Columns variation_columns(const Estimate& e, const std::vector<double>& shares) {
    const Show show(e.plan->job);
    const std::vector<VariedPrice> rows = estimate::quantity_variation(e, shares);
    const auto unit_of = [&](const VariedPrice& r) {
        return show.unit(slot_table[r.slot].dimension, slot_table[r.slot].key);
    };
    Columns d;
    d["component"] = texts(rows, [](const VariedPrice& r) { return r.component; });
    d["share"] = numbers<double>(rows, [](const VariedPrice& r) { return r.share; });
    d["quantity"] = numbers<double>(
        rows, [&](const VariedPrice& r) { return to_unit(r.quantity, unit_of(r)); });
    d["unit"] = texts(rows, [&](const VariedPrice& r) { return unit_of(r).name; });
    d["planned"] = numbers<double>(rows, [](const VariedPrice& r) { return r.planned; });
    d["paid"] = numbers<double>(rows, [](const VariedPrice& r) { return r.paid; });
    d["price"] = numbers<double>(rows, [](const VariedPrice& r) { return r.price; });
    return d;
}

Columns hours_columns(const Estimate& e) {
    const Unit hour = parse_unit("h", "hours");
    const std::vector<HoursRow> rows = estimate::hours_table(e);
    const auto hours = [&](Time<> HoursRow::*part) {
        return numbers<double>(rows,
                               [&](const HoursRow& r) { return to_unit((r.*part).si(), hour); });
    };
    Columns d;
    d["crew"] = texts(rows, [](const HoursRow& r) { return r.crew; });
    d["people"] = numbers<double>(rows, [](const HoursRow& r) { return r.people; });
    d["shifts"] = numbers<double>(rows, [](const HoursRow& r) { return r.shifts; });
    d["productive"] = hours(&HoursRow::productive);
    d["breaks"] = hours(&HoursRow::breaks);
    d["waiting"] = hours(&HoursRow::waiting);
    d["travel"] = hours(&HoursRow::travel);
    d["briefing"] = hours(&HoursRow::briefing);
    d["closure"] = hours(&HoursRow::closure);
    d["meal"] = hours(&HoursRow::meal);
    d["standby"] = hours(&HoursRow::standby);
    d["paid"] = hours(&HoursRow::paid);
    d["overtime"] = hours(&HoursRow::overtime);
    d["unpaid_meal"] = hours(&HoursRow::unpaid_meal);
    d["elapsed"] = hours(&HoursRow::elapsed);
    d["show_up"] = hours(&HoursRow::show_up);
    return d;
}

} // namespace

void bind_contract_money(py::module_& m) {
    using py::arg;
    m.def("hours_table", &hours_columns, doc("estimate::hours_table"), arg("estimate"));
    m.def("quantity_variation", &variation_columns, doc("estimate::quantity_variation"),
          arg("estimate"), arg("shares"));
    m.def(
        "cash_flow", [](const Estimate& e) { return payment_table(estimate::cash_flow(e)); },
        doc("estimate::cash_flow(estimate)"), arg("estimate"));
    m.def(
        "cash_flow_of_outings",
        [](const estimate::OutingPlan& p) { return payment_table(estimate::cash_flow(p)); },
        doc("estimate::cash_flow(plan)"), arg("outings"));
}

} // namespace scupper::python
