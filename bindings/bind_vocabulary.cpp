// The words that everything else relies on.
#include "docstrings.hpp"
#include "parts.hpp"
#include "scupper/error.hpp"
#include "scupper/random.hpp"
#include "scupper/schema.hpp"
#include "scupper/takeoff.hpp"
#include "scupper/uncertain.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

std::string near(const std::string& wrong, const std::vector<std::string>& known) {
    const std::vector<std::string_view> views(known.begin(), known.end());
    return nearest_name(wrong, views);
}

std::vector<std::string_view> basis_names() {
    std::vector<std::string_view> names;
    for (const Basis b : {Basis::measured, Basis::element, Basis::recorded, Basis::given,
                          Basis::inferred, Basis::assumed}) {
        names.push_back(basis_name(b));
    }
    return names;
}

std::vector<std::string_view> verdict_names() {
    std::vector<std::string_view> names;
    for (int v = 0; v <= static_cast<int>(takeoff::Verdict::no_dimensions); ++v) {
        names.push_back(takeoff::verdict_name(static_cast<takeoff::Verdict>(v)));
    }
    return names;
}

} // namespace

void bind_vocabulary(py::module_& m) {
    m.def("key_listing", &key_listing, doc("key_listing"));
    m.def(
        "job_keys", [] { return std::vector(job_keys.begin(), job_keys.end()); },
        "Keys of a job document [text, n].");
    m.def("basis_names", &basis_names, "The words for how a value is known, the surest first.");
    m.def("verdict_names", &verdict_names,
          "The words for whether a structure is washed as a bridge, in the order of their codes.");
    m.def("nearest_name", &near, doc("nearest_name"), py::arg("wrong"), py::arg("known"));
    m.def(
        "hash_text", [](const std::string& text) { return hash_text(text); }, doc("hash_text"),
        py::arg("text"));
}

} // namespace scupper::python
