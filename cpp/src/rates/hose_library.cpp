#include "scupper/rates/hose_library.hpp"

#include "scupper/error.hpp"

namespace scupper {

namespace {

template <class Kind>
const Kind& kind_of(const std::vector<Kind>& kinds, const char* id, std::string_view name,
                    const std::string& path) {
    return entry_of(
        kinds, [](const Kind& k) { return k.name; }, name, id, path, "hose library");
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
