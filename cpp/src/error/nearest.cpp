#include "scupper/error/nearest.hpp"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <vector>

namespace scupper {

namespace {
char lower(char c) {
    return static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
}
} // namespace

int edit_distance(std::string_view a, std::string_view b) {
    const std::size_t m = b.size();
    std::vector<int> before(m + 1), previous(m + 1), current(m + 1);
    for (std::size_t j = 0; j <= m; ++j) {
        previous[j] = static_cast<int>(j);
    }
    for (std::size_t i = 1; i <= a.size(); ++i) {
        current[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= m; ++j) {
            const bool same = lower(a[i - 1]) == lower(b[j - 1]);
            current[j] = std::min(
                {previous[j] + 1, current[j - 1] + 1, previous[j - 1] + (same ? 0 : 1)});
            const bool swapped = i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) &&
                                 lower(a[i - 2]) == lower(b[j - 1]);
            if (swapped) {
                current[j] = std::min(current[j], before[j - 2] + 1);
            }
        }
        std::swap(before, previous);
        std::swap(previous, current);
    }
    return previous[m];
}

std::string nearest_name(std::string_view wrong, std::span<const std::string_view> known) {
    std::string_view best;
    int best_distance = 0;
    for (const std::string_view name : known) {
        const int distance = edit_distance(wrong, name);
        const int limit = static_cast<int>(std::max(wrong.size(), name.size())) / 3;
        if (distance <= limit && (best.empty() || distance < best_distance)) {
            best = name;
            best_distance = distance;
        }
    }
    return std::string(best);
}

} // namespace scupper
