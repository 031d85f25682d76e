#include "scupper/estimate/hours_table.hpp"

#include "price_steps.hpp"

#include <algorithm>

namespace scupper::estimate {

namespace {

/// What a crew does of an operation's time.
struct Work {
    Time<> productive, breaks, waiting;
};

/// Adds what operations take; of a stage or everyone the share of time that runs side by side.
void add_work(const Estimate& e, std::size_t row, double share, Work& work) {
    const PlannedOperation& op = e.plan->operations[row];
    const auto figure = [&](const FieldPlace& field) {
        return Time<>(e.figures[e.plan->figures.place(field, row)] * share);
    };
    const Time<> clock = figure(figure_place("operation.time"));
    if (op.timing == Timing::rate) {
        const Time<> productive = figure(figure_place("operation.productive_time"));
        work.productive += productive;
        work.breaks += clock - productive;
    } else if (op.timing == Timing::clock_rate) {
        work.productive += clock;
    } else if (op.timing == Timing::refill || op.timing == Timing::dump) {
        work.waiting += clock;
    }
}

/// The part of an operation's time that a crew is charged; 0 where another party does it.
double share_of(const Plan& plan, const PlannedOperation& op, std::size_t crew,
                const Workspace<double>& ws) {
    const PlannedParty& party = plan.parties[op.party];
    const PlannedStage& stage = plan.stages[party.stage];
    if (crew == party.crew) {
        return 1.0;
    }
    return crew == everyone || crew == stage.crew ? ws.crews[stage.crew].share : 0.0;
}

Work work_of(const Estimate& e, std::size_t crew, const Workspace<double>& ws) {
    Work work;
    for (std::size_t row = 0; row < e.plan->operations.size(); ++row) {
        if (e.resolved.model.active[row]) {
            add_work(e, row, share_of(*e.plan, e.plan->operations[row], crew, ws), work);
        }
    }
    return work;
}

std::string name_of(const Plan& plan, std::size_t crew) {
    return crew == everyone ? "everyone" : crew_names(plan.job).at(crew - 1);
}

HoursRow row_of(const Estimate& e, std::size_t crew, double people, const Workspace<double>& ws) {
    const CrewHours<double>& hours = ws.crews[crew];
    const Work work = work_of(e, crew, ws);
    HoursRow row;
    row.crew = name_of(*e.plan, crew);
    row.people = people;
    row.shifts = hours.outing.shifts;
    row.productive = work.productive;
    row.breaks = work.breaks;
    row.waiting = work.waiting;
    row.travel = hours.outing.travel;
    row.briefing = hours.outing.briefing;
    row.closure = hours.set_up + hours.change_sides + hours.removal;
    row.meal = hours.outing.meal;
    row.standby = hours.outing.idle;
    row.paid = hours.outing.paid;
    row.overtime = hours.outing.overtime;
    row.unpaid_meal = hours.unpaid;
    row.elapsed = hours.outing.paid + hours.unpaid;
    if (e.resolved.model.show_up) {
        const Inputs<double> in(e.plan->inputs, e.resolved.values.data());
        row.show_up = detail::show_up_time(in, crew, ws);
    }
    return row;
}

/// Whether a row of its own is a party's; a job without stages has one crew.
bool is_party(const Plan& plan, std::size_t crew) {
    return std::any_of(plan.parties.begin(), plan.parties.end(),
                       [&](const PlannedParty& p) { return p.crew == crew; });
}

} // namespace

std::vector<HoursRow> hours_table(const Estimate& e) {
    Workspace<double> ws(*e.plan);
    const Inputs<double> in(e.plan->inputs, e.resolved.values.data());
    price(e.resolved.model, in, ws);
    std::vector<HoursRow> rows;
    const bool one_crew = e.plan->job.stages.empty();
    for (std::size_t crew = 0; crew < (one_crew ? 1 : ws.crews.size()); ++crew) {
        const double people = detail::people(e.resolved.model, crew, in).si();
        if (one_crew || people > 0.0 || is_party(*e.plan, crew)) {
            rows.push_back(row_of(e, crew, people, ws));
        }
    }
    return rows;
}

} // namespace scupper::estimate
