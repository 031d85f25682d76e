#pragma once
// Which inputs a structure's simulated figures depend on at all. Internal to the part.

#include "scupper/estimate.hpp"

#include <vector>

namespace scupper::simulate::detail {

/// Finds by recording one price which inputs can move a figure: what does not is not drawn.
/// Both arms of every choice are recorded, so the answer holds for every draw.
class Reach {
  public:
    explicit Reach(const estimate::Plan& plan);

    /// Whether each input moves one of the figures [-, by input place].
    const std::vector<char>& of(const estimate::Resolved& resolved,
                                const std::vector<std::size_t>& figures);

  private:
    void visit(Step step);

    const estimate::Plan& plan_;
    estimate::Workspace<Traced> workspace_;
    Recording recording_;
    std::vector<Traced> inputs_;
    std::vector<char> seen_;  ///< by step
    std::vector<Step> open_;  ///< seen, its arguments not yet
    std::vector<char> moves_; ///< by input place
};

} // namespace scupper::simulate::detail
