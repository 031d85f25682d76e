#include "scupper/delivery/ways.hpp"

#include "require.hpp"
#include "scupper/cost.hpp"

#include <algorithm>
#include <string>

namespace scupper::delivery {

namespace {

/// Lines in the order of line_table.
enum Line : std::size_t {
    direct,
    kept,
    displaced,
    idle,
    supervision,
    overhead,
    facilities,
    price,
    preparation,
    administration,
    inspection,
    conversion,
    differential
};

template <class T>
struct Worker {
    const Case<T>& given;
    Ways<T> ways{};

    const T& in(Input input) const { return given[input]; }
    Amount<T> money(Input input) const { return Amount<T>(in(input)); }
    void line(Line place, const Amount<T>& amount) {
        ways.lines[place] = named(line_table[place].label, amount, line_table[place].key);
    }
    Amount<T> sum(Side side) const {
        Amount<T> total(T(0.0));
        for (std::size_t i = 0; i < line_table.size(); ++i) {
            total = line_table[i].side == side ? total + ways.lines[i] : total;
        }
        return total;
    }

    /// A part for every structure and a part for the area.
    T of_work(Input each, Input by_area) const {
        return in(Input::structures)*in(each) + in(Input::area)*in(by_area);
    }

    void in_house() {
        const T hours = of_work(Input::time_each, Input::time_area);
        ways.crew_time = named("paid crew time", Time<T>(hours));
        line(direct, Amount<T>(of_work(Input::cost_each, Input::cost_area)));
        line(kept, money(Input::kept));
        const T beyond = max_of(T(0.0), hours - in(Input::spare_time));
        line(displaced, Amount<T>(in(Input::displaced_value)*beyond));
        // nothing is owned where no use is rated: any number but 0 will do to divide by
        const T rated = max_of(in(Input::rated_time), T(1.0));
        const T idle_share = max_of(T(0.0), 1.0 - (hours + in(Input::other_time)) / rated);
        line(idle, named("share of rated use not met", idle_share) * money(Input::ownership));
        line(supervision, in(Input::supervision)*wages());
        line(overhead, in(Input::overhead)*wages());
        line(facilities, money(Input::facilities));
    }
    Amount<T> wages() const { return named("wages", in(Input::labour_share)*ways.lines[direct]); }

    void by_contract() {
        line(price, Amount<T>(of_work(Input::price_each, Input::price_area)));
        line(preparation, in(Input::contracts)*money(Input::preparation));
        line(administration, in(Input::administration)*ways.lines[price]);
        line(inspection, in(Input::inspection)*ways.lines[price]);
        const T years = named("number of years", in(Input::years) / factor::year);
        line(conversion,
             cost::capital_recovery_factor(in(Input::interest), years) * money(Input::conversion));
        line(differential,
             least_saving(wages() + ways.lines[supervision], years, in(Input::differential_share),
                          money(Input::differential_most)));
    }
};

} // namespace

Basis basis_of(std::string_view word) {
    const auto* found = std::find(basis_names.begin(), basis_names.end(), word);
    if (found == basis_names.end()) {
        detail::unknown("basis", word, basis_names);
    }
    return static_cast<Basis>(found - basis_names.begin());
}

template <class T>
Amount<T> least_saving(const Amount<T>& personnel, const T& years, const T& share,
                       const Amount<T>& most) {
    const Amount<T> of_all_years = named("personnel cost of all years", years * personnel);
    return cost::conversion_differential(of_all_years, share, most) / years;
}

template <class T>
Ways<T> compare_ways(const Case<T>& given) {
    Worker<T> worker{given};
    worker.in_house();
    worker.by_contract();
    Ways<T> ways = worker.ways;
    ways.avoidable = named("in-house, avoidable cost", worker.sum(Side::avoidable));
    ways.full = named("in-house, full cost", ways.avoidable + worker.sum(Side::overhead));
    ways.contract = named("by contract", worker.sum(Side::contract));
    ways.differential = worker.sum(Side::differential);
    return ways;
}

template <class T>
Amount<T> advantage(const Ways<T>& ways, Basis basis) {
    const Amount<T>& own = basis == Basis::full ? ways.full : ways.avoidable;
    return named("advantage of own people", ways.contract + ways.differential - own);
}

Derivation explain(const Case<double>& given, Basis basis,
                   const std::array<std::string, case_table.size()>& sources) {
    check(given);
    Recording recording;
    Case<Traced> traced;
    for (std::size_t i = 0; i < case_table.size(); ++i) {
        const CaseField& field = case_table[i];
        const std::string source = sources[i].empty() ? std::string(field.source) : sources[i];
        const Step step = recording.leaf(
            given.values[i], {std::string(field.label), std::string(field.key), field.dimension,
                              i < priced_inputs ? "priced" : "given", source});
        traced.values[i] = Traced(given.values[i], &recording, step);
    }
    const Amount<Traced> figure = advantage(compare_ways(traced), basis);
    return derive(recording, figure.si().step_in(recording));
}

template Amount<double> least_saving(const Amount<double>&, const double&, const double&,
                                     const Amount<double>&);
template Amount<Traced> least_saving(const Amount<Traced>&, const Traced&, const Traced&,
                                     const Amount<Traced>&);
template Ways<double> compare_ways(const Case<double>&);
template Ways<Traced> compare_ways(const Case<Traced>&);
template Amount<double> advantage(const Ways<double>&, Basis);
template Amount<Traced> advantage(const Ways<Traced>&, Basis);

} // namespace scupper::delivery
