#pragma once
// The building stones of JSON Schemas, built from the tables of keys and words that readers use.

#include "scupper/schema.hpp"
#include "values.hpp"

#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace scupper::json::detail {

using Form = nlohmann::ordered_json;

namespace forms {

/// Any text.
Form text();
/// A list of whatever has this form.
Form list_of(Form items);
/// What is defined elsewhere in the document.
Form reference(std::string_view name);
/// An object with these members and no others.
Form closed(Form properties, std::vector<std::string> required = {});
/// Every input that a document may give, by its key or a short name.
Form inputs();
/// A schema with its title and whatever its forms refer to.
Form whole_schema(std::string_view title, const Form& document);

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

} // namespace forms

} // namespace scupper::json::detail
