#include "hose_parts.hpp"

#include "scupper/json/hose_library.hpp"

namespace scupper::json::detail {

NamedHose named_hose(const std::string& name, const std::string& path) {
    const HoseKind& kind = hose_of(shipped_hose_library(), name, path);
    NamedHose named;
    named.hose.bore = Length<>(kind.bore.value.guess.likely);
    named.hose.roughness = Length<>(kind.roughness.value.guess.likely);
    if (kind.working_pressure) {
        named.working_pressure = Pressure<>(kind.working_pressure->value.guess.likely);
    }
    return named;
}

double fitting_loss(const std::string& name, const std::string& path) {
    return fitting_of(shipped_hose_library(), name, path).loss_coefficient.value.guess.likely;
}

} // namespace scupper::json::detail
