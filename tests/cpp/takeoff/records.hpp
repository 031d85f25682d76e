#pragma once
// Records for the tests, and the dimensions that stand at one place of every range.

#include "reference.hpp"
#include "scupper/takeoff.hpp"

#include <cstdint>
#include <span>
#include <string>

namespace records {

using namespace scupper;
using namespace scupper::takeoff;

/// The rows of tests/reference/takeoff/<name>.csv.
inline std::vector<reference::Row> rows(const std::string& name) {
    return reference::rows("takeoff/" + name);
}

struct Extent {
    double length;  // m
    double width;   // m
    double roadway; // m
    double longest; // m
    int spans;
};

inline Structure record(const Extent& e, Material material, Design design, int year) {
    Structure s;
    s.dimensions.length = Length<>(e.length);
    s.dimensions.deck_width = Length<>(e.width);
    s.dimensions.roadway_width = Length<>(e.roadway);
    s.dimensions.longest_span = Length<>(e.longest);
    s.dimensions.skew = Angle<>(0.0);
    s.dimensions.left_walk_width = Length<>(0.0);
    s.dimensions.right_walk_width = Length<>(0.0);
    s.codes.material = material;
    s.codes.design = design;
    s.codes.main_spans = e.spans;
    s.codes.approach_spans = 0;
    s.codes.year_built = year;
    return s;
}

/// Three simple spans over a road; invented, as A to C.
inline Structure yardstick() {
    Structure s = record({61.0, 11.0, 9.75, 20.3, 3}, Material::steel, Design::multi_beam, 1968);
    s.codes.below = Below::highway;
    s.dimensions.clearance_under = Length<>(5.0);
    return s;
}
inline Structure creek() {
    return record({18.3, 9.4, 8.5, 18.3, 1}, Material::steel, Design::multi_beam, 1975);
}
inline Structure overpass() {
    Structure s = record({61.0, 18.0, 17.1, 20.3, 3}, Material::steel, Design::multi_beam, 1972);
    s.dimensions.skew = Angle<>(20.0 * factor::degree);
    return s;
}
inline Structure river() {
    return record({548.6, 10.4, 9.1, 61.0, 9}, Material::steel_continuous, Design::multi_beam,
                  1958);
}
/// Arizona 00036 as its 2019 record tells it (public inventory).
inline Structure pinal_creek() {
    Structure s =
        record({32.3, 21.7, 19.5, 5.5, 6}, Material::concrete_continuous, Design::slab, 1920);
    s.dimensions.skew = Angle<>(41.0 * factor::degree);
    s.dimensions.left_walk_width = Length<>(0.8);
    s.dimensions.right_walk_width = Length<>(0.8);
    s.codes.year_reconstructed = 1957;
    s.recorded_deck_area = 700.91;
    return s;
}

inline Structure named_record(const std::string& name) {
    if (name == "yardstick") {
        return yardstick();
    }
    if (name == "AZ") {
        return pinal_creek();
    }
    return name == "A" ? creek() : name == "B" ? overpass() : river();
}

/// Dimensions picked from every range by a function of its three-point guess.
template <class Pick>
Dimensions<double> pick(const Inferred& inferred, Pick&& from) {
    std::array<double, dimension_count> flat{};
    for (std::size_t i = 0; i < dimension_count; ++i) {
        flat[i] = from(inferred.dimensions[i].guess);
    }
    return dimensions_from<double>(flat);
}
inline Dimensions<double> likely(const Inferred& inferred) {
    return pick(inferred, [](const ThreePoint& p) { return p.likely; });
}
inline Quantities<double> likely_quantities(const Structure& s) {
    const Inferred inferred = infer(s);
    return take_off(inferred.shape, likely(inferred));
}

/// A plain sequence of numbers in [0, 1), the same on every machine.
class Numbers {
  public:
    explicit Numbers(std::uint64_t seed) : state_(seed) {}
    double next() {
        state_ = state_ * 6364136223846793005u + 1442695040888963407u;
        return static_cast<double>(state_ >> 11) * 0x1p-53;
    }
    int below(int n) { return static_cast<int>(next() * n); }
    double between(double low, double high) { return low + (high - low) * next(); }

  private:
    std::uint64_t state_;
};

inline Dimensions<double> drawn(const Inferred& inferred, Numbers& numbers) {
    return pick(inferred, [&](const ThreePoint& p) {
        return p.low == p.high ? p.low : p.quantile(numbers.next());
    });
}

inline double to_unit(const std::string& unit) {
    return unit == "ft2" ? factor::foot * factor::foot : unit == "ft" ? factor::foot : 1.0;
}

} // namespace records
