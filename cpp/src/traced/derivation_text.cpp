#include <cstddef>
#include <string>
#include <vector>

#include "scupper/traced/derivation.hpp"

namespace scupper {

namespace {

/// What stands behind the equals sign: formula, origin or method.
std::string reason(const DerivedStep& s) {
    switch (s.kind) {
    case DerivedKind::input:
        return "[" + s.basis + (s.source.empty() ? "" : ": " + s.source) + "]";
    case DerivedKind::constant:
        return "[constant" + (s.source.empty() ? "" : ": " + s.source) + "]";
    case DerivedKind::solve:
        return "[solved: " + s.source + "]";
    case DerivedKind::choice:
        return "[because " + s.condition + " is " + (s.taken_first ? "true" : "false") + "]";
    case DerivedKind::result:
        break;
    }
    return "= " + s.expression;
}

class TextWriter {
  public:
    TextWriter(const Derivation& derivation, const ValueWriter& write)
        : derivation_(derivation), write_(write), met_(derivation.steps.size(), false) {}

    std::string run() {
        if (!derivation_.steps.empty()) {
            line(0, 0, "");
        }
        return std::move(text_);
    }

  private:
    void line(std::size_t index, int depth, const std::string& mark) {
        const DerivedStep& s = derivation_.steps[index];
        text_ += std::string(static_cast<std::size_t>(2 * depth), ' ') + mark + s.name + " = " +
                 write_(s.value, s.dimension, s.key);
        if (met_[index] && s.kind != DerivedKind::input && s.kind != DerivedKind::constant) {
            text_ += "  (above)\n";
            return;
        }
        met_[index] = true;
        text_ += "  " + reason(s) + "\n";
        parts(s, depth + 1);
    }

    void parts(const DerivedStep& s, int depth) {
        for (const std::size_t part : s.parts) {
            line(part, depth, "");
        }
        if (s.kind != DerivedKind::choice) {
            return;
        }
        for (std::size_t arm = 0; arm < 2; ++arm) {
            const bool taken = (arm == 0) == s.taken_first;
            text_ += std::string(static_cast<std::size_t>(2 * depth), ' ') +
                     (taken ? "taken: " : "not taken: ") + s.arms[arm] + "\n";
            for (const std::size_t part : s.arm_parts[arm]) {
                line(part, depth + 1, "");
            }
        }
    }

    const Derivation& derivation_;
    const ValueWriter& write_;
    std::vector<bool> met_;
    std::string text_;
};

} // namespace

std::string Derivation::text(const ValueWriter& write) const {
    return TextWriter(*this, write).run();
}

} // namespace scupper
