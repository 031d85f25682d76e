#include "scupper/traced/recording.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace scupper {

Step Recording::leaf(double value, Label label) {
    return record(Op::leaf, value, {}, has_names() ? add_label(std::move(label)) : -1);
}

Step Recording::record(Op op, double value, std::span<const Step> arguments, std::int32_t label) {
    const auto first = static_cast<std::uint32_t>(pool_.size());
    pool_.insert(pool_.end(), arguments.begin(), arguments.end());
    steps_.push_back({op, first, static_cast<std::uint32_t>(arguments.size()), label, value});
    return static_cast<Step>(steps_.size() - 1);
}

Step Recording::solve(double value, std::span<const Step> arguments, std::int32_t label,
                      Solver solver) {
    const Step step = record(Op::opaque, value, arguments, label);
    solvers_.emplace_back(step, std::move(solver));
    return step;
}

const Solver& Recording::solver(Step step) const {
    const auto found = std::lower_bound(solvers_.begin(), solvers_.end(), step,
                                        [](const auto& s, Step at) { return s.first < at; });
    if (found == solvers_.end() || found->first != step) {
        throw std::out_of_range("no iterative solve");
    }
    return found->second;
}

std::int32_t Recording::add_label(Label label) {
    labels_.push_back(std::move(label));
    return static_cast<std::int32_t>(labels_.size() - 1);
}

void Recording::clear() {
    steps_.clear();
    pool_.clear();
    labels_.clear();
    solvers_.clear();
}

std::span<const Step> Recording::arguments(Step step) const {
    const RecordedStep& s = steps_[step];
    return {pool_.data() + s.first_argument, s.argument_count};
}

const Label* Recording::label(Step step) const {
    const std::int32_t index = steps_[step].label;
    return index < 0 ? nullptr : &labels_[static_cast<std::size_t>(index)];
}

} // namespace scupper
