#pragma once
// Inputs of a job that vary together.

#include <string>
#include <vector>

namespace scupper {

/// Inputs of which every pair has the same rank correlation. A pair that no correlation names is
/// independent.
struct Correlation {
    std::vector<std::string> inputs; ///< [text, n] keys of the input schema, two or more
    double rank;                     ///< [-] Spearman's rank correlation, between -1 and 1
};

} // namespace scupper
