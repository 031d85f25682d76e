#include "scupper/traced/sheet.hpp"

#include "sheet_formula.hpp"

#include <algorithm>
#include <cstdint>
#include <map>
#include <utility>

namespace scupper {

namespace {

using detail::append;

constexpr std::size_t longest_argument = 250; // so that a formula stays below the format's limits
constexpr std::size_t most_compared = 20;     // cells in one check

bool is_condition(Op op) {
    return op == Op::less || op == Op::less_equal || op == Op::equal || op == Op::both ||
           op == Op::either || op == Op::negation;
}

/// Goes down a recording and makes the cells, those that a formula needs before its own.
class SheetWriter {
  public:
    explicit SheetWriter(const Recording& recording)
        : recording_(recording), uses_(recording.steps().size(), 0) {}

    Sheet run(std::span<const Step> roots) {
        for (const Step root : roots) {
            count(root);
        }
        for (const Step root : roots) {
            sheet_.roots.push_back(cell_of(root));
        }
        return std::move(sheet_);
    }

  private:
    void count(Step step) {
        if (uses_[step]++ == 0) {
            for (const Step argument : recording_.arguments(step)) {
                count(argument);
            }
        }
    }

    bool has_cell(Step step) const {
        const bool unchanging = recording_.steps()[step].op == Op::constant;
        return recording_.label(step) != nullptr || (!unchanging && uses_[step] > 1);
    }

    /// Behind a result that only gets the same name again.
    Step first_named_so(Step step) const {
        while (recording_.steps()[step].op == Op::named) {
            const Step inner = recording_.arguments(step)[0];
            const Label* label = recording_.label(inner);
            if (label == nullptr || label->name != recording_.label(step)->name ||
                label->key != recording_.label(step)->key) {
                break;
            }
            step = inner;
        }
        return step;
    }

    std::size_t cell_of(Step step) {
        step = first_named_so(step);
        const auto known = cells_.find(step);
        if (known != cells_.end()) {
            return known->second;
        }
        return cells_.emplace(step, make_cell(step)).first->second;
    }

    std::size_t make_cell(Step step) {
        const RecordedStep& s = recording_.steps()[step];
        if (s.op == Op::constant) {
            return constant(step);
        }
        if (s.op == Op::leaf) {
            return add(described(step, CellKind::input));
        }
        if (s.op == Op::opaque) {
            return solve(step);
        }
        SheetCell cell = described(step, is_condition(s.op)  ? CellKind::condition
                                         : s.op == Op::named ? CellKind::result
                                                             : CellKind::part);
        std::swap(owner_, cell.label);
        cell.formula = body(step);
        std::swap(owner_, cell.label);
        return add(std::move(cell));
    }

    SheetCell described(Step step, CellKind kind) const {
        SheetCell cell;
        cell.kind = kind;
        cell.label = owner_;
        cell.value = recording_.steps()[step].value;
        if (const Label* label = recording_.label(step)) {
            cell.label = label->name;
            cell.key = label->key;
            cell.dimension = label->dimension;
            cell.basis = label->basis;
            cell.source = label->source;
        }
        return cell;
    }

    std::size_t add(SheetCell&& cell) {
        sheet_.cells.push_back(std::move(cell));
        return sheet_.cells.size() - 1;
    }

    /// A constant is recorded anew wherever it meets an input; here it stands once.
    std::size_t constant(Step step) {
        SheetCell cell = described(step, CellKind::constant);
        const auto [place, is_new] = constants_.emplace(
            std::pair(cell.label, formula_number(cell.value)), sheet_.cells.size());
        return is_new ? add(std::move(cell)) : place->second;
    }

    std::size_t solve(Step step) {
        SheetCell cell = described(step, CellKind::solve);
        std::vector<std::size_t> inputs;
        for (const Step argument : recording_.arguments(step)) {
            if (recording_.steps()[argument].op != Op::constant) {
                inputs.push_back(cell_of(argument));
            }
        }
        for (std::size_t first = 0; first < inputs.size(); first += most_compared) {
            const std::size_t n = std::min(most_compared, inputs.size() - first);
            cell.checks.push_back(changed(std::span(inputs).subspan(first, n), sheet_));
        }
        return add(std::move(cell));
    }

    /// How a step follows from its arguments.
    Formula body(Step step) {
        const Op op = recording_.steps()[step].op;
        const auto arguments = recording_.arguments(step);
        if (op == Op::named) {
            return argument(arguments[0], detail::loosest);
        }
        const detail::Spelling spelling = detail::spelling_of(op);
        Formula formula;
        append(formula, spelling.before);
        for (std::size_t i = 0; i < arguments.size(); ++i) {
            append(formula, i == 0 ? std::string_view{} : spelling.between);
            append(formula, argument(arguments[i], spelling.inside[i == 0 ? 0 : 1]));
        }
        append(formula, spelling.after);
        return formula;
    }

    /// A step within a formula: its cell, or its own formula in brackets where they are needed.
    Formula argument(Step step, int precedence) {
        if (has_cell(step)) {
            return {{{}, cell_of(step)}};
        }
        const RecordedStep& s = recording_.steps()[step];
        if (s.op == Op::constant) {
            const std::string number = formula_number(s.value);
            return {{number[0] == '-' ? "(" + number + ")" : number}};
        }
        Formula formula = body(step);
        if (detail::length_of(formula) > longest_argument) {
            return {{{}, split_off(step, std::move(formula))}};
        }
        return detail::spelling_of(s.op).precedence < precedence ? bracketed(std::move(formula))
                                                                 : formula;
    }

    std::size_t split_off(Step step, Formula&& formula) {
        const bool condition = is_condition(recording_.steps()[step].op);
        SheetCell cell = described(step, condition ? CellKind::condition : CellKind::part);
        cell.formula = std::move(formula);
        return add(std::move(cell));
    }

    static Formula bracketed(Formula&& inner) {
        Formula formula;
        append(formula, "(");
        append(formula, std::move(inner));
        append(formula, ")");
        return formula;
    }

    const Recording& recording_;
    std::vector<std::uint32_t> uses_;
    std::string owner_; // the name of the cell whose formula is being written
    std::map<Step, std::size_t> cells_;
    std::map<std::pair<std::string, std::string>, std::size_t> constants_; // by name and number
    Sheet sheet_;
};

} // namespace

Sheet sheet_of(const Recording& recording, std::span<const Step> roots) {
    return SheetWriter(recording).run(roots);
}

} // namespace scupper
