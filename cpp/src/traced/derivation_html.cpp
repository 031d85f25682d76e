#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "scupper/traced/derivation.hpp"

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
    HtmlWriter(const Derivation& derivation, const ValueWriter& write)
        : derivation_(derivation), write_(write), met_(derivation.steps.size(), false) {}

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
        html_ += "<li><b>" + escaped(s.name) + "</b> = " + escaped(write_(s.value, s.dimension, s.key));
        const bool leaf = s.kind == DerivedKind::input || s.kind == DerivedKind::constant;
        if (met_[index] && !leaf) {
            html_ += " <i>(above)</i></li>";
            return;
        }
        met_[index] = true;
        body(s);
        html_ += "</li>";
    }

    void body(const DerivedStep& s) {
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
        list(s.parts);
        if (s.kind == DerivedKind::choice) {
            arm(s, 0);
            arm(s, 1);
        }
    }

    void arm(const DerivedStep& s, std::size_t which) {
        const bool taken = (which == 0) == s.taken_first;
        html_ += taken ? "<div class=\"taken\"><b>taken</b> " : "<div class=\"not-taken\">not taken ";
        html_ += std::string(which == 0 ? "if so: " : "if not: ") + escaped(s.arms[which]);
        list(s.arm_parts[which]);
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
    std::vector<bool> met_;
    std::string html_;
};

} // namespace

std::string Derivation::html(const ValueWriter& write) const {
    return HtmlWriter(*this, write).run();
}

} // namespace scupper
