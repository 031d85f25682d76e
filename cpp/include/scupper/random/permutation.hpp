#pragma once
// A keyed permutation of 0 .. n-1, computed in constant time and storage.

#include "scupper/random/key.hpp"

#include <cstdint>

namespace scupper {

/// A bijection of 0 .. n-1 chosen by a key: an alternating Feistel network on a grid of b rows by
/// a columns (a = ceil(sqrt(n)), b = ceil(n / a)), walked on where it leaves 0 .. n-1.
/// Four rounds mix a grid of 512 cells and more; a smaller one needs many.
/// Source: Black, Rogaway, "Ciphers with arbitrary finite domains", CT-RSA (2002),
///         DOI 10.1007/3-540-45760-7_9, method 3 (generalised Feistel with cycle walking).
class Permutation {
  public:
    static constexpr std::uint64_t max_size = std::uint64_t{1} << 32; ///< [-] largest n

    /// The permutation that belongs to a key.
    ///
    /// @param key [-] seed, stream and input
    /// @param size [-] n, 1 to 2^32
    /// Errors: InputError `random.count` where size is 0 or above 2^32.
    Permutation(const DrawKey& key, std::uint64_t size);

    /// Where the permutation sends an index. In the header because every stratified draw asks.
    ///
    /// @param index [-] 0 to size() - 1; not checked
    /// @return [-] 0 to size() - 1
    /// Range: 0 <= index < size().
    /// Errors: none.
    /// Source: Black, Rogaway 2002
    /// Verified by: tests/cpp/random/test_permutation.cpp
    std::uint64_t operator()(std::uint64_t index) const {
        do {
            index = once(static_cast<std::uint32_t>(index));
        } while (index >= size_); // the grid holds at most a - 1 cells too many
        return index;
    }

    /// How many indices are permuted [-].
    std::uint64_t size() const noexcept { return size_; }

  private:
    std::uint64_t once(std::uint32_t index) const {
        std::uint32_t row = index / columns_;
        std::uint32_t column = index % columns_;
        std::uint64_t round_key = key_;
        for (int i = 0; i < round_pairs_; ++i) {
            row = shifted(row, column, round_key += detail::kGolden64, rows_);
            column = shifted(column, row, round_key += detail::kGolden64, columns_);
        }
        return std::uint64_t{row} * columns_ + column;
    }

    /// (value + hash(other)) mod modulus, without a division.
    static std::uint32_t shifted(std::uint32_t value, std::uint32_t other, std::uint64_t round_key,
                                 std::uint32_t modulus) {
        std::uint64_t hash = (other + round_key) * multiplier;
        hash = (hash ^ (hash >> 32)) * multiplier;
        const std::uint32_t shift = detail::high_word((hash >> 32) * modulus);
        const std::uint64_t sum = std::uint64_t{value} + shift;
        return static_cast<std::uint32_t>(sum >= modulus ? sum - modulus : sum);
    }

    static constexpr std::uint64_t multiplier = 0xBF58476D1CE4E5B9; // any odd one with mixed bits

    std::uint64_t key_;
    std::uint64_t size_;
    std::uint32_t columns_;
    std::uint32_t rows_;
    int round_pairs_;
};

} // namespace scupper
