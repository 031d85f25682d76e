#include "rows.hpp"

namespace scupper::json::detail {

std::vector<std::string> words(const Json& object, const char* key, const std::string& path) {
    std::vector<std::string> list;
    if (!object.contains(key)) {
        return list;
    }
    const Json& value = object[key];
    if (!value.is_array()) {
        throw InputError({"json.type", path + "." + key, value.dump(), "a list of words"});
    }
    for (const Json& word : value) {
        if (!word.is_string()) {
            throw InputError({"json.type", path + "." + key, word.dump(), "a word"});
        }
        list.push_back(word.get<std::string>());
    }
    return list;
}

std::vector<std::string> word_or_words(const Json& object, const char* key,
                                       const std::string& path) {
    if (object.contains(key) && object[key].is_string()) {
        const std::string word = object[key].get<std::string>();
        return word.empty() ? std::vector<std::string>{} : std::vector<std::string>{word};
    }
    return words(object, key, path);
}

} // namespace scupper::json::detail
