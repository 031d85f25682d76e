// Many structures priced.
#include "convert.hpp"
#include "docstrings.hpp"
#include "plan_handle.hpp"
#include "progress.hpp"
#include "scupper/estimate.hpp"
#include "scupper/inventory.hpp"
#include "scupper/simulate/total_draws.hpp"

#include <cstring>
#include <pybind11/stl.h>
#include <pybind11/typing.h>
#include <tuple>

namespace scupper::python {

namespace {

using estimate::Programme;
using estimate::Show;
using estimate::Unpriced;

Programme price_all(const inventory::Inventory& inv, const PlanHandle& plan, unsigned threads,
                    const py::object& progress) {
    const py::gil_scoped_release free;
    return estimate::estimate_all(inv.structures, plan.plan, threads, watcher(progress));
}

std::vector<std::vector<double>> draw_all(const Programme& p, const inventory::Inventory& inv,
                                          const simulate::SimulationSettings& settings,
                                          unsigned threads, const py::object& progress) {
    const py::gil_scoped_release free;
    return simulate::total_samples(p, inv.structures, settings, threads, watcher(progress));
}

/// Key, label, unit and value of every total, then its quantiles, then their standard errors.
class QuantileTable {
  public:
    QuantileTable(const Programme& p, const std::vector<std::vector<double>>& samples)
        : p_(p), samples_(samples), show_(p.plan->job) {}

    Columns totals() const {
        Columns columns;
        columns["key"] = texts(p_.keys, [](const std::string& key) { return key; });
        columns["label"] = texts(p_.keys, [&](const std::string& key) { return field(key).label; });
        columns["unit"] = texts(p_.keys, [&](const std::string& key) {
            return show_.unit(field(key).dimension, key).name;
        });
        columns["value"] = shown(p_.totals);
        return columns;
    }
    std::vector<double> quantiles(double u) const {
        return shown(
            each([u](const auto& sample) { return estimate::sorted_quantile(sample, u); }));
    }
    std::vector<double> errors(double u) const {
        return shown(each([u](const auto& sample) { return estimate::quantile_error(sample, u); }));
    }

  private:
    const LayoutField& field(const std::string& key) const {
        return p_.plan->figures.fields()[estimate::figure_place_of(*p_.plan, key)];
    }
    template <class Get>
    std::vector<double> each(Get get) const {
        std::vector<double> values;
        for (const std::vector<double>& sample : samples_) {
            values.push_back(get(sample));
        }
        return values;
    }
    std::vector<double> shown(const std::vector<double>& si) const {
        std::vector<double> values;
        for (std::size_t i = 0; i < si.size(); ++i) {
            values.push_back(show_.number(si[i], field(p_.keys[i]).dimension, p_.keys[i]));
        }
        return values;
    }

    const Programme& p_;
    const std::vector<std::vector<double>>& samples_;
    Show show_;
};

Columns range_columns(const Programme& p, const inventory::Inventory& inv, std::size_t draws,
                      std::uint64_t seed, unsigned threads, const std::vector<double>& quantiles,
                      const py::object& progress) {
    const auto samples =
        draw_all(p, inv, {.seed = seed, .draws = draws, .replicates = 1}, threads, progress);
    const QuantileTable table(p, samples);
    Columns columns = table.totals();
    py::list values;
    py::list errors;
    for (const double u : quantiles) {
        values.append(table.quantiles(u));
        errors.append(table.errors(u));
    }
    columns["quantiles"] = values;
    columns["errors"] = errors;
    return columns;
}

std::vector<estimate::ProgrammeGuess> guesses_of(const Programme& p,
                                                 const inventory::Inventory& inv, unsigned threads,
                                                 const py::object& progress) {
    const py::gil_scoped_release free;
    return estimate::programme_guesses(p, inv.structures, threads, watcher(progress));
}

Columns guess_columns(const Programme& p, const inventory::Inventory& inv, unsigned threads,
                      const py::object& progress) {
    using estimate::ProgrammeGuess;
    const auto found = guesses_of(p, inv, threads, progress);
    Columns columns;
    columns["key"] = texts(found, [](const ProgrammeGuess& g) { return g.key; });
    columns["label"] = texts(found, [](const ProgrammeGuess& g) { return g.label; });
    columns["structures"] =
        numbers<std::size_t>(found, [](const ProgrammeGuess& g) { return g.structures; });
    columns["worth"] = numbers<double>(found, [](const ProgrammeGuess& g) { return g.worth; });
    columns["total_at_low"] =
        numbers<double>(found, [](const ProgrammeGuess& g) { return g.at_low; });
    columns["total_at_high"] =
        numbers<double>(found, [](const ProgrammeGuess& g) { return g.at_high; });
    return columns;
}

/// Key and unit of every column.
std::vector<std::pair<std::string, std::string>> columns(const Programme& p,
                                                         const std::string& units) {
    const Show show(units, p.plan->job.currency);
    std::vector<std::pair<std::string, std::string>> list;
    for (const std::string& key : p.keys) {
        const LayoutField& field = p.plan->figures.fields()[p.plan->figures.at(key, "programme")];
        list.emplace_back(key, show.unit(field.dimension, key).name);
    }
    return list;
}

py::array_t<double> table(const py::object& self) {
    const auto& p = self.cast<const Programme&>();
    const std::vector<py::ssize_t> shape{static_cast<py::ssize_t>(p.priced.size()),
                                         static_cast<py::ssize_t>(p.keys.size())};
    py::array_t<double> view(shape, p.table.data(), self);
    view.attr("setflags")(py::arg("write") = false);
    return view;
}

/// Everything but the plan, to carry to another process.
using State = py::typing::Tuple<py::object, py::ellipsis>;
using Rows = std::vector<std::tuple<std::size_t, std::string, std::string, std::string>>;

template <class T>
py::bytes bytes_of(const std::vector<T>& values) {
    static_assert(std::is_trivially_copyable_v<T>);
    return py::bytes(reinterpret_cast<const char*>(values.data()), values.size() * sizeof(T));
}

template <class T>
std::vector<T> values_of(const py::handle& item) {
    const auto bytes = item.cast<std::string>();
    std::vector<T> values(bytes.size() / sizeof(T));
    std::memcpy(values.data(), bytes.data(), values.size() * sizeof(T));
    return values;
}

State state_of(const Programme& p) {
    Rows unpriced;
    for (const Unpriced& u : p.unpriced) {
        unpriced.emplace_back(u.index, u.id, u.state, u.reason);
    }
    return py::make_tuple(p.keys, bytes_of(p.priced), bytes_of(p.closures), bytes_of(p.table),
                          bytes_of(p.totals), unpriced);
}

Programme of_state(const PlanHandle& plan, const State& state) {
    Programme p;
    p.plan = plan.plan;
    p.keys = state[0].cast<std::vector<std::string>>();
    p.priced = values_of<std::size_t>(state[1]);
    p.closures = values_of<closure::Kind>(state[2]);
    p.table = values_of<double>(state[3]);
    p.totals = values_of<double>(state[4]);
    for (const auto& [index, id, where, reason] : state[5].cast<Rows>()) {
        p.unpriced.push_back({index, id, where, reason});
    }
    return p;
}

Columns unpriced_columns(const Programme& p) {
    Columns d;
    d["index"] = numbers<std::size_t>(p.unpriced, [](const Unpriced& u) { return u.index; });
    d["state"] = texts(p.unpriced, [](const Unpriced& u) { return u.state; });
    d["structure_id"] = texts(p.unpriced, [](const Unpriced& u) { return u.id; });
    d["reason"] = texts(p.unpriced, [](const Unpriced& u) { return u.reason; });
    return d;
}

} // namespace

void bind_programme(py::module_& m) {
    using py::arg;
    py::class_<Programme>(m, "Programme", doc("estimate::Programme"))
        .def("columns", &columns, "Key and unit of every column: us, metric or si.", arg("units"))
        .def("table", &table, doc("estimate::Programme::table"))
        .def(
            "totals",
            [](const Programme& p) {
                return numbers<double>(p.totals, [](double x) { return x; });
            },
            doc("estimate::Programme::totals"))
        .def(
            "priced",
            [](const Programme& p) {
                return numbers<std::size_t>(p.priced, [](std::size_t i) { return i; });
            },
            doc("estimate::Programme::priced"))
        .def(
            "closures",
            [](const Programme& p) {
                return py::typing::List<py::str>(texts(p.closures, closure::kind_name));
            },
            "How the road is closed at each priced structure: a word of the closure kinds.")
        .def("ranges", &range_columns, doc("simulate::total_samples"), arg("inventory"),
             arg("draws"), arg("seed"), arg("threads"), arg("quantiles"),
             arg("progress").none(true))
        .def("guesses", &guess_columns, doc("estimate::programme_guesses"), arg("inventory"),
             arg("threads"), arg("progress").none(true))
        .def("unpriced", &unpriced_columns, doc("estimate::Unpriced"))
        .def("state", &state_of, "Everything but the job, to carry to another process.")
        .def_static("of_state", &of_state, "The programme that a state belongs to.", arg("plan"),
                    arg("state"))
        .def_static(
            "joined",
            [](const std::vector<const Programme*>& parts) { return estimate::joined(parts); },
            doc("estimate::joined"), arg("parts"));
    m.def("estimate_all", &price_all, doc("estimate::estimate_all"), arg("inventory"), arg("plan"),
          arg("threads"), arg("progress").none(true));
}

} // namespace scupper::python
