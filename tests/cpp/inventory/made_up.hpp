#pragma once
// Made-up inventory texts: a header of all columns the reader needs, and rows that differ from a
// sound one in the fields a test names.

#include "scupper/inventory.hpp"

#include <algorithm>
#include <cstddef>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace made_up {

using Fields = std::map<std::string, std::string>;

/// Column names and the fields of a sound record, in the order of the header.
inline const std::vector<std::pair<std::string, std::string>>& sound() {
    static const std::vector<std::pair<std::string, std::string>> columns{
        {"STATE_CODE_001", "01"},          {"STRUCTURE_NUMBER_008", "0042"},
        {"RECORD_TYPE_005A", "1"},         {"FEATURES_DESC_006A", "'MILL CREEK     '"},
        {"CRITICAL_FACILITY_006B", ""},    {"FACILITY_CARRIED_007", "'ROUTE 7'"},
        {"LOCATION_009", "'2 KM N OF X'"}, {"ADT_029", "1200"},
        {"APPR_WIDTH_MT_032", "9.8"},      {"DEGREES_SKEW_034", "15"},
        {"STRUCTURE_KIND_043A", "3"},      {"STRUCTURE_TYPE_043B", "02"},
        {"MAIN_UNIT_SPANS_045", "3"},      {"APPR_SPANS_046", "0"},
        {"MAX_SPAN_LEN_MT_048", "20"},     {"STRUCTURE_LEN_MT_049", "58.5"},
        {"ROADWAY_WIDTH_MT_051", "8.5"},   {"DECK_WIDTH_MT_052", "9.7"}};
    return columns;
}

inline std::string header() {
    std::string row;
    for (const auto& [name, value] : sound()) {
        row.append(row.empty() ? "" : ",").append(name);
    }
    return row;
}

/// A sound record with some fields replaced, as they stand in the file.
inline std::string row(const Fields& changed = {}) {
    std::string text;
    for (const auto& [name, value] : sound()) {
        const auto found = changed.find(name);
        text.append(text.empty() ? "" : ",").append(found == changed.end() ? value : found->second);
    }
    return text;
}

inline std::string file(const std::vector<std::string>& rows) {
    std::string text = header() + "\n";
    for (const std::string& one : rows) {
        text += one + "\n";
    }
    return text;
}

inline scupper::inventory::Inventory read(const std::string& text) {
    return scupper::inventory::read_inventory_text(text, "made_up.txt");
}

/// Reads a single record that differs from a sound one.
inline scupper::inventory::Inventory read_one(const Fields& changed) {
    return read(file({row(changed)}));
}

/// The reason of the one doubt about a column; empty where there is none.
inline std::string doubt_about(const scupper::inventory::Inventory& inventory,
                               std::string_view column) {
    for (const auto& doubt : inventory.doubts) {
        if (doubt.column == column) {
            return doubt.reason;
        }
    }
    return {};
}

inline bool adds_up(const scupper::inventory::Inventory& inventory) {
    return inventory.rows ==
           inventory.structures.size() + inventory.rejected.size() + inventory.routes_under;
}

/// The bytes of a file of tests/data/inventory.
inline std::string sample(const std::string& name) {
    std::ifstream in(std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name, std::ios::binary);
    if (!in) {
        throw std::runtime_error("no sample " + name);
    }
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The lines of a text without their ends.
inline std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> found;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        found.push_back(text.substr(at, end - at));
        if (!found.back().empty() && found.back().back() == '\r') {
            found.back().pop_back();
        }
        at = end + 1;
    }
    return found;
}

/// The fields of a sound row, quotes and all: commas within '...' do not count.
inline std::vector<std::string> fields(const std::string& row) {
    std::vector<std::string> found(1);
    bool quoted = false;
    for (const char c : row) {
        quoted = c == '\'' ? !quoted : quoted;
        if (c == ',' && !quoted) {
            found.emplace_back();
        } else {
            found.back() += c;
        }
    }
    return found;
}

inline std::string joined(const std::vector<std::string>& fields) {
    std::string row;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        row.append(i == 0 ? "" : ",").append(fields[i]);
    }
    return row;
}

} // namespace made_up
