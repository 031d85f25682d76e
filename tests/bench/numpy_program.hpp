#pragma once
// The price of one structure as a NumPy program: what an analyst would write by hand who knew the
// model, an expression over a vector of draws for every step that a drawn input moves.

#include "scupper/traced.hpp"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

namespace bench {

/// Writes `def price(x):`, which takes the drawn inputs row by row and returns the figures asked
/// for; iterative solves call `friction_factor` and `line_flow`. Names are used again after their last use, so that
/// NumPy finds its memory warm.
class NumpyProgram {
  public:
    NumpyProgram(const scupper::Recording& recording, std::vector<scupper::Step> figures,
                 const std::vector<std::size_t>& drawn)
        : recording_(recording), figures_(std::move(figures)) {
        find_last_uses();
        names_.resize(recording.steps().size());
        for (std::size_t row = 0; row < drawn.size(); ++row) {
            names_[drawn[row]] = "x[" + std::to_string(row) + "]";
        }
        text_ = "import numpy as np\nfrom numpy import inf, nan\n"
                "from numpy_solves import friction_factor, line_flow\n\n\ndef price(x):\n";
        for (scupper::Step step = 0; step < names_.size(); ++step) {
            write(step);
        }
        text_ += "    return " + joined(figures_, ", ") + "\n";
    }

    const std::string& text() const { return text_; }
    /// Operations on vectors.
    std::size_t operations() const { return operations_; }

  private:
    void find_last_uses() {
        const auto size = static_cast<scupper::Step>(recording_.steps().size());
        last_use_.assign(size, 0);
        for (const scupper::Step figure : figures_) {
            last_use_[figure] = size;
        }
        for (scupper::Step step = size; step-- > 0;) {
            for (const scupper::Step a : recording_.arguments(step)) {
                last_use_[a] = last_use_[step] > 0 ? std::max(last_use_[a], step) : last_use_[a];
            }
        }
    }

    std::string name(scupper::Step step) const {
        if (!names_[step].empty()) {
            return names_[step];
        }
        char number[32];
        const double value = recording_.steps()[step].value;
        return {number, std::to_chars(number, number + sizeof number, value).ptr};
    }

    template <class Steps>
    std::string joined(const Steps& steps, const char* between) const {
        std::string out;
        for (const scupper::Step step : steps) {
            out += (out.empty() ? "" : between) + name(step);
        }
        return out;
    }

    std::string expression(scupper::Step step) const {
        using scupper::Op;
        const auto arguments = recording_.arguments(step);
        const auto infix = [&](const char* sign) { return joined(arguments, sign); };
        const auto call = [&](const char* f) { return f + ("(" + joined(arguments, ", ") + ")"); };
        switch (recording_.steps()[step].op) {
        case Op::add:
            return infix(" + ");
        case Op::subtract:
            return infix(" - ");
        case Op::multiply:
            return infix(" * ");
        case Op::divide:
            return infix(" / ");
        case Op::power:
            return infix(" ** ");
        case Op::less:
            return infix(" < ");
        case Op::less_equal:
            return infix(" <= ");
        case Op::equal:
            return infix(" == ");
        case Op::negate:
            return "-" + name(arguments[0]);
        case Op::sqrt:
            return call("np.sqrt");
        case Op::exp:
            return call("np.exp");
        case Op::log:
            return call("np.log");
        case Op::cos:
            return call("np.cos");
        case Op::tan:
            return call("np.tan");
        case Op::abs:
            return call("np.abs");
        case Op::ceil:
            return call("np.ceil");
        case Op::count_up:
            return "np.ceil(" + name(arguments[0]) + " * (1.0 - 1e-9))";
        case Op::min:
            return call("np.minimum");
        case Op::max:
            return call("np.maximum");
        case Op::both:
            return call("np.logical_and");
        case Op::either:
            return call("np.logical_or");
        case Op::negation:
            return call("np.logical_not");
        case Op::choose:
            return call("np.where");
        case Op::opaque:
            return call(arguments.size() == 2 ? "friction_factor" : "line_flow");
        default:
            return name(arguments[0]);
        }
    }

    void write(scupper::Step step) {
        const auto arguments = recording_.arguments(step);
        const bool varies = std::any_of(arguments.begin(), arguments.end(),
                                        [this](scupper::Step a) { return !names_[a].empty(); });
        if (last_use_[step] == 0 || !varies) {
            return;
        }
        const std::string value = expression(step);
        for (const scupper::Step a : arguments) {
            if (last_use_[a] == step && names_[a].starts_with('v')) {
                free_.push_back(names_[a]);
                last_use_[a] = 0;
            }
        }
        names_[step] = take_name();
        text_ += "    " + names_[step] + " = " + value + "\n";
        ++operations_;
    }

    std::string take_name() {
        if (free_.empty()) {
            return "v" + std::to_string(count_++);
        }
        std::string taken = free_.back();
        free_.pop_back();
        return taken;
    }

    const scupper::Recording& recording_;
    std::vector<scupper::Step> figures_;
    std::vector<scupper::Step> last_use_;
    std::vector<std::string> names_, free_; ///< by step: none for a number
    std::size_t count_ = 0, operations_ = 0;
    std::string text_;
};

} // namespace bench
