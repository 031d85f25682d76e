// Which closure a road probably needs.
#include "docstrings.hpp"
#include "parts.hpp"
#include "scupper/closure.hpp"
#include "scupper/structure.hpp"

namespace scupper::python {

void bind_closure(py::module_& m) {
    m.def(
        "kind_by_record",
        [](const Structure& s) {
            return closure::kind_name(closure::kind_by_record(
                {s.codes.lanes_on, s.codes.traffic_direction, s.codes.functional_class}));
        },
        doc("closure::kind_by_record"), py::arg("structure"));
}

} // namespace scupper::python
