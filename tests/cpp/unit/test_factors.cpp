#include "catch.hpp"
#include "cells.hpp"
#include "scupper/unit.hpp"

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

using namespace scupper;

namespace {
/// One published factor: so many `unit` in one `inputs` unit, printed to `step` (0 where exact).
struct Row {
    std::string id;
    std::string inputs;
    double expected;
    std::string unit;
    double step;
};

std::vector<Row> rows() {
    std::ifstream file(SCUPPER_TESTS_DIR "/reference/unit/exact_factors.csv");
    std::string line;
    if (!std::getline(file, line)) {
        throw std::runtime_error("exact_factors.csv cannot be read");
    }
    std::vector<Row> all;
    while (std::getline(file, line)) {
        const auto c = reference::cells_of(line);
        all.push_back({c[0], c[2], std::stod(c[3]), c[4], std::stod(c[5])});
    }
    return all;
}

std::string unit_of(const std::string& inputs) {
    const std::string key = "\"unit\":\"";
    const std::size_t start = inputs.find(key) + key.size();
    return inputs.substr(start, inputs.find('"', start) - start);
}

double value_of(const std::string& inputs) {
    const std::string key = "\"value\":";
    const std::size_t start = inputs.find(key);
    return start == std::string::npos ? 1.0 : std::atof(inputs.c_str() + start + key.size());
}
} // namespace

TEST_CASE("factors agree with the published ones") {
    const std::vector<Row> all = rows();
    REQUIRE(all.size() == 62);
    for (const Row& row : all) {
        INFO(row.id << ' ' << row.inputs);
        const Unit from = parse_unit(unit_of(row.inputs), row.id);
        const Unit to = parse_unit(row.unit, row.id);
        REQUIRE(from.dimension == to.dimension);
        const double ours = to_unit(from_unit(value_of(row.inputs), from), to);
        const double allowed = row.step > 0.0 ? 0.5 * row.step : 1e-15 * std::abs(row.expected);
        CHECK(std::abs(ours - row.expected) <= allowed * (1.0 + 1e-6));
    }
}
