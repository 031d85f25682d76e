#pragma once
// Dirt: what it weighs, how steep it lies, and how much has built up since the last cleaning.
// Plain data; reading it is the business of `json`.

#include "scupper/rates/rate_book.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// A figure as somebody printed it: a bulk density, or dirt by length of curb.
struct PublishedFigure {
    double value = 0.0; ///< [kg/m3 or kg/m] as printed, in SI
    std::string basis;  ///< [text] one of published_basis_names
    Provenance origin;  ///< [text] document, date, note
};

/// Dirt of one material and moisture.
struct DirtKind {
    std::string material;                   ///< [text] "sand", "leaves"
    std::string moisture;                   ///< [text] one of moisture_names
    Setting density;                        ///< [kg/m3] in bulk
    std::optional<Setting> repose;          ///< [rad] slope of a heap; none where it is not known
    std::vector<PublishedFigure> published; ///< [kg/m3, n] what the density rests on
    std::string note;                       ///< [text] free text
};

/// How much dirt lies where the last cleaning was so long ago.
struct BuildUp {
    std::string since;           ///< [text] one of build_up_names
    std::vector<Setting> values; ///< [SI unit of each, n] by key of the input schema
    std::string note;            ///< [text] free text
};

/// Street dirt as it was measured.
struct StreetLoad {
    std::string street;     ///< [text] where and when
    PublishedFigure figure; ///< [kg/m] of curb
};

/// A dated, sourced collection of what is known of dirt.
struct DirtTable {
    std::string name;                     ///< [text] what people call it
    std::string date;                     ///< ISO 8601
    std::string note;                     ///< [text] free text
    std::vector<DirtKind> kinds;          ///< [-, n] by material and moisture
    std::vector<BuildUp> build_ups;       ///< [-, n] by time since the last cleaning
    std::vector<StreetLoad> street_loads; ///< [-, n] as measured
};

/// The build-up of a word.
///
/// @param table [-] what is known of dirt
/// @param since [text] one of build_up_names
/// @param path [text] where the word was written, for the error
/// @return [-] the build-up
/// Range: any text.
/// Errors: UnknownNameError `dirt.since` naming the nearest word of the table.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_dirt_table.cpp
const BuildUp& build_up_of(const DirtTable& table, std::string_view since, const std::string& path);

/// The dirt of a material and moisture.
///
/// @param table [-] what is known of dirt
/// @param material [text] "sand"
/// @param moisture [text] one of moisture_names
/// @param path [text] where they were written, for the error
/// @return [-] the dirt
/// Range: any text.
/// Errors: UnknownNameError `dirt.kind` naming the nearest "material, moisture" of the table.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_dirt_table.cpp
const DirtKind& dirt_of(const DirtTable& table, std::string_view material,
                        std::string_view moisture, const std::string& path);

} // namespace scupper
