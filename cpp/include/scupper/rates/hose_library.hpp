#pragma once
// Hoses by construction and bore, and fittings: what is known of each, low, likely and high.
// Plain data; reading and writing it is the business of `json`.

#include "scupper/rates/rate_book.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// A hose coefficient as somebody printed or implied it.
struct PublishedCoefficient {
    double value = 0.0;         ///< [-] psi per 100 ft at (100 gpm)^2
    std::optional<double> flow; ///< [m3/s] at which a table implies it; none where it is printed
    std::string basis;          ///< [text] one of published_basis_names
    Provenance origin;          ///< [text] document, date, note
};

/// A hose of one construction and nominal bore.
struct HoseKind {
    std::string name;                            ///< [text] "rubber_lined_1_1_2in"
    std::string construction;                    ///< [text] one of construction_names
    double nominal_bore = 0.0;                   ///< [m] what it is sold as
    Setting bore;                                ///< [m] true inside diameter under pressure
    Setting roughness;                           ///< [m] equivalent sand roughness of the lining
    std::optional<Setting> coefficient;          ///< [-] psi per 100 ft at (100 gpm)^2
    std::optional<Setting> working_pressure;     ///< [Pa] gauge; none for a suction hose
    std::vector<PublishedCoefficient> published; ///< [-, n] what the coefficient rests on
    std::string note;                            ///< [text] free text
};

/// A fitting of a hose line.
struct FittingKind {
    std::string name;         ///< [text] "gated_wye"
    Setting loss_coefficient; ///< [-] K, referred to the bore of the hose it stands in
    std::string note;         ///< [text] free text
};

/// A dated, sourced collection of hoses and fittings.
struct HoseLibrary {
    std::string name;                  ///< [text] what people call it
    std::string date;                  ///< ISO 8601
    std::string note;                  ///< [text] free text
    std::vector<HoseKind> hoses;       ///< [-, n] by construction, then by bore
    std::vector<FittingKind> fittings; ///< [-, n] in the order of the line
};

/// The hose of a name.
///
/// @param library [-] hoses and fittings
/// @param name [text] name of the hose
/// @param path [text] where the name was written, for the error
/// @return [-] the hose
/// Range: any text.
/// Errors: UnknownNameError `hose.kind` naming the nearest known hose.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_hose_library.cpp
const HoseKind& hose_of(const HoseLibrary& library, std::string_view name, const std::string& path);

/// The fitting of a name.
///
/// @param library [-] hoses and fittings
/// @param name [text] name of the fitting
/// @param path [text] where the name was written, for the error
/// @return [-] the fitting
/// Range: any text.
/// Errors: UnknownNameError `fitting.kind` naming the nearest known fitting.
/// Source: own convention
/// Verified by: tests/cpp/rates/test_hose_library.cpp
const FittingKind& fitting_of(const HoseLibrary& library, std::string_view name,
                              const std::string& path);

} // namespace scupper
