#include "scupper/structure/structure.hpp"

#include <array>
#include <cstddef>

namespace scupper {

std::string structure_key(const Structure& structure) {
    return structure.state + ":" + structure.id;
}

std::string_view material_name(Material material) {
    static constexpr std::array<std::string_view, 10> names{
        "other",       "concrete",    "concrete continuous",
        "steel",       "steel continuous", "prestressed concrete",
        "prestressed concrete continuous", "wood or timber", "masonry",
        "aluminum, wrought or cast iron"};
    return material == Material::unknown ? "unknown" : names.at(static_cast<std::size_t>(material));
}

std::string_view design_name(Design design) {
    static constexpr std::array<std::string_view, 23> names{"other",
                                                            "slab",
                                                            "stringer, multi-beam or girder",
                                                            "girder and floorbeam",
                                                            "tee beam",
                                                            "box beam or girders, multiple",
                                                            "box beam or girders, single or spread",
                                                            "frame",
                                                            "orthotropic",
                                                            "truss, deck",
                                                            "truss, through",
                                                            "arch, deck",
                                                            "arch, through",
                                                            "suspension",
                                                            "stayed girder",
                                                            "movable, lift",
                                                            "movable, bascule",
                                                            "movable, swing",
                                                            "tunnel",
                                                            "culvert",
                                                            "mixed types",
                                                            "segmental box girder",
                                                            "channel beam"};
    return design == Design::unknown ? "unknown" : names.at(static_cast<std::size_t>(design));
}

} // namespace scupper
