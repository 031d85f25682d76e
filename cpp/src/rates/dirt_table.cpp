#include "scupper/rates/dirt_table.hpp"

#include "scupper/error.hpp"

namespace scupper {

namespace {

/// The entry of a name.
template <class Entry, class NameOf>
const Entry& entry_of(const std::vector<Entry>& entries, NameOf name_of, const std::string& name,
                      const char* id, const std::string& path) {
    std::vector<std::string> names;
    for (const Entry& entry : entries) {
        names.push_back(name_of(entry));
        if (names.back() == name) {
            return entry;
        }
    }
    const std::vector<std::string_view> known(names.begin(), names.end());
    const std::string near = nearest_name(name, known);
    throw UnknownNameError({id, path, "\"" + name + "\"",
                            near.empty() ? "a name of the dirt table" : "\"" + near + "\"?"});
}

} // namespace

const BuildUp& build_up_of(const DirtTable& table, std::string_view since,
                           const std::string& path) {
    return entry_of(
        table.build_ups, [](const BuildUp& b) { return b.since; }, std::string(since), "dirt.since",
        path);
}

const DirtKind& dirt_of(const DirtTable& table, std::string_view material,
                        std::string_view moisture, const std::string& path) {
    return entry_of(
        table.kinds, [](const DirtKind& k) { return k.material + ", " + k.moisture; },
        std::string(material) + ", " + std::string(moisture), "dirt.kind", path);
}

} // namespace scupper
