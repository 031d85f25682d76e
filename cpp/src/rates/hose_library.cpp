#include "scupper/rates/hose_library.hpp"

#include "scupper/error.hpp"

#include <algorithm>

namespace scupper {

namespace {

template <class Kind>
const Kind& kind_of(const std::vector<Kind>& kinds, const char* id, std::string_view name,
                    const std::string& path) {
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const Kind& k) { return k.name == name; });
    if (found != kinds.end()) {
        return *found;
    }
    std::vector<std::string_view> known;
    for (const Kind& k : kinds) {
        known.push_back(k.name);
    }
    const std::string near = nearest_name(name, known);
    throw UnknownNameError({id, path, "\"" + std::string(name) + "\"",
                            near.empty() ? "a name of the hose library" : "\"" + near + "\"?"});
}

} // namespace

const HoseKind& hose_of(const HoseLibrary& library, std::string_view name,
                        const std::string& path) {
    return kind_of(library.hoses, "hose.kind", name, path);
}

const FittingKind& fitting_of(const HoseLibrary& library, std::string_view name,
                              const std::string& path) {
    return kind_of(library.fittings, "fitting.kind", name, path);
}

} // namespace scupper
