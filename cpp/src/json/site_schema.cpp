#include "site_schema.hpp"

namespace scupper::json::detail::forms {

namespace {

/// An object of any names and texts.
Form texts() {
    return {{"type", "object"}, {"additionalProperties", text()}};
}

Form limit() {
    const Form bound{{"anyOf", {Form{{"type", "string"}}, Form{{"type", "number"}}}}};
    return closed(
        members(job_limit_keys,
                {{"measure", one_of(site_measure_names)}, {"least", bound}, {"most", bound}}),
        {"measure"});
}

Form removal() {
    static constexpr std::array<std::string_view, 3> rows{"", "flusher", "broom"};
    return closed(members(job_removal_keys, {{"share", reference("number_value")},
                                             {"passes", one_of(rows)},
                                             {"dirt", list_of(one_of(dirt_names))}}),
                  {"share"});
}

} // namespace

Form conditions() {
    return list_of(one_of(condition_names, closure_kind_names));
}

Form site() {
    return {{"type", "object"}, {"additionalProperties", list_of(one_of(site_word_names))}};
}

Form charge() {
    return closed(
        members(job_charge_keys, {{"when", conditions()}, {"per", one_of(charge_per_names)}}),
        {"name"});
}

Form pace() {
    return closed(members(job_pace_keys, {{"work", list_of(text())},
                                          {"when", conditions()},
                                          {"factor", reference("number_value")}}),
                  {"name", "factor"});
}

Form surrounding() {
    return closed(members(job_surrounding_keys, {{"when", conditions()},
                                                 {"per", one_of(charge_per_names)},
                                                 {"usual", reference("unit_value")}}),
                  {"name", "usual"});
}

Form alternative() {
    static constexpr std::array<std::string_view, 1> as_the_job{""};
    return closed(
        members(job_alternative_keys, {{"question", one_of(question_names)},
                                       {"ways", texts()},
                                       {"closure", one_of(as_the_job, closure_kind_names)},
                                       {"instead", texts()},
                                       {"without", list_of(text())},
                                       {"labour", list_of(charge())},
                                       {"equipment", list_of(charge())},
                                       {"charges", list_of(charge())},
                                       {"paces", list_of(pace())},
                                       {"needs", texts()},
                                       {"forbids", texts()},
                                       {"limits", list_of(limit())},
                                       {"misses", texts()},
                                       {"removes", removal()},
                                       {"inputs", reference("inputs")}}),
        {"name"});
}

} // namespace scupper::json::detail::forms
