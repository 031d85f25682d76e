#include "scupper/random/permutation.hpp"

#include "scupper/error.hpp"
#include "scupper/random/wide.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace scupper {

namespace {

/// Keeps the permutation apart from the uniform draws of the same key.
constexpr std::uint64_t kPurpose = fnv1a_64("permutation");

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
      rows_(static_cast<std::uint32_t>((size + columns_ - 1) / columns_)) {
    if (is_stored()) {
        shuffle();
    }
}

void Permutation::shuffle() {
    for (std::uint16_t i = 0; i < size_; ++i) {
        stored_[i] = i;
    }
    std::uint64_t state = key_;
    for (std::uint64_t left = size_; left > 1; --left) {
        const std::uint64_t word = mix64(state += detail::kGolden64) >> 32;
        std::swap(stored_[left - 1], stored_[(word * left) >> 32]);
    }
}

namespace {

constexpr std::size_t images_at_once = 128;

/// One index after another as row and column of a grid.
void lay_out(std::uint64_t first, std::uint64_t columns, std::span<std::uint64_t> row,
             std::span<std::uint64_t> column) {
    std::uint64_t r = first / columns;
    std::uint64_t c = first % columns;
    for (std::size_t i = 0; i < row.size(); ++i) {
        row[i] = r;
        column[i] = c;
        const bool next_row = ++c == columns;
        r += next_row ? 1 : 0;
        c = next_row ? 0 : c;
    }
}

} // namespace

SCUPPER_WIDE void Permutation::fill_lanes(std::uint64_t first, std::span<std::uint64_t> out) const {
    std::array<std::uint64_t, images_at_once> row;
    lay_out(first, columns_, {row.data(), out.size()}, out);
    std::uint64_t key = key_;
    for (int pair = 0; pair < round_pairs; ++pair) {
        key += detail::kGolden64;
        for (std::size_t i = 0; i < out.size(); ++i) {
            row[i] = shifted(row[i], out[i], key, rows_);
        }
        key += detail::kGolden64;
        for (std::size_t i = 0; i < out.size(); ++i) {
            out[i] = shifted(out[i], row[i], key, columns_);
        }
    }
    for (std::size_t i = 0; i < out.size(); ++i) {
        out[i] += row[i] * columns_;
    }
}

void Permutation::fill(std::uint64_t first, std::span<std::uint64_t> out) const {
    if (is_stored()) {
        std::copy_n(stored_.begin() + static_cast<std::ptrdiff_t>(first), out.size(), out.begin());
        return;
    }
    for (std::size_t i = 0; i < out.size(); i += images_at_once) {
        fill_lanes(first + i, out.subspan(i, std::min(images_at_once, out.size() - i)));
    }
    for (std::uint64_t& image : out) {
        image = image < size_ ? image : walked(image);
    }
}

} // namespace scupper
