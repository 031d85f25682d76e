#pragma once
// Published check values, and a count of how each row is met.

#include "catch.hpp"
#include "cells.hpp"

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <initializer_list>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace reference {

/// One published figure; the columns are named by the first line of the file.
struct Row {
    std::map<std::string, std::string> cells;

    const std::string& text(const std::string& column) const { return cells.at(column); }
    double expected() const { return std::stod(text("expected")); }
    double step() const { return std::stod(text("printed_precision")); }
    bool is(const std::string& quantity) const { return text("quantity") == quantity; }
    bool starts(const std::string& with) const { return text("quantity").rfind(with, 0) == 0; }
    bool has(const std::string& input) const {
        return text("inputs_json").find('"' + input + "\":") != std::string::npos;
    }
    /// Whether an input is there and a number.
    bool has_number(const std::string& input) const {
        const std::string& json = text("inputs_json");
        const auto at = json.find('"' + input + "\":");
        return at != std::string::npos && json.at(at + input.size() + 3) != '"';
    }
    /// A number among the inputs, which are one flat JSON object.
    double operator[](const std::string& input) const {
        const std::string& json = text("inputs_json");
        const auto at = json.find('"' + input + "\":");
        if (at == std::string::npos) {
            throw std::runtime_error(text("id") + " has no input " + input);
        }
        return std::strtod(json.c_str() + at + input.size() + 3, nullptr);
    }
};

/// The rows of tests/reference/<name>.csv, for example "hydraulics/line".
inline std::vector<Row> rows(const std::string& name) {
    std::ifstream file(SCUPPER_TESTS_DIR "/reference/" + name + ".csv");
    REQUIRE(file);
    std::string line;
    std::getline(file, line);
    const std::vector<std::string> columns = cells_of(line);
    std::vector<Row> out;
    while (std::getline(file, line)) {
        const std::vector<std::string> cells = cells_of(line);
        REQUIRE(cells.size() == columns.size());
        Row row;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            row.cells[columns[i]] = cells[i];
        }
        out.push_back(row);
    }
    REQUIRE(!out.empty());
    return out;
}

/// Whether a value rounds to the printed figure, half a printed step either way.
inline bool prints_as(const Row& row, double value) {
    return std::abs(value - row.expected()) <= 0.5 * row.step() * (1.0 + 1e-9);
}

/// Why a value and a printed figure part, or "agrees".
struct Reason {
    const char* name;
    bool holds;
};

/// How many rows of a file are met, and why the others are not; the test states the counts, so
/// that a change of a formula shows even where it stays within somebody's rounding.
class Tally {
  public:
    /// Files a row under "agrees", else under the first reason that holds, else "unexplained";
    /// figures that nobody could look up are counted apart.
    void add(const Row& row, double value, std::initializer_list<Reason> reasons = {}) {
        std::string why = "unexplained";
        if (prints_as(row, value)) {
            why = "agrees";
        } else {
            for (const Reason& r : reasons) {
                if (r.holds) {
                    why = r.name;
                    break;
                }
            }
        }
        if (why == "unexplained") {
            UNSCOPED_INFO(row.text("id")
                          << " printed " << row.text("expected") << ", formula " << value);
        }
        ++counts_[why + (row.text("basis") == "memory" ? "_from_memory" : "")];
    }
    /// The counts by reason: "agrees 87, cut_off 3".
    std::string summary() const {
        std::string text;
        for (const auto& [why, count] : counts_) {
            text += (text.empty() ? "" : ", ") + why + " " + std::to_string(count);
        }
        return text;
    }

  private:
    std::map<std::string, int> counts_;
};

/// Whether two numbers are equal within a share of the second.
inline bool near(double a, double b, double share) {
    return std::abs(a - b) <= share * std::abs(b);
}
/// Within a share of the printed figure.
inline bool within(const Row& row, double value, double share) {
    return near(value, row.expected(), share);
}
/// Within a whole printed step: the publisher cut digits off or rounded twice.
inline bool cut_off(const Row& row, double value) {
    return std::abs(value - row.expected()) <= row.step() * (1.0 + 1e-9);
}

} // namespace reference
