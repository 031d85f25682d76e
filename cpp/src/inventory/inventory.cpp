#include "scupper/inventory/inventory.hpp"

#include "scupper/error.hpp"
#include "text.hpp"

#include <algorithm>
#include <cctype>
#include <iterator>
#include <tuple>

namespace scupper::inventory {

namespace {

/// A structure number as it is compared when people mistype it: no blanks, signs, leading zeros.
std::string bare(std::string_view id) {
    std::string out;
    for (const char c : id) {
        if (std::isalnum(static_cast<unsigned char>(c)) != 0 && !(c == '0' && out.empty())) {
            out += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
        }
    }
    return out;
}

std::size_t difference(std::size_t a, std::size_t b) {
    return a > b ? a - b : b - a;
}

/// How far a number is from the wrong one; negative where it is not near.
int distance(std::string_view wrong, std::string_view bare_wrong, std::string_view id) {
    if (!bare_wrong.empty() && bare(id) == bare_wrong) {
        return 0;
    }
    const std::size_t limit = std::max(wrong.size(), id.size()) / 3;
    if (difference(wrong.size(), id.size()) > limit) {
        return -1; // so long a way apart that there is no need to measure it
    }
    const int steps = edit_distance(wrong, id);
    return steps <= static_cast<int>(limit) ? std::max(steps, 1) : -1;
}

[[noreturn]] void refuse_ambiguous(std::string_view id, std::span<const Structure> structures,
                                   std::span<const std::uint32_t> candidates) {
    std::string names;
    for (const std::uint32_t position : candidates) {
        names.append(names.empty() ? "" : " or ").append(structure_key(structures[position]));
    }
    throw InputError({"inventory.ambiguous", "structure number", std::string(id), names});
}

} // namespace

const Structure* Inventory::find(std::string_view id) const {
    id = detail::trimmed(id);
    const std::vector<std::uint32_t> found = index_.find(id, structures);
    if (found.size() > 1) {
        refuse_ambiguous(id, structures, found);
    }
    if (found.size() == 1) {
        return &structures[found.front()];
    }
    const std::size_t colon = id.find(':');
    if (colon == std::string_view::npos) {
        return nullptr;
    }
    const std::uint32_t position =
        index_.find(id.substr(0, colon), detail::trimmed(id.substr(colon + 1)), structures);
    return position == detail::IdIndex::none ? nullptr : &structures[position];
}

std::vector<std::string> Inventory::near_misses(std::string_view id, std::size_t most) const {
    const std::size_t colon = id.find(':');
    const bool with_state = colon != std::string_view::npos;
    const std::string_view state = with_state ? id.substr(0, colon) : std::string_view{};
    const std::string_view wrong = detail::trimmed(with_state ? id.substr(colon + 1) : id);
    const std::string bare_wrong = bare(wrong);
    std::vector<std::tuple<int, std::size_t>> near;
    for (std::size_t i = 0; i < structures.size(); ++i) {
        const int steps = distance(wrong, bare_wrong, structures[i].id);
        if (steps >= 0) {
            near.emplace_back(2 * steps + (with_state && structures[i].state != state ? 1 : 0), i);
        }
    }
    std::sort(near.begin(), near.end());
    near.resize(std::min(near.size(), most));
    std::vector<std::string> keys;
    std::transform(near.begin(), near.end(), std::back_inserter(keys), [this](const auto& entry) {
        return structure_key(structures[std::get<1>(entry)]);
    });
    return keys;
}

void Inventory::reindex() {
    index_ = {};
    for (std::size_t i = 0; i < structures.size(); ++i) {
        index_.add(structures[i].id, static_cast<std::uint32_t>(i));
    }
}

std::string where(const Inventory& inventory, const Doubt& doubt) {
    return inventory.files.at(doubt.file) + ":" + std::to_string(doubt.line) + " " + doubt.column;
}

std::string where(const Inventory& inventory, const Rejected& rejected) {
    return inventory.files.at(rejected.file) + ":" + std::to_string(rejected.line);
}

} // namespace scupper::inventory
