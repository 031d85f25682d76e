#pragma once
// Looking an entry up by its name, with the nearest name in the error.

#include "scupper/error/error.hpp"
#include "scupper/error/nearest.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// The entry of a name in a list of named entries.
///
/// @param entries [-, n] the list
/// @param name_of [-] function of an entry that gives its name
/// @param name [text] the name in question
/// @param id [text] of the error where no entry has it
/// @param path [text] where the name stands, for the error
/// @param list [text] what the list is called: "hose library"
/// @return [-] the first entry of that name
/// Range: any list.
/// Errors: UnknownNameError of that id, with the nearest name where one is near.
/// Source: own convention
/// Verified by: tests/cpp/error/test_nearest.cpp
template <class Entry, class NameOf>
const Entry& entry_of(const std::vector<Entry>& entries, NameOf name_of, std::string_view name,
                      const char* id, const std::string& path, const std::string& list) {
    std::vector<std::string> names;
    for (const Entry& entry : entries) {
        names.push_back(name_of(entry));
        if (names.back() == name) {
            return entry;
        }
    }
    const std::vector<std::string_view> known(names.begin(), names.end());
    const std::string near = nearest_name(name, known);
    throw UnknownNameError({id, path, "\"" + std::string(name) + "\"",
                            near.empty() ? "a name of the " + list : "\"" + near + "\"?"});
}

} // namespace scupper
