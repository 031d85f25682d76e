#pragma once
// What a jet must have to clean, and what a surface bears.

#include "scupper/quantity.hpp"

#include <string>
#include <vector>

namespace scupper {

/// The flow and pressure at the tip below which a method does not clean.
struct JetNeed {
    std::string method;  ///< one of method_names, or the user's own
    Flow<> flow;         ///< [m3/s] at least
    Pressure<> pressure; ///< [Pa] at the tip, at least
    std::string source;  ///< [text] document, or "common practice"
};

/// The pressure at the tip that a kind of surface bears.
struct JetLimit {
    std::string surface;                 ///< [text] "painted steel"
    std::vector<std::string> components; ///< component_names that have it
    std::vector<std::string> when;       ///< condition_names; any may hold
    Pressure<> from;                     ///< [Pa] where owners begin to cap it
    Pressure<> to;                       ///< [Pa] above which hardly anybody goes
    std::string source;                  ///< [text] document, "common practice" or "from memory"
};

/// Needs and limits of the jets of a job.
struct JetRules {
    std::vector<JetNeed> needs;   ///< [-, n] by method; one without is not checked
    std::vector<JetLimit> limits; ///< [-, n] by surface
};

} // namespace scupper
