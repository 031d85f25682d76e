#pragma once
// Rows of tests/reference/random: id, quantity, inputs_json, value, ..., basis, notes.

#include "cells.hpp"

#include <fstream>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

struct ReferenceRow {
    std::string id;
    std::string quantity;
    nlohmann::json inputs;
    std::string value;
};

/// The rows of one file whose quantity is named; at least one, or the test is void.
inline std::vector<ReferenceRow> rows_of(const std::string& file, const std::string& quantity) {
    std::ifstream in(std::string(SCUPPER_TESTS_DIR "/reference/random/") + file);
    std::vector<ReferenceRow> rows;
    for (std::string line; std::getline(in, line);) {
        const auto cells = reference::cells_of(line);
        if (cells.size() == 9 && cells[1] == quantity) {
            rows.push_back({cells[0], cells[1], nlohmann::json::parse(cells[2]), cells[3]});
        }
    }
    if (rows.empty()) {
        throw std::runtime_error("no rows of " + quantity + " in " + file);
    }
    return rows;
}

/// |actual - expected| in units of the larger of 1 and |expected|.
inline double error_of(double actual, double expected) {
    const double scale =
        expected < -1.0 || expected > 1.0 ? (expected < 0 ? -expected : expected) : 1;
    return (actual < expected ? expected - actual : actual - expected) / scale;
}
