// In-house or contract: the case as a list of numbers, both ways, where it turns, how sure it is.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "scupper/delivery.hpp"
#include "scupper/error.hpp"
#include "scupper/unit.hpp"
#include "shown_derivation.hpp"

#include <pybind11/functional.h>
#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using Values = std::vector<double>;
using Totals = std::pair<double, double>;

delivery::Case<double> case_of(const Values& values) {
    delivery::Case<double> c;
    if (values.size() != c.values.size()) {
        throw InputError({"delivery.case", "case", std::to_string(values.size()) + " numbers",
                          std::to_string(c.values.size())});
    }
    std::copy(values.begin(), values.end(), c.values.begin());
    return c;
}

Values values_of(const delivery::Case<double>& c) {
    return {c.values.begin(), c.values.end()};
}

Columns field_columns() {
    Columns table;
    const auto& t = delivery::case_table;
    table["key"] = texts(t, [](const delivery::CaseField& f) { return f.key; });
    table["label"] = texts(t, [](const delivery::CaseField& f) { return f.label; });
    table["si_unit"] =
        texts(t, [](const delivery::CaseField& f) { return si_unit_name(f.dimension); });
    table["least"] = numbers<double>(t, [](const delivery::CaseField& f) { return f.least; });
    table["most"] = numbers<double>(t, [](const delivery::CaseField& f) { return f.most; });
    table["without"] = numbers<double>(t, [](const delivery::CaseField& f) { return f.without; });
    table["source"] = texts(t, [](const delivery::CaseField& f) { return f.source; });
    return table;
}

/// The unit that a job shows each input in.
std::vector<std::string> field_units(const PlanHandle& plan) {
    const estimate::Show show(plan.plan->job);
    std::vector<std::string> units;
    for (const delivery::CaseField& f : delivery::case_table) {
        units.push_back(show.unit(f.dimension).name);
    }
    return units;
}

std::span<const double> span_of(const Array& a) {
    return {a.data(), static_cast<std::size_t>(a.size())};
}

Values priced_case(const Values& terms, const Array& areas, const Array& direct, const Array& wages,
                   const Array& crew_time, const Array& price) {
    return values_of(
        delivery::priced_case(case_of(terms), {span_of(areas), span_of(direct), span_of(wages),
                                               span_of(crew_time), span_of(price)}));
}

/// Lines with what they count in, then the sums.
py::typing::Tuple<Columns, Columns> compare(const Values& values) {
    const delivery::Case<double> c = case_of(values);
    delivery::check(c);
    const delivery::Ways<double> ways = delivery::compare_ways(c);
    const auto& t = delivery::line_table;
    Columns lines;
    lines["line"] = texts(t, [](const delivery::LineField& f) { return f.key; });
    lines["label"] = texts(t, [](const delivery::LineField& f) { return f.label; });
    lines["side"] = texts(t, [](const delivery::LineField& f) {
        return delivery::side_names.at(static_cast<std::size_t>(f.side));
    });
    lines["amount"] = numbers<double>(ways.lines, [](const Amount<>& a) { return a.si(); });
    lines["input"] = numbers<std::size_t>(
        t, [](const delivery::LineField& f) { return static_cast<std::size_t>(f.from); });
    lines["why"] = texts(t, [](const delivery::LineField& f) { return f.why; });
    Columns sums;
    sums["avoidable"] = ways.avoidable.si();
    sums["full"] = ways.full.si();
    sums["contract"] = ways.contract.si();
    sums["differential"] = ways.differential.si();
    sums["crew_time"] = ways.crew_time.si();
    for (const std::string_view name : delivery::basis_names) {
        sums[py::str("advantage_" + std::string(name))] =
            delivery::advantage(ways, delivery::basis_of(name)).si();
    }
    return py::make_tuple(lines, sums);
}

double advantage_of(const Values& values, const std::string& basis) {
    const delivery::Case<double> c = case_of(values);
    delivery::check(c);
    return delivery::advantage(delivery::compare_ways(c), delivery::basis_of(basis)).si();
}

double advantage_at(const Values& values, const std::string& basis, const Totals& totals,
                    const Totals& estimated) {
    return delivery::advantage_at(case_of(values), delivery::basis_of(basis), totals.first,
                                  estimated.first, totals.second, estimated.second);
}

ShownDerivation explain(const Values& values, const std::string& basis,
                        const std::vector<std::string>& sources, const PlanHandle& plan,
                        std::size_t depth) {
    std::array<std::string, delivery::case_table.size()> all{};
    std::copy_n(sources.begin(), std::min(sources.size(), all.size()), all.begin());
    return {delivery::explain(case_of(values), delivery::basis_of(basis), all),
            estimate::Show(plan.plan->job), depth};
}

using RangeRow = std::tuple<std::string, double, double, double>;

Columns sensitivity(const Values& values, const std::string& basis,
                    const std::vector<RangeRow>& ranges) {
    std::vector<delivery::GivenRange> given;
    for (const auto& [key, low, likely, high] : ranges) {
        given.push_back({delivery::input_of(key), low, high});
    }
    const auto rows = delivery::sensitivity(case_of(values), delivery::basis_of(basis), given);
    const auto field = [](const delivery::Sensitivity& s) -> const delivery::CaseField& {
        return delivery::case_table.at(static_cast<std::size_t>(s.input));
    };
    const auto number = [&](double delivery::Sensitivity::*member) {
        return numbers<double>(rows,
                               [member](const delivery::Sensitivity& s) { return s.*member; });
    };
    Columns table;
    table["key"] = texts(rows, [&](const delivery::Sensitivity& s) { return field(s).key; });
    table["label"] = texts(rows, [&](const delivery::Sensitivity& s) { return field(s).label; });
    table["value"] = number(&delivery::Sensitivity::value);
    table["low"] = number(&delivery::Sensitivity::low);
    table["high"] = number(&delivery::Sensitivity::high);
    table["given"] = numbers<bool>(rows, [](const delivery::Sensitivity& s) { return s.ranged; });
    table["at_low"] = number(&delivery::Sensitivity::at_low);
    table["at_high"] = number(&delivery::Sensitivity::at_high);
    table["turns"] = numbers<bool>(rows, [](const delivery::Sensitivity& s) { return s.turns; });
    table["flips_at"] =
        numbers<double>(rows, [](const delivery::Sensitivity& s) { return s.flip.nearest; });
    table["away"] =
        numbers<double>(rows, [](const delivery::Sensitivity& s) { return s.flip.away; });
    return table;
}

std::tuple<double, Values, double, double> flip(const Values& values, const std::string& key,
                                                const std::string& basis) {
    const delivery::Flip f =
        delivery::flip_of(case_of(values), delivery::input_of(key), delivery::basis_of(basis));
    return {f.nearest, f.all, f.low, f.high};
}

Values drawn(const Values& values, const std::string& basis, const Array& direct,
             const Array& crew_time, const Array& price, const std::array<double, 3>& estimated,
             std::size_t replicates, std::uint64_t seed, const std::vector<RangeRow>& ranges) {
    std::vector<delivery::DrawnInput> inputs;
    for (const auto& [key, low, likely, high] : ranges) {
        inputs.push_back({delivery::input_of(key), {low, likely, high}});
    }
    const delivery::PairedTotals totals{
        span_of(direct), span_of(crew_time), span_of(price), estimated[0],
        estimated[1],    estimated[2],       replicates,     seed};
    return delivery::drawn_advantages(case_of(values), delivery::basis_of(basis), totals, inputs);
}

Columns chance(const Array& advantages, std::size_t replicates) {
    const delivery::Chance c = delivery::chance_of(span_of(advantages), replicates);
    const auto pair = [](const simulate::Estimated& e) {
        return Totals(e.value, e.standard_error);
    };
    Columns table;
    table["cheaper"] = pair(c.cheaper);
    table["advantage"] = pair(c.advantage);
    table["regret_in_house"] = pair(c.regret_in_house);
    table["regret_contract"] = pair(c.regret_contract);
    table["information"] = pair(c.information);
    table["quantiles"] = c.quantiles;
    return table;
}

delivery::Prices prices_of(const std::string& word) {
    const bool real = word == "real" || word == "constant";
    if (!real && word != "nominal" && word != "current") {
        throw UnknownNameError({"delivery.prices", "prices", "\"" + word + "\"",
                                "real (constant prices) or nominal (current prices)"});
    }
    return real ? delivery::Prices::constant : delivery::Prices::current;
}

Columns rate_columns() {
    const auto& t = delivery::discount_rate_table;
    const auto edition = [](const delivery::DiscountRate& r) {
        return *std::find_if(
            delivery::rate_editions.begin(), delivery::rate_editions.end(),
            [&](const delivery::RateEdition& e) { return e.edition == r.edition; });
    };
    Columns table;
    table["edition"] = numbers<int>(t, [](const delivery::DiscountRate& r) { return r.edition; });
    table["kind"] = texts(t, [](const delivery::DiscountRate& r) {
        return r.prices == delivery::Prices::constant ? "real" : "nominal";
    });
    table["years"] = numbers<double>(t, [](const delivery::DiscountRate& r) { return r.years; });
    table["rate"] = numbers<double>(t, [](const delivery::DiscountRate& r) { return r.rate; });
    table["source"] = texts(t, [&](const delivery::DiscountRate& r) { return edition(r).source; });
    table["note"] = texts(t, [&](const delivery::DiscountRate& r) { return edition(r).seen; });
    return table;
}

void bind_equipment_choice(py::module_& m) {
    using py::arg;
    py::class_<delivery::Purchase>(m, "Purchase", doc("delivery::Purchase"))
        .def(py::init(
                 [](double price, double loses, double operating, double growth, double interest) {
                     return delivery::Purchase{price, loses, operating, growth, interest};
                 }),
             arg("price"), arg("loses"), arg("operating"), arg("growth"), arg("interest"));
    m.def("annual_cost", &delivery::annual_cost, doc("delivery::annual_cost"), arg("purchase"),
          arg("years"));
    m.def(
        "economic_life",
        [](const delivery::Purchase& p, int most) {
            const delivery::EconomicLife life = delivery::economic_life(p, most);
            return std::tuple(life.years, life.cost, life.by_age, life.at_end);
        },
        doc("delivery::economic_life"), arg("purchase"), arg("most"));
    m.def(
        "net_present_value",
        [](const Array& flows, const std::string& prices, double rate, const std::string& rate_of,
           std::optional<double> inflation) {
            return delivery::net_present_value(span_of(flows), prices_of(prices), rate,
                                               prices_of(rate_of), inflation);
        },
        doc("delivery::net_present_value"), arg("flows"), arg("prices"), arg("rate"),
        arg("rate_of"), arg("inflation"));
    m.def("discount_rates", &rate_columns, doc("delivery::DiscountRate"));
    m.def(
        "discount_rate",
        [](int edition, const std::string& kind, double years) {
            return delivery::discount_rate(edition, prices_of(kind), years);
        },
        doc("delivery::discount_rate"), arg("edition"), arg("kind"), arg("years"));
    m.def(
        "available_time",
        [](double number, double days, double shifts, double shift, double leave, double lost) {
            return delivery::available_time(number, days, shifts, Time<>(shift), leave, lost).si();
        },
        doc("delivery::available_time"), arg("number"), arg("days"), arg("shifts"), arg("shift"),
        arg("leave"), arg("lost"));
}

} // namespace

void bind_delivery(py::module_& m) {
    using py::arg;
    m.def("delivery_inputs", &field_columns, doc("delivery::CaseField"));
    m.def(
        "guess_mean",
        [](double low, double likely, double high) {
            return ThreePoint{low, likely, high}.mean();
        },
        doc("ThreePoint::mean"), arg("low"), arg("likely"), arg("high"));
    m.def("delivery_units", &field_units, doc("delivery::CaseField"), arg("plan"));
    m.def("delivery_case", &priced_case, doc("delivery::priced_case"), arg("terms"), arg("areas"),
          arg("direct"), arg("wages"), arg("crew_time"), arg("price"));
    m.def(
        "two_part",
        [](const Array& costs, const Array& areas) {
            const delivery::TwoPart p = delivery::two_part(span_of(costs), span_of(areas));
            return std::array{p.each, p.by_area, p.explains};
        },
        doc("delivery::two_part"), arg("costs"), arg("areas"));
    m.def("compare_ways", &compare, doc("delivery::compare_ways"), arg("values"));
    m.def("advantage", &advantage_of, doc("delivery::advantage"), arg("values"), arg("basis"));
    m.def("advantage_at", &advantage_at, doc("delivery::advantage_at"), arg("values"), arg("basis"),
          arg("totals"), arg("estimated"));
    m.def(
        "one_way_distance",
        [](double travel, double speed) {
            return delivery::one_way_distance(Time<>(travel), Speed<>(speed)).si();
        },
        doc("delivery::one_way_distance"), arg("travel"), arg("speed"));
    m.def("explain_ways", &explain, doc("delivery::explain"), arg("values"), arg("basis"),
          arg("sources"), arg("plan"), arg("depth"));
    m.def("way_sensitivity", &sensitivity, doc("delivery::sensitivity"), arg("values"),
          arg("basis"), arg("ranges"));
    m.def("way_flip", &flip, doc("delivery::flip_of"), arg("values"), arg("key"), arg("basis"));
    m.def("linear_break_even", &delivery::linear_break_even, doc("delivery::linear_break_even"),
          arg("fixed"), arg("unit"), arg("other_fixed"), arg("other_unit"));
    m.def("crossings", &delivery::crossings, doc("delivery::crossings"), arg("f"), arg("low"),
          arg("high"), arg("parts"), arg("tolerance"));
    m.def("drawn_advantages", &drawn, doc("delivery::drawn_advantages"), arg("values"),
          arg("basis"), arg("direct"), arg("crew_time"), arg("price"), arg("estimated"),
          arg("replicates"), arg("seed"), arg("ranges"));
    m.def("chance_of", &chance, doc("delivery::chance_of"), arg("advantages"), arg("replicates"));
    bind_equipment_choice(m);
}

} // namespace scupper::python
