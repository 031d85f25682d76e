#pragma once
// From a public record to dimensions with low, likely and high.

#include "scupper/schema.hpp"
#include "scupper/structure.hpp"
#include "scupper/takeoff/dimensions.hpp"
#include "scupper/takeoff/shape.hpp"
#include "scupper/uncertain.hpp"

#include <array>
#include <limits>

namespace scupper::takeoff {

/// What a record tells about a structure.
struct Inferred {
    Shape shape;                                       ///< [-] categories
    std::array<Uncertain, dimension_count> dimensions; ///< [SI unit of each field]
    std::array<bool, slot_table.size()> untold{};      ///< no record can tell it: NaN in the table
    std::array<double, slot_table.size()> counted; ///< [SI of each] recorded whole; NaN where not
    Verdict verdict = Verdict::bridge;             ///< [-] whether it is priced as a bridge

    Inferred() { counted.fill(std::numeric_limits<double>::quiet_NaN()); }
};

/// What somebody measured or a job gives, at its likely value: it stands in the place of what a
/// record or a rule says, and whatever follows by rule follows from it.
struct Measured {
    std::array<double, dimension_count> dimensions; ///< [SI unit of each field] NaN where not
    double clearance; ///< [m] of the girders above ground, water or a road; NaN where not

    Measured() : clearance(std::numeric_limits<double>::quiet_NaN()) { dimensions.fill(clearance); }
};

/// What a structure's record says about its dimensions, and what follows by rule where it says
/// nothing.
///
/// Values somebody measured (`Structure::given`) are not looked at: who resolves a job hands them
/// over. Recorded values outside the bounds of the input schema count as not recorded.
///
/// @param structure [-] one record
/// @param measured [SI unit of each] what is known better than by record and rule
/// @return [-] categories, dimensions with basis and rule, and what cannot be told
/// Range: any record, whatever it lacks.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995) items; rules with their sources in `rules()`
/// Verified by: tests/cpp/takeoff/test_infer.cpp, test_records.cpp, test_properties.cpp
Inferred infer(const Structure& structure, const Measured& measured = {});

/// How surely a quantity is known: by the least sure of the dimensions it rests on.
///
/// @param inferred [-] from `infer`
/// @param slot [-] index in slot_table
/// @return [-] assumed where no record can tell it
/// Range: slot < slot_table.size().
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_properties.cpp
Basis basis_of(const Inferred& inferred, Slot slot);

/// How surely every quantity is known, from how surely the dimensions are.
///
/// @param known [-] how each dimension came to be known
/// @return [-] by slot: the least sure of the dimensions it rests on; inferred where it rests on
///         none, as counts that follow from the spans do
/// Range: any.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_properties.cpp
std::array<Basis, slot_table.size()> bases_of(const std::array<Basis, dimension_count>& known);

/// Whether a quantity rests on a dimension.
///
/// @param slot [-] index in slot_table
/// @param dimension [-] index of the dimension
/// @return [-] false where no change of the dimension can change the quantity
/// Range: slot < slot_table.size(), dimension < dimension_count.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/takeoff/test_properties.cpp
bool rests_on(Slot slot, std::size_t dimension);

} // namespace scupper::takeoff
