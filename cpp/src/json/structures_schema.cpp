#include "schema_forms.hpp"
#include "scupper/json/structures.hpp"
#include "scupper/unit.hpp"
#include "structure_fields.hpp"

#include <array>
#include <cstdint>

namespace scupper::json {

namespace {

using detail::Form;
using namespace detail::forms;

Form or_null(const Form& form) {
    return {{"anyOf", {form, Form{{"type", "null"}}}}};
}

/// The words of a category, those of codes 0 to `count` - 1.
template <class Enum, class Name>
Form words(Name name_of, std::size_t count) {
    std::vector<std::string_view> all{"unknown"};
    for (std::size_t i = 0; i < count; ++i) {
        all.push_back(name_of(static_cast<Enum>(i)));
    }
    return or_null(one_of(all));
}

/// The form of every field of a record.
struct FieldForms {
    Form& properties;

    void operator()(const char* key, const std::string&) const {
        properties[key] = or_null(text());
    }
    void operator()(const char* key, std::uint64_t) const {
        properties[key] = or_null({{"type", "integer"}, {"minimum", 0}});
    }
    template <class Q>
    void operator()(const char* key, const Q&, const Dimension& d) const {
        const Form with_unit{{"type", "string"}, {"pattern", "[0-9]"}};
        const Form number{{"type", "number"}};
        const bool plain = detail::takes_plain_number(d);
        Form form = or_null(plain ? Form{{"anyOf", {with_unit, number}}} : with_unit);
        form["description"] = dimension_phrase(d);
        properties[key] = form;
    }
    void operator()(const char* key, int) const {
        properties[key] = or_null({{"type", "integer"}, {"minimum", 0}});
    }
    void operator()(const char* key, char) const {
        properties[key] = or_null({{"type", "string"}, {"minLength", 1}, {"maxLength", 1}});
    }
    void operator()(const char* key, Material) const {
        properties[key] = words<Material>(material_name, 10);
    }
    void operator()(const char* key, Design) const {
        properties[key] = words<Design>(design_name, 23);
    }
    void operator()(const char* key, Below) const {
        properties[key] = words<Below>(detail::fields::below_name, 3);
    }
};

Form structure() {
    Form properties = Form::object();
    const Structure any;
    detail::fields::for_each_field(any, FieldForms{properties});
    properties["id"] = {{"type", "string"}, {"minLength", 1}};
    properties["state"] = {{"type", "string"}, {"pattern", "^([0-9]{2})?$"}};
    Form given = inputs();
    for (const char* const members : {"properties", "patternProperties"}) {
        for (auto& [key, form] : given[members].items()) {
            form = or_null(form);
        }
    }
    properties["given"] = given;
    return closed(properties, {"id"});
}

} // namespace

std::string structures_schema() {
    const Form document =
        closed({{"scupper_structures", {{"const", 1}}}, {"structures", list_of(structure())}},
               {"scupper_structures", "structures"});
    return whole_schema("scupper structures", document).dump(2);
}

} // namespace scupper::json
