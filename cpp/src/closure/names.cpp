#include "scupper/closure/names.hpp"

#include "scupper/error.hpp"
#include "scupper/schema.hpp"
#include "words.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>
#include <string>

namespace scupper::closure {

using detail::index_in;

namespace {

constexpr std::array<std::string_view, 5> taper_words{"merging", "shifting", "shoulder",
                                                      "one_lane_two_way", "downstream"};
constexpr std::array<std::string_view, 4> edition_words{"2009", "2023", "manual_2009",
                                                        "manual_2023"};
constexpr std::array<std::string_view, 13> road_words{
    "urban_low_speed",   "urban_high_speed",     "rural",
    "freeway",           "urban_25_mph_or_less", "urban_over_25_to_40_mph",
    "urban_over_40_mph", "urban_30_mph",         "urban_35_mph",
    "urban_40_mph",      "urban_45_mph",         "urban_50_mph_or_more",
    "expressway_freeway"};
static_assert(std::equal(road_class_names.begin(), road_class_names.end(), road_words.begin()));
constexpr std::size_t expressway_freeway = road_words.size() - 1;

// Small letters and digits, everything between them one underscore.
std::string plain(std::string_view word) {
    std::string out;
    bool gap = false;
    for (const char c : word) {
        const bool capital = c >= 'A' && c <= 'Z';
        if (capital || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
            out += gap && !out.empty() ? "_" : "";
            out += capital ? static_cast<char>(c - 'A' + 'a') : c;
            gap = false;
        } else {
            gap = true;
        }
    }
    return out;
}

} // namespace

std::size_t detail::index_in(std::span<const std::string_view> words, std::string_view word,
                             const char* name) {
    const std::string given = plain(word);
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == given) {
            return i;
        }
    }
    std::string allowed = nearest_name(given, words);
    if (allowed.empty()) {
        for (const std::string_view w : words) {
            allowed += (allowed.empty() ? "" : ", ") + std::string(w);
        }
    }
    throw UnknownNameError(
        ErrorFacts{std::string("closure.") + name, name, std::string(word), allowed});
}

Kind kind_by_name(std::string_view word) {
    return static_cast<Kind>(index_in(closure_kind_names, word, "kind"));
}

TaperKind taper_kind_by_name(std::string_view word) {
    return static_cast<TaperKind>(index_in(taper_words, word, "taper_kind"));
}

Edition edition_by_name(std::string_view word) {
    return static_cast<Edition>(index_in(edition_words, word, "edition") % 2);
}

RoadClass road_class_by_name(std::string_view word) {
    const std::size_t i = index_in(road_words, word, "road_class");
    return i == expressway_freeway ? RoadClass::freeway : static_cast<RoadClass>(i);
}

} // namespace scupper::closure
