#pragma once
// A hose lay: one pump, hose segments that part at wyes, nozzles at their ends.

#include "scupper/hydraulics/line.hpp"
#include "scupper/hydraulics/pump.hpp"
#include "scupper/hydraulics/water.hpp"
#include "scupper/quantity.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::hydraulics {

/// Stands for the pump's outlet where the index of a segment is due.
inline constexpr std::size_t at_pump = static_cast<std::size_t>(-1);

/// Hose, pipe or reel of one bore from the end of another, or from the pump.
struct LaySegment {
    std::string name;                             ///< [text] what people call it; no two alike
    std::size_t from = at_pump;                   ///< [-] index of the segment it starts from
    Segment<> hose;                               ///< bore, length, friction, minor losses
    Length<> rise{};                              ///< [m] its end above its start, negative below
    std::optional<Pressure<>> working_pressure{}; ///< [Pa] gauge, that the maker allows
};

/// Whether and how a nozzle lets water through; the words are hose_lay_nozzle_states, in this
/// order.
enum class NozzleState {
    open,   ///< at its bore
    closed, ///< shut by whoever holds it
    worn    ///< at its bore grown by the wear
};

/// A nozzle at the end of a segment. Water leaves it; air never enters.
struct LayNozzle {
    std::string name;                      ///< [text] what people call it; no two alike
    std::size_t at = at_pump;              ///< [-] index of the segment that it ends
    Nozzle<> tip;                          ///< bore when new, and discharge coefficient
    NozzleState state = NozzleState::open; ///< what is done with it
    double wear = 0.0; ///< [-] share by which the bore has grown; counts where it is worn
};

/// A tree of hose with its pump, water and nozzles. Values are checked where it is solved.
struct HoseLay {
    std::string name;                                  ///< [text] what people call it
    Temperature<> temperature = Temperature<>(288.15); ///< [K] of the water
    std::optional<Volume<>> tank;                      ///< [m3] drawn from, full
    Pump pump;                                         ///< what drives the water
    std::vector<LaySegment> segments;                  ///< in any order
    std::vector<LayNozzle> nozzles;                    ///< any number, also several at one end
};

/// The bore that a nozzle has now.
///
/// Formula: D (1 + wear) where worn; D otherwise
/// @param nozzle [-] bore, state and wear
/// @return [m] inside diameter of the tip
/// Range: any nozzle.
/// Errors: none
/// Source: definition of the wear
/// Verified by: tests/cpp/hydraulics/test_lay.cpp
Length<> bore_now(const LayNozzle& nozzle);

/// The place of a segment of a lay.
///
/// @param lay [-] the lay
/// @param name [text] of a segment, or "pump"
/// @param path [text] where the name stands, for the error
/// @return [-] its index, or at_pump
/// Range: any.
/// Errors: UnknownNameError `hydraulics.segment` with the nearest name
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_lay.cpp
std::size_t segment_index(const HoseLay& lay, std::string_view name, std::string_view path);

/// The place of a nozzle of a lay.
///
/// @param lay [-] the lay
/// @param name [text] of a nozzle
/// @param path [text] where the name stands, for the error
/// @return [-] its index
/// Range: any.
/// Errors: UnknownNameError `hydraulics.nozzle` with the nearest name
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_lay.cpp
std::size_t nozzle_index(const HoseLay& lay, std::string_view name, std::string_view path);

/// Refuses a lay that cannot be, and says why.
///
/// @param lay [-] the lay
/// @param path [text] what the lay is called in the message: "lay" gives "lay.segments[2].bore"
/// Range: any.
/// Errors: InputError `hydraulics.<field>` for a value out of range; `hydraulics.loop` where
///         segments follow each other in a ring; `hydraulics.name` where two are named alike or one
///         is named "pump"; `hydraulics.from`, `hydraulics.at` for an index beyond the segments;
///         those of check_pump and of the water's temperature
/// Source: own convention
/// Verified by: tests/cpp/hydraulics/test_lay.cpp
void check_lay(const HoseLay& lay, std::string_view path = "lay");

} // namespace scupper::hydraulics
