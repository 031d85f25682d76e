#pragma once
// Hoses and fittings that a lay names instead of describing.

#include "scupper/hydraulics/line.hpp"
#include "scupper/quantity.hpp"

#include <optional>
#include <string>

namespace scupper::json::detail {

/// A hose by its name: likely bore and roughness, without length; the pressure that its maker
/// allows.
struct NamedHose {
    hydraulics::Segment<> hose;
    std::optional<Pressure<>> working_pressure;
};

/// Throws UnknownNameError `hose.kind` where no shipped hose is of this name.
NamedHose named_hose(const std::string& name, const std::string& path);

/// Likely K of a shipped fitting; throws UnknownNameError `fitting.kind` where none is of this name.
double fitting_loss(const std::string& name, const std::string& path);

} // namespace scupper::json::detail
