#pragma once
// A recorded step written as a formula in the names of the results, inputs and constants it uses.

#include <map>
#include <string>
#include <vector>

#include "scupper/traced/recording.hpp"

namespace scupper::detail {

/// Writes steps as formulas. A step stands for itself ("is shown") where it has a name, is a
/// choice or a solve; everything between is arithmetic and is written out.
class Expressions {
  public:
    explicit Expressions(const Recording& recording) : recording_(recording) {}

    /// The step that did the work: behind any number of names.
    Step body_of(Step step) const;
    /// What people call a shown step; nameless choices are numbered.
    std::string name(Step step);
    /// The formula by which a step follows from shown ones.
    std::string expression(Step step) { return write(step, 0, true); }
    /// The same, or just the name where the step is shown.
    std::string inner(Step step) { return write(step, 0, false); }
    /// The shown steps that the formula of a step refers to, each once.
    std::vector<Step> parts(Step step) const;
    /// The same, or the step itself where it is shown.
    std::vector<Step> parts_within(Step step) const;

  private:
    bool shown(Step step) const;
    std::string write(Step step, int outer_precedence, bool open);
    std::string infix(Step step, int outer_precedence);
    std::string call(Step step);
    void collect(Step step, bool open, std::vector<Step>& found) const;

    const Recording& recording_;
    std::map<Step, int> choices_;
};

} // namespace scupper::detail
