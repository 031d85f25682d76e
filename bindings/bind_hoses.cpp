// The shipped hoses and fittings as columns, in a system of units.
#include "docstrings.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"
#include "value_columns.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using estimate::Show;

constexpr std::string_view flow_key = "nozzle[tip].flow";

Table hose_columns(const std::string& units) {
    const Show show(units, "currency");
    const std::vector<HoseKind>& hoses = json::shipped_hose_library().hoses;
    ValueColumns bore("hose", "bore", dim::length, show),
        roughness("hose", "roughness", dim::length, show),
        coefficient("hose", "coefficient", dim::none, show),
        pressure("hose", "working_pressure", dim::pressure, show);
    std::vector<double> nominal;
    for (const HoseKind& hose : hoses) {
        nominal.push_back(show.number(hose.nominal_bore, dim::length, "hose[kind].bore"));
        bore.add(hose.bore);
        roughness.add(hose.roughness);
        coefficient.add(hose.coefficient);
        pressure.add(hose.working_pressure);
    }
    Table table;
    table.emplace_back("name", "1", texts(hoses, [](const HoseKind& h) { return h.name; }));
    table.emplace_back("construction", "1",
                       texts(hoses, [](const HoseKind& h) { return h.construction; }));
    table.emplace_back("nominal_bore", show.unit(dim::length, "hose[kind].bore").name,
                       py::cast(nominal));
    for (const ValueColumns* value : {&bore, &roughness, &coefficient, &pressure}) {
        value->put(table);
    }
    table.emplace_back("note", "1", texts(hoses, [](const HoseKind& h) { return h.note; }));
    return table;
}

Table fitting_columns() {
    const Show show("si", "currency");
    const std::vector<FittingKind>& fittings = json::shipped_hose_library().fittings;
    ValueColumns loss("fitting", "loss_coefficient", dim::none, show);
    for (const FittingKind& fitting : fittings) {
        loss.add(fitting.loss_coefficient);
    }
    Table table;
    table.emplace_back("name", "1", texts(fittings, [](const FittingKind& f) { return f.name; }));
    loss.put(table);
    table.emplace_back("note", "1", texts(fittings, [](const FittingKind& f) { return f.note; }));
    return table;
}

Table coefficient_columns(const std::string& units) {
    const Show show(units, "currency");
    std::vector<std::string> hose;
    std::vector<PublishedCoefficient> all;
    for (const HoseKind& kind : json::shipped_hose_library().hoses) {
        hose.insert(hose.end(), kind.published.size(), kind.name);
        all.insert(all.end(), kind.published.begin(), kind.published.end());
    }
    using P = const PublishedCoefficient&;
    const auto flow = [&](P p) {
        return p.flow ? show.number(*p.flow, dim::flow, flow_key) : absent;
    };
    Table table;
    table.emplace_back("hose", "1", py::cast(hose));
    table.emplace_back("coefficient", "1", numbers<double>(all, [](P p) { return p.value; }));
    table.emplace_back("flow", show.unit(dim::flow, flow_key).name, numbers<double>(all, flow));
    table.emplace_back("source", "1", texts(all, [](P p) { return p.origin.source; }));
    table.emplace_back("date", "1", texts(all, [](P p) { return p.origin.date; }));
    table.emplace_back("basis", "1", texts(all, [](P p) { return p.basis; }));
    table.emplace_back("note", "1", texts(all, [](P p) { return p.origin.note; }));
    return table;
}

} // namespace

void bind_hoses(py::module_& m) {
    m.def("hoses", &hose_columns, doc("HoseKind"), py::arg("units"));
    m.def("fittings", &fitting_columns, doc("FittingKind"));
    m.def("published_coefficients", &coefficient_columns, doc("PublishedCoefficient"),
          py::arg("units"));
}

} // namespace scupper::python
