#pragma once
// The national inventory as downloaded: delimited (a header row, commas, single quotes), or records
// of fixed width. Of the delimited form columns are found by name, in any order, so that the
// 123-column header (from 2019) and the older 134-column one read alike; in the fixed form every
// column has its place, decimals are implied, and the state has a third digit, of its region. Which
// form it is the first line tells.
//
// Conventions of the coding guide are told apart from errors:
//
//   blank              no value; a doubt unless the item may be blank (106, 109 up to 100 veh/day)
//   34 skew 99         varies over the structure: not recorded, with a doubt
//   52, 51 width 0     kept; ordinary for a culvert under fill, a doubt for anything else
//   48 span 0          not recorded, with a doubt
//   53, 54B 99 and up  no restriction, or 30 m and more: not recorded, no doubt
//   54B 0              no clearance; a doubt only where 54A says highway or railroad
//   54B with 54A = N   kept, with a doubt: measured from something the record does not name
//   10, 47             as 53: 99.99 or 99.9 is no restriction
//   55B, 56            99.8 and 99.9, and 56 of 0: none
//   39, 40 with 38 not 1   not recorded, with a doubt where it is not 0
//   29 traffic 0       kept, with a doubt: the guide asks for an estimate, also of closed bridges
//   106 year 0, blank  never reconstructed
//   44 kind 0, type 00 without approach spans: no approach spans
//   16, 17 zeros       position not given; 59 seconds exceeded: kept, with a doubt
//   90 date MYY        the leading zero was dropped
//
// What cannot be (negative, beyond any built bridge, not a number, a code the guide does not list)
// is a doubt and not recorded. Owner and maintenance codes the guide does not list are kept.
// Source: FHWA-PD-96-001 (1995), items by number; limits of size: common practice.
//
// The other form is the specification of 2022: JSON, a list of records, or an object around one, or
// objects one after the other. It is read record by record, so that memory stays flat however long it
// is. What it tells beyond the old record: beam lines (B.SP.03), units of the substructure (B.SB.02),
// the greatest height (B.G.13), an irregular deck's area (B.G.15), how railings, bearings and joints
// are (B.C.05, 07, 08; N: none), and elements within the record. Lengths are in feet, west is
// negative. Several span sets become one of each kind:
//
//   M main        spans added; material, type and beam lines of the set with the most spans
//   A approach    likewise
//   W widening    its beam lines stand beside those of the main spans
//   C culvert     a culvert where there are no main spans, else passed over with a doubt
//   substructure  units of abutments (A) and piers (P) added, widenings (W) not
//   features      carried (C) and below (B); names joined, lanes and traffic added, least clearance
//
// `line` is the number of the record. Items nobody asked for are passed over. Source: FHWA,
// Specifications for the National Bridge Inventory (2022), items as tests/reference/inventory/snbi.csv
// lists them with their basis. From memory: all code lists (`national_codes.hpp`), the names of the
// sets, which codes mean carried and below, what the height is measured from. The substructure's type
// (B.SB.04) is kept as the code it is.

#include "scupper/inventory/inventory.hpp"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory {

/// Called about once a megabyte with the bytes done and in all [byte]; false stops the reading.
using Progress = std::function<bool(std::uint64_t bytes_done, std::uint64_t bytes_total)>;

/// The columns of the national inventory that are read.
///
/// @return [text, n] their names as the published header rows spell them, in the order of the items
/// Range: always the same.
/// Errors: none.
/// Source: header rows of the published files of 2013 and 2019
/// Verified by: tests/cpp/inventory/test_fields.cpp
std::vector<std::string> known_columns();

/// Reads an inventory file, delimited, of fixed width, or JSON of the specification of 2022.
///
/// @param path [text] the file
/// @param progress [-] told how far the reading is; may be empty
/// @return [-] structures, rejected records and doubts
/// Range: text with a header row, or records of 432 or 445 characters; CRLF or LF; or JSON records;
/// UTF-8, with or without mark, or Latin-1.
/// Errors: FileError `inventory.open` where it cannot be read, `inventory.header` where the first
/// row is neither a header nor such a record, `inventory.columns` naming necessary columns it lacks; Interrupted
/// `inventory.stopped` where progress says so.
/// Source: FHWA-PD-96-001 (1995); header rows of the published files of 2013 and 2019; FHWA,
/// Specifications for the National Bridge Inventory (2022)
/// Verified by: tests/cpp/inventory/test_samples.cpp, tests/cpp/inventory/test_national.cpp
Inventory read_inventory(const std::filesystem::path& path, const Progress& progress = {});

/// Reads an inventory from memory.
///
/// @param text [text] the whole file
/// @param name [text] what to call it where a line is named
/// @param progress [-] told how far the reading is; may be empty
/// @return [-] structures, rejected records and doubts
/// Range: as for a file.
/// Errors: as for a file, save `inventory.open`.
/// Source: as for a file
/// Verified by: tests/cpp/inventory/test_samples.cpp
Inventory read_inventory_text(std::string_view text, std::string_view name,
                              const Progress& progress = {});

} // namespace scupper::inventory
