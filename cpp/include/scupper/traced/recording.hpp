#pragma once
// What a formula did, step by step: the tape that a Traced number writes.

#include "scupper/quantity.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace scupper {

/// What one recorded step did with its arguments.
enum class Op : std::uint8_t {
    leaf,     ///< an input, with its origin
    constant, ///< a number written in a formula, named or not
    named,    ///< a result that has a name
    add,
    subtract,
    multiply,
    divide,
    negate,
    power,
    sqrt,
    exp,
    log,
    cos,
    tan,
    abs,
    ceil,
    count_up,
    min,
    max,
    less,       ///< comparison, 1 or 0
    less_equal, ///< comparison, 1 or 0
    equal,      ///< comparison, 1 or 0
    both,       ///< logical and
    either,     ///< logical or
    negation,   ///< logical not
    choose,     ///< condition, value if true, value if false
    opaque,     ///< an iterative solve: inputs in, one number out
};

/// Index of a step in its recording.
using Step = std::uint32_t;

/// What is known about a leaf, a constant, a named result or a solve.
struct Label {
    std::string name;      ///< what people call it
    std::string key;       ///< schema key where it has one
    Dimension dimension{}; ///< dimension of the value
    std::string basis;     ///< how a leaf came to be known
    std::string source;    ///< document, rule or method
    double residual = 0.0; ///< [-] of a solve
};

/// A universal or agreed constant that a formula names.
struct NamedConstant {
    double value;            ///< in SI units
    Dimension dimension;     ///< dimension of the value
    std::string_view name;   ///< what people call it
    std::string_view source; ///< where it is defined
};

/// One recorded step.
struct RecordedStep {
    Op op;                        ///< [-] what was done
    std::uint32_t first_argument; ///< index into the pool of arguments
    std::uint32_t argument_count; ///< [-]
    std::int32_t label;           ///< index into the labels, or -1
    double value;                 ///< in SI units
};

/// An iterative solve once more, with other inputs.
using Solver = std::function<double(std::span<const double>)>;

/// Whether a recording is made to be explained or only to be run again: then nothing has a name.
enum class Naming : std::uint8_t { names, no_names };

/// The tape. Steps only refer to earlier steps, so that it can be replayed from the front.
class Recording {
  public:
    /// An empty recording.
    ///
    /// @param naming [-] without names it takes a tenth of the time
    /// Errors: none.
    explicit Recording(Naming naming = Naming::names) : naming_(naming) {}

    /// Whether it keeps names [-].
    bool has_names() const { return naming_ == Naming::names; }
    /// Records an input.
    ///
    /// @param value [SI unit of its field] the value used
    /// @param label [text] name, key, dimension and origin
    /// @return [-] the step
    /// Range: any number, NaN included.
    /// Errors: none.
    /// Source: own convention
    Step leaf(double value, Label label);
    /// Records an operation on earlier steps.
    ///
    /// @param op [-] what was done
    /// @param value [SI unit of the result] what came out
    /// @param arguments [-, n] earlier steps
    /// @param label [-] index of a label, or -1
    /// @return [-] the step
    /// Range: arguments are steps of this recording.
    /// Errors: none.
    /// Source: own convention
    Step record(Op op, double value, std::span<const Step> arguments, std::int32_t label = -1);
    /// Records an iterative solve.
    ///
    /// @param value [SI unit of the result] what came out
    /// @param arguments [-, n] earlier steps
    /// @param label [-] index of a label, or -1
    /// @param solver [call] solves again
    /// @return [-] the step
    /// Range: arguments are steps of this recording.
    /// Errors: none.
    /// Source: own convention
    Step solve(double value, std::span<const Step> arguments, std::int32_t label, Solver solver);
    /// Stores a label for use by `record`.
    ///
    /// @param label [text] name, key, dimension and origin
    /// @return [-] its index
    /// Range: any label.
    /// Errors: none.
    /// Source: own convention
    std::int32_t add_label(Label label);
    /// Forgets everything, keeping the memory.
    void clear();

    /// The recorded steps in order [-, n].
    const std::vector<RecordedStep>& steps() const { return steps_; }
    /// The arguments of a step.
    ///
    /// @param step [-] a step of this recording
    /// @return [-, n] its arguments, earlier steps
    /// Range: step < steps().size().
    /// Errors: none.
    /// Source: own convention
    std::span<const Step> arguments(Step step) const;
    /// The label of a step, or null where it has none.
    ///
    /// @param step [-] a step of this recording
    /// @return [text] its label, valid until the recording grows
    /// Range: step < steps().size().
    /// Errors: none.
    /// Source: own convention
    const Label* label(Step step) const;
    /// How a step that is an iterative solve is solved again.
    ///
    /// @param step [-] a step of this recording whose operation is `opaque`
    /// @return [call] valid until the recording grows
    /// Range: opaque steps.
    /// Errors: std::out_of_range for any other step.
    /// Source: own convention
    /// Verified by: tests/cpp/traced/test_traced.cpp
    const Solver& solver(Step step) const;

  private:
    std::vector<RecordedStep> steps_;
    std::vector<Step> pool_;
    std::vector<Label> labels_;
    std::vector<std::pair<Step, Solver>> solvers_; ///< by step, rising
    Naming naming_;
};

} // namespace scupper
