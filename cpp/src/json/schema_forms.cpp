#include "schema_forms.hpp"

#include "scupper/cost.hpp"
#include "scupper/json/section_library.hpp"
#include "scupper/uncertain.hpp"
#include "scupper/unit.hpp"

#include <algorithm>

namespace scupper::json::detail::forms {

Form text() {
    return {{"type", "string"}};
}

Form list_of(Form items) {
    return {{"type", "array"}, {"items", std::move(items)}};
}

Form reference(std::string_view name) {
    return {{"$ref", "#/$defs/" + std::string(name)}};
}

Form closed(Form properties, std::vector<std::string> required) {
    Form object{
        {"type", "object"}, {"properties", std::move(properties)}, {"additionalProperties", false}};
    if (!required.empty()) {
        object["required"] = required;
    }
    return object;
}

namespace {

/// The parts of a wage, or those of an hour of equipment.
Form built_up() {
    const Form number{{"anyOf", {text(), Form{{"type", "number"}}}}};
    const auto parts = [&](const auto& table) {
        Form form = Form::object();
        std::vector<std::string> required;
        for (const cost::RatePart& part : table) {
            form[std::string(part.name)] = number;
            form[std::string(part.name)]["description"] = part.label;
            if (part.required) {
                required.emplace_back(part.name);
            }
        }
        return closed(form, required);
    };
    return {{"anyOf", {parts(cost::wage_parts), parts(cost::equipment_parts)}}};
}

/// One number, three of them, or an object that says where they come from.
Form value_of(const Form& number) {
    const Form three{{"type", "array"}, {"items", number}, {"minItems", 3}, {"maxItems", 3}};
    const Form value{{"anyOf", {number, three}}};
    const Form numbers{{"type", "array"}, {"items", number}, {"minItems", 1}};
    Form weights{{"type", "array"}, {"minItems", 1}};
    weights["items"] = {{"type", "number"}, {"minimum", 0}};
    std::vector<std::string_view> bases;
    for (const Basis basis : {Basis::measured, Basis::element, Basis::recorded, Basis::given,
                              Basis::inferred, Basis::assumed}) {
        bases.push_back(basis_name(basis));
    }
    Form object = closed(
        members(value_keys, {{"value", value},
                             {"low", number},
                             {"likely", number},
                             {"high", number},
                             {"basis", one_of(bases)},
                             {"shared_share", {{"type", "number"}, {"minimum", 0}, {"maximum", 1}}},
                             {"built_up", built_up()},
                             {"values", numbers},
                             {"weights", weights},
                             {"sample", numbers},
                             {"family", one_of(family_names)},
                             {"meaning", one_of(meaning_names)}}));
    object["anyOf"] = {Form{{"required", {"value"}}}, Form{{"required", {"low", "likely", "high"}}},
                       Form{{"required", {"built_up"}}}, Form{{"required", {"values", "weights"}}},
                       Form{{"required", {"sample"}}}};
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
    const bool plain = takes_plain_number(dimension) || by_driver;
    Form form = reference(plain ? "number_value" : "unit_value");
    const std::string due = by_driver ? ", in or per unit of the quantity of its row"
                                      : ": " + dimension_phrase(dimension);
    form["description"] = std::string(label) + due;
    return form;
}

} // namespace

Form inputs() {
    Form patterns = Form::object();
    for (const InputField& f : input_table) {
        patterns[pattern_of(f.group, f.field)] =
            described(f.dimension, f.per_driver == PerDriver::yes, f.label);
    }
    for (const SlotInfo& s : slot_table) {
        patterns[short_names(s)] = described(s.dimension, false, s.label);
    }
    std::vector<std::string_view> names;
    for (const takeoff::GirderSection& entry : shipped_sections().sections) {
        names.push_back(entry.name);
    }
    Form section = one_of(names);
    section["description"] = "standard section of the girders, for the dimensions it has";
    return {{"type", "object"},
            {"properties", {{std::string(girder_section_key), section}}},
            {"patternProperties", patterns},
            {"additionalProperties", false}};
}

Form whole_schema(std::string_view title, const Form& document) {
    const Form with_unit{{"type", "string"}, {"pattern", "[0-9]"}};
    const Form plain{{"anyOf", {with_unit, Form{{"type", "number"}}}}};
    Form schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"}, {"title", title}};
    schema.update(document);
    schema["$defs"] = {{"unit_value", value_of(with_unit)},
                       {"number_value", value_of(plain)},
                       {"inputs", inputs()}};
    return schema;
}

} // namespace scupper::json::detail::forms
