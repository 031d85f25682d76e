#include "scupper/takeoff/shape.hpp"

#include <array>
#include <cstddef>

namespace scupper::takeoff {

std::string_view verdict_name(Verdict verdict) {
    static constexpr std::array<std::string_view, 5> names{"bridge", "culvert", "buried", "tunnel",
                                                           "no_dimensions"};
    return names.at(static_cast<std::size_t>(verdict));
}

std::string_view verdict_reason(Verdict verdict) {
    static constexpr std::array<std::string_view, 5> reasons{
        "a bridge",
        "a culvert (item 43B = 19): it has no deck, girders or bents to wash as a bridge",
        "buried: deck and roadway width are zero, the road lies on fill",
        "a tunnel (item 43B = 18), not washed as a bridge",
        "no dimensions: the length (item 49), or every width (items 52, 51 and 32), is missing, "
        "zero "
        "or out of bounds"};
    return reasons.at(static_cast<std::size_t>(verdict));
}

std::string_view outline_name(Outline outline) {
    static constexpr std::array<std::string_view, 16> names{
        "none",        "steel beams",   "prestressed beams", "concrete tee beams",
        "decked tees", "channel beams", "timber stringers",  "adjacent boxes",
        "steel boxes", "box girder",    "floorbeam girders", "trusses",
        "cable spans", "slab",          "vault or frame",    "spread boxes"};
    return names.at(static_cast<std::size_t>(outline));
}

} // namespace scupper::takeoff
