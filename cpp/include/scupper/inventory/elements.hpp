#pragma once
// Element-level records: how much of each bridge element there is, by structure.
//
// The federal form is flat: FHWAELEMENT holds FHWAED records of STATE, STRUCNUM, EN, EPN (of a
// protective system: what it protects), TOTALQTY, CS1 to CS4. No field tells the unit: it follows from
// the element number. Source: FHWA, Specification for the National Bridge Inventory Bridge Elements
// (2014); names and units of the elements from memory.

#include "scupper/inventory/inventory.hpp"

#include <array>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory {

/// In what an element is counted; the words are `element_unit_names`, in this order.
enum class ElementUnit : std::uint8_t { unknown, square_feet, feet, each };

/// The units of elements as people write them [text, 4].
inline constexpr std::array<std::string_view, 4> element_unit_names{"", "ft2", "ft", "each"};

/// One record of an element.
struct ElementRecord {
    std::uint64_t line = 0;         ///< [-] line of the file on which it begins, from 1
    std::string state;              ///< two-digit FIPS state code
    std::string structure;          ///< structure number without padding
    int element = 0;                ///< [-] element number, EN
    int parent = 0;                 ///< [-] what a protective system protects, EPN; 0: nothing
    double total = 0.0;             ///< [unit of the element] TOTALQTY, >= 0
    std::array<double, 4> states{}; ///< [unit of the element] in condition states 1 to 4
};

/// What an element file holds, and what could not be used of it.
struct ElementRecords {
    std::string file;                   ///< [text] its name
    std::vector<ElementRecord> records; ///< [-, n] in the order of the file
    std::vector<Rejected> rejected; ///< [-, n] records that cannot be read, with line and reason
    std::vector<Doubt> doubts;      ///< [-, n] condition states that do not add up to the total
};

/// In what an element is counted.
///
/// @param element [-] element number
/// @return [-] its unit; unknown for an agency's own elements
/// Range: any number.
/// Errors: none.
/// Source: FHWA, Specification for the National Bridge Inventory Bridge Elements (2014), from memory
/// Verified by: tests/cpp/inventory/test_elements.cpp
ElementUnit element_unit(int element);

/// What people call an element.
///
/// @param element [-] element number
/// @return [text] "reinforced concrete deck"; empty for an agency's own elements
/// Range: any number.
/// Errors: none.
/// Source: FHWA, Specification for the National Bridge Inventory Bridge Elements (2014), from memory
/// Verified by: tests/cpp/inventory/test_elements.cpp
std::string_view element_name(int element);

/// Reads an element file from memory.
///
/// @param text [text] XML: FHWAELEMENT with FHWAED records
/// @param name [text] what to call it where a line is named
/// @return [-] records, rejected records and doubts
/// Range: UTF-8 or Latin-1; comments, white space and unknown fields between the records are passed
/// over; a last record that is cut off is rejected.
/// Errors: FileError `inventory.elements` where it holds no FHWAELEMENT.
/// Source: FHWA, Specification for the National Bridge Inventory Bridge Elements (2014)
/// Verified by: tests/cpp/inventory/test_elements.cpp
ElementRecords read_elements_text(std::string_view text, std::string_view name);

/// Reads an element file.
///
/// @param path [text] the file
/// @return [-] records, rejected records and doubts
/// Range: as for text in memory.
/// Errors: as for text in memory; FileError `inventory.open` where it cannot be read.
/// Source: as for text in memory
/// Verified by: tests/cpp/inventory/test_elements.cpp
ElementRecords read_elements(const std::filesystem::path& path);

/// What a join found.
struct ElementJoin {
    std::size_t structures = 0; ///< [-] that have element records
    std::size_t matched = 0;    ///< [-] element records whose structure is there
    std::size_t used = 0;       ///< [-] of those matched, records that say something wanted
    std::vector<ElementRecord> unmatched; ///< [-, n] element records whose structure is not
    std::vector<Doubt> doubts; ///< [-, n] quantities that do not fit the record, or unused
};

/// Gives structures what their element records say, in place of what would be inferred: joint
/// length, bearings, columns, girder lines, parapets, rails, coated girder surface. Joined by state
/// and structure number, padding ignored. A quantity that the structure's own length, width and
/// spans make impossible is not used and reported.
///
/// Formula: girder lines = sum of girder lengths / structure length, within a tenth of a whole number
/// @param inventory [-] structures to complete; its doubts grow
/// @param elements [-] what an element file holds
/// @return [-] matched, unmatched and doubtful records
/// Range: any. The traps that occur: no unit field; a coating quantity that is a rail's length.
/// Errors: none.
/// Source: own convention; bounds of plausibility common practice
/// Verified by: tests/cpp/inventory/test_join_elements.cpp
ElementJoin join_elements(Inventory& inventory, const ElementRecords& elements);

} // namespace scupper::inventory
