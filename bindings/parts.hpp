#pragma once
// One register function a part; module.cpp calls them.

#include <pybind11/pybind11.h>

namespace py = pybind11;

namespace scupper::python {

void bind_errors(py::module_& m);
void bind_units(py::module_& m);
void bind_hydraulics(py::module_& m);
void bind_nozzles(py::module_& m);
void bind_vacuum(py::module_& m);
void bind_hoses(py::module_& m);
void bind_hose_lay(py::module_& m);
void bind_structure(py::module_& m);
void bind_inventory(py::module_& m);
void bind_elements(py::module_& m);
void bind_structures(py::module_& m);
void bind_stored(py::module_& m);
void bind_closure(py::module_& m);
void bind_traffic(py::module_& m);
void bind_debris(py::module_& m);
void bind_dirt_table(py::module_& m);
void bind_cost(py::module_& m);
void bind_rates(py::module_& m);
void bind_take_off(py::module_& m);
void bind_job(py::module_& m);
void bind_derivation(py::module_& m);
void bind_estimate(py::module_& m);
void bind_remedies(py::module_& m);
void bind_alternatives(py::module_& m);
void bind_schedule(py::module_& m);
void bind_contract_money(py::module_& m);
void bind_road_users(py::module_& m);
void bind_workbook(py::module_& m);
void bind_programme(py::module_& m);
void bind_outings(py::module_& m);
void bind_sensitivity(py::module_& m);
void bind_simulation(py::module_& m);
void bind_survey_list(py::module_& m);
void bind_learning(py::module_& m);
void bind_saved_estimate(py::module_& m);
void bind_delivery(py::module_& m);
void bind_split(py::module_& m);
void bind_bid_review(py::module_& m);
void bind_pay_items(py::module_& m);
void bind_read_bids(py::module_& m);
void bind_vocabulary(py::module_& m);

} // namespace scupper::python
