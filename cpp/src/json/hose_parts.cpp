#include "hose_parts.hpp"

#include "scupper/error.hpp"

namespace scupper::json::detail {

NamedHose named_hose(const std::string& name, const std::string& path) {
    throw UnknownNameError({"json.hose", path, "\"" + name + "\"",
                            "bore with roughness, c or coefficient: no hose is known by name"});
}

double fitting_loss(const std::string& name, const std::string& path) {
    throw UnknownNameError(
        {"json.fitting", path, "\"" + name + "\"",
         "{\"name\": ..., \"loss_coefficient\": K}: no fitting is known by name"});
}

} // namespace scupper::json::detail
