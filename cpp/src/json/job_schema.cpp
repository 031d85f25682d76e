#include "scupper/json/job_schema.hpp"

#include "scupper/error.hpp"
#include "scupper/json/hose_library.hpp"
#include "scupper/json/section_library.hpp"
#include "scupper/schema.hpp"
#include "scupper/uncertain.hpp"
#include "scupper/unit.hpp"
#include "values.hpp"

#include <functional>
#include <map>
#include <string_view>
#include <vector>

namespace scupper::json {

namespace {

using Form = nlohmann::ordered_json;

Form text() {
    return {{"type", "string"}};
}

Form list_of(Form items) {
    return {{"type", "array"}, {"items", std::move(items)}};
}

template <class Words>
Form one_of(const Words& words) {
    Form list = Form::array();
    for (const std::string_view word : words) {
        list.push_back(word);
    }
    return {{"enum", list}};
}

/// One of two lists of words.
template <class First, class Second>
Form one_of(const First& first, const Second& second) {
    Form both = one_of(first);
    for (const std::string_view word : second) {
        both["enum"].push_back(word);
    }
    return both;
}

Form reference(std::string_view name) {
    return {{"$ref", "#/$defs/" + std::string(name)}};
}

/// An object with these members and no others.
Form closed(Form properties, std::vector<std::string> required = {}) {
    Form object{
        {"type", "object"}, {"properties", std::move(properties)}, {"additionalProperties", false}};
    if (!required.empty()) {
        object["required"] = required;
    }
    return object;
}

/// A member for each key of a table; one without a form of its own is text.
template <class Keys>
Form members(const Keys& keys, const std::map<std::string_view, Form>& forms) {
    Form properties = Form::object();
    for (const std::string_view key : keys) {
        const auto found = forms.find(key);
        properties[std::string(key)] = found == forms.end() ? text() : found->second;
    }
    return properties;
}

Form conditions() {
    return list_of(one_of(condition_names, closure_kind_names));
}

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
    return closed(
        members(job_operation_keys, {{"component", one_of(component_names)},
                                     {"levels", list_of(one_of(service_level_names))},
                                     {"driver", drivers()},
                                     {"factor", {{"type", "number"}, {"exclusiveMinimum", 0}}},
                                     {"timing", one_of(timings)},
                                     {"crew", one_of(no_crew, crew_kind_names)},
                                     {"equipment", list_of(text())},
                                     {"way", {{"anyOf", {text(), list_of(text())}}}},
                                     {"when", conditions()}}),
        {"name", "component", "driver"});
}

Form resource() {
    return closed(members(job_resource_keys, {{"when", conditions()}}), {"name"});
}

Form method() {
    return closed(
        members(job_method_keys, {{"hose", list_of(text())}, {"truck", one_of(truck_place_names)}}),
        {"name"});
}

Form haul() {
    return closed(members(job_haul_keys, {{"components", list_of(one_of(component_names))},
                                          {"dump", one_of(dump_names)}}),
                  {"name"});
}

Form stage() {
    static constexpr std::array<std::string_view, 2> by_record_or_job{"by_record", ""};
    const Form party = closed(members(job_party_keys, {{"work", list_of(text())}}), {"name"});
    return closed(
        members(job_stage_keys, {{"closure", one_of(by_record_or_job, closure_kind_names)},
                                 {"parties", list_of(party)}}),
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
    return closed(members(job_calendar_keys, {{"asked", day(date)},
                                              {"weekdays", list_of(one_of(weekday_names))},
                                              {"holidays", list_of(day(date))},
                                              {"closed", list_of(season)}}));
}

/// One number, three of them, or an object that says where they come from.
Form value_of(const Form& number) {
    const Form three{{"type", "array"}, {"items", number}, {"minItems", 3}, {"maxItems", 3}};
    const Form value{{"anyOf", {number, three}}};
    std::vector<std::string_view> bases;
    for (const Basis basis : {Basis::measured, Basis::element, Basis::recorded, Basis::given,
                              Basis::inferred, Basis::assumed}) {
        bases.push_back(basis_name(basis));
    }
    Form object = closed(members(
        detail::value_keys, {{"value", value},
                             {"low", number},
                             {"likely", number},
                             {"high", number},
                             {"basis", one_of(bases)},
                             {"shared_share", {{"type", "number"}, {"minimum", 0}, {"maximum", 1}}},
                             {"family", one_of(detail::family_names)},
                             {"meaning", one_of(detail::meaning_names)}}));
    object["anyOf"] = {Form{{"required", {"value"}}},
                       Form{{"required", {"low", "likely", "high"}}}};
    return {{"anyOf", {number, three, object}}};
}

/// A key as a pattern; the row may be left out where its group has only one.
std::string pattern_of(std::string_view group, std::string_view field) {
    const auto found = std::find_if(input_groups.begin(), input_groups.end(),
                                    [&](const InputGroup& g) { return g.key == group; });
    const std::string row = found->has_rows ? R"((\[[^\[\]]+\])?)" : "";
    return "^" + std::string(group) + row + "\\." + std::string(field) + "$";
}

/// The short names of a quantity: its slot, and for a count the plural: "drain_count", "drains".
std::string short_names(const SlotInfo& s) {
    const std::string key(s.key);
    const std::string count = "_count";
    if (!key.ends_with(count)) {
        return "^" + key + "$";
    }
    return "^(" + key + "|" + key.substr(0, key.size() - count.size()) + "s?)$";
}

Form described(const Dimension& dimension, bool by_driver, std::string_view label) {
    const bool plain = detail::takes_plain_number(dimension) || by_driver;
    Form form = reference(plain ? "number_value" : "unit_value");
    const std::string due = by_driver ? ", in or per unit of the quantity of its row"
                                      : ": " + dimension_phrase(dimension);
    form["description"] = std::string(label) + due;
    return form;
}

template <class Entries>
std::vector<std::string_view> names_of(const Entries& entries) {
    std::vector<std::string_view> names;
    for (const auto& entry : entries) {
        names.push_back(entry.name);
    }
    return names;
}

Form inputs() {
    Form patterns = Form::object();
    for (const InputField& f : input_table) {
        patterns[pattern_of(f.group, f.field)] =
            described(f.dimension, f.per_driver == PerDriver::yes, f.label);
    }
    for (const SlotInfo& s : slot_table) {
        patterns[short_names(s)] = described(s.dimension, false, s.label);
    }
    Form section = one_of(names_of(shipped_sections().sections));
    section["description"] = "standard section of the girders, for the dimensions it has";
    return {{"type", "object"},
            {"properties", {{std::string(girder_section_key), section}}},
            {"patternProperties", patterns},
            {"additionalProperties", false}};
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
         {"currency", {{"type", "string"}, {"pattern", "^[A-Z]{3}$"}}},
         {"units", one_of(systems)},
         {"price_at", one_of(values)},
         {"service", closed(members(component_names, levels))},
         {"ways", closed(members(component_names, {}))},
         {"closure", one_of(by_record, closure_kind_names)},
         {"sharing", one_of(sharing_names)},
         {"posting", one_of(posting_names)},
         {"stages", list_of(stage())},
         {"operations", list_of(operation())},
         {"labour", list_of(resource())},
         {"equipment", list_of(resource())},
         {"charges", list_of(resource())},
         {"methods", list_of(method())},
         {"hoses", hoses()},
         {"hauls", list_of(haul())},
         {"build_up", one_of(build_up_names)},
         {"wash_water", one_of(wash_water_names)},
         {"notices", list_of(notice())},
         {"calendar", calendar()},
         {"inputs", reference("inputs")},
         {"overrides", {{"type", "object"}, {"additionalProperties", reference("inputs")}}}});
    for (const std::string_view key : detail::origin_keys) {
        all[std::string(key)] = text();
    }
    return all;
}

} // namespace

std::string job_schema() {
    const Form with_unit{{"type", "string"}, {"pattern", "[0-9]"}};
    const Form plain{{"anyOf", {with_unit, Form{{"type", "number"}}}}};
    Form schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"title", "scupper job"}};
    schema.update(closed(properties(), {"scupper_job"}));
    schema["$defs"] = {{"unit_value", value_of(with_unit)},
                       {"number_value", value_of(plain)},
                       {"inputs", inputs()}};
    return schema.dump(2);
}

} // namespace scupper::json
