// Any text is either a finite quantity that reads the same again, or a UnitError that says where.
#include "scupper/error.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

constexpr std::string_view path = "job.value";

void require(bool holds) {
    if (!holds) {
        std::abort();
    }
}

bool close(double a, double b) {
    return std::abs(a - b) <= 1e-12 * std::max(std::abs(a), std::abs(b));
}

template <class Work>
void refused_or(Work&& work) {
    try {
        work();
    } catch (const scupper::UnitError& error) {
        require(!error.id().empty() && error.path() == path);
    }
}

void read_quantity(std::string_view text) {
    const auto read = scupper::parse_quantity(text, path);
    require(std::isfinite(read.si));
    if (read.currency.empty() && !read.absolute_temperature) {
        require(scupper::parse_as(text, read.dimension, path) == read.si);
    }
}

void read_unit(std::string_view text) {
    const auto unit = scupper::parse_unit(text, path);
    require(std::isfinite(unit.factor) && unit.factor > 0.0);
    const double three = scupper::to_unit(scupper::from_unit(3.0, unit), unit);
    require(std::abs(three - 3.0) < 1e-9);
    if (unit.currency.empty() && unit.offset == 0.0) {
        const auto again = scupper::parse_quantity("3 " + unit.name, path);
        require(close(again.si, scupper::from_unit(3.0, unit)));
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    refused_or([&] { read_quantity(text); });
    refused_or([&] { read_unit(text); });
    return 0;
}
