#pragma once
// A value as people know it: low, likely, high, and where it comes from.

#include "scupper/random.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// How a value came to be known, the surest first.
enum class Basis : std::uint8_t {
    measured, ///< somebody measured it on site
    element,  ///< from an element-level record
    recorded, ///< from the public inventory record
    given,    ///< from the job or its rate book
    inferred, ///< by a named rule from recorded values
    assumed,  ///< by a named rule although no record tells
};

/// The word for a basis, as tables and explanations print it.
///
/// @param basis [-] how a value came to be known
/// @return [text] "measured", "element", "recorded", "given", "inferred" or "assumed"
/// Range: every basis.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/uncertain/test_uncertain.cpp
std::string_view basis_name(Basis basis);

/// One part of a value that was built up, as the fuel price in the rate of a truck.
struct PartValue {
    std::string name;    ///< [text] stable word: "cash", "fuel_price"
    double value;        ///< [SI unit of the part] likely value
    double low = value;  ///< [SI unit of the part] least value
    double high = value; ///< [SI unit of the part] greatest value
};

/// Where a value comes from: a document, "common practice", or "invented for the demo".
struct Provenance {
    std::string source; ///< document, edition, table; or "common practice"; or the name of a rule
    std::string date;   ///< when it was published or read, ISO 8601; may be empty
    std::string note;   ///< what a reader should know besides; may be empty
    std::vector<PartValue> parts{}; ///< [SI unit of each, n] what it was built up from, if it was
    std::shared_ptr<const Listed> listed{}; ///< [SI unit] values or sample that state it, if any do
};

/// One uncertain input: its three-point guess in SI units and what is known about it.
struct Uncertain {
    ThreePoint guess;                   ///< low, likely, high in the SI unit of its field
    double shared_share = 0.0;          ///< [-] share of the spread common to all structures
    Basis basis = Basis::assumed;       ///< how it came to be known
    const Provenance* origin = nullptr; ///< outlives the value; may be null
};

/// A value without spread.
///
/// @param si [SI unit of its field] the value
/// @param basis [-] how it came to be known
/// @param origin [-] where it comes from; must outlive the result
/// @return [SI unit of its field] low = likely = high = si
/// Range: any finite number.
/// Errors: none.
/// Source: definition
Uncertain certain(double si, Basis basis, const Provenance* origin = nullptr);

/// A PERT guess between limits.
///
/// @param low [SI unit of its field] least value
/// @param likely [SI unit of its field] most likely value
/// @param high [SI unit of its field] greatest value
/// @param basis [-] how it came to be known
/// @param origin [-] where it comes from; must outlive the result
/// @return [SI unit of its field] the guess, own to each structure (shared_share = 0)
/// Range: low <= likely <= high.
/// Errors: none here; the order is checked where inputs are resolved.
/// Source: definition
Uncertain between(double low, double likely, double high, Basis basis,
                  const Provenance* origin = nullptr);

/// Whether a guess has no spread at all, so that every draw of it is its value to the bit.
///
/// Formula: low = high
/// @param value [SI unit of its field] low, likely, high
/// @return [-] true where nothing can be drawn
/// Range: a guess with low <= likely <= high; false where it is NaN.
/// Errors: none.
/// Source: definition
/// Verified by: tests/cpp/uncertain/test_uncertain.cpp
bool is_certain(const Uncertain& value);

} // namespace scupper
