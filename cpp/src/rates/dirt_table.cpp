#include "scupper/rates/dirt_table.hpp"

#include "scupper/error.hpp"

namespace scupper {

const BuildUp& build_up_of(const DirtTable& table, std::string_view since,
                           const std::string& path) {
    return entry_of(
        table.build_ups, [](const BuildUp& b) { return b.since; }, since, "dirt.since", path,
        "dirt table");
}

const DirtKind& dirt_of(const DirtTable& table, std::string_view material,
                        std::string_view moisture, const std::string& path) {
    return entry_of(
        table.kinds, [](const DirtKind& k) { return k.material + ", " + k.moisture; },
        std::string(material) + ", " + std::string(moisture), "dirt.kind", path, "dirt table");
}

} // namespace scupper
