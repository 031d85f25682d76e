#pragma once
// A figure explained: from the result down to the inputs, each with value, dimension and source.

#include "scupper/traced/recording.hpp"
#include "scupper/traced/traced.hpp"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// What kind of step a reader sees.
enum class DerivedKind { result, input, constant, choice, solve };

/// One line of an explanation.
struct DerivedStep {
    DerivedKind kind = DerivedKind::result; ///< [-] result, input, constant, choice or solve
    std::string name;                       ///< what people call it
    std::string key;                        ///< schema key, or empty
    std::string expression;                 ///< how it follows from its parts, in their names
    double value = 0.0;                     ///< SI units
    Dimension dimension{};                  ///< of the value
    std::string basis;                      ///< inputs: how it came to be known
    std::string source;                     ///< inputs: origin; solves: method
    double residual = 0.0;                  ///< [-] solves only
    std::vector<std::size_t> parts; ///< the steps it follows from; for a choice those of both arms
    std::string condition;          ///< choices: the question
    std::string arms[2];            ///< choices: the value if true, the value if false
    std::vector<std::size_t> arm_parts[2]; ///< choices: the steps each arm follows from
    bool taken_first = false;              ///< choices: whether the first arm was taken
};

/// Writes a value for people: (SI value, dimension, schema key or empty) -> "1,234 gal".
using ValueWriter = std::function<std::string(double, const Dimension&, std::string_view)>;

/// The depth that shows an explanation whole.
inline constexpr std::size_t every_level = static_cast<std::size_t>(-1);

/// The explanation of one figure: a list of steps, each once, the figure first.
struct Derivation {
    std::vector<DerivedStep> steps; ///< [-, n] the figure first; `parts` are places in here

    /// The explanation as indented text. A step stands once: where it is fewest levels below the
    /// figure. The last line says how many steps lie deeper than what is shown.
    ///
    /// @param write [text] turns SI values into text for people
    /// @param depth [-] levels below the figure
    /// @return [text] one line a step
    /// Range: any derivation.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/traced/test_derivation.cpp
    std::string text(const ValueWriter& write, std::size_t depth = every_level) const;
    /// The explanation as nested HTML lists, both arms of a choice shown, the taken one marked. All
    /// of it is there, a step once; what lies deeper than a depth is closed until it is clicked.
    ///
    /// @param write [text] turns SI values into text for people
    /// @param depth [-] levels below the figure that are open
    /// @return [text] an HTML fragment; every name is escaped
    /// Range: any derivation.
    /// Errors: none.
    /// Source: own convention
    /// Verified by: tests/cpp/traced/test_derivation.cpp
    std::string html(const ValueWriter& write, std::size_t depth = every_level) const;
};

/// Explains one step of a recording down to its inputs.
///
/// @param recording [-] the recording
/// @param step [-] the figure to explain
/// @return [-] its derivation
/// Range: step < recording.steps().size().
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/traced/test_derivation.cpp
Derivation derive(const Recording& recording, Step step);

} // namespace scupper
