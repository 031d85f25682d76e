#include "scupper/json/job_schema.hpp"

#include "schema_forms.hpp"
#include "scupper/error.hpp"
#include "scupper/json/hose_library.hpp"
#include "scupper/schema.hpp"
#include "scupper/uncertain.hpp"
#include "scupper/unit.hpp"
#include "site_schema.hpp"
#include "values.hpp"

#include <functional>
#include <map>
#include <string_view>
#include <vector>

namespace scupper::json {

namespace {

using detail::Form;
using namespace detail::forms;

Form drivers() {
    std::vector<std::string_view> keys;
    for (const SlotInfo& s : slot_table) {
        keys.push_back(s.key);
    }
    return one_of(keys);
}

Form operation() {
    static constexpr std::array<std::string_view, 1> no_crew{""};
    std::vector<std::string_view> timings(timing_names.begin(), timing_names.end() - 1); // not lost
    return closed(members(job_operation_keys,
                          {{"component", one_of(component_names)},
                           {"levels", detail::forms::list_of(one_of(service_level_names))},
                           {"driver", drivers()},
                           {"factor", {{"type", "number"}, {"exclusiveMinimum", 0}}},
                           {"timing", one_of(timings)},
                           {"crew", one_of(no_crew, crew_kind_names)},
                           {"equipment", detail::forms::list_of(text())},
                           {"way", {{"anyOf", {text(), detail::forms::list_of(text())}}}},
                           {"when", conditions()}}),
                  {"name", "component", "driver"});
}

Form resource() {
    static constexpr std::array<std::string_view, 1> no_plan{""};
    return closed(members(job_resource_keys,
                          {{"when", conditions()}, {"plan", one_of(no_plan, closure_count_names)}}),
                  {"name"});
}

Form traffic() {
    static constexpr std::array<std::string_view, 1> by_record{"by_record"};
    const Form share{{"type", "number"}, {"minimum", 0}, {"maximum", 100}};
    const Form shares{{"type", "array"}, {"items", share}, {"minItems", 24}, {"maxItems", 24}};
    return closed(members(job_traffic_keys,
                          {{"hours", {{"anyOf", {one_of(by_record, hour_pattern_names), shares}}}},
                           {"capacity", one_of(capacity_method_names)}}));
}

Form method() {
    return closed(members(job_method_keys, {{"hose", detail::forms::list_of(text())},
                                            {"truck", one_of(truck_place_names)}}),
                  {"name"});
}

Form haul() {
    return closed(
        members(job_haul_keys, {{"components", detail::forms::list_of(one_of(component_names))},
                                {"dump", one_of(dump_names)}}),
        {"name"});
}

Form stage() {
    static constexpr std::array<std::string_view, 2> by_record_or_job{"by_record", ""};
    const Form party =
        closed(members(job_party_keys, {{"work", detail::forms::list_of(text())}}), {"name"});
    return closed(
        members(job_stage_keys, {{"closure", one_of(by_record_or_job, closure_kind_names)},
                                 {"parties", detail::forms::list_of(party)}}),
        {"name", "parties"});
}

Form day(std::string_view pattern) {
    return {{"type", "string"}, {"pattern", pattern}};
}

Form notice() {
    const Form whole{{"type", "integer"}, {"minimum", 0}, {"maximum", 3650}};
    const Form three{{"type", "array"}, {"items", whole}, {"minItems", 3}, {"maxItems", 3}};
    return closed(
        members(job_notice_keys, {{"days", {{"anyOf", {whole, three}}}}, {"when", conditions()}}),
        {"name", "days"});
}

Form calendar() {
    static constexpr std::string_view date = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    static constexpr std::string_view month_day = "^[0-9]{2}-[0-9]{2}$";
    const Form season =
        closed(members(job_season_keys,
                       {{"from", day(month_day)}, {"to", day(month_day)}, {"when", conditions()}}),
               {"from", "to"});
    return closed(
        members(job_calendar_keys, {{"asked", day(date)},
                                    {"weekdays", detail::forms::list_of(one_of(weekday_names))},
                                    {"holidays", detail::forms::list_of(day(date))},
                                    {"closed", detail::forms::list_of(season)},
                                    {"daylight", {{"type", "boolean"}}}}));
}

Form number_or_text() {
    return {{"type", {"number", "string"}}};
}

Form terms() {
    static constexpr std::string_view date = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";
    std::map<std::string_view, Form> members_of{{"rates_of", day(date)}, {"midpoint", day(date)}};
    for (const char* key : {"retainage", "retainage_limit", "interest", "variation_limit",
                            "price_over", "price_under"}) {
        members_of[key] = number_or_text();
    }
    return closed(members(job_terms_keys, members_of));
}

Form frequency() {
    std::map<std::string_view, Form> times;
    for (const std::string_view component : component_names) {
        times[component] = number_or_text();
    }
    return closed(members(component_names, times));
}

Form correlation() {
    Form inputs = detail::forms::list_of(text());
    inputs["minItems"] = 2;
    const Form rank{{"type", "number"}, {"exclusiveMinimum", -1}, {"exclusiveMaximum", 1}};
    return closed(members(job_correlation_keys, {{"inputs", inputs}, {"rank", rank}}),
                  {"inputs", "rank"});
}

template <class Entries>
std::vector<std::string_view> names_of(const Entries& entries) {
    std::vector<std::string_view> names;
    for (const auto& entry : entries) {
        names.push_back(entry.name);
    }
    return names;
}

/// Hose segment to the name of a hose in the shipped library.
Form hoses() {
    return {{"type", "object"},
            {"additionalProperties", one_of(names_of(shipped_hose_library().hoses))}};
}

Form properties() {
    static constexpr std::array<std::string_view, 1> by_record{"by_record"};
    static constexpr std::array<std::string_view, 3> systems{"us", "metric", "si"};
    static constexpr std::array<std::string_view, 2> values{"mean", "likely"};
    std::map<std::string_view, Form> levels;
    for (const std::string_view component : component_names) {
        levels[component] = one_of(service_level_names);
    }
    Form all = members(
        job_keys,
        {{"scupper_job", {{"const", 1}}},
         {"rate_books", detail::forms::list_of(text())},
         {"currency", {{"type", "string"}, {"pattern", "^[A-Z]{3}$"}}},
         {"units", one_of(systems)},
         {"price_at", one_of(values)},
         {"service", closed(members(component_names, levels))},
         {"ways", closed(members(component_names, {}))},
         {"closure", one_of(by_record, closure_kind_names)},
         {"sharing", one_of(sharing_names)},
         {"posting", one_of(posting_names)},
         {"work_time", one_of(work_time_names)},
         {"traffic", traffic()},
         {"stages", detail::forms::list_of(stage())},
         {"operations", detail::forms::list_of(operation())},
         {"labour", detail::forms::list_of(resource())},
         {"equipment", detail::forms::list_of(resource())},
         {"charges", detail::forms::list_of(charge())},
         {"methods", detail::forms::list_of(method())},
         {"hoses", hoses()},
         {"hauls", detail::forms::list_of(haul())},
         {"build_up", one_of(build_up_names)},
         {"wash_water", one_of(wash_water_names)},
         {"notices", detail::forms::list_of(notice())},
         {"calendar", calendar()},
         {"frequency", frequency()},
         {"terms", terms()},
         {"correlations", detail::forms::list_of(correlation())},
         {"site", site()},
         {"paces", detail::forms::list_of(pace())},
         {"surroundings", detail::forms::list_of(surrounding())},
         {"alternatives", detail::forms::list_of(alternative())},
         {"inputs", reference("inputs")},
         {"overrides", {{"type", "object"}, {"additionalProperties", reference("inputs")}}}});
    all[std::string(detail::rates_key)] = {{"anyOf", {text(), {{"type", "object"}}}}};
    for (const std::string_view key : detail::origin_keys) {
        all[std::string(key)] = text();
    }
    return all;
}

} // namespace

std::string job_schema() {
    return whole_schema("scupper job", closed(properties(), {"scupper_job"})).dump(2);
}

} // namespace scupper::json
