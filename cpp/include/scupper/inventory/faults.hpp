#pragma once
// What a record says that cannot be, whoever wrote it.

#include "scupper/structure.hpp"

#include <string_view>
#include <vector>

namespace scupper::inventory {

/// Something a record says that cannot be, or that does not fit the rest of it.
struct Fault {
    const void* field = nullptr; ///< the member of the structure it is about
    std::string_view reason;     ///< what is wrong, in the words of doubts
    bool contradiction = false;  ///< [-] true: it could be, if the rest of the record were not
};

/// What in a record cannot be, by the bounds and codes that records of the national inventory are
/// read with, and what contradicts the rest of it.
///
/// @param structure [-] a record
/// @return [-, n] each fault; none for a sound record
/// Range: any record.
/// Errors: none.
/// Source: FHWA-PD-96-001 (1995), items by number; limits of size: common practice
/// Verified by: tests/cpp/inventory/test_faults.cpp
std::vector<Fault> faults_of(const Structure& structure);

} // namespace scupper::inventory
