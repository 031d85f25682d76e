#include "scupper/random/sampling.hpp"

#include "scupper/error.hpp"

#include <string>

namespace scupper {

void Sampler::refuse(std::uint64_t draw) const {
    throw InputError(
        {"random.draw", "draw", std::to_string(draw),
         "0 to " + std::to_string(permutation_.size() - 1) + " of this Latin hypercube"});
}

void Sampler::fill(std::uint64_t first, std::span<double> out) const {
    std::size_t i = 0;
    if (first % 2 == 1 && !out.empty()) {
        out[i++] = (*this)(first);
    }
    for (; i + 1 < out.size(); i += 2) {
        const std::uint64_t draw = first + i;
        const PhiloxCounter words = detail::draw_words(seed_, place_, draw / 2);
        out[i] = placed(detail::half_of(words, 0), draw);
        out[i + 1] = placed(detail::half_of(words, 1), draw + 1);
    }
    if (i < out.size()) {
        out[i] = (*this)(first + i);
    }
}

double latin_hypercube(const DrawKey& key, std::uint64_t draw, std::uint64_t draws) {
    return Sampler(Sampling::latin_hypercube, key, draws)(draw);
}

} // namespace scupper
