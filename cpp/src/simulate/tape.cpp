#include "tape.hpp"

#include "tape_steps.hpp"

#include <algorithm>

namespace scupper::simulate::detail {

Tape::Tape(const estimate::Plan& plan) : plan_(plan), workspace_(plan) {}

const std::vector<char>& Tape::record(const estimate::Resolved& resolved,
                                      const std::vector<std::size_t>& figures) {
    recording_.clear();
    inputs_.clear();
    for (const double value : resolved.values) {
        inputs_.emplace_back(value, &recording_, recording_.leaf(value, {}));
    }
    price(resolved.model, estimate::Inputs<Traced>(plan_.inputs, inputs_.data()), workspace_);
    ends_.clear();
    for (const std::size_t place : figures) {
        ends_.push_back(workspace_.figures.at(place).step_in(recording_));
    }
    find_last_uses();
    moves_.assign(inputs_.size(), 0); // leaves were written first, in the order of the layout
    for (std::size_t place = 0; place < moves_.size(); ++place) {
        moves_[place] = last_use_[place] > 0;
    }
    return moves_;
}

void Tape::find_last_uses() {
    const auto size = static_cast<Step>(recording_.steps().size());
    last_use_.assign(size, 0);
    for (const Step end : ends_) {
        last_use_[end] = size; // beyond the last step: kept
    }
    for (Step step = size; step-- > 0;) {
        if (last_use_[step] > 0) {
            for (const Step argument : recording_.arguments(step)) {
                last_use_[argument] = std::max(last_use_[argument], step);
            }
        }
    }
}

double* Tape::take_column() {
    if (free_.empty()) {
        if (taken_ == memory_.size()) {
            memory_.emplace_back(block_draws);
        }
        return memory_[taken_++].data();
    }
    double* column = free_.back();
    free_.pop_back();
    return column;
}

/// Memory of a column whose last use this was serves the next.
void Tape::release_arguments(Step of) {
    for (const Step argument : recording_.arguments(of)) {
        const bool is_own = argument >= inputs_.size() && at_[argument].column != nullptr;
        if (is_own && last_use_[argument] == of) {
            free_.push_back(columns_[argument]);
            last_use_[argument] = 0; // it may be an argument twice
        }
    }
}

void Tape::add_work(Step step) {
    const std::span<const Step> arguments = recording_.arguments(step);
    const bool varies = std::any_of(arguments.begin(), arguments.end(),
                                    [this](Step a) { return at_[a].column != nullptr; });
    if (!varies) {
        return;
    }
    const auto first = static_cast<std::uint32_t>(operands_.size());
    for (const Step a : arguments) {
        operands_.push_back(at_[a]);
    }
    double* out = take_column();
    release_arguments(step);
    columns_[step] = out;
    at_[step].column = out;
    work_.push_back({recording_.steps()[step].op, step,
                     static_cast<std::uint32_t>(arguments.size()), first, out});
}

void Tape::draw_over(std::span<const std::size_t> places, std::span<const double* const> columns) {
    const auto& steps = recording_.steps();
    at_.resize(steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        at_[i] = {nullptr, steps[i].value};
    }
    columns_.resize(steps.size());
    for (std::size_t k = 0; k < places.size(); ++k) {
        at_[places[k]].column = columns[k];
    }
    work_.clear();
    operands_.clear();
    free_.clear();
    taken_ = 0;
    for (auto step = static_cast<Step>(inputs_.size()); step < steps.size(); ++step) {
        if (last_use_[step] > 0) {
            add_work(step);
        }
    }
    results_.clear();
    for (const Step end : ends_) {
        results_.push_back(at_[end]);
    }
}

void Tape::solve(const Work& work, const Operand* operands, std::size_t count) {
    const Solver& solver = recording_.solver(work.step);
    numbers_.resize(work.arguments);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < numbers_.size(); ++k) {
            numbers_[k] = operands[k][i];
        }
        work.out[i] = solver(numbers_);
    }
}

void Tape::run(std::size_t count) {
    for (const Work& work : work_) {
        const Operand* operands = operands_.data() + work.first;
        if (work.op == Op::opaque) {
            solve(work, operands, count);
        } else if (work.op >= Op::less) {
            decide_each(work.op, operands, work.out, count);
        } else if (work.arguments == 1) {
            apply_each(work.op, operands[0], work.out, count);
        } else {
            combine_each(work.op, operands, work.out, count);
        }
    }
}

} // namespace scupper::simulate::detail
