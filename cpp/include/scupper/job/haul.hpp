#pragma once
// Trucks that haul debris away, and what may become of the wash water.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace scupper {

/// When a haul truck makes its dump trips; the words are `dump_names`, in this order.
enum class DumpWhen { in_shift, after_shift, each_shift };

/// What may become of the wash water; the words are `wash_water_names`, in this order.
enum class WashWater { release, collect, none };

/// A truck that hauls debris away.
struct Haul {
    std::string name;                    ///< [text] "jet_vac", "dump_truck"
    std::vector<std::string> components; ///< whose dirt it carries; empty: what no other carries
    DumpWhen dump = DumpWhen::in_shift;  ///< [-] when it makes its dump trips
    std::string note;                    ///< [text] free text
};

/// Whether a truck carries the dirt of a component. Where two name the same one, the first hands it
/// over to the second, as a sweeper does to a dump truck: each has its own loads.
///
/// @param hauls [-, n] all trucks of a job
/// @param row [-] index of the truck
/// @param component [text] one of component_names
/// @return [-] true where it names the component, or names none and no other truck names it
/// Range: row < number of trucks.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/job/test_hauls.cpp
bool carries(const std::vector<Haul>& hauls, std::size_t row, std::string_view component);

/// The truck that takes the wash water where all of it is collected.
///
/// @param hauls [-, n] all trucks of a job, at least one
/// @return [-] index of the first that carries drain dirt; 0 where none does
/// Range: any.
/// Errors: none.
/// Source: common practice
/// Verified by: tests/cpp/job/test_hauls.cpp
std::size_t collecting_truck(const std::vector<Haul>& hauls);

} // namespace scupper
