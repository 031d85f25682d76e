#pragma once
// What the documents of libraries share: lists of named entries whose values have a source.

#include "scupper/error.hpp"
#include "values.hpp"

#include <array>
#include <string>
#include <vector>

namespace scupper::json::detail {

/// Values without a date of their own have that of the document.
ValueContext library_context(const std::string& date);
/// The member of a field; throws where it is missing.
const Json& member(const Json& object, const LayoutField& field, const std::string& path);
/// A value within the bounds of its field, with a source; throws InputError `id` beyond them.
Setting read_library_value(const Json& object, const LayoutField& field, const std::string& path,
                           const std::string& date, const char* id);
/// The name of an entry; throws where it has none.
std::string read_name(const Json& object, const std::string& path);
/// Source, date and note of a published figure.
Provenance read_origin(const Json& object, const std::string& path, const std::string& date);

/// A word of a vocabulary; throws UnknownNameError `json.word` with the nearest.
template <std::size_t N>
std::string known_word(const std::array<std::string_view, N>& known, const Json& object,
                       const char* key, const std::string& path) {
    const std::string word = text_or(object, key, {}, path);
    if (index_of(known, word) < 0) {
        const std::string near = nearest_name(word, known);
        std::string allowed = near.empty() ? "one of " : "\"" + near + "\"? one of ";
        for (const std::string_view w : known) {
            allowed += (w == known.front() ? "" : ", ") + std::string(w);
        }
        throw UnknownNameError({"json.word", path + "." + key, "\"" + word + "\"", allowed});
    }
    return word;
}

/// A list that must be there.
template <class Read>
auto read_list(const Json& doc, const char* key, const std::string& name, const std::string& date,
               Read read) {
    std::vector<decltype(read(doc, name, date))> list;
    const std::string path = name + "." + key;
    if (!doc.contains(key) || !doc[key].is_array()) {
        const std::string found = doc.contains(key) ? doc[key].dump() : "nothing";
        throw InputError({"json.type", path, found, "a list"});
    }
    for (std::size_t i = 0; i < doc[key].size(); ++i) {
        list.push_back(read(doc[key][i], path + "[" + std::to_string(i) + "]", date));
    }
    return list;
}

} // namespace scupper::json::detail
