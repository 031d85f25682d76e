#include "outline.hpp"
#include "scupper/traced/derivation.hpp"

#include <cstddef>
#include <string>
#include <vector>

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
    TextWriter(const Derivation& derivation, const ValueWriter& write, std::size_t depth)
        : derivation_(derivation), write_(write), depth_(depth),
          outline_(detail::outline_of(derivation)) {}

    std::string run() {
        if (!derivation_.steps.empty()) {
            line(0, 0);
        }
        if (folded_ > 0) {
            text_ += "(" + std::to_string(folded_) + " of " +
                     std::to_string(derivation_.steps.size()) +
                     " steps lie deeper and are not shown)\n";
        }
        return std::move(text_);
    }

  private:
    static std::string indented(std::size_t level) { return std::string(2 * level, ' '); }

    void line(std::size_t index, std::size_t indent) {
        const DerivedStep& s = derivation_.steps[index];
        const detail::OutlineEntry& entry = outline_[index];
        text_ += indented(indent) + s.name + " = " + write_(s.value, s.dimension, s.key) + "  " +
                 reason(s);
        if (entry.level >= depth_ && entry.below > 0) {
            folded_ += entry.below;
            text_ += "  [+" + std::to_string(entry.below) + "]\n";
            return;
        }
        text_ += "\n";
        parts(index, indent + 1);
    }

    void parts(std::size_t index, std::size_t indent) {
        const DerivedStep& s = derivation_.steps[index];
        for (const std::size_t part : outline_[index].parts) {
            line(part, indent);
        }
        if (s.kind != DerivedKind::choice) {
            return;
        }
        for (std::size_t arm = 0; arm < 2; ++arm) {
            const bool taken = (arm == 0) == s.taken_first;
            text_ += indented(indent) + (taken ? "taken: " : "not taken: ") + s.arms[arm] + "\n";
            for (const std::size_t part : outline_[index].arm_parts[arm]) {
                line(part, indent + 1);
            }
        }
    }

    const Derivation& derivation_;
    const ValueWriter& write_;
    std::size_t depth_;
    std::vector<detail::OutlineEntry> outline_;
    std::size_t folded_ = 0;
    std::string text_;
};

} // namespace

std::string Derivation::text(const ValueWriter& write, std::size_t depth) const {
    return TextWriter(*this, write, depth).run();
}

} // namespace scupper
