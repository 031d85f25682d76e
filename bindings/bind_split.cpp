// The split of a programme: arrays for a solver, and what its answer means.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "scupper/delivery.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <pybind11/stl.h>

namespace scupper::python {

namespace {

using Times = std::vector<std::pair<std::string, std::vector<double>>>;

/// Structures, what their hours are of, and rules of one split.
struct SplitProblem {
    std::vector<delivery::SplitItem> items;
    std::vector<std::string> resources;
    delivery::SplitRules rules;
};

SplitProblem problem_of(const std::array<double, 3>& on_top, const std::vector<std::string>& names,
                        const std::vector<std::string>& regions, const std::vector<double>& direct,
                        const std::vector<double>& wages, const std::vector<double>& price,
                        const Times& times, const std::vector<double>& size) {
    delivery::Case<double> given = delivery::empty_case();
    given[delivery::Input::administration] = on_top[0];
    given[delivery::Input::inspection] = on_top[1];
    given[delivery::Input::supervision] = on_top[2];
    SplitProblem problem;
    for (const auto& [resource, hours] : times) {
        problem.resources.push_back(resource);
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        std::vector<double> of_item;
        for (const auto& [resource, hours] : times) {
            of_item.push_back(hours.at(i));
        }
        problem.items.push_back(delivery::split_item(given, names[i], regions.at(i), direct.at(i),
                                                     wages.at(i), price.at(i), std::move(of_item),
                                                     size.at(i)));
    }
    return problem;
}

delivery::SavingOver saving_over(const std::string& word) {
    const auto& names = delivery::saving_over_names;
    const auto* found = std::find(names.begin(), names.end(), word);
    if (found == names.end()) {
        throw UnknownNameError(
            {"delivery.saving", "saving", "\"" + word + "\"", "nothing, contract, programme"});
    }
    return static_cast<delivery::SavingOver>(found - names.begin());
}

/// The same structures under rules; hours there are of the first of the resources.
SplitProblem with_rules(const SplitProblem& p, const std::vector<double>& there, double kept,
                        double per_contract, std::size_t contracts, double least, double most,
                        bool within_regions, bool together, bool nothing_in_house,
                        const std::string& saving, const std::array<double, 3>& law) {
    std::vector<delivery::SplitLimit> limits;
    for (std::size_t r = 0; r < there.size(); ++r) {
        limits.push_back({p.resources.at(r), there[r]});
    }
    return {p.items,
            p.resources,
            {.limits = std::move(limits),
             .kept = kept,
             .per_contract = per_contract,
             .contracts = contracts,
             .least = least,
             .most = most,
             .within_regions = within_regions,
             .together = together,
             .nothing_in_house = nothing_in_house,
             .saving = {saving_over(saving), law[0], law[1], law[2]}}};
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
    c["whole"] = array(std::move(model.whole));
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
    c["saving_asked"] = s.saving_asked;
    c["compared"] = s.compared;
    c["times"] = s.times;
    const auto out = [&](auto member) {
        std::vector<double> column;
        for (const delivery::ComparedWork& work : s.out) {
            column.push_back(static_cast<double>(work.*member));
        }
        return column;
    };
    using Work = delivery::ComparedWork;
    c["out"] = std::map<std::string, std::vector<double>>{
        {"contract", out(&Work::contract)}, {"structures", out(&Work::structures)},
        {"in_house", out(&Work::in_house)}, {"by_contract", out(&Work::by_contract)},
        {"saved", out(&Work::saved)},       {"asked", out(&Work::asked)},
        {"meets", out(&Work::meets)}};
    c["contracts"] = s.contracts;
    return c;
}

} // namespace

void bind_split(py::module_& m) {
    using py::arg;
    py::class_<SplitProblem>(m, "SplitProblem", doc("delivery::SplitRules"))
        .def(py::init(&problem_of), arg("on_top"), arg("names"), arg("regions"), arg("direct"),
             arg("wages"), arg("price"), arg("times"), arg("size"))
        .def_readonly("resources", &SplitProblem::resources, doc("delivery::SplitLimit::name"))
        .def("under", &with_rules, doc("delivery::SplitRules"), arg("there"), arg("kept"),
             arg("per_contract"), arg("contracts"), arg("least"), arg("most"),
             arg("within_regions"), arg("together"), arg("nothing_in_house"), arg("saving"),
             arg("law"))
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
    m.def(
        "equipment_times",
        [](const inventory::Inventory& inv, const PlanHandle& plan, unsigned threads) {
            std::vector<std::vector<double>> times;
            {
                const py::gil_scoped_release release;
                times = delivery::equipment_times(inv.structures, *plan.plan, threads);
            }
            Times named;
            for (std::size_t row = 0; row < times.size(); ++row) {
                named.emplace_back(plan.plan->job.equipment[row].name, std::move(times[row]));
            }
            return named;
        },
        doc("delivery::equipment_times"), arg("inventory"), arg("plan"), arg("threads"));
}

} // namespace scupper::python
