#include "seen.hpp"

#include "bytes.hpp"

#include <algorithm>
#include <utility>

namespace scupper::inventory::detail {

namespace {

std::uint64_t key_of(std::string_view state, std::string_view id) {
    const std::uint64_t hash = text_hash(id) ^ (text_hash(state) << 1U);
    return hash == 0 ? 1 : hash;
}

} // namespace

std::size_t Seen::slot_of(std::uint64_t key) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t at = key & mask;
    while (slots_[at].key != 0 && slots_[at].key != key) {
        at = (at + 1) & mask;
    }
    return at;
}

void Seen::grow() {
    const std::vector<Entry> before =
        std::exchange(slots_, std::vector<Entry>(std::max<std::size_t>(1024, slots_.size() * 2)));
    for (const Entry& entry : before) {
        if (entry.key != 0) {
            slots_[slot_of(entry.key)] = entry;
        }
    }
}

void Seen::add(std::span<const Structure> structures, std::span<const std::uint64_t> rows) {
    for (std::size_t i = 0; i < structures.size(); ++i) {
        if (4 * (size_ + 1) > 3 * slots_.size()) {
            grow();
        }
        const std::uint64_t key = key_of(structures[i].state, structures[i].id);
        slots_[slot_of(key)] = {key, rows[i], structures[i].line};
        ++size_;
    }
}

const Seen::Entry* Seen::find(std::string_view state, std::string_view id) const {
    if (slots_.empty()) {
        return nullptr;
    }
    const Entry& entry = slots_[slot_of(key_of(state, id))];
    return entry.key == 0 ? nullptr : &entry;
}

} // namespace scupper::inventory::detail
