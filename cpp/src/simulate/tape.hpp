#pragma once
// The price of one structure as straight steps over a block of draws. Internal to the part.

#include "scupper/estimate.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace scupper::simulate::detail {

/// Draws in a block: the columns at work stay in the processor's nearest memory.
inline constexpr std::size_t block_draws = 128;

/// A column of draws, or a number that is the same in all of them.
struct Operand {
    const double* column = nullptr; ///< none for a number
    double number = 0.0;

    double operator[](std::size_t i) const { return column != nullptr ? column[i] : number; }
};

/// Records a price once, and runs of it again only what leads from drawn inputs to the figures
/// asked for. Both arms of every choice are recorded, so that it holds for every draw; each step
/// works as the price itself does, so that the bits are the same.
class Tape {
  public:
    explicit Tape(const estimate::Plan& plan);

    /// Records the price of a structure. Whether each input moves one of the figures [-, by place].
    const std::vector<char>& record(const estimate::Resolved& resolved,
                                    const std::vector<std::size_t>& figures);
    /// Makes the recorded price ready to run over drawn inputs: a column each, by place.
    void draw_over(std::span<const std::size_t> places, std::span<const double* const> columns);
    /// Runs it over the first `count` draws of the columns.
    void run(std::size_t count);
    /// A figure of the last run, by its place in what was asked for.
    const Operand& figure(std::size_t which) const { return results_[which]; }

  private:
    struct Work {
        Op op;
        Step step;               ///< as recorded
        std::uint32_t arguments; ///< how many
        std::uint32_t first;     ///< of them among operands_
        double* out;
    };
    void find_last_uses();
    void add_work(Step step);
    void solve(const Work& work, const Operand* operands, std::size_t count);
    double* take_column();
    void release_arguments(Step of);

    const estimate::Plan& plan_;
    estimate::Workspace<Traced> workspace_;
    Recording recording_{Naming::no_names};
    std::vector<Traced> inputs_;
    std::vector<Step> ends_;        ///< steps of the figures
    std::vector<Step> last_use_;    ///< by step: the step that needs it last; 0 where none does
    std::vector<char> moves_;       ///< by input place
    std::vector<Operand> at_;       ///< by step
    std::vector<double*> columns_;  ///< by step, of those that have work
    std::vector<Work> work_;        ///< in the order of the recording
    std::vector<Operand> operands_; ///< of the work, one after the other
    std::vector<Operand> results_;
    std::vector<std::vector<double>> memory_; ///< columns between drawn inputs and figures
    std::vector<double*> free_;
    std::size_t taken_ = 0;       ///< of the memory
    std::vector<double> numbers_; ///< of one solve
};

} // namespace scupper::simulate::detail
