#include "hose_parts.hpp"

#include "scupper/json/hose_library.hpp"

namespace scupper::json::detail {

NamedHose named_hose(const std::string& name, const std::string& path) {
    const HoseKind& kind = hose_of(shipped_hose_library(), name, path);
    NamedHose out;
    out.hose.law = hydraulics::FrictionLaw::darcy_weisbach;
    out.hose.bore = Length<>(kind.bore.value.guess.likely);
    out.hose.roughness = Length<>(kind.roughness.value.guess.likely);
    if (kind.working_pressure) {
        out.working_pressure = Pressure<>(kind.working_pressure->value.guess.likely);
    }
    return out;
}

double fitting_loss(const std::string& name, const std::string& path) {
    return fitting_of(shipped_hose_library(), name, path).loss_coefficient.value.guess.likely;
}

} // namespace scupper::json::detail
