#include "scupper/uncertain/uncertain.hpp"

#include <array>
#include <cstddef>

namespace scupper {

std::string_view basis_name(Basis basis) {
    static constexpr std::array<std::string_view, 6> names{"measured", "element",  "recorded",
                                                           "given",    "inferred", "assumed"};
    return names.at(static_cast<std::size_t>(basis));
}

Uncertain certain(double si, Basis basis, const Provenance* origin) {
    return {.guess = {.low = si, .likely = si, .high = si, .family = Family::fixed},
            .basis = basis,
            .origin = origin};
}

Uncertain between(double low, double likely, double high, Basis basis, const Provenance* origin) {
    return {.guess = {.low = low, .likely = likely, .high = high, .family = Family::pert},
            .basis = basis,
            .origin = origin};
}

bool is_certain(const Uncertain& value) {
    return value.guess.low == value.guess.high;
}

} // namespace scupper
