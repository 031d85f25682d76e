#pragma once
// One record of the national specification of 2022 into a structure.

#include "national_items.hpp"
#include "scupper/inventory/elements.hpp"

namespace scupper::inventory::detail {

/// Reads everything a record says; the structure's names and line are set already.
void read_national(const Items& items);
/// Reads its span sets and substructure sets.
void read_national_spans(const Items& items);
void read_national_units(const Items& items);
/// Reads what it carries and what lies below.
void read_national_features(const Items& items);
/// Adds its element records.
void read_national_elements(const Items& items, ElementRecords& elements);
/// Reads a length in feet by the rule that its kin of the old record is read by.
void read_feet(const Items& items, const char* tag, Column kin, bool may_be_blank = true);

} // namespace scupper::inventory::detail
