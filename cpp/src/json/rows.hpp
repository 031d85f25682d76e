#pragma once
// Lists and words of a document.

#include "scupper/error.hpp"
#include "values.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json::detail {

/// A member that is a list of words; empty where it is absent.
std::vector<std::string> words(const Json& object, const char* key, const std::string& path);

/// One word, or a list of them.
std::vector<std::string> word_or_words(const Json& object, const char* key,
                                       const std::string& path);

/// The place of a word in its vocabulary.
template <class Enum, std::size_t N>
Enum read_word(const std::array<std::string_view, N>& known, const Json& object, const char* key,
               const std::string& path) {
    const std::string word = text_or(object, key, std::string(known.front()), path);
    const int index = index_of(known, word);
    if (index < 0) {
        std::string allowed;
        for (const std::string_view w : known) {
            allowed += (w == known.front() ? "" : ", ") + std::string(w);
        }
        const std::string near = nearest_name(word, known);
        throw UnknownNameError({"json.word", path + "." + key, "\"" + word + "\"",
                                (near.empty() ? "" : "\"" + near + "\"? one of ") + allowed});
    }
    return static_cast<Enum>(index);
}

template <class Read>
auto list_of(const Json& doc, const char* key, const std::string& name, Read read) {
    std::vector<decltype(read(doc, name))> list;
    if (doc.contains(key) && !doc[key].is_array()) {
        throw InputError({"json.type", name + "." + key, doc[key].dump(), "a list"});
    }
    if (doc.contains(key)) {
        for (std::size_t i = 0; i < doc[key].size(); ++i) {
            list.push_back(read(doc[key][i], name + "." + key + "[" + std::to_string(i) + "]"));
        }
    }
    return list;
}

} // namespace scupper::json::detail
