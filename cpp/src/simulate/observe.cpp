#include "scupper/error.hpp"
#include "scupper/simulate/job_log.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::simulate {

namespace {

bool is_logged(double value) {
    return !std::isnan(value);
}

/// What the job predicts at one structure.
class Site {
  public:
    explicit Site(const estimate::Plan& plan) : plan_(plan), workspace_(plan) {}

    /// False where it is not priced.
    bool visit(const Structure& structure) {
        resolve(structure, plan_, resolved_);
        price(resolved_.model, estimate::Inputs<double>(plan_.inputs, resolved_.values.data()),
              workspace_);
        return outcome_of(resolved_, workspace_.figures.values(), plan_) ==
               estimate::Outcome::priced;
    }
    bool does(std::size_t row) const { return resolved_.model.active[row] != 0; }
    double input(const std::string& key) const {
        return resolved_.values[plan_.inputs.at(key, "learning")];
    }
    const estimate::Figures<double>& figures() const { return workspace_.figures; }
    /// Hours of the operations by rate, or of the others.
    double hours(bool rated) const {
        double sum = 0.0;
        for (std::size_t row = 0; row < plan_.operations.size(); ++row) {
            const Timing timing = plan_.operations[row].timing;
            const bool counts =
                rated ? is_rated(timing) : timing == Timing::refill || timing == Timing::dump;
            if (does(row) && counts) {
                sum += workspace_.figures.get<"operation.time">(row).si();
            }
        }
        return sum;
    }

  private:
    const estimate::Plan& plan_;
    estimate::Workspace<double> workspace_;
    estimate::Resolved resolved_;
};

/// Reads one row after the other.
class Observer {
  public:
    Observer(const estimate::Plan& plan, const inventory::Inventory& inventory)
        : plan_(plan), inventory_(inventory), site_(plan) {}

    void read(const LogRow& row, std::size_t index) {
        row_ = &row;
        index_ = index;
        said_ = false;
        find_structure();
        if (row.operation.empty()) {
            whole_visit();
        } else if (const auto* op = find_operation()) {
            one_operation(static_cast<std::size_t>(op - plan_.operations.data()));
        }
        found_.used += said_ ? 1 : 0;
    }
    Observations take() { return std::move(found_); }

  private:
    void fault(std::string column, std::string found, std::string reason) {
        found_.faults.push_back(
            {row_->line, std::move(column), std::move(found), std::move(reason)});
    }
    void say(const std::string& key, double value) {
        found_.by_key[key].push_back({std::log(value), row_->crew, row_->agency, index_});
        said_ = true;
    }

    /// `known_` and, where it has no price, why.
    void find_structure() {
        known_ = false;
        unknown_ = "no structure_id";
        if (row_->structure.empty()) {
            return;
        }
        try {
            const Structure* s = inventory_.find(row_->structure);
            if (s == nullptr) {
                const auto near = inventory_.near_misses(row_->structure, 1);
                unknown_ = "no structure of the inventory";
                unknown_ += near.empty() ? "" : "; \"" + near.front() + "\"?";
                return;
            }
            known_ = site_.visit(*s);
            unknown_ = "a structure that the job cannot price";
        } catch (const InputError& e) {
            unknown_ = e.found() + "; right would be: " + e.allowed();
        }
    }

    const estimate::PlannedOperation* find_operation() {
        std::vector<std::string_view> names;
        for (const estimate::PlannedOperation& op : plan_.operations) {
            if (op.name == row_->operation) {
                if (!is_rated(op.timing)) {
                    fault("operation", op.name,
                          "its time follows from trips, shifts or closures, not from a rate");
                    return nullptr;
                }
                return &op;
            }
            names.push_back(op.name);
        }
        const std::string near = nearest_name(row_->operation, names);
        fault("operation", row_->operation,
              near.empty() ? "no operation of the job" : "no operation of the job; " + near + "?");
        return nullptr;
    }

    /// The quantity of the row, else that of the take-off; NaN with a fault where there is none.
    double quantity_of(std::size_t op) {
        const Dimension driver = slot_table[plan_.operations[op].driver].dimension;
        if (is_logged(row_->quantity)) {
            if (row_->quantity_dimension == driver) {
                return row_->quantity;
            }
            fault("quantity", "of another dimension",
                  "right would be: " + dimension_phrase(driver));
            return not_logged;
        }
        const double known =
            known_ && site_.does(op) ? site_.figures().get<"operation.quantity">(op) : 0.0;
        if (known > 0.0) {
            return known;
        }
        fault("quantity", "",
              known_ ? "the job has none of this operation at the structure: write the quantity"
                     : "without a quantity the take-off is due, but: " + unknown_);
        return not_logged;
    }

    std::string key_of(std::size_t op, std::string_view field) const {
        return "operation[" + plan_.operations[op].name + "]." + std::string(field);
    }
    /// False with a fault where a number is zero or less: it says nothing of a rate.
    bool is_amount(const char* column, double value) {
        if (value > 0.0) {
            return true;
        }
        fault(column, format_number(value, 6), "an amount above 0 is due");
        return false;
    }
    double slowing(std::size_t op) const;
    double pauses(std::size_t op) const;
    void one_operation(std::size_t op);
    void water_of(std::size_t op, double quantity);
    void whole_visit();
    void debris();
    void misplaced(const char* column, double value, const char* reason) {
        if (is_logged(value)) {
            fault(column, format_number(value, 6), reason);
        }
    }

    const estimate::Plan& plan_;
    const inventory::Inventory& inventory_;
    Site site_;
    Observations found_;
    const LogRow* row_ = nullptr;
    std::size_t index_ = 0;
    bool said_ = false, known_ = false;
    std::string unknown_;
};

/// Clock hours by productive hour, as the job has them for the party that does it.
double Observer::pauses(std::size_t op) const {
    const estimate::PlannedOperation& planned = plan_.operations[op];
    if (planned.timing == Timing::clock_rate) {
        return 1.0;
    }
    if (known_ && site_.does(op)) {
        const double productive = site_.figures().get<"operation.productive_time">(op).si();
        return site_.figures().get<"operation.time">(op).si() / productive;
    }
    const std::size_t stage = plan_.parties[planned.party].stage;
    return 1.0 / plan_.base_values[plan_.stages[stage].shift.productive_share];
}

/// Clock hours by hour at the rate: pauses, and what slows the work at the structure.
double Observer::slowing(std::size_t op) const {
    if (known_ && site_.does(op)) {
        const double at_rate = site_.figures().get<"operation.quantity">(op) *
                               site_.input(key_of(op, "time_per_unit"));
        if (at_rate > 0.0) {
            return site_.figures().get<"operation.time">(op).si() / at_rate;
        }
    }
    return pauses(op);
}

void Observer::one_operation(std::size_t op) {
    constexpr const char* whole = "stands for the whole visit: write it in a row without operation";
    misplaced("debris", is_logged(row_->debris_volume) ? row_->debris_volume : row_->debris_mass,
              whole);
    misplaced("loads", row_->loads, whole);
    const double quantity = quantity_of(op);
    if (!is_logged(quantity) || !is_amount("quantity", quantity)) {
        return;
    }
    if (!is_logged(row_->hours) && !is_logged(row_->water)) {
        fault("", "", "neither hours nor water");
    }
    if (is_logged(row_->hours) && is_amount("hours", row_->hours)) {
        say(key_of(op, "time_per_unit"), row_->hours / (quantity * slowing(op)));
    }
    if (is_logged(row_->water)) {
        water_of(op, quantity);
    }
}

/// Water by the unit where no nozzle runs; else the share of the time its trigger was open.
void Observer::water_of(std::size_t op, double quantity) {
    const std::size_t method = plan_.operations[op].method;
    const std::string key =
        key_of(op, method == estimate::no_method ? "water_per_unit" : "trigger_share");
    const double stated = plan_.base_values[plan_.inputs.at(key, "learning")];
    if (!(stated > 0.0)) {
        misplaced("water", row_->water, "the job has no water for this operation");
    } else if (!is_amount("water", row_->water)) {
        return;
    } else if (method == estimate::no_method) {
        say(key, row_->water / quantity);
    } else if (!known_ || !site_.does(op) || !(row_->hours > 0.0)) {
        fault("water", format_number(row_->water, 6),
              "water of a nozzle tells something where its hours stand beside it, at a structure "
              "where the job has the operation");
    } else {
        const double flow = site_.figures().get<"nozzle.flow">(method).si();
        const double share = row_->water / (flow * row_->hours / pauses(op));
        if (share <= 1.0) {
            say(key, share);
        } else {
            fault("water", format_number(row_->water, 6) + " m3",
                  "more than the nozzle passes in those hours");
        }
    }
}

void Observer::whole_visit() {
    misplaced("quantity", row_->quantity, "belongs to an operation, and none is named");
    misplaced("water", row_->water, "water of a whole visit tells nothing of its operations");
    if (!known_) {
        fault("structure_id", row_->structure, "a whole visit needs its structure: " + unknown_);
        return;
    }
    if (is_logged(row_->hours) && is_amount("hours", row_->hours)) {
        const double trips = site_.hours(false), rated = site_.hours(true);
        if (row_->hours > trips && rated > 0.0) {
            say(std::string(pace_key), (row_->hours - trips) / rated);
        } else {
            fault("hours", format_number(row_->hours / 3600.0, 4) + " h",
                  "no more than the trips for water and to the dump would take");
        }
    }
    debris();
    if (!said_ && !is_logged(row_->hours)) {
        fault("", "", "neither hours nor debris nor loads");
    }
}

/// By volume or mass where they were logged, else by full loads.
void Observer::debris() {
    const auto compare = [&](const char* column, double seen, double predicted) {
        if (!is_amount(column, seen)) {
            return;
        }
        if (predicted > 0.0) {
            say(std::string(debris_key), seen / predicted);
        } else {
            fault(column, format_number(seen, 6), "the job expects none at the structure");
        }
    };
    const estimate::Figures<double>& f = site_.figures();
    if (is_logged(row_->debris_volume)) {
        compare("debris", row_->debris_volume, f.get<"debris.volume">().si());
    } else if (is_logged(row_->debris_mass)) {
        compare("debris", row_->debris_mass, f.get<"debris.mass">().si());
    } else if (is_logged(row_->loads)) {
        compare("loads", row_->loads, f.get<"debris.loads">().si());
    }
}

} // namespace

Observations observe(const JobLog& log, const estimate::Plan& plan,
                     const inventory::Inventory& inventory) {
    Observer observer(plan, inventory);
    for (std::size_t i = 0; i < log.rows.size(); ++i) {
        observer.read(log.rows[i], i);
    }
    return observer.take();
}

} // namespace scupper::simulate
