#pragma once
// What a reader found: the structures, and everything it could not use, with line and reason.

#include "scupper/inventory/id_index.hpp"
#include "scupper/structure.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory {

namespace detail {
class Reader;
}

/// A record that is not among the structures, and why.
struct Rejected {
    std::uint32_t file = 0; ///< [-] position in Inventory::files
    std::uint64_t line = 0; ///< [-] line of that file, from 1
    std::string state;      ///< two-digit FIPS state code; empty where unknown
    std::string structure;  ///< structure number without padding; empty where unknown
    std::string found;      ///< what stands there
    std::string reason;     ///< what is wrong; the same words for the same kind of fault
};

/// A field that could not be used, or is used although it does not fit the rest of its record.
struct Doubt {
    std::uint32_t file = 0; ///< [-] position in Inventory::files
    std::uint64_t line = 0; ///< [-] line of that file, from 1
    std::string state;      ///< two-digit FIPS state code
    std::string structure;  ///< structure number without padding
    std::string column;     ///< name of the column in the file
    std::string found;      ///< what stands there
    std::string reason;     ///< what is wrong; the same words for the same kind of fault
    bool kept = false;      ///< whether the value is recorded all the same
};

/// The structures of one or several files. Every row is accounted for:
/// rows = structures + rejected + routes_under.
class Inventory {
  public:
    std::vector<std::string> files;          ///< names of the files read
    std::vector<Structure> structures;       ///< in the order of the file
    std::vector<Rejected> rejected;          ///< records that are no structure, in that order
    std::vector<Doubt> doubts;               ///< fields in doubt, in that order
    std::vector<std::string> absent_columns; ///< columns the reader knows and the header lacks
    std::uint64_t rows = 0;                  ///< [-] records read, header and blank lines apart
    std::uint64_t routes_under = 0; ///< [-] records of routes under a structure (5A is not 1)
    std::uint64_t blank_lines = 0;  ///< [-] lines without a record

    /// The structure of that number.
    ///
    /// @param id [text] structure number, padding ignored; "state:number" where several states
    /// use the number
    /// @return [-] the structure, or null where there is none
    /// Range: any text.
    /// Errors: InputError `inventory.ambiguous` naming the candidates where states share the
    /// number.
    /// Source: definition
    /// Verified by: tests/cpp/inventory/test_find.cpp
    const Structure* find(std::string_view id) const;

    /// The numbers that were probably meant by one that is not found.
    ///
    /// Formula: equal without blanks, signs and leading zeros first, then by least edit distance
    /// @param id [text] the wrong number
    /// @param most [-] how many to give at most
    /// @return [text, n] keys "state:number", the nearest first; empty where none is near
    /// Range: any text.
    /// Errors: none.
    /// Source: common practice
    /// Verified by: tests/cpp/inventory/test_find.cpp
    std::vector<std::string> near_misses(std::string_view id, std::size_t most = 3) const;

    /// Makes `find` know structures that were added or renumbered.
    void reindex();

  private:
    friend class detail::Reader; // fills the index while it looks for duplicates
    detail::IdIndex index_;
};

/// Where a doubtful field stands, as errors and tables print it: "DC19.txt:118 ADT_029".
///
/// @param inventory [-] the inventory the doubt belongs to
/// @param doubt [-] one of its doubts
/// @return [text] file, line, column
/// Range: any doubt of that inventory.
/// Errors: none.
/// Source: definition
std::string where(const Inventory& inventory, const Doubt& doubt);

/// Where a rejected record stands: "DC19.txt:118".
///
/// @param inventory [-] the inventory the record belongs to
/// @param rejected [-] one of its rejected records
/// @return [text] file, line
/// Range: any rejected record of that inventory.
/// Errors: none.
/// Source: definition
std::string where(const Inventory& inventory, const Rejected& rejected);

} // namespace scupper::inventory
