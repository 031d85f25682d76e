#pragma once
// Hose lays as JSON documents. Every dimensional value is text with its unit.

#include "scupper/hydraulics/lay.hpp"

#include <string>
#include <string_view>

namespace scupper::json {

/// Reads a hose lay.
///
/// Segments start at the pump or where another ends (`from`), nozzles end one (`at`). Friction goes
/// by `roughness`, by `c` and `form`, or by `coefficient`: one of them. `hose` names a shipped hose,
/// whose likely bore, roughness and working pressure count where the segment gives none of its own;
/// `fittings` are names of shipped ones, whose likely K count, or objects with `loss_coefficient`. A nozzle has `bore` and
/// `discharge_coefficient` (1 where left out), or `rated_flow` and `rated_pressure`. `wear` is the
/// share by which a bore has grown: 0.05 or "5 %". Points of a pump's `curve` are pairs of flow and
/// head, a length or a pressure.
/// @param text [text] a JSON document with the keys of `hose_lay_keys`
/// @param name [text] what to call the document in errors: "lay" gives "lay.segments[2].bore"
/// @return [-] the lay, checked
/// Range: UTF-8.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key`, `json.word`,
/// `hydraulics.segment` with the nearest name; InputError `json.type`, `json.missing`,
/// `json.one_of`, `hydraulics.pump` for more than one; UnitError of the unit part; those of
/// `hydraulics::check_lay`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_hose_lay.cpp
hydraulics::HoseLay read_hose_lay(std::string_view text, std::string_view name);

/// Writes a hose lay whole, in SI units with all digits, so that reading it back gives the same.
///
/// @param lay [-] a lay
/// @return [text] a JSON document
/// Range: any lay. Rated nozzles are written as the bore they are likened to, fittings as the sum
/// of their K.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_hose_lay.cpp
std::string write_hose_lay(const hydraulics::HoseLay& lay);

} // namespace scupper::json
