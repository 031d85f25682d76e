#pragma once
// What lies below and around a bridge and costs money, and what makes work take longer. Plain data;
// reading it is the business of `json`.

#include "scupper/rates/rate_book.hpp"

#include <string>
#include <vector>

namespace scupper {

/// Something around a bridge that costs money: a railway's flagger, a permit, the road below.
struct Surrounding {
    std::string name;              ///< [text] a charge, people or equipment of this name price it
    std::vector<std::string> when; ///< condition_names or closure_kind_names; any may hold
    ChargePer per = ChargePer::visit; ///< [-] what its amount is counted by
    Setting usual;                    ///< [currency] what has been seen: low, likely, high
    std::string currency;             ///< [text] three-letter code of `usual`
    std::string caution;              ///< [text] id of the caution that goes with it; may be empty
    std::string source;               ///< [text] document, or "common practice"
    std::string note;                 ///< [text] free text
};

/// Something that makes operations take longer: old dirt, height, things in the way.
struct Pace {
    std::string name;              ///< [text] its factor is pace[name].factor
    std::vector<std::string> work; ///< operations, component_names, crew_kind_names that it slows
    std::vector<std::string> when; ///< condition_names or closure_kind_names; any may hold
    Setting factor;                ///< [-] how many times as long, unless the job says otherwise
    std::string source;            ///< [text] document, or "common practice"
    std::string note;              ///< [text] free text
};

/// Whether a pace slows an operation.
///
/// @param pace [-] what makes operations take longer
/// @param operation [-] an operation
/// @return [-] true where its work names the operation, its component or its kind of crew
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_paces.cpp
bool slows(const Pace& pace, const Operation& operation);

} // namespace scupper
