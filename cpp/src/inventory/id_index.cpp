#include "scupper/inventory/id_index.hpp"

#include <algorithm>
#include <bit>
#include <cstring>
#include <utility>

namespace scupper::inventory::detail {

namespace {

constexpr std::uint64_t golden = 0x9e3779b97f4a7c15ULL; // 2^64 over the golden ratio, odd

std::uint64_t mixed(std::uint64_t hash, std::uint64_t word) {
    hash = (hash ^ word) * golden;
    return hash ^ (hash >> 32U);
}

/// Multiplicative hash of eight bytes at a time (D. Knuth, The Art of Computer Programming 3,
/// 2nd edition, 6.4). It never leaves the process, so that the order of bytes does not matter.
std::uint32_t hash_of(std::string_view id) {
    std::uint64_t hash = id.size();
    for (std::size_t at = 0; at < id.size(); at += sizeof(std::uint64_t)) {
        std::uint64_t word = 0;
        std::memcpy(&word, id.data() + at, std::min(sizeof(word), id.size() - at));
        hash = mixed(hash, word);
    }
    return static_cast<std::uint32_t>(mixed(hash, 0));
}

} // namespace

void IdIndex::place(Slot slot) {
    const std::size_t mask = slots_.size() - 1;
    std::size_t at = slot.hash & mask;
    while (slots_[at].position != none) {
        at = (at + 1) & mask;
    }
    slots_[at] = slot;
}

void IdIndex::grow(std::size_t slots) {
    const std::vector<Slot> before = std::exchange(slots_, std::vector<Slot>(slots));
    for (const Slot& slot : before) {
        if (slot.position != none) {
            place(slot);
        }
    }
}

void IdIndex::reserve(std::size_t structures) {
    if (2 * structures > slots_.size()) {
        grow(std::bit_ceil(2 * structures));
    }
}

void IdIndex::prefetch(std::string_view id) const {
    if (!slots_.empty()) {
        __builtin_prefetch(&slots_[hash_of(id) & (slots_.size() - 1)]);
    }
}

void IdIndex::add(std::string_view id, std::uint32_t position) {
    if (2 * (size_ + 1) > slots_.size()) {
        grow(std::max<std::size_t>(64, slots_.size() * 2));
    }
    place({hash_of(id), position});
    ++size_;
}

template <class Visit>
void IdIndex::each(std::string_view id, Visit&& visit) const {
    if (slots_.empty()) {
        return;
    }
    const std::uint32_t hash = hash_of(id);
    const std::size_t mask = slots_.size() - 1;
    for (std::size_t at = hash & mask; slots_[at].position != none; at = (at + 1) & mask) {
        if (slots_[at].hash == hash) {
            visit(slots_[at].position);
        }
    }
}

std::vector<std::uint32_t> IdIndex::find(std::string_view id,
                                         std::span<const Structure> structures) const {
    std::vector<std::uint32_t> found;
    each(id, [&](std::uint32_t position) {
        if (position < structures.size() && structures[position].id == id) {
            found.push_back(position);
        }
    });
    std::sort(found.begin(), found.end());
    return found;
}

std::uint32_t IdIndex::find(std::string_view state, std::string_view id,
                            std::span<const Structure> structures) const {
    std::uint32_t found = none;
    each(id, [&](std::uint32_t position) {
        if (position < structures.size() && structures[position].id == id &&
            structures[position].state == state) {
            found = std::min(found, position);
        }
    });
    return found;
}

} // namespace scupper::inventory::detail
