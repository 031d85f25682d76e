#pragma once
// A keyed permutation of 0 .. n-1.

#include "scupper/random/key.hpp"

#include <array>
#include <cstdint>
#include <span>

namespace scupper {

/// A bijection of 0 .. n-1 chosen by a key. Below 512 a stored shuffle, all n! of them alike; from
/// there on, in constant time and storage, an alternating Feistel network of four rounds on a grid
/// of b rows by a columns (a = ceil(sqrt(n)), b = ceil(n / a)), walked on where it leaves 0 .. n-1.
/// Source: Durstenfeld, Algorithm 235, CACM 7 (1964) 420, DOI 10.1145/364520.364540; Black, Rogaway,
///         "Ciphers with arbitrary finite domains", CT-RSA (2002), DOI 10.1007/3-540-45760-7_9,
///         method 3 (generalised Feistel with cycle walking).
class Permutation {
  public:
    static constexpr std::uint64_t max_size = std::uint64_t{1} << 32; ///< [-] largest n

    /// The permutation that belongs to a key.
    ///
    /// @param key [-] seed, stream and input
    /// @param size [-] n, 1 to 2^32
    /// Errors: InputError `random.count` where size is 0 or above 2^32.
    Permutation(const DrawKey& key, std::uint64_t size);

    /// Where the permutation sends an index.
    ///
    /// @param index [-] 0 to size() - 1; not checked
    /// @return [-] 0 to size() - 1
    /// Range: 0 <= index < size().
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_permutation.cpp
    std::uint64_t operator()(std::uint64_t index) const {
        return is_stored() ? stored_[index] : walked(index);
    }

    /// Where it sends consecutive indices, as operator() does, in a quarter of the time.
    ///
    /// @param first [-] the first index
    /// @param out [-, n] receives the images of first, first + 1, ...
    /// Range: first + n <= size(); not checked.
    /// Errors: none.
    /// Source: definition
    /// Verified by: tests/cpp/random/test_permutation.cpp
    void fill(std::uint64_t first, std::span<std::uint64_t> out) const;

    /// How many indices are permuted [-].
    std::uint64_t size() const noexcept { return size_; }

  private:
    static constexpr std::uint64_t stored_below = 512; // four rounds mix a smaller grid too little
    static constexpr int round_pairs = 2;

    bool is_stored() const { return size_ < stored_below; }
    void shuffle();
    void fill_lanes(std::uint64_t first, std::span<std::uint64_t> out) const;

    std::uint64_t walked(std::uint64_t index) const {
        do {
            index = once(static_cast<std::uint32_t>(index));
        } while (index >= size_); // the grid holds at most a - 1 cells too many
        return index;
    }

    std::uint64_t once(std::uint32_t index) const {
        std::uint64_t row = index / columns_;
        std::uint64_t column = index % columns_;
        std::uint64_t round_key = key_;
        for (int i = 0; i < round_pairs; ++i) {
            row = shifted(row, column, round_key += detail::kGolden64, rows_);
            column = shifted(column, row, round_key += detail::kGolden64, columns_);
        }
        return row * columns_ + column;
    }

    /// (value + hash(other)) mod modulus, all below 2^32, without a division.
    static std::uint64_t shifted(std::uint64_t value, std::uint64_t other, std::uint64_t round_key,
                                 std::uint64_t modulus) {
        std::uint64_t hash = (other + round_key) * multiplier;
        hash = (hash ^ (hash >> 32)) * multiplier;
        const std::uint64_t sum = value + (((hash >> 32) * modulus) >> 32);
        return sum >= modulus ? sum - modulus : sum;
    }

    static constexpr std::uint64_t multiplier = 0xBF58476D1CE4E5B9; // any odd one with mixed bits

    std::uint64_t key_;
    std::uint64_t size_;
    std::uint32_t columns_;
    std::uint32_t rows_;
    std::array<std::uint16_t, stored_below> stored_; ///< images, where there are few
};

} // namespace scupper
