#include "scupper/random/permutation.hpp"

#include "scupper/error.hpp"

#include <cmath>
#include <string>

namespace scupper {

namespace {

/// Keeps the permutation apart from the uniform draws of the same key.
constexpr std::uint64_t kPurpose = fnv1a_64("permutation");

// Pairs of rounds after which every ordered pair of places is equally likely (a chi-square test
// over 200 000 keys sees nothing): small grids mix slowly.
constexpr std::uint64_t kSmall = 512;
constexpr int kPairsWhenSmall = 12;
constexpr int kPairsWhenLarge = 2;

std::uint64_t checked(std::uint64_t size) {
    if (size == 0 || size > Permutation::max_size) {
        throw InputError({"random.count", "draws", std::to_string(size), "1 to 2^32"});
    }
    return size;
}

std::uint32_t columns_of(std::uint64_t size) {
    return static_cast<std::uint32_t>(std::ceil(std::sqrt(static_cast<double>(size))));
}

} // namespace

Permutation::Permutation(const DrawKey& key, std::uint64_t size)
    : key_(combine(key.seed, combine(key.stream, key.input)) ^ kPurpose), size_(checked(size)),
      columns_(columns_of(size)),
      rows_(static_cast<std::uint32_t>((size + columns_ - 1) / columns_)),
      round_pairs_(size < kSmall ? kPairsWhenSmall : kPairsWhenLarge) {}

} // namespace scupper
