// The split of a programme: arrays for a solver, and what its answer means.
#include "convert.hpp"
#include "docstrings.hpp"
#include "scupper/delivery.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

/// Structures and rules of one split.
struct SplitProblem {
    std::vector<delivery::SplitItem> items;
    delivery::SplitRules rules;
};

SplitProblem problem_of(double administration, double inspection,
                        const std::vector<std::string>& names,
                        const std::vector<std::string>& regions, const std::vector<double>& direct,
                        const std::vector<double>& price, const std::vector<double>& time,
                        const std::vector<double>& size) {
    delivery::Case<double> given = delivery::empty_case();
    given[delivery::Input::administration] = administration;
    given[delivery::Input::inspection] = inspection;
    SplitProblem problem;
    for (std::size_t i = 0; i < names.size(); ++i) {
        problem.items.push_back(delivery::split_item(given, names[i], regions.at(i), direct.at(i),
                                                     price.at(i), time.at(i), size.at(i)));
    }
    return problem;
}

/// The same structures under rules, each left as it is where it is not named.
SplitProblem with_rules(const SplitProblem& p, double time_there, double kept, double per_contract,
                        std::size_t contracts, double least, double most, bool within_regions,
                        bool together, bool nothing_in_house) {
    return {p.items,
            {.time_there = time_there,
             .kept = kept,
             .per_contract = per_contract,
             .contracts = contracts,
             .least = least,
             .most = most,
             .within_regions = within_regions,
             .together = together,
             .nothing_in_house = nothing_in_house}};
}

Columns model_of(const SplitProblem& p) {
    delivery::SplitModel model = delivery::split_model(p.items, p.rules);
    const auto array = [](auto&& values) {
        const auto size = static_cast<py::ssize_t>(values.size());
        return hand_over(std::move(values), {size});
    };
    Columns c;
    c["cost"] = array(std::move(model.cost));
    c["upper"] = array(std::move(model.upper));
    c["starts"] = array(std::move(model.starts));
    c["columns"] = array(std::move(model.columns));
    c["entries"] = array(std::move(model.entries));
    c["low"] = array(std::move(model.low));
    c["high"] = array(std::move(model.high));
    return c;
}

Columns split_columns(const delivery::Split& s) {
    Columns c;
    c["to"] = s.to;
    c["in_house"] = s.in_house;
    c["contract"] = s.contract;
    c["kept"] = s.kept;
    c["letting"] = s.letting;
    c["cost"] = s.cost;
    c["time"] = s.time;
    c["contracts"] = s.contracts;
    return c;
}

} // namespace

void bind_split(py::module_& m) {
    using py::arg;
    py::class_<SplitProblem>(m, "SplitProblem", doc("delivery::SplitRules"))
        .def(py::init(&problem_of), arg("administration"), arg("inspection"), arg("names"),
             arg("regions"), arg("direct"), arg("price"), arg("time"), arg("size"))
        .def("under", &with_rules, doc("delivery::SplitRules"), arg("time_there"), arg("kept"),
             arg("per_contract"), arg("contracts"), arg("least"), arg("most"),
             arg("within_regions"), arg("together"), arg("nothing_in_house"))
        .def("model", &model_of, doc("delivery::split_model"))
        .def(
            "split",
            [](const SplitProblem& p, const std::vector<double>& unknowns) {
                return split_columns(delivery::split_of(p.items, p.rules, unknowns));
            },
            doc("delivery::split_of"), arg("unknowns"))
        .def(
            "priced",
            [](const SplitProblem& p, std::vector<std::size_t> to) {
                return split_columns(delivery::priced_split(p.items, p.rules, std::move(to)));
            },
            doc("delivery::priced_split"), arg("to"))
        .def(
            "fault",
            [](const SplitProblem& p, const std::vector<std::size_t>& to) {
                return delivery::split_fault(p.items, p.rules, to);
            },
            doc("delivery::split_fault"), arg("to"));
}

} // namespace scupper::python
