// Formulas of money over arrays in SI, and rates that are built up.
#include "convert.hpp"
#include "docstrings.hpp"
#include "elementwise.hpp"
#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/unit.hpp"

#include <map>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

/// The kind of rate that an input field takes, by its key.
cost::BuiltUp kind_of(const std::string& key) {
    const cost::BuiltUp kind = cost::built_up_of(key);
    if (kind == cost::BuiltUp::none) {
        throw UnknownNameError({"cost.built_up", "kind", "\"" + key + "\"",
                                "labour.wage, labour.overtime_share or equipment.rate"});
    }
    return kind;
}

double built_up_rate(const std::string& key, const std::map<std::string, double>& parts) {
    std::vector<PartValue> values;
    for (const auto& [name, value] : parts) {
        values.push_back({name, value});
    }
    const cost::BuiltUp kind = kind_of(key);
    cost::check_parts(kind, values, key);
    return cost::built_up_rate(kind, values);
}

using PartRow = std::tuple<std::string_view, std::string_view, std::string, bool, std::string_view>;

std::vector<PartRow> rate_parts(const std::string& key) {
    std::vector<PartRow> rows;
    for (const cost::RatePart& p : cost::parts_of(kind_of(key))) {
        rows.emplace_back(p.name, p.label, si_unit_name(p.dimension), p.required, p.needs);
    }
    return rows;
}

std::pair<Columns, double> retainage(const Array& earned, double share, double limit_share,
                                     std::size_t release_after, double interest) {
    const cost::CashFlow flow =
        cost::retainage({earned.data(), static_cast<std::size_t>(earned.size())}, share,
                        limit_share, release_after, interest);
    Columns columns;
    columns["earned"] = flow.earned;
    columns["kept"] = flow.kept;
    columns["paid"] = flow.paid;
    columns["outstanding"] = flow.outstanding;
    return {columns, flow.waiting_cost};
}

/// Unit costs in the units of the job; the unit price is money for one of the quantity's units.
Columns unit_cost_columns(const estimate::Estimate& e) {
    const auto rows = estimate::unit_costs(e);
    const estimate::Show show(e.plan->job);
    const auto dimension = [](const estimate::UnitCost& u) { return slot_table[u.slot].dimension; };
    const auto amounts = [&](double estimate::UnitCost::*member) {
        return numbers<double>(rows, [member](const estimate::UnitCost& u) { return u.*member; });
    };
    Columns columns;
    columns["component"] = texts(rows, [](const estimate::UnitCost& u) { return u.component; });
    columns["quantity"] = numbers<double>(
        rows, [&](const estimate::UnitCost& u) { return show.number(u.quantity, dimension(u)); });
    columns["unit"] =
        texts(rows, [&](const estimate::UnitCost& u) { return show.unit(dimension(u)).name; });
    columns["direct"] = amounts(&estimate::UnitCost::direct);
    columns["distributed"] = amounts(&estimate::UnitCost::distributed);
    columns["margins"] = amounts(&estimate::UnitCost::margins);
    columns["total"] = amounts(&estimate::UnitCost::total);
    columns["per_unit"] = numbers<double>(rows, [&](const estimate::UnitCost& u) {
        return show.number(u.per_unit, dim::money / dimension(u));
    });
    columns["price_unit"] = texts(rows, [&](const estimate::UnitCost& u) {
        return show.unit(dim::money / dimension(u)).name;
    });
    return columns;
}

void bind_interest(py::module_& m) {
    using py::arg;
    m.def("compound_amount_factor", over_arrays(&cost::compound_amount_factor<double>),
          doc("cost::compound_amount_factor"), arg("interest"), arg("periods"));
    m.def("present_worth_factor", over_arrays(&cost::present_worth_factor<double>),
          doc("cost::present_worth_factor"), arg("interest"), arg("periods"));
    m.def("series_amount_factor", over_arrays(&cost::series_amount_factor<double>),
          doc("cost::series_amount_factor"), arg("interest"), arg("periods"));
    m.def("sinking_fund_factor", over_arrays(&cost::sinking_fund_factor<double>),
          doc("cost::sinking_fund_factor"), arg("interest"), arg("periods"));
    m.def("capital_recovery_factor", over_arrays(&cost::capital_recovery_factor<double>),
          doc("cost::capital_recovery_factor"), arg("interest"), arg("periods"));
    m.def("series_present_worth_factor", over_arrays(&cost::series_present_worth_factor<double>),
          doc("cost::series_present_worth_factor"), arg("interest"), arg("periods"));
    m.def("gradient_present_worth_factor",
          over_arrays(&cost::gradient_present_worth_factor<double>),
          doc("cost::gradient_present_worth_factor"), arg("interest"), arg("periods"));
    m.def("gradient_series_factor", over_arrays(&cost::gradient_series_factor<double>),
          doc("cost::gradient_series_factor"), arg("interest"), arg("periods"));
    m.def("nominal_rate", over_arrays(&cost::nominal_rate<double>), doc("cost::nominal_rate"),
          arg("real"), arg("inflation"));
    m.def("real_rate", over_arrays(&cost::real_rate<double>), doc("cost::real_rate"),
          arg("nominal"), arg("inflation"));
    m.def("implied_inflation", over_arrays(&cost::implied_inflation<double>),
          doc("cost::implied_inflation"), arg("nominal"), arg("real"));
    m.def("rate_for_term", over_arrays(&cost::rate_for_term), doc("cost::rate_for_term"),
          arg("term"), arg("shorter"), arg("shorter_rate"), arg("longer"), arg("longer_rate"));
    m.def("present_worth", over_arrays(&cost::present_worth<double>), doc("cost::present_worth"),
          arg("annual"), arg("interest"), arg("years"));
    m.def("escalated", over_arrays(&cost::escalated<double>), doc("cost::escalated"), arg("amount"),
          arg("inflation"), arg("start"), arg("length"));
}

void bind_wages(py::module_& m) {
    using py::arg;
    m.def("capped_tax_share", over_arrays(&cost::capped_tax_share<double>),
          doc("cost::capped_tax_share"), arg("tax_rate"), arg("year_pay"), arg("cap"));
    m.def("capped_tax", over_arrays(&cost::capped_tax<double>), doc("cost::capped_tax"),
          arg("tax_rate"), arg("earned"), arg("pay"), arg("cap"));
    m.def("leave_factor", over_arrays(&cost::leave_factor<double>), doc("cost::leave_factor"),
          arg("paid"), arg("worked"));
    m.def("overtime_base", over_arrays(&cost::overtime_base<double>), doc("cost::overtime_base"),
          arg("cash"), arg("basic"));
    m.def("week_pay", over_arrays(&cost::week_pay<double>), doc("cost::week_pay"), arg("hours"),
          arg("cash"), arg("fringe"), arg("basic"), arg("limit"), arg("factor"));
    m.def("labour_hour", over_arrays(&cost::labour_hour<double>), doc("cost::labour_hour"),
          arg("cash"), arg("fringe"), arg("burden"), arg("leave"), arg("allowance"));
    m.def("overtime_premium", over_arrays(&cost::overtime_premium<double>),
          doc("cost::overtime_premium"), arg("cash"), arg("basic"), arg("factor"), arg("burden"));
    m.def("show_up_time", over_arrays(&cost::show_up_time<double>), doc("cost::show_up_time"),
          arg("worked"), arg("least"));
}

void bind_equipment(py::module_& m) {
    using py::arg;
    m.def("straight_line", over_arrays(&cost::straight_line<double>), doc("cost::straight_line"),
          arg("price"), arg("salvage"), arg("years"));
    m.def("declining_balance", over_arrays(&cost::declining_balance<double>),
          doc("cost::declining_balance"), arg("price"), arg("salvage"), arg("share"), arg("year"));
    m.def("sum_of_years", over_arrays(&cost::sum_of_years<double>), doc("cost::sum_of_years"),
          arg("price"), arg("salvage"), arg("years"), arg("year"));
    m.def("average_investment", over_arrays(&cost::average_investment<double>),
          doc("cost::average_investment"), arg("price"), arg("salvage"), arg("years"));
    m.def("ownership_by_investment", over_arrays(&cost::ownership_by_investment<double>),
          doc("cost::ownership_by_investment"), arg("price"), arg("salvage"), arg("years"),
          arg("interest"), arg("keeping"));
    m.def("ownership_by_recovery", over_arrays(&cost::ownership_by_recovery<double>),
          doc("cost::ownership_by_recovery"), arg("price"), arg("salvage"), arg("years"),
          arg("interest"), arg("keeping"));
    m.def("hourly", over_arrays(&cost::hourly<double>), doc("cost::hourly"), arg("annual"),
          arg("hours"));
    m.def("fuel", over_arrays(&cost::fuel<double>), doc("cost::fuel"), arg("power"),
          arg("fuel_use"), arg("load"), arg("price"));
    m.def("updated_fuel", over_arrays(&cost::updated_fuel<double>), doc("cost::updated_fuel"),
          arg("fuel"), arg("price"), arg("base"));
    m.def("tyres", over_arrays(&cost::tyres<double>), doc("cost::tyres"), arg("set"), arg("life"),
          arg("repair"));
    m.def("repair", over_arrays(&cost::repair<double>), doc("cost::repair"), arg("depreciation"),
          arg("repair"));
    m.def("equipment_hour", over_arrays(&cost::equipment_hour<double>), doc("cost::equipment_hour"),
          arg("ownership"), arg("operating"), arg("utilisation"));
    m.def("standby", over_arrays(&cost::standby<double>), doc("cost::standby"), arg("ownership"),
          arg("share"));
    m.def("break_even_time", over_arrays(&cost::break_even_time<double>),
          doc("cost::break_even_time"), arg("fixed"), arg("own_rate"), arg("hire_rate"));
    m.def("mobilization", over_arrays(&cost::mobilization<double>), doc("cost::mobilization"),
          arg("pieces"), arg("distance"), arg("price"), arg("fixed"));
}

void bind_contract(py::module_& m) {
    using py::arg;
    m.def("hydrant_water", over_arrays(&cost::hydrant_water<double>), doc("cost::hydrant_water"),
          arg("volume"), arg("price"), arg("fee"));
    m.def("hauled_water", over_arrays(&cost::hauled_water<double>), doc("cost::hauled_water"),
          arg("volume"), arg("price"), arg("tank"), arg("trip"), arg("rate"));
    m.def("disposal_by_mass", over_arrays(&cost::disposal_by_mass<double>),
          doc("cost::disposal_by_mass"), arg("mass"), arg("price"), arg("least"));
    m.def("disposal_by_load", over_arrays(&cost::disposal_by_load<double>),
          doc("cost::disposal_by_load"), arg("loads"), arg("charge"));
    m.def("varied_payment", over_arrays(&cost::varied_payment<double>), doc("cost::varied_payment"),
          arg("quantity"), arg("planned"), arg("price"), arg("limit"), arg("price_over"),
          arg("price_under"));
    m.def("retained", over_arrays(&cost::retained<double>), doc("cost::retained"), arg("earned"),
          arg("share"), arg("kept"), arg("limit"));
    m.def("conversion_differential", over_arrays(&cost::conversion_differential<double>),
          doc("cost::conversion_differential"), arg("personnel_cost"), arg("share"), arg("most"));
    m.def("unit_cost", over_arrays(&cost::unit_cost<double>), doc("cost::unit_cost"), arg("amount"),
          arg("quantity"));
    m.def("hire", over_arrays(&cost::hire<double>), doc("cost::hire"), arg("time"), arg("pieces"),
          arg("rate"));
    m.def("distributed", over_arrays(&cost::distributed<double>), doc("cost::distributed"),
          arg("indirect"), arg("direct"), arg("all"));
}
} // namespace

void bind_cost(py::module_& m) {
    using py::arg;
    bind_interest(m);
    bind_wages(m);
    bind_equipment(m);
    bind_contract(m);
    m.def("retainage", &retainage, doc("cost::retainage"), arg("earned"), arg("share"),
          arg("limit_share"), arg("release_after"), arg("interest"));
    m.def("built_up_rate", &built_up_rate, "The rate that parts in SI come to, per second.",
          arg("kind"), arg("parts"));
    m.def("rate_parts", &rate_parts,
          "Rows of name, label, SI unit, whether it is required, and what it needs besides.",
          arg("kind"));
    m.def("unit_costs", &unit_cost_columns, doc("estimate::unit_costs"), arg("estimate"));
    m.def(
        "ownership_names",
        [] {
            return std::vector<std::string_view>(cost::ownership_names.begin(),
                                                 cost::ownership_names.end());
        },
        "How ownership may be reckoned, in the order of the values of that part.");
}

} // namespace scupper::python
