#pragma once
// Rows of tests/reference/random: id, quantity, inputs_json, value, ..., basis, notes.

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

/// The cells of a line in which a quoted cell doubles its quotes.
inline std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool doubled = quoted && line[i] == '"' && i + 1 < line.size() && line[i + 1] == '"';
        if (doubled) {
            cells.back() += line[i++];
        } else if (line[i] == '"') {
            quoted = !quoted;
        } else if (line[i] == ',' && !quoted) {
            cells.emplace_back();
        } else {
            cells.back() += line[i];
        }
    }
    return cells;
}

/// The rows of one file whose quantity is named; at least one, or the test is void.
inline std::vector<ReferenceRow> rows_of(const std::string& file, const std::string& quantity) {
    std::ifstream in(std::string(SCUPPER_TESTS_DIR "/reference/random/") + file);
    std::vector<ReferenceRow> rows;
    for (std::string line; std::getline(in, line);) {
        const auto cells = cells_of(line);
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
