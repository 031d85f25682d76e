#include "outline.hpp"
#include "scupper/traced/derivation.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

namespace {

std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

class HtmlWriter {
  public:
    HtmlWriter(const Derivation& derivation, const ValueWriter& write, std::size_t depth)
        : derivation_(derivation), write_(write), depth_(depth),
          outline_(detail::outline_of(derivation)) {}

    std::string run() {
        html_ = "<div class=\"derivation\"><ul>";
        if (!derivation_.steps.empty()) {
            item(0);
        }
        return html_ + "</ul></div>";
    }

  private:
    void item(std::size_t index) {
        const DerivedStep& s = derivation_.steps[index];
        const detail::OutlineEntry& entry = outline_[index];
        const bool folds = entry.below > 0;
        html_ += "<li>";
        if (folds) {
            html_ += entry.level < depth_ ? "<details open><summary>" : "<details><summary>";
        }
        html_ += "<b>" + escaped(s.name) + "</b> = " + escaped(write_(s.value, s.dimension, s.key));
        head(s);
        html_ += folds ? "</summary>" : "";
        body(index);
        html_ += folds ? "</details></li>" : "</li>";
    }

    /// What stands beside the value, in sight though the rest is folded.
    void head(const DerivedStep& s) {
        if (s.kind == DerivedKind::result) {
            html_ += " = " + escaped(s.expression);
        } else if (s.kind == DerivedKind::solve) {
            html_ += " <small>solved: " + escaped(s.source) + "</small>";
        } else if (s.kind == DerivedKind::choice) {
            html_ += " <small>" + escaped(s.condition) + "?</small>";
        } else {
            const std::string origin = s.basis.empty() ? s.source : s.basis + ": " + s.source;
            html_ += " <small>" + escaped(origin) + "</small>";
        }
    }

    void body(std::size_t index) {
        list(outline_[index].parts);
        if (derivation_.steps[index].kind == DerivedKind::choice) {
            arm(index, 0);
            arm(index, 1);
        }
    }

    void arm(std::size_t index, std::size_t which) {
        const DerivedStep& s = derivation_.steps[index];
        const bool taken = (which == 0) == s.taken_first;
        html_ +=
            taken ? "<div class=\"taken\"><b>taken</b> " : "<div class=\"not-taken\">not taken ";
        html_ += std::string(which == 0 ? "if so: " : "if not: ") + escaped(s.arms[which]);
        list(outline_[index].arm_parts[which]);
        html_ += "</div>";
    }

    void list(const std::vector<std::size_t>& parts) {
        if (parts.empty()) {
            return;
        }
        html_ += "<ul>";
        for (const std::size_t part : parts) {
            item(part);
        }
        html_ += "</ul>";
    }

    const Derivation& derivation_;
    const ValueWriter& write_;
    std::size_t depth_;
    std::vector<detail::OutlineEntry> outline_;
    std::string html_;
};

} // namespace

std::string Derivation::html(const ValueWriter& write, std::size_t depth) const {
    return HtmlWriter(*this, write, depth).run();
}

} // namespace scupper
