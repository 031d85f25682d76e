// The extension module scupper._core: one register function a part, no arithmetic.
#include "parts.hpp"

PYBIND11_MODULE(_core, m, py::mod_gil_not_used()) {
    using namespace scupper::python;
    m.doc() = "The compiled core of scupper. Import `scupper` instead.";
    m.attr("__version__") = SCUPPER_VERSION;
    bind_errors(m);
    bind_vocabulary(m);
    bind_units(m);
    bind_hydraulics(m);
    bind_nozzles(m);
    bind_vacuum(m);
    bind_hoses(m);
    bind_hose_lay(m);
    bind_structure(m);
    bind_inventory(m);
    bind_elements(m);
    bind_structures(m);
    bind_stored(m);
    bind_traffic(m);
    bind_closure(m);
    bind_debris(m);
    bind_dirt_table(m);
    bind_take_off(m);
    bind_rates(m);
    bind_job(m);
    bind_derivation(m);
    bind_estimate(m);
    bind_cost(m);
    bind_remedies(m);
    bind_alternatives(m);
    bind_schedule(m);
    bind_road_users(m);
    bind_workbook(m);
    bind_programme(m);
    bind_outings(m);
    bind_sensitivity(m);
    bind_simulation(m);
    bind_survey_list(m);
    bind_learning(m);
    bind_saved_estimate(m);
    bind_contract_money(m);
    bind_delivery(m);
    bind_split(m);
    bind_bid_review(m);
    bind_pay_items(m);
    bind_read_bids(m);
}
