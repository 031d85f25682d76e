#include "score_table.hpp"

#include "scupper/random/wide.hpp"

namespace scupper::simulate::detail {

SCUPPER_WIDE void ScoreOfUniform::each(double weight, std::span<double> uniforms) const {
    std::size_t beyond = 0;
    for (const double u : uniforms) {
        beyond += is_in_table(u) ? 0 : 1;
    }
    if (beyond > 0) {
        for (double& u : uniforms) {
            u = weight * (*this)(u);
        }
        return;
    }
    for (double& u : uniforms) {
        u = weight * interpolated(u);
    }
}

SCUPPER_WIDE void ValueOfScore::each(std::span<double> scores) const {
    for (double& x : scores) {
        x = (*this)(x);
    }
}

} // namespace scupper::simulate::detail
