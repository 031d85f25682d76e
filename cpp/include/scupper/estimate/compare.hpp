#pragma once
// Two estimates side by side: which figures differ, and which inputs.

#include "scupper/estimate/estimate.hpp"

#include <string>
#include <vector>

namespace scupper::estimate {

/// A figure by its key.
struct NamedFigure {
    std::string key, label; ///< [text] key of the figure schema; what people call it
    Dimension dimension;    ///< of the value
    double value;           ///< [SI unit of the figure]
};

/// A figure that two lists do not agree on.
struct ChangedFigure {
    std::string key, label; ///< [text] key of the figure schema; what people call it
    Dimension dimension;    ///< of both values
    double here, there;     ///< [SI unit of the figure] NaN where a list has no such figure
};

/// An input that two estimates do not agree on.
struct ChangedInput {
    std::string key, label; ///< [text] key of the input schema; what people call it
    Dimension dimension;    ///< of both values
    Uncertain here, there;  ///< [SI unit of the field] NaN where an estimate has no such input
};

/// All figures of an estimate by their keys.
///
/// @param estimate [-] an estimate
/// @return [SI unit of each, n] in the order of the schema
/// Range: any estimate.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_estimate_document.cpp
std::vector<NamedFigure> named_figures(const Estimate& estimate);

/// The figures on which two lists differ.
///
/// Formula: |here - there| > tolerance max(|here|, |there|)
/// @param here [SI unit of each, n] one list
/// @param there [SI unit of each, m] the other list
/// @param tolerance [-] relative, >= 0
/// @return [SI unit of each] in the order of `here`, then what only `there` has
/// Range: keys differ within a list; two values that are no numbers agree.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/json/test_estimate_document.cpp
std::vector<ChangedFigure> changed_figures(const std::vector<NamedFigure>& here,
                                           const std::vector<NamedFigure>& there, double tolerance);

/// The inputs on which two estimates differ: their value, range or distribution.
///
/// @param here [-] one estimate
/// @param there [-] the other
/// @return [SI unit of each] in the order of `here`, then what only `there` has
/// Range: any two; the origins of the values live as long as the estimates.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/json/test_estimate_document.cpp
std::vector<ChangedInput> changed_inputs(const Estimate& here, const Estimate& there);

} // namespace scupper::estimate
