#include "plan_parts.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::estimate::detail {

namespace {

/// The stage's own value where the job gives one, else the job's for all shifts.
std::size_t own_or_common(const Plan& plan, const std::string& stage, const std::string& field) {
    const auto own = plan.inputs.find("stage[" + stage + "]." + field);
    return own && !std::isnan(plan.base[*own].guess.likely)
               ? *own
               : plan.inputs.at("shift." + field, "job.inputs");
}

ShiftPlaces shift_places(const Plan& plan, const std::string& stage) {
    return {.length = own_or_common(plan, stage, "length"),
            .travel = own_or_common(plan, stage, "travel_time"),
            .briefing = own_or_common(plan, stage, "briefing_time"),
            .meal = own_or_common(plan, stage, "meal_time"),
            .window = own_or_common(plan, stage, "window_time"),
            .productive_share = own_or_common(plan, stage, "productive_share")};
}

/// A job without stages is one stage with one party that does all.
std::vector<Stage> stages_of(const Job& job) {
    return job.stages.empty() ? std::vector<Stage>{{{}, {}, {Party{}}}} : job.stages;
}

std::size_t wait_place(const Plan& plan, const std::string& party) {
    const auto place = plan.inputs.find("party[" + party + "].wait_time");
    return place && !std::isnan(plan.base[*place].guess.likely) ? *place : no_place;
}

std::vector<std::size_t> crews_of(const std::vector<Resource>& resources,
                                  const std::vector<std::string>& crews) {
    std::vector<std::size_t> rows;
    for (const Resource& r : resources) {
        const auto found = std::find(crews.begin(), crews.end(), r.party);
        const auto row = static_cast<std::size_t>(found - crews.begin()) + 1; // after everyone
        rows.push_back(r.party.empty() ? everyone : row);
    }
    return rows;
}

} // namespace

void plan_stages(Plan& plan) {
    const std::vector<Stage> stages = stages_of(plan.job);
    std::size_t crew = 1 + stages.size();
    for (const Stage& stage : stages) {
        const std::size_t row = plan.stages.size();
        plan.stages.push_back({stage.name,
                               stage.closure.empty() ? plan.job.closure : stage.closure,
                               shift_places(plan, stage.name),
                               row + 1,
                               {}});
        for (const Party& party : stage.parties) {
            plan.stages.back().parties.push_back(plan.parties.size());
            plan.parties.push_back({party.name, row, crew++, wait_place(plan, party.name)});
        }
    }
    const std::vector<std::string> crews = crew_names(plan.job);
    plan.labour_crews = crews_of(plan.job.labour, crews);
    plan.equipment_crews = crews_of(plan.job.equipment, crews);
}

} // namespace scupper::estimate::detail
